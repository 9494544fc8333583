package pairdown.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.Trajectory;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * Ground velocity beside logged airspeed and heading, at two-second steps: what remains is the
 * wind. Left out while the propeller is in reverse (the airspeed is then uncalibrated) and in steep
 * descent.
 *
 * @param samples height, ground velocity east and north, air velocity east and north
 */
record HeadingRun(List<double[]> samples) {
    private static final double STEP_S = 2;
    private static final double SLOWEST_MPS = 15;
    private static final double STEEPEST_MPS = 10;
    private static final int LEAST_SAMPLES = 15;

    static Optional<HeadingRun> of(WindSource source, LocalFrame frame, DayAir air) {
        Series speed = source.systems().get(Channel.INDICATED_AIRSPEED);
        Series heading = source.systems().get(Channel.HEADING);
        if (speed == null || heading == null) {
            return Optional.empty();
        }
        List<double[]> samples = new ArrayList<>();
        Trajectory trajectory = source.trajectory();
        double[] values = new double[Trajectory.VALUES];
        for (double t_s = trajectory.start_s(); t_s <= trajectory.end_s(); t_s += STEP_S) {
            double indicated_mps = speed.at(t_s);
            double heading_rad = Math.toRadians(heading.at(t_s));
            trajectory.read(t_s, values);
            boolean steady =
                    indicated_mps > SLOWEST_MPS
                            && Math.abs(values[5]) < STEEPEST_MPS
                            && !Double.isNaN(heading_rad)
                            && !trajectory.inGap(t_s)
                            && !Reverse.at(source.systems(), t_s);
            if (steady) {
                double height_m = Heights.ellipsoid_m(frame, values);
                double level_mps = level(air.true_mps(indicated_mps, height_m), values[5]);
                samples.add(
                        new double[] {
                            height_m,
                            values[3],
                            values[4],
                            level_mps * Math.sin(heading_rad),
                            level_mps * Math.cos(heading_rad)
                        });
            }
        }
        return samples.size() < LEAST_SAMPLES
                ? Optional.empty()
                : Optional.of(new HeadingRun(samples));
    }

    private static double level(double true_mps, double up_mps) {
        return Math.sqrt(Math.max(0, true_mps * true_mps - up_mps * up_mps));
    }
}
