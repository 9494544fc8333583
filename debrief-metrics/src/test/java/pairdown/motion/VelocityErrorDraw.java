package pairdown.motion;

import java.util.Arrays;
import java.util.Random;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/**
 * The velocity error of an efficient estimator, drawn: what is left of a log's velocity when all
 * the log can tell has been made use of. Its size is the smoother's own covariance, which {@code
 * ModelStudy} holds against the Cramér–Rao bound; its spectrum that of a fixed-interval smoother.
 *
 * <p>Of a signal of density S in noise of density N a smoother leaves S N / (S + N) (N. Wiener,
 * "Extrapolation, Interpolation, and Smoothing of Stationary Time Series", 1949). For motion of
 * white jerk q, with x = ω/ω_c: where velocities are measured, 1/(1 + x⁴) with variance q/(2√2
 * ω_c³); where positions alone are, x²/(1 + x⁶) with q/(6 ω_c³). So variance and q give the corner
 * ω_c.
 */
public final class VelocityErrorDraw {
    private static final int WAVES = 200;

    /** Spectra are cut where what lies beyond is under a thousandth. */
    private static final double HIGHEST = 8;

    private final SmoothedTrajectory trajectory;
    private final Axis[] axes = new Axis[Fixes.AXES];

    /**
     * @param of a smoothed log, or a reference point that one carries
     * @param span over which the motion is about as lively throughout
     */
    public VelocityErrorDraw(Trajectory of, Span span, Random random) {
        this.trajectory = of instanceof ReferencePoint p ? p.antenna() : (SmoothedTrajectory) of;
        double[] time_s = trajectory.fixes().time_s;
        int i = Arrays.binarySearch(time_s, (span.start_s() + span.end_s()) / 2);
        i = i >= 0 ? i : -i - 1;
        for (int axis = 0; axis < Fixes.AXES; axis++) {
            axes[axis] =
                    Axis.drawn(
                            Float.isFinite(trajectory.velocityVariance_m2ps2(axis, i)),
                            trajectory.jerk_m2ps5(axis, i),
                            trajectory.covariance(axis, time_s[i]).velocity_m2ps2(),
                            random);
        }
    }

    /** Error of the velocity at a time, east, north, up (m/s). */
    public Vec3 at(double t_s) {
        return new Vec3(along(0, t_s), along(1, t_s), along(2, t_s));
    }

    private double along(int axis, double t_s) {
        return axes[axis].at(t_s) * Math.sqrt(trajectory.covariance(axis, t_s).velocity_m2ps2());
    }

    /** A process of unit variance, as a sum of waves. */
    private static final class Axis {
        private final double[] height = new double[WAVES];
        private final double[] frequency_radps = new double[WAVES];
        private final double[] phase_rad = new double[WAVES];

        static Axis drawn(boolean velocities, double q, double variance, Random random) {
            double corner_radps = Math.cbrt(q / ((velocities ? 2 * Math.sqrt(2) : 6) * variance));
            Axis axis = new Axis();
            double sum = 0;
            for (int k = 0; k < WAVES; k++) {
                double x = HIGHEST * (k + random.nextDouble()) / WAVES;
                axis.frequency_radps[k] = x * corner_radps;
                axis.phase_rad[k] = 2 * Math.PI * random.nextDouble();
                axis.height[k] =
                        velocities ? 1 / (1 + Math.pow(x, 4)) : x * x / (1 + Math.pow(x, 6));
                sum += axis.height[k];
            }
            for (int k = 0; k < WAVES; k++) {
                axis.height[k] = Math.sqrt(2 * axis.height[k] / sum);
            }
            return axis;
        }

        double at(double t_s) {
            double value = 0;
            for (int k = 0; k < WAVES; k++) {
                value += height[k] * Math.cos(frequency_radps[k] * t_s + phase_rad[k]);
            }
            return value;
        }
    }
}
