package pairdown.phase;

import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import pairdown.track.EvenSeries;
import pairdown.units.Estimate;

/**
 * The instant at which a velocity leaves a straight line: a change-point fit.
 *
 * <p>Per axis the velocity (relative to the ship where one was logged) is b₀ + b₁t before the
 * instant te, with a(t − te) + ½j(t − te)² added after it. For a trial te the four coefficients are
 * linear; te is the trial with the least sum of squares over all axes, its sigma comes from the
 * curvature of that sum there.
 */
final class ExitInstant {
    /** Straight flight and the beginning of the fall (s). */
    private static final double BEFORE_S = 9;

    /** An exit lies at most this long before a fall that is well under way (s). */
    private static final double REACH_S = 5;

    /** … and at least this long (s). */
    private static final double LEAST_FALL_S = 0.3;

    /** Trials of the first look and of the last (s). */
    private static final double COARSE_STEP_S = 0.1;

    private static final double FINE_STEP_S = 0.02;

    /** What a hinge can't resolve below: a person takes this long to pass a door (s). */
    private static final double DOOR_S = 0.05;

    /** Receivers' velocity noise, so that an exact fit does not claim an exact instant (m/s). */
    private static final double LEAST_NOISE_MPS = 0.05;

    /** Velocity noise a sample, own and by difference (the latter per second of step). */
    private static final double NOISE_MPS = 0.2;

    private static final double POSITION_NOISE_M = 0.4;

    /** A body that leaves an aircraft falls at nearly 1 g, less drag and the first lift. */
    private static final double FALL_MPS2 = 8;

    private static final double FALL_SPREAD_MPS2 = 2;

    /** Drag from the ship's speed pulls back by some of this, in a direction not known here. */
    private static final double LEVEL_PULL_MPS2 = 6;

    private static final double JERK_SPREAD_MPS3 = 3;

    /** No opinion on the speed before (m/s, m/s²): it keeps the equations solvable. */
    private static final double BASELINE_SPREAD = 1000;

    /** What the model of the fall leaves, in steps of the log: guard, from our own runs. */
    private static final double BLUR_SHARE = 0.1;

    private static final int LEAST_SAMPLES = 8;

    private ExitInstant() {}

    /**
     * Looks for the exit before a fall that is well under way.
     *
     * @param falling_s when the flyer surely falls: the samples looked at end there
     * @return empty if there are too few samples
     */
    static Optional<Estimate> before(Motion flyer, Optional<Motion> ship, double falling_s) {
        Window window = new Window(falling_s - BEFORE_S, falling_s);
        double latest_s = falling_s - LEAST_FALL_S;
        double near_s = best_s(flyer, ship, window, falling_s - REACH_S, latest_s, COARSE_STEP_S);
        if (Double.isNaN(near_s)) {
            return Optional.empty();
        }
        double best_s =
                best_s(
                        flyer,
                        ship,
                        window,
                        near_s - COARSE_STEP_S,
                        Math.min(latest_s, near_s + COARSE_STEP_S),
                        FINE_STEP_S);
        return Double.isNaN(best_s)
                ? Optional.empty()
                : Optional.of(new Estimate(best_s, sigma_s(flyer, ship, window, best_s)));
    }

    /** The samples looked at: the same for every trial, so that sums of squares compare. */
    private record Window(double from_s, double to_s) {}

    private static double best_s(
            Motion flyer,
            Optional<Motion> ship,
            Window window,
            double from_s,
            double to_s,
            double step_s) {
        double best_s = Double.NaN;
        double least = Double.POSITIVE_INFINITY;
        for (double te = from_s; te <= to_s; te += step_s) {
            double cost = cost(flyer, ship, window, te).mean();
            if (cost < least) {
                least = cost;
                best_s = te;
            }
        }
        return best_s;
    }

    private static double sigma_s(Motion flyer, Optional<Motion> ship, Window window, double te) {
        Cost at = cost(flyer, ship, window, te);
        double h_s = Math.max(0.1, flyer.samples().step_s() / 2);
        double curvature =
                (cost(flyer, ship, window, te - h_s).sum()
                                + cost(flyer, ship, window, te + h_s).sum()
                                - 2 * at.sum())
                        / (h_s * h_s);
        double noise2 = Math.max(LEAST_NOISE_MPS * LEAST_NOISE_MPS, at.mean());
        double fit_s = curvature > 0 ? Math.sqrt(2 * noise2 / curvature) : REACH_S;
        double blur_s = BLUR_SHARE * flyer.samples().step_s();
        double hole_s = hole_s(flyer, te) / Math.sqrt(12);
        return Math.hypot(Math.hypot(Math.min(fit_s, REACH_S), DOOR_S), Math.hypot(blur_s, hole_s));
    }

    /** Length beyond the usual step of the hole in the samples that {@code te} falls in (s). */
    private static double hole_s(Motion flyer, double te) {
        Motion.Columns v = flyer.samples().vertical();
        for (int i = 1; i < v.size(); i++) {
            if (v.time_s(i) >= te) {
                double step_s = v.time_s(i) - v.time_s(i - 1);
                return Math.max(0, step_s - flyer.samples().step_s());
            }
        }
        return 0;
    }

    /**
     * What is known of a fall's first second before any sample is seen: acceleration and jerk with
     * their spreads. With a sample a second it is most of what there is.
     */
    private record Prior(double pull_mps2, double spread_mps2, double noise_mps) {
        /** Adds it to the normal equations; returns its own square. */
        double addTo(RealMatrix normal, RealVector right) {
            double steady = weight(BASELINE_SPREAD);
            double pull = weight(spread_mps2);
            normal.addToEntry(0, 0, steady);
            normal.addToEntry(1, 1, steady);
            normal.addToEntry(2, 2, pull);
            normal.addToEntry(3, 3, weight(JERK_SPREAD_MPS3));
            right.addToEntry(2, pull * pull_mps2);
            return pull * pull_mps2 * pull_mps2;
        }

        private double weight(double spread) {
            return noise_mps * noise_mps / (spread * spread);
        }
    }

    private static double noise_mps(Motion.Columns samples) {
        return samples.blur_s() > 0
                ? Math.max(NOISE_MPS, POSITION_NOISE_M / samples.blur_s())
                : NOISE_MPS;
    }

    /** Mean of max(0, x)ⁿ/n! over {@code blur_s} about {@code tau}; n is 1 or 2. */
    private static double hinge(double tau, double blur_s, int n) {
        if (blur_s == 0) {
            double x = Math.max(0, tau);
            return n == 1 ? x : x * x / 2;
        }
        double high = Math.max(0, tau + blur_s / 2);
        double low = Math.max(0, tau - blur_s / 2);
        return n == 1
                ? (high * high - low * low) / (2 * blur_s)
                : (high * high * high - low * low * low) / (6 * blur_s);
    }

    /** Sum of squared misfits and how many samples it is over. */
    private record Cost(double sum, int samples) {
        Cost plus(Cost o) {
            return new Cost(sum + o.sum, samples + o.samples);
        }

        double mean() {
            return samples == 0 ? Double.POSITIVE_INFINITY : sum / samples;
        }
    }

    private static Cost cost(Motion flyer, Optional<Motion> ship, Window window, double te) {
        Motion.Samples s = flyer.samples();
        Prior level = new Prior(0, LEVEL_PULL_MPS2, noise_mps(s.level()));
        Prior fall = new Prior(-FALL_MPS2, FALL_SPREAD_MPS2, noise_mps(s.vertical()));
        Cost east = axis(s.level(), true, ship.map(Motion::east), window, te, level);
        Cost north = axis(s.level(), false, ship.map(Motion::north), window, te, level);
        Cost up = axis(s.vertical(), true, ship.map(Motion::up), window, te, fall);
        return east.plus(north).plus(up);
    }

    private static Cost axis(
            Motion.Columns samples,
            boolean first,
            Optional<EvenSeries> ship,
            Window window,
            double te,
            Prior prior) {
        RealMatrix normal = new Array2DRowRealMatrix(4, 4);
        RealVector right = new ArrayRealVector(4);
        double sumSquares = 0;
        int count = 0;
        for (int i = from(samples, window.from_s); i < samples.size(); i++) {
            double tau = samples.time_s(i) - te;
            if (samples.time_s(i) > window.to_s) {
                break;
            }
            double own = first ? samples.first(i) : samples.second(i);
            double y = own - ship.map(e -> e.at(te + tau)).orElse(0.0);
            if (Double.isNaN(y)) {
                continue;
            }
            double past = hinge(tau, samples.blur_s(), 1);
            double[] row = {1, tau, past, hinge(tau, samples.blur_s(), 2)};
            for (int a = 0; a < 4; a++) {
                right.addToEntry(a, row[a] * y);
                for (int b = 0; b < 4; b++) {
                    normal.addToEntry(a, b, row[a] * row[b]);
                }
            }
            sumSquares += y * y;
            count++;
        }
        if (count < LEAST_SAMPLES) {
            return new Cost(0, 0);
        }
        sumSquares += prior.addTo(normal, right);
        RealVector c = new CholeskyDecomposition(normal).getSolver().solve(right);
        return new Cost(Math.max(0, sumSquares - c.dotProduct(right)), count);
    }

    private static int from(Motion.Columns samples, double t_s) {
        int low = 0;
        int high = samples.size();
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (samples.time_s(mid) < t_s) {
                low = mid + 1;
            } else {
                high = mid;
            }
        }
        return low;
    }
}
