package pairdown.season;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Locale;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.vector.Vec3;

/**
 * The logs of one made-up attempt, without noise, in still air: ship and lead climb through a full
 * circle, the flyer leaves the ship and follows the lead down, goes to a place behind its slot,
 * stays there, falls back and opens. Every figure of its summary is known beforehand.
 *
 * @param day minutes after the season's first attempt at which it was flown
 * @param gate_m planned
 * @param gap_m at which the flyer stays, straight behind its slot
 * @param hold_s how long it stays
 * @param sink_mps of the lead in its descent
 */
record FlownAttempt(int day, double gate_m, double gap_m, double hold_s, double sink_mps) {
    static final double TARGET_MPS = 38;
    static final double SINK_MPS = 17.78;

    private static final Instant FIRST = Instant.parse("2031-06-02T09:00:00Z");
    private static final LocalFrame FRAME = LocalFrame.at(Geodetic.ofDegrees(-21.6, 15.1, 2500));
    private static final double STEP_S = 0.2;
    private static final double CLIMB_END_S = 120;
    private static final double EXIT_S = 150;
    private static final double JOIN_S = 38;
    private static final double TURN_DPS = 3;
    private static final double CRUISE_MPS = 45;
    private static final double LEAVE_S = 12;

    /** Where the ship flies, seen from the cruise: left of the lead, behind and above. */
    private static final Vec3 BESIDE = new Vec3(-60, -90, 40);

    private static final Vec3 SLOT = new Vec3(-6, 0, 0);
    private static final Vec3 AWAY = new Vec3(-60, -150, 0);

    static FlownAttempt at(int day, double gate_m, double gap_m) {
        return new FlownAttempt(day, gate_m, gap_m, 20, SINK_MPS);
    }

    private double open_s() {
        return EXIT_S + JOIN_S + hold_s + LEAVE_S;
    }

    private double end_s() {
        return open_s() + 60;
    }

    /** How long the gap is within {@code near_m} between exit and opening. */
    double within_s(double near_m) {
        double sum_s = 0;
        for (double t_s = EXIT_S; t_s < open_s(); t_s += 0.01) {
            sum_s += place(t_s).minus(SLOT).norm() <= near_m ? 0.01 : 0;
        }
        return sum_s;
    }

    /**
     * How long the speeds match: from the join's end backwards until a rate is over 1.5 m/s level
     * or 1.0 m/s vertical, forwards until one is over half as much again.
     */
    double matched_s() {
        double from_s = EXIT_S + JOIN_S;
        double to_s = from_s + hold_s;
        while (rate(from_s).levelNorm() <= 1.5 && Math.abs(rate(from_s).z()) <= 1) {
            from_s -= 0.01;
        }
        while (rate(to_s).levelNorm() <= 1.5 * 1.5 && Math.abs(rate(to_s).z()) <= 1.5) {
            to_s += 0.01;
        }
        return to_s - from_s;
    }

    private Vec3 rate(double t_s) {
        return place(t_s + 1e-3).minus(place(t_s - 1e-3)).times(500);
    }

    /**
     * From a path of 10° to both speeds within tolerance: the descent's speeds are those of level
     * flight and of the target mixed by 3x² − 2x³, x the tenths of its 10 s.
     */
    double stabilise_s() {
        double steep_s = 0;
        while (sink_mps(steep_s) < Math.sin(Math.toRadians(10)) * airspeed_mps(steep_s)) {
            steep_s += 0.01;
        }
        double stable_s = steep_s;
        while (Math.abs(airspeed_mps(stable_s) - TARGET_MPS) > 1.5
                || Math.abs(sink_mps(stable_s) - SINK_MPS) > 1) {
            stable_s += 0.01;
        }
        return stable_s - steep_s;
    }

    private double sink_mps(double since_s) {
        return sink_mps * share(since_s);
    }

    private double airspeed_mps(double since_s) {
        double level_mps = Math.sqrt(TARGET_MPS * TARGET_MPS - sink_mps * sink_mps);
        double now_mps = CRUISE_MPS + (level_mps - CRUISE_MPS) * share(since_s);
        return Math.hypot(now_mps, sink_mps(since_s));
    }

    private static double share(double since_s) {
        double x = Math.min(1, since_s / 10);
        return x * x * (3 - 2 * x);
    }

    /** Writes the folder: three logs and the attempt's file. */
    Path write(Path folder) {
        try {
            Files.createDirectories(folder);
            write(folder.resolve("lead.csv"), this::lead);
            write(folder.resolve("ship.csv"), this::ship);
            write(folder.resolve("blue.csv"), this::flyer);
            Files.writeString(folder.resolve("attempt.json"), manifest(folder));
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String manifest(Path folder) {
        return String.format(
                Locale.ROOT,
                """
                {"attempt": "%s",
                 "participants": [
                  {"id": "lead", "role": "lead", "mass": "1900 kg", "logs": [{"file": "lead.csv"}],
                   "slots": {"left": {"ahead_m": 0, "right_m": -6, "above_m": 0}}},
                  {"id": "blue", "role": "flyer", "slot": "left", "logs": [{"file": "blue.csv"}]},
                  {"id": "ship", "role": "jumpship", "logs": [{"file": "ship.csv"}]}],
                 "target": {"airspeed": "%.1f m/s", "airspeedKind": "true", "sink": "%.2f m/s"},
                 "gate": "%.1f m"}
                """,
                folder.getFileName(),
                TARGET_MPS,
                SINK_MPS,
                gate_m);
    }

    /** East, north, up at an instant (m). */
    private interface Path3 {
        Vec3 at(double t_s);
    }

    private void write(Path file, Path3 path) throws IOException {
        StringBuilder csv =
                new StringBuilder(
                        "time,latitude_deg,longitude_deg,heightEllipsoid_m,velocityNorth_mps,"
                                + "velocityEast_mps,velocityDown_mps,horizontalAccuracy_m,"
                                + "verticalAccuracy_m,speedAccuracy_mps,satellites\n");
        Instant start = FIRST.plusSeconds(60L * day);
        for (int i = 0; i * STEP_S <= end_s(); i++) {
            double t_s = i * STEP_S;
            Vec3 p = path.at(t_s);
            Vec3 v = path.at(t_s + 1e-3).minus(path.at(t_s - 1e-3)).times(500);
            Geodetic g = FRAME.toGeodetic(p);
            csv.append(
                    String.format(
                            Locale.ROOT,
                            "%s,%.9f,%.9f,%.3f,%.3f,%.3f,%.3f,1.5,2.5,0.2,14%n",
                            start.plusMillis(Math.round(t_s * 1000)),
                            g.latitude_deg(),
                            g.longitude_deg(),
                            g.height_m(),
                            v.y(),
                            v.x(),
                            -v.z()));
        }
        Files.writeString(file, csv.toString());
    }

    /** Climbs round a circle, flies north level, then descends. */
    private Vec3 lead(double t_s) {
        return cruise(t_s).plus(new Vec3(0, -slower_m(t_s), -sink_mps * eased_s(t_s - EXIT_S, 10)));
    }

    /** How far the lead lags behind level flight once it has slowed down to the target. */
    private double slower_m(double t_s) {
        double level_mps = Math.sqrt(TARGET_MPS * TARGET_MPS - sink_mps * sink_mps);
        return (CRUISE_MPS - level_mps) * eased_s(t_s - EXIT_S, 10);
    }

    private static Vec3 cruise(double t_s) {
        double turn_rad = Math.toRadians(TURN_DPS);
        double radius_m = CRUISE_MPS / turn_rad;
        double turning_s = Math.min(t_s, CLIMB_END_S);
        double after_s = Math.max(0, t_s - CLIMB_END_S);
        double up_m = 4 * (turning_s - Math.max(0, eased_s(t_s - CLIMB_END_S + 10, 10) - after_s));
        return new Vec3(
                radius_m * (1 - Math.cos(turn_rad * turning_s)),
                radius_m * Math.sin(turn_rad * turning_s) + CRUISE_MPS * after_s,
                up_m);
    }

    /** The integral of a step of speed that takes {@code ramp_s} to rise smoothly from 0 to 1. */
    private static double eased_s(double t_s, double ramp_s) {
        if (t_s <= 0) {
            return 0;
        }
        if (t_s >= ramp_s) {
            return t_s - ramp_s / 2;
        }
        double x = t_s / ramp_s;
        return ramp_s * (x * x * x - x * x * x * x / 2);
    }

    /** Quintic from 0 to 1 over {@code ramp_s}. */
    private static double smooth(double t_s, double ramp_s) {
        double x = Math.max(0, Math.min(1, t_s / ramp_s));
        return x * x * x * (10 + x * (-15 + 6 * x));
    }

    private Vec3 ship(double t_s) {
        return cruise(t_s).plus(BESIDE);
    }

    /** The flyer seen from the lead after the exit, until the opening. */
    private Vec3 place(double t_s) {
        Vec3 stay = SLOT.plus(new Vec3(0, -gap_m, 0));
        double join = smooth(t_s - EXIT_S, JOIN_S);
        double leave = smooth(t_s - EXIT_S - JOIN_S - hold_s, LEAVE_S);
        return BESIDE.plus(stay.minus(BESIDE).times(join)).plus(AWAY.times(leave));
    }

    private Vec3 flyer(double t_s) {
        if (t_s <= EXIT_S) {
            return ship(t_s);
        }
        double canopy_s = t_s - open_s();
        return lead(t_s)
                .plus(place(t_s))
                .plus(
                        new Vec3(
                                0,
                                -25 * eased_s(canopy_s, 4),
                                (sink_mps - 5) * eased_s(canopy_s, 4)));
    }
}
