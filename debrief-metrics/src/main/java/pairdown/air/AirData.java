package pairdown.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.Trajectory;
import pairdown.track.Channel;
import pairdown.track.Series;
import pairdown.vector.Vec3;

/**
 * A participant's airspeeds over time.
 *
 * @param trueAirspeed_mps empty where neither wind nor a logged airspeed is known
 * @param calibratedAirspeed_mps likewise
 * @param sigma_mps of the calibrated airspeed, one standard deviation; empty where they are
 * @param notes where they come from and what to think of them, in words
 */
public record AirData(
        Optional<Series> trueAirspeed_mps,
        Optional<Series> calibratedAirspeed_mps,
        Optional<Series> sigma_mps,
        List<String> notes) {
    private static final double STEP_S = 0.2;

    /** Share of a logged airspeed that its uncorrected source may be off by. */
    private static final double LOGGED_SHARE = 0.04;

    public AirData {
        notes = List.copyOf(notes);
    }

    /**
     * From the motion and the wind; else from the logged airspeed, which is then taken as
     * calibrated.
     */
    public static AirData of(
            Trajectory trajectory,
            Map<Channel, Series> systems,
            Wind wind,
            DayAir air,
            LocalFrame frame) {
        if (wind.isKnown()) {
            return fromMotion(trajectory, wind, air, frame);
        }
        Series logged = systems.get(Channel.INDICATED_AIRSPEED);
        if (logged == null) {
            return new AirData(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of("no airspeed: neither wind nor a logged airspeed is known"));
        }
        return fromLog(trajectory, logged, systems, air, frame);
    }

    private static AirData fromMotion(
            Trajectory trajectory, Wind wind, DayAir air, LocalFrame frame) {
        Columns c = new Columns();
        double[] values = new double[Trajectory.VALUES];
        for (double t_s = trajectory.start_s(); t_s <= trajectory.end_s(); t_s += STEP_S) {
            if (!trajectory.inGap(t_s)) {
                trajectory.read(t_s, values);
                double height_m = Heights.ellipsoid_m(frame, values);
                Vec3 w = wind.at(height_m).orElseThrow();
                double true_mps = new Vec3(values[3], values[4], values[5]).minus(w).norm();
                c.add(
                        t_s,
                        true_mps,
                        air.calibrated_mps(true_mps, height_m),
                        wind.sigma_mps(height_m) * air.calibrated_mps(1, height_m));
            }
        }
        return c.toAirData(List.of());
    }

    private static AirData fromLog(
            Trajectory trajectory,
            Series logged,
            Map<Channel, Series> systems,
            DayAir air,
            LocalFrame frame) {
        Columns c = new Columns();
        double[] values = new double[Trajectory.VALUES];
        boolean reversed = false;
        DoubleUnaryOperator speed = logged::at;
        for (double t_s = trajectory.start_s(); t_s <= trajectory.end_s(); t_s += STEP_S) {
            double calibrated_mps = speed.applyAsDouble(t_s);
            if (!Double.isNaN(calibrated_mps)) {
                trajectory.read(t_s, values);
                reversed |= Reverse.at(systems, t_s);
                c.add(
                        t_s,
                        air.true_mps(calibrated_mps, Heights.ellipsoid_m(frame, values)),
                        calibrated_mps,
                        Math.max(1, LOGGED_SHARE * calibrated_mps));
            }
        }
        List<String> notes = new ArrayList<>();
        notes.add("airspeed is the logged one, taken as calibrated: no wind is known");
        if (reversed) {
            notes.add("airspeed is uncalibrated while the propeller is in reverse");
        }
        return c.toAirData(notes);
    }

    /** Columns while they grow. */
    private static final class Columns {
        private final List<double[]> rows = new ArrayList<>();

        void add(double t_s, double true_mps, double calibrated_mps, double sigma_mps) {
            rows.add(new double[] {t_s, true_mps, calibrated_mps, sigma_mps});
        }

        AirData toAirData(List<String> notes) {
            return new AirData(
                    Optional.of(series(1)), Optional.of(series(2)), Optional.of(series(3)), notes);
        }

        private Series series(int column) {
            double[] time_s = rows.stream().mapToDouble(r -> r[0]).toArray();
            float[] value = new float[time_s.length];
            for (int i = 0; i < value.length; i++) {
                value[i] = (float) rows.get(i)[column];
            }
            return Series.of(time_s, value, false);
        }
    }
}
