package pairdown.clock;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.IntPredicate;
import pairdown.attempt.ClockMark;
import pairdown.attempt.LogRef;
import pairdown.attempt.Participant;
import pairdown.attempt.Role;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.LogReport;
import pairdown.track.Track;
import pairdown.vector.Vec3;

/**
 * A small made-up truth: a ship that climbs in turns, and one who leaves it, falls, flies and
 * opens. Point motion integrated at 20 Hz; good for clocks, no model of anything that flies.
 */
final class SyntheticRide {
    static final Instant START = Instant.parse("2031-05-14T15:00:00Z");
    static final LocalFrame FRAME = LocalFrame.at(Geodetic.ofDegrees(-21.6, 15.1, 400));
    static final double STEP_S = 0.05;

    final double[][] position = new double[3][];
    final double[][] velocity = new double[3][];
    final double[] heading_rad;
    final int size;

    private SyntheticRide(int size) {
        this.size = size;
        this.heading_rad = new double[size];
        for (int axis = 0; axis < 3; axis++) {
            position[axis] = new double[size];
            velocity[axis] = new double[size];
        }
    }

    /** A ship that stands 60 s, then climbs for the rest, turning where {@code turns} says so. */
    static SyntheticRide ship(long seed, double duration_s, IntPredicate turnsInSecond) {
        return ship(seed, duration_s, turnsInSecond, 0.7);
    }

    /** The same in gusts of another size. */
    static SyntheticRide ship(
            long seed, double duration_s, IntPredicate turnsInSecond, double gust_mps) {
        Random random = new Random(seed);
        SyntheticRide r = new SyntheticRide((int) (duration_s / STEP_S));
        double heading_rad = random.nextDouble() * 6;
        double turn_radps = 0;
        double wanted_radps = 0;
        double[] gust = new double[3];
        for (int i = 1; i < r.size; i++) {
            double t_s = i * STEP_S;
            if (i % (int) (25 / STEP_S) == 0) {
                wanted_radps =
                        Math.toRadians(4 + 5 * random.nextDouble())
                                * (random.nextBoolean() ? 1 : -1);
            }
            double wanted = turnsInSecond.test((int) t_s) ? wanted_radps : 0;
            turn_radps += (wanted - turn_radps) * STEP_S / 2;
            heading_rad += turn_radps * STEP_S;
            double share = Math.max(0, Math.min(1, (t_s - 60) / 20));
            for (int axis = 0; axis < 3; axis++) {
                gust[axis] +=
                        -gust[axis] * STEP_S / 8
                                + gust_mps * Math.sqrt(2 * STEP_S / 8) * random.nextGaussian();
            }
            double speed_mps = 52 * share;
            r.heading_rad[i] = heading_rad;
            r.velocity[0][i] = speed_mps * Math.sin(heading_rad) + share * (6 + gust[0]);
            r.velocity[1][i] = speed_mps * Math.cos(heading_rad) + share * (-3 + gust[1]);
            r.velocity[2][i] = share * (5 + gust[2]);
            r.integrate(i);
        }
        return r;
    }

    /**
     * An aircraft that circles one way in a wind from the west, climbing, and then flies straight.
     */
    static SyntheticRide circling(double duration_s, double straightFrom_s, double wind_mps) {
        return circling(duration_s, straightFrom_s, wind_mps, 0);
    }

    /** The same in a wind that goes round by so much for every metre it climbs. */
    static SyntheticRide circling(
            double duration_s, double straightFrom_s, double wind_mps, double veer_radpm) {
        SyntheticRide r = new SyntheticRide((int) (duration_s / STEP_S));
        for (int i = 1; i < r.size; i++) {
            double left_s = straightFrom_s - i * STEP_S;
            double turn_dps = 4 / (1 + Math.exp(-left_s));
            r.heading_rad[i] = r.heading_rad[i - 1] + Math.toRadians(turn_dps) * STEP_S;
            double toward_rad =
                    Math.PI / 2 + veer_radpm * (r.position[2][i - 1] - r.position[2][0]);
            r.velocity[0][i] = 50 * Math.sin(r.heading_rad[i]) + wind_mps * Math.sin(toward_rad);
            r.velocity[1][i] = 50 * Math.cos(r.heading_rad[i]) + wind_mps * Math.cos(toward_rad);
            r.velocity[2][i] = 4 + 2 * Math.sin(i * STEP_S / 17);
            r.integrate(i);
        }
        return r;
    }

    private void integrate(int i) {
        for (int axis = 0; axis < 3; axis++) {
            position[axis][i] =
                    position[axis][i - 1]
                            + (velocity[axis][i] + velocity[axis][i - 1]) / 2 * STEP_S;
        }
    }

    /** One who sits {@code seatAhead_m} ahead in this ship and leaves it at {@code exit_s}. */
    SyntheticRide passenger(double seatAhead_m, double exit_s, double opening_s) {
        SyntheticRide r = new SyntheticRide(size);
        for (int i = 0; i < size; i++) {
            double t_s = i * STEP_S;
            if (t_s < exit_s) {
                double[] seat = {
                    seatAhead_m * Math.sin(heading_rad[i]),
                    seatAhead_m * Math.cos(heading_rad[i]),
                    0
                };
                double turn_radps = i == 0 ? 0 : (heading_rad[i] - heading_rad[i - 1]) / STEP_S;
                r.velocity[0][i] = velocity[0][i] + turn_radps * seat[1];
                r.velocity[1][i] = velocity[1][i] - turn_radps * seat[0];
                r.velocity[2][i] = velocity[2][i];
                for (int axis = 0; axis < 3; axis++) {
                    r.position[axis][i] = position[axis][i] + seat[axis];
                }
            } else {
                r.fall(i, t_s < opening_s ? 38 : 12, t_s < opening_s ? 18 : 5, t_s >= opening_s);
            }
        }
        return r;
    }

    private void fall(int i, double level_mps, double sink_mps, boolean canopy) {
        double level = Math.hypot(velocity[0][i - 1], velocity[1][i - 1]);
        double most = (canopy ? 9.0 : 4.0) * STEP_S;
        double next = level + Math.max(-most, Math.min(most, level_mps - level));
        double up = velocity[2][i - 1];
        double fall = (canopy ? 9.0 : 8.0) * STEP_S;
        velocity[0][i] = velocity[0][i - 1] / level * next;
        velocity[1][i] = velocity[1][i - 1] / level * next;
        velocity[2][i] = up + Math.max(-fall, Math.min(fall, -sink_mps - up));
        heading_rad[i] = heading_rad[i - 1];
        integrate(i);
    }

    /** How a log is made. */
    record Logger(
            String format,
            double rate_Hz,
            double offset_s,
            boolean ownVelocity,
            boolean absolute,
            double undulation_m,
            HeightDatum datum,
            long seed) {
        static Logger csv(double rate_Hz, double offset_s, long seed) {
            return new Logger("csv", rate_Hz, offset_s, true, true, 0, HeightDatum.ELLIPSOID, seed);
        }

        Logger as(String other) {
            return new Logger(
                    other, rate_Hz, offset_s, ownVelocity, absolute, undulation_m, datum, seed);
        }

        Logger positionsOnly() {
            return new Logger(
                    format, rate_Hz, offset_s, false, absolute, undulation_m, datum, seed);
        }

        Logger relative() {
            return new Logger(
                    format, rate_Hz, offset_s, ownVelocity, false, undulation_m, datum, seed);
        }

        Logger heights(HeightDatum read, double geoid_m) {
            return new Logger(
                    format, rate_Hz, offset_s, ownVelocity, absolute, geoid_m, read, seed);
        }
    }

    /** How late each log's velocities are behind its positions (s). */
    static double velocityLag_s(long seed) {
        return 0.1 + 0.1 * Math.floorMod(seed, 3);
    }

    /** UTC = logged + offset: at truth time t the log writes t − offset. */
    Track log(Logger how) {
        Random random = new Random(how.seed());
        Track.Builder builder = new Track.Builder();
        double[] bias = {
            random.nextGaussian() * 0.8, random.nextGaussian() * 0.8, random.nextGaussian() * 1.35
        };
        double step_s = 1 / how.rate_Hz();
        double[] sd = {0.8, 0.8, 1.35};
        double phase_s = how.rate_Hz() > 1.5 ? random.nextDouble() * step_s : 0;
        for (double log_s = Math.ceil(-how.offset_s()) + phase_s;
                log_s + how.offset_s() < (size - 2) * STEP_S;
                log_s += step_s) {
            double t_s = log_s + how.offset_s();
            if (t_s < 0) {
                continue;
            }
            double keep = Math.exp(-step_s / 45);
            for (int axis = 0; axis < 3; axis++) {
                bias[axis] =
                        keep * bias[axis]
                                + sd[axis] * Math.sqrt(1 - keep * keep) * random.nextGaussian();
            }
            Geodetic at =
                    FRAME.toGeodetic(
                            new Vec3(
                                    at(position[0], t_s) + bias[0] + 0.2 * random.nextGaussian(),
                                    at(position[1], t_s) + bias[1] + 0.2 * random.nextGaussian(),
                                    at(position[2], t_s) + bias[2] + 0.35 * random.nextGaussian()));
            builder.row(log_s)
                    .set(Channel.LATITUDE, at.latitude_deg())
                    .set(Channel.LONGITUDE, at.longitude_deg())
                    .set(Channel.HEIGHT, at.height_m() - how.undulation_m());
            if (how.ownVelocity()) {
                t_s = Math.max(0, t_s - velocityLag_s(how.seed()));
                builder.set(
                                Channel.VELOCITY_EAST,
                                at(velocity[0], t_s) + 0.1 * random.nextGaussian())
                        .set(
                                Channel.VELOCITY_NORTH,
                                at(velocity[1], t_s) + 0.1 * random.nextGaussian())
                        .set(
                                Channel.VELOCITY_DOWN,
                                -at(velocity[2], t_s) + 0.18 * random.nextGaussian());
            }
        }
        Optional<Instant> epoch = how.absolute() ? Optional.of(START) : Optional.empty();
        return builder.build(
                epoch, how.datum(), LogReport.whole("log." + how.format(), how.format()));
    }

    /**
     * An aircraft recorder with its own zero: at truth time t it writes (t − zero)/(1 + rate).
     * Pressure height and airspeed lag, yaw rate and longitudinal load do not.
     */
    Track recorder(
            double rate_Hz, double zero_s, double rate, double lag_s, boolean prompt, long seed) {
        return recorder(rate_Hz, zero_s, rate, lag_s, prompt, -11, seed);
    }

    /** The same with a compass that is turned by so much. */
    Track recorder(
            double rate_Hz,
            double zero_s,
            double rate,
            double lag_s,
            boolean prompt,
            double compass_deg,
            long seed) {
        Random random = new Random(seed);
        Track.Builder builder = new Track.Builder();
        for (double tau = 0; zero_s + tau * (1 + rate) < (size - 4) * STEP_S; tau += 1 / rate_Hz) {
            double t_s = zero_s + tau * (1 + rate);
            double airEast_mps = at(velocity[0], t_s - 0.1) - 6;
            double airNorth_mps = at(velocity[1], t_s - 0.1) + 3;
            builder.row(tau)
                    .set(
                            Channel.PRESSURE_ALTITUDE,
                            0.97 * at(position[2], t_s - lag_s) + 300 + 0.5 * random.nextGaussian())
                    .set(
                            Channel.INDICATED_AIRSPEED,
                            Math.hypot(airEast_mps, airNorth_mps) * 0.9
                                    + 0.4 * random.nextGaussian());
            if (prompt) {
                double turn_dps =
                        Math.toDegrees(at(heading_rad, t_s + 0.05) - at(heading_rad, t_s - 0.05))
                                / 0.1;
                builder.set(Channel.YAW_RATE, 0.93 * turn_dps + 0.2 + 0.5 * random.nextGaussian())
                        .set(
                                Channel.HEADING,
                                ((Math.toDegrees(at(heading_rad, t_s))
                                                                + compass_deg
                                                                + random.nextGaussian())
                                                        % 360
                                                + 360)
                                        % 360);
            }
        }
        return builder.build(
                Optional.empty(), HeightDatum.UNKNOWN, LogReport.whole("systems.csv", "csv"));
    }

    /** A recorder of yaw rate and pressure height, which lags by half a second, without heading. */
    Track turnRecorder(double rate_Hz, double zero_s, long seed) {
        return turnRecorder(rate_Hz, zero_s, false, seed);
    }

    /** The same with a heading. */
    Track headingRecorder(double rate_Hz, double zero_s, long seed) {
        return turnRecorder(rate_Hz, zero_s, true, seed);
    }

    private Track turnRecorder(double rate_Hz, double zero_s, boolean heading, long seed) {
        Random random = new Random(seed);
        Track.Builder builder = new Track.Builder();
        for (double tau = 1; zero_s + tau < (size - 4) * STEP_S; tau += 1 / rate_Hz) {
            double t_s = zero_s + tau;
            double turn_radps = (at(heading_rad, t_s + 0.05) - at(heading_rad, t_s - 0.05)) / 0.1;
            builder.row(tau)
                    .set(
                            Channel.PRESSURE_ALTITUDE,
                            at(position[2], t_s - 0.5) + 0.5 * random.nextGaussian())
                    .set(
                            Channel.YAW_RATE,
                            Math.toDegrees(turn_radps) + 0.3 * random.nextGaussian());
            if (heading) {
                double heading_deg = Math.toDegrees(at(heading_rad, t_s)) % 360;
                builder.set(Channel.HEADING, heading_deg + 0.3 * random.nextGaussian());
            }
        }
        return builder.build(
                Optional.empty(), HeightDatum.UNKNOWN, LogReport.whole("systems.csv", "csv"));
    }

    static double at(double[] y, double t_s) {
        double x = t_s / STEP_S;
        int i = Math.max(0, Math.min(y.length - 2, (int) x));
        return y[i] + (x - i) * (y[i + 1] - y[i]);
    }

    static LoadedLog loaded(String id, Role role, Track track, ClockMark mark) {
        LogRef ref =
                new LogRef(id + "." + track.report().format(), Path.of(id), Optional.empty(), mark);
        Participant p =
                new Participant(
                        id,
                        role,
                        List.of(ref),
                        Map.of(),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty());
        return new LoadedLog(p, ref, track);
    }

    /** Another log of the same participant. */
    static LoadedLog second(LoadedLog first, Track track) {
        LogRef ref = new LogRef("systems.csv", Path.of("s"), Optional.empty(), ClockMark.NONE);
        return new LoadedLog(first.participant(), ref, track);
    }

    static LoadedLog loaded(String id, Role role, Track track) {
        return loaded(id, role, track, ClockMark.NONE);
    }
}
