package pairdown.motion;

import java.util.HashMap;
import java.util.Map;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * One pass of the three axes' filters over a log, in step, so that a fix is accepted or refused as
 * a whole. Arrays are made once and used by every pass; nothing is allocated per fix.
 */
final class ForwardPass {
    static final byte POSITION = 1;
    static final byte VELOCITY = 2;

    static final double START_SIGMA_M = 1000;
    static final double START_SIGMA_MPS = 100;
    static final double START_SIGMA_MPS2 = 20;
    private static final int LEAST_REFUSALS = 3;

    /** Stands for a size where the fixes after it, not those before, refused a fix. */
    static final float STRANGER = -1;

    /** An expected position no better than this can't tell outliers from sound fixes. */
    private static final double LOST_SIGMA_M = 4;

    /** A velocity no better than this has not been measured yet. */
    private static final double UNKNOWN_MPS = 50;

    private final Fixes fixes;
    private final SmootherSettings settings;
    private final Followers followers;
    private final double[] gate = new double[Fixes.AXES + 1];
    private final AxisFilter[] filter = new AxisFilter[Fixes.AXES];
    private final InnovationSum[] sums = new InnovationSum[4];
    private final double[] innovation = new double[Fixes.AXES];
    private final double[] expected = new double[Fixes.AXES];

    final float[] jerk_m2ps5;
    final double[][] saved = new double[Fixes.AXES][];
    final byte[] accepted;

    /** Effective variances, as used; infinite where a measurement is missing or refused. */
    final float[][] positionVariance = new float[Fixes.AXES][];

    final float[][] velocityVariance = new float[Fixes.AXES][];

    /** Size of a refused innovation in sigmas, or {@link #STRANGER}; 0 for one not refused. */
    final float[] refusedBy;

    /** Variance added to the bias before an epoch's measurements, by epoch and axis. */
    final Map<Integer, double[]> loosened = new HashMap<>();

    private double lastPosition_s;
    private double gapEnd_s;
    private int refusals;
    private double firstRefused_s;
    private int velocityRefusals;
    private double firstVelocityRefused_s;

    ForwardPass(Fixes fixes, SmootherSettings settings, JerkProfile jerk) {
        this.fixes = fixes;
        this.followers = new Followers(fixes);
        this.settings = settings;
        int n = fixes.size();
        for (int d = 1; d <= Fixes.AXES; d++) {
            gate[d] =
                    new ChiSquaredDistribution(d)
                            .inverseCumulativeProbability(settings.gateProbability());
        }
        for (int axis = 0; axis < Fixes.AXES; axis++) {
            filter[axis] =
                    new AxisFilter(fixes.noise.bias_m(axis), fixes.noise.biasTime_s(), fixes.lag_s);
            saved[axis] = new double[n * AxisFilter.SAVED];
            positionVariance[axis] = new float[n];
            velocityVariance[axis] = new float[n];
        }
        for (int i = 0; i < sums.length; i++) {
            sums[i] = new InnovationSum();
        }
        accepted = new byte[n];
        refusedBy = new float[n];
        jerk_m2ps5 = new float[n];
        for (int i = 1; i < n; i++) {
            jerk_m2ps5[i] = (float) jerk.mean(fixes.time_s[i - 1], fixes.time_s[i]);
        }
    }

    /** Filters the whole log with variances and densities times {@code scale}. */
    void run(NoiseScale scale) {
        for (InnovationSum sum : sums) {
            sum.clear();
        }
        loosened.clear();
        start();
        for (int i = 0; i < fixes.size(); i++) {
            double dt = i == 0 ? 0 : fixes.time_s[i] - fixes.time_s[i - 1];
            accepted[i] = 0;
            refusedBy[i] = 0;
            for (int axis = 0; axis < Fixes.AXES; axis++) {
                filter[axis].predict(dt, jerk_m2ps5[i] * scale.of(axis).jerk());
            }
            position(i, scale);
            velocity(i, scale);
            for (int axis = 0; axis < Fixes.AXES; axis++) {
                filter[axis].save(saved[axis], i * AxisFilter.SAVED);
            }
        }
    }

    private void start() {
        for (int axis = 0; axis < Fixes.AXES; axis++) {
            double v0 = firstFinite(fixes.velocity_mps[axis]);
            filter[axis].start(
                    firstFinite(fixes.position_m[axis]),
                    START_SIGMA_M,
                    Double.isNaN(v0) ? 0 : v0,
                    START_SIGMA_MPS,
                    START_SIGMA_MPS2);
        }
        lastPosition_s = fixes.time_s[0];
        gapEnd_s = Double.NEGATIVE_INFINITY;
        refusals = 0;
        velocityRefusals = 0;
    }

    private static double firstFinite(double[] values) {
        for (double value : values) {
            if (!Double.isNaN(value)) {
                return value;
            }
        }
        return Double.NaN;
    }

    private void position(int i, NoiseScale scale) {
        double nis = 0;
        int dimensions = 0;
        double extra = reacquireVariance(i);
        for (int axis = 0; axis < Fixes.AXES; axis++) {
            double z = fixes.position_m[axis][i];
            positionVariance[axis][i] = Float.POSITIVE_INFINITY;
            if (!Double.isNaN(z)) {
                float r =
                        (float)
                                (fixes.positionVariance_m2[axis][i] * scale.of(axis).position()
                                        + extra);
                positionVariance[axis][i] = r;
                innovation[axis] = filter[axis].positionInnovation(z);
                expected[axis] = filter[axis].positionVariance() + r;
                double nu2 = innovation[axis] * innovation[axis];
                sums[axis == 2 ? 1 : 0].add(nu2, expected[axis]);
                nis += nu2 / expected[axis];
                dimensions++;
            }
        }
        if (dimensions == 0) {
            return;
        }
        if (isStranger(i)) {
            refusedBy[i] = STRANGER;
            ignorePosition(i);
            return;
        }
        if (nis > gate[dimensions] && !relocks(i)) {
            refusePosition(i, nis);
            return;
        }
        acceptPosition(i);
    }

    private void refusePosition(int i, double nis) {
        if (refusals++ == 0) {
            firstRefused_s = fixes.time_s[i];
        }
        refusedBy[i] = (float) Math.sqrt(nis);
        ignorePosition(i);
    }

    private void ignorePosition(int i) {
        for (int axis = 0; axis < Fixes.AXES; axis++) {
            positionVariance[axis][i] = Float.POSITIVE_INFINITY;
        }
    }

    /**
     * At the start and after a hole the gate is too wide to tell an outlier; its followers can. A
     * first fix taken wrongly would be held against all others.
     */
    private boolean isStranger(int i) {
        if (Math.sqrt(filter[0].vv) >= UNKNOWN_MPS) {
            return !followers.agree(i);
        }
        boolean lost =
                Math.sqrt(expected[0]) > LOST_SIGMA_M && Math.sqrt(expected[1]) > LOST_SIGMA_M;
        return lost && !followers.agree(i, filter[0].v, filter[1].v);
    }

    /**
     * Whether fixes were refused for so long that the receiver itself must have shifted; its bias
     * is then let go, by as much as it is off.
     */
    private boolean relocks(int i) {
        boolean shifted =
                refusals >= LEAST_REFUSALS
                        && fixes.time_s[i] - firstRefused_s >= settings.relock_s();
        if (shifted) {
            for (int axis = 0; axis < Fixes.AXES; axis++) {
                if (!Double.isNaN(fixes.position_m[axis][i])) {
                    loosen(i, axis);
                }
            }
        }
        return shifted;
    }

    private void loosen(int i, int axis) {
        double nu2 = innovation[axis] * innovation[axis];
        filter[axis].loosenBias(nu2);
        loosened.computeIfAbsent(i, k -> new double[Fixes.AXES])[axis] = nu2;
    }

    private void acceptPosition(int i) {
        refusals = 0;
        accepted[i] |= POSITION;
        lastPosition_s = fixes.time_s[i];
        for (int axis = 0; axis < Fixes.AXES; axis++) {
            float r = positionVariance[axis][i];
            if (r < Float.POSITIVE_INFINITY) {
                filter[axis].updatePosition(fixes.position_m[axis][i], r);
            }
        }
    }

    /**
     * Extra variance of a position soon after a gap, while the receiver settles. The error is slow,
     * so where velocities carry the shape it is spread over the fixes of its own time constant:
     * many fixes may not average it away.
     */
    private double reacquireVariance(int i) {
        double t_s = fixes.time_s[i];
        if (fixes.hasPosition(i) && t_s - lastPosition_s > settings.gap_s()) {
            gapEnd_s = t_s;
        }
        double since = (t_s - gapEnd_s) / settings.reacquireTime_s();
        if (!(since < 5)) {
            return 0;
        }
        double sigma_m = settings.reacquire_m() * Math.exp(-since);
        double dt = i == 0 ? 1 : Math.max(1e-3, t_s - fixes.time_s[i - 1]);
        double fixesWithin = Math.max(1, 2 * settings.reacquireTime_s() / dt);
        return sigma_m * sigma_m * (fixes.hasVelocity(i) ? fixesWithin : 1);
    }

    private void velocity(int i, NoiseScale scale) {
        double nis = 0;
        int dimensions = 0;
        for (int axis = 0; axis < Fixes.AXES; axis++) {
            double z = fixes.velocity_mps[axis][i];
            velocityVariance[axis][i] = Float.POSITIVE_INFINITY;
            if (!Double.isNaN(z)) {
                float r =
                        (float) (fixes.velocityVariance_m2ps2[axis][i] * scale.of(axis).velocity());
                velocityVariance[axis][i] = r;
                innovation[axis] = filter[axis].velocityInnovation(z);
                expected[axis] = filter[axis].velocityVariance() + r;
                double nu2 = innovation[axis] * innovation[axis];
                sums[axis == 2 ? 3 : 2].add(nu2, expected[axis]);
                nis += nu2 / expected[axis];
                dimensions++;
            }
        }
        if (dimensions == 0) {
            return;
        }
        if (nis > gate[dimensions] && !velocityIsBelieved(i)) {
            for (int axis = 0; axis < Fixes.AXES; axis++) {
                velocityVariance[axis][i] = Float.POSITIVE_INFINITY;
            }
            return;
        }
        acceptVelocity(i);
    }

    /** Velocities refused for long are no outliers: the motion outran the model. */
    private boolean velocityIsBelieved(int i) {
        if (velocityRefusals++ == 0) {
            firstVelocityRefused_s = fixes.time_s[i];
        }
        return velocityRefusals > LEAST_REFUSALS
                && fixes.time_s[i] - firstVelocityRefused_s >= settings.relock_s();
    }

    private void acceptVelocity(int i) {
        velocityRefusals = 0;
        accepted[i] |= VELOCITY;
        for (int axis = 0; axis < Fixes.AXES; axis++) {
            float r = velocityVariance[axis][i];
            if (r < Float.POSITIVE_INFINITY) {
                filter[axis].updateVelocity(fixes.velocity_mps[axis][i], r);
            }
        }
    }

    /** Log-likelihood of the last pass' innovations: 0 level, 1 vertical. */
    double logLikelihood(int direction) {
        return sums[direction].logLikelihood() + sums[direction + 2].logLikelihood();
    }

    /** Mean of ν²/S over level and vertical positions and velocities, in that order. */
    double[] meanNormalisedInnovations() {
        double[] means = new double[sums.length];
        for (int i = 0; i < means.length; i++) {
            means[i] = sums[i].meanNormalised();
        }
        return means;
    }

    /** Half of the steps between epochs are no longer than this. */
    double medianStep_s() {
        double[] steps = new double[fixes.size() - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = fixes.time_s[i + 1] - fixes.time_s[i];
        }
        return ReceiverGrade.median(steps);
    }
}
