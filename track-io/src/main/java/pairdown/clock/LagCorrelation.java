package pairdown.clock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/**
 * Correlation of two velocities at every lag at once, by the fast Fourier transform.
 *
 * <p>At each lag it is Pearson's coefficient over the overlap alone, the three components pooled:
 * Σ(a − ā)·(b − b̄) / √(Σ|a − ā|² Σ|b − b̄|²), each sum and mean taken where both have data. Plain
 * products, which favour long overlaps, put the peak in the wrong place. Every sum is itself a
 * correlation of the signals, their squares and their masks.
 */
final class LagCorrelation {
    /** Overlaps that hold less of the motion than this share of either log prove nothing. */
    private static final double LEAST_ENERGY = 0.05;

    private LagCorrelation() {}

    /**
     * A promising lag.
     *
     * @param shift points: b's point k goes with a's point k + shift
     * @param overlap points that both have at this lag
     */
    record Peak(int shift, double correlation, int overlap) {
        /**
         * How much likelier the overlap is with the two related than without, as twice the log of
         * the ratio of likelihoods of a Gaussian regression: a short overlap correlates by chance,
         * a long one does not.
         */
        double evidence() {
            double unexplained = Math.max(1e-12, 1 - correlation * correlation);
            return -overlap * Math.log(unexplained);
        }
    }

    /**
     * The peaks with the most evidence, best first.
     *
     * @param a components by point, NaN where there is none
     * @param minimumOverlap points
     * @param apart points between two peaks
     */
    static List<Peak> peaks(
            double[][] a, double[][] b, int minimumOverlap, int apart, int most, double least) {
        double[][] pooled = pooled(a, b, minimumOverlap);
        double[] r = pooled[0];
        int na = a[0].length;
        int nb = b[0].length;
        List<Peak> all = new ArrayList<>();
        for (int shift = -nb + 1; shift < na; shift++) {
            double here = at(r, shift);
            if (here >= least && here >= at(r, shift - 1) && here > at(r, shift + 1)) {
                all.add(new Peak(shift, here, (int) Math.round(at(pooled[1], shift))));
            }
        }
        all.sort(Comparator.comparingDouble(Peak::evidence).reversed());
        List<Peak> out = new ArrayList<>();
        for (Peak p : all) {
            if (out.size() < most
                    && out.stream().noneMatch(q -> Math.abs(q.shift - p.shift) < apart)) {
                out.add(p);
            }
        }
        return out;
    }

    private static double at(double[] r, int shift) {
        return r[Math.floorMod(shift, r.length)];
    }

    /** By shift, negative ones wrapped round to the end; −1 where the overlap is too little. */
    static double[] correlations(double[][] a, double[][] b, int minimumOverlap) {
        return pooled(a, b, minimumOverlap)[0];
    }

    /** Correlations, and the points they are over. */
    private static double[][] pooled(double[][] a, double[][] b, int minimumOverlap) {
        int n = Math.max(2, Integer.highestOneBit(2 * (a[0].length + b[0].length) - 1));
        Signal sa = new Signal(a, n);
        Signal sb = new Signal(b, n);
        double[][] dot = inverse(product(sa.level, sb.level, sa.up, sb.up));
        double[][] count = inverse(product(sa.mask, sb.mask));
        double[][] squaresA = inverse(product(sa.squares, sb.mask));
        double[][] squaresB = inverse(product(sa.mask, sb.squares));
        double[][] levelA = inverse(product(sa.level, sb.mask));
        double[][] levelB = inverse(product(sa.mask, sb.level));
        double[][] upA = inverse(product(sa.up, sb.mask));
        double[][] upB = inverse(product(sa.mask, sb.up));
        double[] out = new double[n];
        double floor = LEAST_ENERGY * LEAST_ENERGY * sa.energy * sb.energy;
        for (int i = 0; i < n; i++) {
            double m = count[0][i];
            if (m < minimumOverlap - 0.5) {
                out[i] = -1;
                continue;
            }
            // The correlation with a complex signal on the right comes out conjugated.
            double means =
                    levelA[0][i] * levelB[0][i]
                            - levelA[1][i] * levelB[1][i]
                            + upA[0][i] * upB[0][i];
            double cov = dot[0][i] - means / m;
            double varA = squaresA[0][i] - (square(levelA, i) + upA[0][i] * upA[0][i]) / m;
            double varB = squaresB[0][i] - (square(levelB, i) + upB[0][i] * upB[0][i]) / m;
            out[i] = varA * varB > floor ? cov / Math.sqrt(varA * varB) : -1;
        }
        return new double[][] {out, count[0]};
    }

    private static double square(double[][] c, int i) {
        return c[0][i] * c[0][i] + c[1][i] * c[1][i];
    }

    /** The transforms of one log's level velocity (east + i·north), vertical, square and mask. */
    private static final class Signal {
        final double[][] level;
        final double[][] up;
        final double[][] squares;
        final double[][] mask;
        final double energy;

        Signal(double[][] v, int n) {
            level = new double[2][n];
            up = new double[2][n];
            squares = new double[2][n];
            mask = new double[2][n];
            double[] mean = new double[3];
            int count = 0;
            for (int k = 0; k < v[0].length; k++) {
                if (!Double.isNaN(v[0][k] + v[1][k] + v[2][k])) {
                    count++;
                    for (int axis = 0; axis < 3; axis++) {
                        mean[axis] += (v[axis][k] - mean[axis]) / count;
                    }
                }
            }
            double sum = 0;
            for (int k = 0; k < v[0].length; k++) {
                if (Double.isNaN(v[0][k] + v[1][k] + v[2][k])) {
                    continue;
                }
                double e = v[0][k] - mean[0];
                double nn = v[1][k] - mean[1];
                double u = v[2][k] - mean[2];
                level[0][k] = e;
                level[1][k] = nn;
                up[0][k] = u;
                squares[0][k] = e * e + nn * nn + u * u;
                mask[0][k] = 1;
                sum += squares[0][k];
            }
            energy = sum;
            for (double[][] s : List.of(level, up, squares, mask)) {
                transform(s, TransformType.FORWARD);
            }
        }
    }

    private static void transform(double[][] s, TransformType type) {
        FastFourierTransformer.transformInPlace(s, DftNormalization.STANDARD, type);
    }

    private static double[][] inverse(double[][] s) {
        transform(s, TransformType.INVERSE);
        return s;
    }

    /** Transform of Σₖ x(k + shift)·conj(y(k)): X·conj(Y). */
    private static double[][] product(double[][] x, double[][] y) {
        int n = x[0].length;
        double[][] out = new double[2][n];
        for (int i = 0; i < n; i++) {
            out[0][i] = x[0][i] * y[0][i] + x[1][i] * y[1][i];
            out[1][i] = x[1][i] * y[0][i] - x[0][i] * y[1][i];
        }
        return out;
    }

    private static double[][] product(double[][] x, double[][] y, double[][] x2, double[][] y2) {
        double[][] out = product(x, y);
        double[][] more = product(x2, y2);
        for (int i = 0; i < out[0].length; i++) {
            out[0][i] += more[0][i];
            out[1][i] += more[1][i];
        }
        return out;
    }
}
