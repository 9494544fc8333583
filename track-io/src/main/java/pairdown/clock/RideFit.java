package pairdown.clock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pairdown.time.Span;

/**
 * The lag between two logs at which they ride in one vehicle, by Gauss–Newton on the sum of squared
 * velocity differences, over the points where they do.
 *
 * <p>Which points those are is found along with the lag: the difference must stay small, while
 * moving, for the length of a ride. The sigma is that of least squares under correlated noise: the
 * gradient is summed over blocks longer than the noise remembers, and the spread of these sums
 * stands for it (cluster-robust "sandwich" variance, White 1980; Liang and Zeger 1986), so that
 * swinging seats and smoothing do not make it too small.
 *
 * <p>How sharply the sum rises with the lag is read from the product of both logs' slopes, whose
 * noises are not related: the square of one's slope rises with its noise alone, and a straight
 * climb would seem to tell the lag (errors in variables, with the other log as instrument; W. A.
 * Fuller, Measurement Error Models (1987), section 1.4).
 */
final class RideFit {
    /** Velocity differences allowed at first, while the lag is still off, then ever tighter. */
    private static final double[] LOOSE_MPS = {2.5, 1.8, 1.2, 0, 0, 0, 0, 0};

    /** Points may differ by this factor over what is allowed on average. */
    private static final double PEAK_FACTOR = 2;

    /** Factor on the receivers' noise in what is allowed. */
    private static final double NOISE_FACTOR = 3;

    /** A swing or a bad fix this short does not end a ride (s). */
    private static final double BRIDGE_S = 4;

    /** Longer than the noise remembers (s). */
    private static final double BLOCK_S = 20;

    /** Far enough for one step of the iteration (s). */
    private static final double MAX_STEP_S = 1;

    /** Farther from where it began a lag is another's (s). */
    private static final double FARTHEST_S = 3 * MAX_STEP_S;

    /** The picture of the residual: trial lags to each side, and their spacing. */
    private static final int CURVE_POINTS = 30;

    private static final double CURVE_STEP_S = 0.1;

    private final RideMotion a;
    private final RideMotion b;
    private final Rules rules;
    private final boolean useUp;
    private double lag_s;
    private boolean[] inside = {};

    private RideFit(RideMotion a, RideMotion b, double lag_s, Rules rules) {
        this.a = a;
        this.b = b;
        this.lag_s = lag_s;
        this.rules = rules;
        this.useUp = a.hasUp && b.hasUp;
    }

    /**
     * What passes as a ride.
     *
     * @param residual_mps root mean square velocity difference beyond noise
     * @param distance_m between the two, the middle of it
     * @param duration_s in all
     * @param maximumSink_mps of the vehicle
     */
    record Rules(
            double residual_mps,
            double distance_m,
            double duration_s,
            double minimumSpeed_mps,
            double maximumSink_mps) {
        Rules within(double other_m) {
            return new Rules(residual_mps, other_m, duration_s, minimumSpeed_mps, maximumSink_mps);
        }
    }

    /**
     * A ride found.
     *
     * @param lag_s to be added to b's time to fall in with a's
     * @param spans on b's time
     */
    record Ride(
            double lag_s,
            double sigma_s,
            double residual_mps,
            double speed_mps,
            double duration_s,
            List<Span> spans,
            RideFit fit) {
        /** Residual against lag over the points of the ride; made when asked for. */
        OffsetCurve curve() {
            return fit.curve();
        }
    }

    /** Refines a lag that is right to a quarter of a second or so; empty where there is no ride. */
    static Optional<Ride> near(RideMotion a, RideMotion b, double lag_s, Rules rules) {
        return new RideFit(a, b, lag_s, rules).refine();
    }

    private Optional<Ride> refine() {
        double from_s = lag_s;
        for (double loose_mps : LOOSE_MPS) {
            double allowed_mps =
                    Math.max(loose_mps, PEAK_FACTOR * rules.residual_mps) + noise_mps();
            inside = ride(together(allowed_mps));
            Sums s = sums();
            if (s.points == 0) {
                return Optional.empty();
            }
            if (Math.abs(lag_s - from_s) > FARTHEST_S) {
                return straight(from_s);
            }
            if (s.curvature > 0) {
                double step_s = s.gradient / s.curvature;
                lag_s += Math.max(-MAX_STEP_S, Math.min(MAX_STEP_S, step_s));
            }
        }
        Sums s = sums();
        return ride(s, s.sigma_s()).or(() -> straight(from_s));
    }

    /**
     * A lag that ran away was driven by noise if the two move together without it, as on a straight
     * climb: a ride all the same, whose lag is open.
     */
    private Optional<Ride> straight(double from_s) {
        lag_s = from_s;
        inside = ride(together(PEAK_FACTOR * rules.residual_mps + noise_mps()));
        Sums s = sums();
        return s.points == 0 ? Optional.empty() : ride(s, Math.max(FARTHEST_S, s.sigma_s()));
    }

    private Optional<Ride> ride(Sums s, double sigma_s) {
        double residual_mps = Math.sqrt(s.squares / s.points);
        boolean close = residual_mps <= rules.residual_mps + noise_mps() / 2;
        double distance_m = distance_m();
        if (!close || distance_m > rules.distance_m) {
            return Optional.empty();
        }
        return Optional.of(
                new Ride(
                        lag_s,
                        sigma_s,
                        residual_mps,
                        s.speed / s.points,
                        s.points * b.step_s,
                        spans(),
                        this));
    }

    private double noise_mps() {
        return NOISE_FACTOR * Math.hypot(a.noise_mps, b.noise_mps);
    }

    /** Where both move together within a velocity difference, at the present lag. */
    private boolean[] together(double allowed_mps) {
        Shift shift = new Shift(lag_s);
        boolean[] out = new boolean[b.size()];
        for (int k = shift.first; k < shift.last; k++) {
            double d2 = 0;
            double speed2 = 0;
            for (int axis = 0; axis < axes(); axis++) {
                double vb = b.velocity[axis][k];
                double d = vb - shift.value(a.velocity[axis], k);
                d2 += d * d;
                speed2 += vb * vb;
            }
            out[k] =
                    d2 <= allowed_mps * allowed_mps
                            && speed2 >= rules.minimumSpeed_mps * rules.minimumSpeed_mps
                            && !(useUp && -b.velocity[2][k] > rules.maximumSink_mps);
        }
        return out;
    }

    private int axes() {
        return useUp ? 3 : 2;
    }

    /** Keeps stretches that last; breaks are bridged in the counting but stay out. */
    private boolean[] ride(boolean[] together) {
        int bridge = (int) (BRIDGE_S / b.step_s);
        int least = (int) (rules.duration_s / b.step_s);
        boolean[] out = new boolean[together.length];
        int from = -1;
        int last = -1;
        for (int k = 0; k <= together.length; k++) {
            boolean ended = k == together.length || k - last > bridge + 1;
            if (from >= 0 && ended) {
                if (last - from + 1 >= least) {
                    System.arraycopy(together, from, out, from, last - from + 1);
                }
                from = -1;
            }
            if (k < together.length && together[k]) {
                from = from < 0 ? k : from;
                last = k;
            }
        }
        return out;
    }

    /** Sums over the points inside, at the present lag. */
    private final class Sums {
        int points;
        double squares;
        double gradient;
        double curvature;
        double speed;
        private double block;
        private double blockEnd_s = Double.NEGATIVE_INFINITY;
        private double blockSquares;
        private int blocks;

        /**
         * One standard deviation of the lag; the correction for few blocks is that of a sample
         * variance.
         */
        double sigma_s() {
            closeBlock();
            if (!(curvature > 0) || blocks < 2) {
                return Double.POSITIVE_INFINITY;
            }
            double correction = blocks / (blocks - 1.0);
            return Math.sqrt(blockSquares * correction) / curvature;
        }

        void add(int k, double pull) {
            if (b.time_s(k) >= blockEnd_s) {
                closeBlock();
                blockEnd_s = b.time_s(k) + BLOCK_S;
            }
            block += pull;
            gradient += pull;
        }

        private void closeBlock() {
            if (blockEnd_s > Double.NEGATIVE_INFINITY) {
                blockSquares += block * block;
                blocks++;
            }
            block = 0;
            blockEnd_s = Double.NEGATIVE_INFINITY;
        }
    }

    private Sums sums() {
        Shift shift = new Shift(lag_s);
        Sums s = new Sums();
        for (int k = shift.first; k < shift.last; k++) {
            if (!inside[k]) {
                continue;
            }
            double d2 = 0;
            double pull = 0;
            double curvature = 0;
            double speed2 = 0;
            for (int axis = 0; axis < axes(); axis++) {
                double vb = b.velocity[axis][k];
                double d = vb - shift.value(a.velocity[axis], k);
                double slopeA = shift.slope(a.velocity[axis], k);
                double slopeB = slope(b.velocity[axis], k);
                d2 += d * d;
                pull += (slopeA + slopeB) / 2 * d;
                curvature += slopeA * slopeB;
                speed2 += axis < 2 ? vb * vb : 0;
            }
            if (Double.isNaN(d2 + pull + curvature)) {
                continue;
            }
            s.points++;
            s.squares += d2;
            s.curvature += curvature;
            s.speed += Math.sqrt(speed2);
            s.add(k, pull);
        }
        return s;
    }

    private double slope(double[] y, int k) {
        return k < 1 || k + 1 >= y.length ? Double.NaN : (y[k + 1] - y[k - 1]) / (2 * b.step_s);
    }

    /** Level distance between the two, by the median of each component; 0 without positions. */
    private double distance_m() {
        Shift shift = new Shift(lag_s);
        double[] component_m = new double[2];
        for (int axis = 0; axis < 2; axis++) {
            double[] d = new double[b.size()];
            int n = 0;
            for (int k = shift.first; k < shift.last; k++) {
                double off_m =
                        inside[k]
                                ? b.position[axis][k] - shift.value(a.position[axis], k)
                                : Double.NaN;
                if (!Double.isNaN(off_m)) {
                    d[n++] = off_m;
                }
            }
            Arrays.sort(d, 0, n);
            component_m[axis] = n == 0 ? 0 : d[n / 2];
        }
        return Math.hypot(component_m[0], component_m[1]);
    }

    private List<Span> spans() {
        List<Span> out = new ArrayList<>();
        int bridge = (int) (BRIDGE_S / b.step_s);
        int from = -1;
        int last = -1;
        for (int k = 0; k < inside.length; k++) {
            if (!inside[k]) {
                continue;
            }
            if (from >= 0 && k - last > bridge + 1) {
                out.add(new Span(b.time_s(from), b.time_s(last)));
                from = -1;
            }
            from = from < 0 ? k : from;
            last = k;
        }
        if (from >= 0) {
            out.add(new Span(b.time_s(from), b.time_s(last)));
        }
        return out;
    }

    /** Residual against lag, over the points of the ride. */
    private OffsetCurve curve() {
        double found_s = lag_s;
        List<OffsetCurve.Point> points = new ArrayList<>();
        for (int i = -CURVE_POINTS; i <= CURVE_POINTS; i++) {
            double trial_s = found_s + i * CURVE_STEP_S;
            double rms_mps = rms_mps(trial_s);
            if (!Double.isNaN(rms_mps)) {
                points.add(new OffsetCurve.Point(trial_s, rms_mps));
            }
        }
        return new OffsetCurve(points);
    }

    private double rms_mps(double trial_s) {
        Shift shift = new Shift(trial_s);
        double sum = 0;
        int n = 0;
        for (int k = shift.first; k < shift.last; k++) {
            if (!inside[k]) {
                continue;
            }
            double d2 = 0;
            for (int axis = 0; axis < axes(); axis++) {
                double d = b.velocity[axis][k] - shift.value(a.velocity[axis], k);
                d2 += d * d;
            }
            if (!Double.isNaN(d2)) {
                sum += d2;
                n++;
            }
        }
        return Math.sqrt(sum / n);
    }

    /**
     * Log a read at b's points plus a lag. Both have the same spacing, so the place between a's
     * points is the same throughout and the cubic (Catmull–Rom) needs its weights once.
     */
    private final class Shift {
        final int first;
        final int last;
        private final int whole;
        private final double[] w;
        private final double[] dw;

        Shift(double lag_s) {
            double points = (b.start_s + lag_s - a.start_s) / b.step_s;
            double floor = Math.floor(points);
            double f = points - floor;
            boolean near = Math.abs(floor) < 1e9;
            this.whole = near ? (int) floor : 0;
            this.first = near ? Math.max(0, 1 - whole) : 0;
            this.last = near ? Math.min(b.size(), a.size() - 2 - whole) : 0;
            this.w =
                    new double[] {
                        ((-0.5 * f + 1) * f - 0.5) * f,
                        (1.5 * f - 2.5) * f * f + 1,
                        ((-1.5 * f + 2) * f + 0.5) * f,
                        (0.5 * f - 0.5) * f * f
                    };
            double h = b.step_s;
            this.dw =
                    new double[] {
                        ((-1.5 * f + 2) * f - 0.5) / h,
                        (4.5 * f - 5) * f / h,
                        ((-4.5 * f + 4) * f + 0.5) / h,
                        (1.5 * f - 1) * f / h
                    };
        }

        double value(double[] y, int k) {
            int i = k + whole;
            return w[0] * y[i - 1] + w[1] * y[i] + w[2] * y[i + 1] + w[3] * y[i + 2];
        }

        double slope(double[] y, int k) {
            int i = k + whole;
            return dw[0] * y[i - 1] + dw[1] * y[i] + dw[2] * y[i + 1] + dw[3] * y[i + 2];
        }
    }
}
