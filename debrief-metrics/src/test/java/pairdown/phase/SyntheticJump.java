package pairdown.phase;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import pairdown.attempt.ClockMark;
import pairdown.attempt.LogRef;
import pairdown.attempt.Participant;
import pairdown.attempt.Role;
import pairdown.clock.ClockDoubt;
import pairdown.clock.ClockMap;
import pairdown.clock.ClockMethod;
import pairdown.clock.ClockResult;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.height.AlignedLog;
import pairdown.height.HeightResult;
import pairdown.time.TimeAxis;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.LogReport;
import pairdown.track.Track;
import pairdown.vector.Vec3;

/**
 * A made-up jump with known exit and opening: a point mass under weight, drag and lift, after a
 * ship that climbs, flies level with gusts and descends. Integrated at 50 Hz.
 */
final class SyntheticJump {
    static final double STEP_S = 0.02;
    static final double EXIT_S = 240;

    private static final Instant START = Instant.parse("2031-05-14T15:00:00Z");
    private static final LocalFrame FRAME = LocalFrame.at(Geodetic.ofDegrees(-21.6, 15.1, 400));
    private static final double END_S = 640;

    final double exit_s;
    final double[][] ship = new double[6][(int) (END_S / STEP_S)];
    final double[][] flyer = new double[6][(int) (END_S / STEP_S)];
    double deployed_s = Double.NaN;
    double pull_s = Double.NaN;

    /**
     * @param shipSpeed_mps at exit
     * @param push_mps sideways, with which the flyer leaves
     */
    SyntheticJump(long seed, double shipSpeed_mps, double push_mps) {
        Random random = new Random(seed);
        exit_s = EXIT_S + random.nextDouble();
        double[] gust = new double[3];
        double heading_rad = 1;
        double wanted = 0;
        for (int i = 1; i < ship[0].length; i++) {
            double t_s = i * STEP_S;
            for (int axis = 0; axis < 3; axis++) {
                gust[axis] +=
                        -gust[axis] * STEP_S / 6
                                + 0.4 * Math.sqrt(2 * STEP_S / 6) * random.nextGaussian();
            }
            double moving = Math.max(0, Math.min(1, (t_s - 20) / 20));
            double turning = (t_s > 50 && t_s < 200) || t_s > 260 ? 0.06 : 0;
            heading_rad += turning * STEP_S;
            double up = t_s < 220 ? 8 : t_s < 260 ? 0 : -5;
            ship[3][i] = moving * (shipSpeed_mps * Math.sin(heading_rad) + gust[0]);
            ship[4][i] = moving * (shipSpeed_mps * Math.cos(heading_rad) + gust[1]);
            wanted += (up - wanted) * STEP_S / 3;
            ship[5][i] = moving * (wanted + gust[2] / 2);
            step(ship, i);
            if (t_s < exit_s) {
                for (int axis = 0; axis < 6; axis++) {
                    flyer[axis][i] = ship[axis][i];
                }
            } else {
                fly(i, t_s, push_mps, heading_rad);
            }
        }
    }

    private static void step(double[][] s, int i) {
        for (int axis = 0; axis < 3; axis++) {
            s[axis][i] = s[axis][i - 1] + (s[axis + 3][i] + s[axis + 3][i - 1]) / 2 * STEP_S;
        }
    }

    private void fly(int i, double t_s, double push_mps, double heading_rad) {
        double since_s = t_s - exit_s;
        boolean first = since_s < STEP_S;
        double e = flyer[3][i - 1] + (first ? push_mps * Math.cos(heading_rad) : 0);
        double n = flyer[4][i - 1] - (first ? push_mps * Math.sin(heading_rad) : 0);
        double u = flyer[5][i - 1];
        double open = Math.max(0, Math.min(1, (since_s - 1) / 4));
        double lift = 0.15 + open * 1.0;
        double drag = 0.55 + open * 0.05;
        if (flyer[2][i - 1] < 850) {
            deployed_s = Double.isNaN(deployed_s) ? t_s : deployed_s;
            pull_s = deployed_s + 0.7;
            double filled = Math.max(0, Math.min(1, (t_s - deployed_s - 0.7) / 2));
            drag += 12 * filled * filled;
            lift = lift * (1 - filled) + 12 * filled;
        }
        double v = Math.sqrt(e * e + n * n + u * u);
        double q = 0.5 * 1.0 * v * v / 95;
        double level = Math.max(1, Math.hypot(e, n));
        double a = q * drag / v;
        double l = q * lift / v;
        flyer[3][i] = e + (-a * e - l * u * e / level) * STEP_S;
        flyer[4][i] = n + (-a * n - l * u * n / level) * STEP_S;
        flyer[5][i] = u + (-9.8 - a * u + l * level) * STEP_S;
        if (flyer[2][i - 1] < 0) {
            flyer[3][i] = 0;
            flyer[4][i] = 0;
            flyer[5][i] = 0;
        }
        step(flyer, i);
    }

    /** A log without clock error: {@code own} says whether it carries velocities. */
    static AlignedLog log(
            String id, Role role, double[][] s, double rate_Hz, boolean own, long seed) {
        Random random = new Random(seed);
        Track.Builder b = new Track.Builder();
        for (double t_s = 0; t_s < END_S - 1; t_s += 1 / rate_Hz) {
            int i = (int) Math.round(t_s / STEP_S);
            Geodetic at =
                    FRAME.toGeodetic(
                            new Vec3(
                                    s[0][i] + 0.2 * random.nextGaussian(),
                                    s[1][i] + 0.2 * random.nextGaussian(),
                                    s[2][i] + 0.35 * random.nextGaussian()));
            b.row(t_s)
                    .set(Channel.LATITUDE, at.latitude_deg())
                    .set(Channel.LONGITUDE, at.longitude_deg())
                    .set(Channel.HEIGHT, at.height_m());
            if (own) {
                b.set(Channel.VELOCITY_EAST, s[3][i] + 0.1 * random.nextGaussian())
                        .set(Channel.VELOCITY_NORTH, s[4][i] + 0.1 * random.nextGaussian())
                        .set(Channel.VELOCITY_DOWN, -s[5][i] + 0.18 * random.nextGaussian());
            }
        }
        LogReport report = LogReport.whole(id, "csv");
        Track track = b.build(Optional.of(START), HeightDatum.ELLIPSOID, report);
        return aligned(id, role, track);
    }

    static AlignedLog aligned(String id, Role role, Track track) {
        LogRef ref = new LogRef(id, Path.of(id), Optional.empty(), ClockMark.NONE);
        Participant p =
                new Participant(
                        id,
                        role,
                        List.of(ref),
                        Map.of(),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty());
        ClockResult clock =
                new ClockResult(
                        id,
                        id,
                        ClockMap.IDENTITY,
                        0.02,
                        ClockDoubt.own(0.02),
                        ClockMethod.GNSS_TIME,
                        Optional.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of());
        HeightResult height =
                new HeightResult(
                        id, id, HeightDatum.ELLIPSOID, 0, Optional.empty(), 0.5, List.of());
        float[] column = new float[track.size()];
        for (int i = 0; i < column.length; i++) {
            column[i] = (float) track.value(Channel.HEIGHT, i);
        }
        return new AlignedLog(p, ref, track, new TimeAxis(START), clock, height, column);
    }
}
