package pairdown.tail;

import java.util.Optional;
import java.util.Random;

/**
 * The lag of one column behind another, by correlation coefficients over their overlap alone and a
 * parabola through the best three, with a test against circular shifts of the follower: is this
 * much correlation more than two slow columns show by chance?
 *
 * <p>Both columns are joined from the places of a mask, so that shifts stay inside the descents.
 */
final class CrossLag {
    /** Shorter joined columns have too few independent shifts. */
    private static final double LEAST_S = 30;

    private CrossLag() {}

    static Optional<LagEstimate> of(
            String leader,
            double[] lead,
            String follower,
            double[] follow,
            boolean[] mask,
            Grid grid,
            TailSettings.Review settings) {
        double[] x = joined(lead, mask);
        double[] y = joined(follow, mask);
        int reach = grid.steps(settings.lagSearch_s());
        if (x.length < grid.steps(LEAST_S) || x.length < 4 * reach) {
            return Optional.empty();
        }
        double[] r = correlations(x, y, 0, reach);
        int best = strongest(r);
        if (best < 0) {
            return Optional.empty();
        }
        double lag_s = (best - reach + vertex(r, best)) * grid.step_s();
        return Optional.of(
                new LagEstimate(
                        leader,
                        follower,
                        lag_s,
                        r[best],
                        probability(x, y, reach, Math.abs(r[best]), settings),
                        settings.lagShifts()));
    }

    private static double probability(
            double[] x, double[] y, int reach, double seen, TailSettings.Review settings) {
        Random random = new Random(settings.bootstrap().seed());
        int asStrong = 1;
        // Coarser lags are enough for the strength and keep the test quick.
        int coarse = Math.max(1, reach / 20);
        for (int k = 0; k < settings.lagShifts(); k++) {
            int shift = 2 * reach + random.nextInt(Math.max(1, x.length - 4 * reach));
            double strongest = 0;
            for (int lag = -reach; lag <= reach; lag += coarse) {
                double r = correlation(x, y, shift, lag);
                strongest = Double.isFinite(r) ? Math.max(strongest, Math.abs(r)) : strongest;
            }
            asStrong += strongest >= seen ? 1 : 0;
        }
        return asStrong / (settings.lagShifts() + 1.0);
    }

    private static double[] joined(double[] column, boolean[] mask) {
        double[] out = new double[Masks.count(mask)];
        int n = 0;
        for (int i = 0; i < mask.length; i++) {
            if (mask[i]) {
                out[n++] = column[i];
            }
        }
        return out;
    }

    private static double[] correlations(double[] x, double[] y, int shift, int reach) {
        double[] r = new double[2 * reach + 1];
        for (int lag = -reach; lag <= reach; lag++) {
            r[lag + reach] = correlation(x, y, shift, lag);
        }
        return r;
    }

    /** Of x[i] with y[i + lag], y turned round by {@code shift} first. */
    private static double correlation(double[] x, double[] y, int shift, int lag) {
        int n = x.length;
        double w = 0;
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double syy = 0;
        double sxy = 0;
        for (int i = Math.max(0, -lag); i < Math.min(n, n - lag); i++) {
            int j = i + lag + shift;
            double a = x[i];
            double b = y[j >= n ? j - n : j];
            double ab = a * b;
            if (!Double.isNaN(ab)) {
                w++;
                sx += a;
                sy += b;
                sxx += a * a;
                syy += b * b;
                sxy += ab;
            }
        }
        double vx = sxx - sx * sx / w;
        double vy = syy - sy * sy / w;
        return (sxy - sx * sy / w) / Math.sqrt(vx * vy);
    }

    private static int strongest(double[] r) {
        int best = -1;
        for (int i = 0; i < r.length; i++) {
            if (Double.isFinite(r[i]) && (best < 0 || Math.abs(r[i]) > Math.abs(r[best]))) {
                best = i;
            }
        }
        return best;
    }

    private static double vertex(double[] r, int best) {
        if (best == 0 || best == r.length - 1) {
            return 0;
        }
        double bend = r[best - 1] - 2 * r[best] + r[best + 1];
        double tilt = (r[best - 1] - r[best + 1]) / 2;
        double at = tilt / bend;
        return Math.abs(at) <= 1 ? at : 0;
    }
}
