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
    /** Straight flight looked at before the exit (s). */
    private static final double BEFORE_S = 6;

    /** Fall looked at after the exit: longer, and it is no parabola any more (s). */
    private static final double AFTER_S = 2.5;

    private static final double TRIAL_STEP_S = 0.02;

    /** What a hinge can't resolve below: a person takes this long to pass a door (s). */
    private static final double DOOR_S = 0.05;

    /** Receivers' velocity noise, so that an exact fit does not claim an exact instant (m/s). */
    private static final double LEAST_NOISE_MPS = 0.05;

    private static final int LEAST_SAMPLES = 8;

    private ExitInstant() {}

    /**
     * Looks for the exit near {@code guess_s}.
     *
     * @param reach_s how far the exit may be from the guess, before or after
     * @return empty if there are too few samples
     */
    static Optional<Estimate> near(
            Motion flyer, Optional<Motion> ship, double guess_s, double reach_s) {
        double best_s = Double.NaN;
        double least = Double.POSITIVE_INFINITY;
        for (double te = guess_s - reach_s; te <= guess_s + reach_s; te += 5 * TRIAL_STEP_S) {
            double cost = cost(flyer, ship, te).mean();
            if (cost < least) {
                least = cost;
                best_s = te;
            }
        }
        if (Double.isNaN(best_s)) {
            return Optional.empty();
        }
        double centre_s = best_s;
        for (int k = -5; k <= 5; k++) {
            double te = centre_s + k * TRIAL_STEP_S;
            double cost = cost(flyer, ship, te).mean();
            if (cost < least) {
                least = cost;
                best_s = te;
            }
        }
        return Optional.of(new Estimate(best_s, sigma_s(flyer, ship, best_s)));
    }

    private static double sigma_s(Motion flyer, Optional<Motion> ship, double te) {
        Cost at = cost(flyer, ship, te);
        double h_s = Math.max(0.1, flyer.samples().step_s() / 2);
        double curvature =
                (cost(flyer, ship, te - h_s).mean()
                                + cost(flyer, ship, te + h_s).mean()
                                - 2 * at.mean())
                        * at.samples()
                        / (h_s * h_s);
        double noise2 = Math.max(LEAST_NOISE_MPS * LEAST_NOISE_MPS, at.mean());
        double fit_s = curvature > 0 ? Math.sqrt(2 * noise2 / curvature) : AFTER_S;
        double blur_s = flyer.samples().differenced() ? flyer.samples().step_s() / 2 : 0;
        double hole_s = hole_s(flyer, te) / Math.sqrt(12);
        return Math.hypot(Math.hypot(Math.min(fit_s, AFTER_S), DOOR_S), Math.hypot(blur_s, hole_s));
    }

    /** Length beyond the usual step of the hole in the samples that {@code te} falls in (s). */
    private static double hole_s(Motion flyer, double te) {
        Motion.EvenTimes v = flyer.samples().vertical();
        for (int i = 1; i < v.size(); i++) {
            if (v.time_s(i) >= te) {
                double step_s = v.time_s(i) - v.time_s(i - 1);
                return Math.max(0, step_s - flyer.samples().step_s());
            }
        }
        return 0;
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

    private static Cost cost(Motion flyer, Optional<Motion> ship, double te) {
        Motion.Samples s = flyer.samples();
        Cost east = axis(s.level(), true, ship.map(Motion::east), te);
        Cost north = axis(s.level(), false, ship.map(Motion::north), te);
        Cost up = axis(s.vertical(), true, ship.map(Motion::up), te);
        return east.plus(north).plus(up);
    }

    private static Cost axis(
            Motion.EvenTimes samples, boolean first, Optional<EvenSeries> ship, double te) {
        RealMatrix normal = new Array2DRowRealMatrix(4, 4);
        RealVector right = new ArrayRealVector(4);
        double sumSquares = 0;
        int count = 0;
        int after = 0;
        for (int i = from(samples, te - BEFORE_S); i < samples.size(); i++) {
            double tau = samples.time_s(i) - te;
            if (tau > AFTER_S) {
                break;
            }
            double own = first ? samples.first(i) : samples.second(i);
            double y = own - ship.map(e -> e.at(te + tau)).orElse(0.0);
            if (Double.isNaN(y)) {
                continue;
            }
            double past = Math.max(0, tau);
            double[] row = {1, tau, past, past * past / 2};
            for (int a = 0; a < 4; a++) {
                right.addToEntry(a, row[a] * y);
                for (int b = 0; b < 4; b++) {
                    normal.addToEntry(a, b, row[a] * row[b]);
                }
            }
            sumSquares += y * y;
            count++;
            after += past > 0 ? 1 : 0;
        }
        if (count < LEAST_SAMPLES || after < 2) {
            return new Cost(0, 0);
        }
        for (int a = 0; a < 4; a++) {
            normal.addToEntry(a, a, 1e-9 * (1 + normal.getEntry(a, a)));
        }
        RealVector c = new CholeskyDecomposition(normal).getSolver().solve(right);
        return new Cost(Math.max(0, sumSquares - c.dotProduct(right)), count);
    }

    private static int from(Motion.EvenTimes samples, double t_s) {
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
