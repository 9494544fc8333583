package pairdown.motion;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import pairdown.clock.ClockDoubt;
import pairdown.geodesy.LocalFrame;
import pairdown.height.AlignedLog;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/**
 * One log smoothed: the place of its receiver's antenna, with velocity, acceleration and covariance
 * at any instant, by exact interpolation of the motion model.
 *
 * <p>Three errors are kept apart. <em>Shape</em>: the track as the receiver draws it, centimetres.
 * <em>Bias</em>: how far that drawing is shifted, metres: the receiver's own slow bias, what all
 * receivers share, and the constant left in heights. <em>Clock</em>: {@link #clock} times the
 * velocity, not part of any sigma of {@link #at}.
 */
public final class SmoothedTrajectory implements Trajectory {
    private final AlignedLog log;
    private final LocalFrame frame;
    private final Fixes fixes;
    private final AxisTrack[] axes;
    private final float[] jerk_m2ps5;
    private final double[] fixTime_s;
    private final List<Span> gaps;
    private final List<RejectedFix> rejected;
    private final ClockDoubt clock;
    private final FittedNoise fitted;
    private final NoiseScale scale;
    private final Map<Integer, double[]> loosened;
    private final float[][] positionVariance;
    private final float[][] velocityVariance;

    SmoothedTrajectory(
            AlignedLog log,
            LocalFrame frame,
            Fixes fixes,
            ForwardPass pass,
            AxisTrack[] axes,
            List<RejectedFix> rejected,
            double gap_s,
            NoiseScale scale,
            FittedNoise fitted) {
        this.log = log;
        this.frame = frame;
        this.fixes = fixes;
        this.axes = axes.clone();
        this.jerk_m2ps5 = pass.jerk_m2ps5;
        this.loosened = Map.copyOf(pass.loosened);
        this.positionVariance = pass.positionVariance;
        this.velocityVariance = pass.velocityVariance;
        this.fixTime_s = acceptedTimes(fixes, pass);
        this.gaps = Gaps.between(fixTime_s, gap_s);
        this.rejected = List.copyOf(rejected);
        this.fitted = fitted;
        this.scale = scale;
        this.clock = ClockError.of(log);
    }

    private static double[] acceptedTimes(Fixes fixes, ForwardPass pass) {
        double[] times = new double[fixes.size()];
        int n = 0;
        for (int i = 0; i < times.length; i++) {
            if ((pass.accepted[i] & ForwardPass.POSITION) != 0) {
                times[n++] = fixes.time_s[i];
            }
        }
        return Arrays.copyOf(times, n);
    }

    @Override
    public double start_s() {
        return fixes.time_s[0];
    }

    @Override
    public double end_s() {
        return fixes.time_s[fixes.size() - 1];
    }

    @Override
    public State at(double t_s) {
        double[] values = new double[VALUES];
        read(t_s, values);
        AxisCovariance e = covariance(0, t_s);
        AxisCovariance n = covariance(1, t_s);
        AxisCovariance u = covariance(2, t_s);
        Vec3 absolute = absoluteExtra_m2();
        return new State(
                t_s,
                new Vec3(values[0], values[1], values[2]),
                new Vec3(values[3], values[4], values[5]),
                new Vec3(values[6], values[7], values[8]),
                root(e.position_m2(), n.position_m2(), u.position_m2(), absolute),
                root(e.shape_m2(), n.shape_m2(), u.shape_m2(), Vec3.ZERO),
                root(e.bias_m2(), n.bias_m2(), u.bias_m2(), absolute),
                root(e.velocity_m2ps2(), n.velocity_m2ps2(), u.velocity_m2ps2(), Vec3.ZERO),
                inGap(t_s));
    }

    private static Vec3 root(double e, double n, double u, Vec3 extra) {
        return new Vec3(
                Math.sqrt(e + extra.x()), Math.sqrt(n + extra.y()), Math.sqrt(u + extra.z()));
    }

    /**
     * Variances of what no smoothing can see: errors common to all receivers, heights' constant.
     */
    private Vec3 absoluteExtra_m2() {
        double level = fixes.noise.levelCommon_m() * fixes.noise.levelCommon_m();
        double vertical = fixes.noise.verticalCommon_m() * fixes.noise.verticalCommon_m();
        double constant = heightSigma_m();
        return new Vec3(level, level, vertical + constant * constant);
    }

    @Override
    public void read(double t_s, double[] into) {
        int i = epochAtOrBefore(t_s);
        double s = t_s - fixes.time_s[i];
        double step = step_s(i);
        for (int axis = 0; axis < Fixes.AXES; axis++) {
            axes[axis].mean(i, s, step, into, axis);
        }
    }

    /** The smoothed covariance of one axis (0 east, 1 north, 2 up), without what is constant. */
    AxisCovariance covariance(int axis, double t_s) {
        int i = epochAtOrBefore(t_s);
        double q = i + 1 < fixes.size() ? jerk_m2ps5(axis, i + 1) : 0;
        return axes[axis].covariance(i, t_s - fixes.time_s[i], step_s(i), q);
    }

    private int epochAtOrBefore(double t_s) {
        if (!covers(t_s)) {
            throw new IllegalArgumentException(
                    "time " + t_s + " s is outside " + start_s() + " to " + end_s());
        }
        int i = Arrays.binarySearch(fixes.time_s, t_s);
        return i >= 0 ? i : -i - 2;
    }

    private double step_s(int i) {
        return i + 1 < fixes.size() ? fixes.time_s[i + 1] - fixes.time_s[i] : 0;
    }

    @Override
    public List<Span> gaps() {
        return gaps;
    }

    @Override
    public int fixCount() {
        return fixTime_s.length;
    }

    @Override
    public double fixTime_s(int i) {
        return fixTime_s[i];
    }

    /** Length of the step between the accepted fixes on either side of an instant (s). */
    public double hole_s(double t_s) {
        int i = Arrays.binarySearch(fixTime_s, t_s);
        if (i >= 0) {
            return 0;
        }
        int after = -i - 1;
        if (after == 0 || after == fixTime_s.length) {
            return Double.POSITIVE_INFINITY;
        }
        return fixTime_s[after] - fixTime_s[after - 1];
    }

    /** Fixes refused by the outlier gate, in order. */
    public List<RejectedFix> rejected() {
        return rejected;
    }

    /** What is not known of this log's instants: times velocity, an error along the path. */
    ClockDoubt clock() {
        return clock;
    }

    /** One standard deviation of the constant left in this log's heights (m). */
    public double heightSigma_m() {
        return log.height().biasSigma_m();
    }

    /** What the measurement noise was found to be. */
    public FittedNoise fitted() {
        return fitted;
    }

    /** The log this was made from. */
    public AlignedLog log() {
        return log;
    }

    public LocalFrame frame() {
        return frame;
    }

    Fixes fixes() {
        return fixes;
    }

    /** Jerk density of one axis on the way to an epoch. */
    double jerk_m2ps5(int axis, int i) {
        return jerk_m2ps5[i] * scale.of(axis).jerk();
    }

    /** Variance by which a shift of the receiver let its bias go before an epoch; mostly 0. */
    double loosened_m2(int axis, int i) {
        double[] here = loosened.get(i);
        return here == null ? 0 : here[axis];
    }

    /** Variance used for a position, infinite where it was missing or refused. */
    float positionVariance_m2(int axis, int i) {
        return positionVariance[axis][i];
    }

    float velocityVariance_m2ps2(int axis, int i) {
        return velocityVariance[axis][i];
    }
}
