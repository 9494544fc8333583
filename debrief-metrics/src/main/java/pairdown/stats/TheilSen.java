package pairdown.stats;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * A straight line by the median of all slopes between pairs: up to 29 % of the points may be wild.
 *
 * <p>Sources: H. Theil (1950); P. K. Sen, JASA 63 (1968) 1379–1389, with Sen's interval including
 * his correction for ties; intercept median y − slope · median x (W. J. Conover). Points with equal
 * x give no slope. Quadratic in the number of points: meant for some hundreds.
 *
 * @param slope median slope
 * @param intercept value at x = 0
 * @param slopeInterval of the slope
 */
public record TheilSen(double slope, double intercept, Interval slopeInterval) {
    /**
     * The line through points.
     *
     * @throws IllegalArgumentException if lengths differ or fewer than two different x are given
     */
    public static TheilSen of(double[] x, double[] y, double confidence) {
        double tail = Interval.tail(confidence);
        if (x.length != y.length) {
            throw new IllegalArgumentException(x.length + " x for " + y.length + " y");
        }
        double[] slopes = slopes(x, y);
        if (slopes.length == 0) {
            throw new IllegalArgumentException("a line needs two different x");
        }
        double slope = finite(Robust.median(slopes));
        double intercept = finite(Robust.median(y)) - slope * finite(Robust.median(x));
        return new TheilSen(slope, intercept, interval(slopes, x, y, tail, confidence));
    }

    private static double[] slopes(double[] x, double[] y) {
        int n = x.length;
        double[] slopes = new double[n * (n - 1) / 2];
        int k = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                if (x[i] != x[j]) {
                    slopes[k++] = (y[j] - y[i]) / (x[j] - x[i]);
                }
            }
        }
        double[] found = Arrays.copyOf(slopes, k);
        Arrays.sort(found);
        return found;
    }

    private static Interval interval(
            double[] slopes, double[] x, double[] y, double tail, double confidence) {
        double n = x.length;
        double variance = (n * (n - 1) * (2 * n + 5) - ties(x) - ties(y)) / 18;
        double z = new NormalDistribution().inverseCumulativeProbability(tail);
        double reach = z * Math.sqrt(Math.max(0, variance));
        int high = (int) Math.min(Math.rint((slopes.length - reach) / 2), slopes.length - 1);
        int low = (int) Math.max(Math.rint((slopes.length + reach) / 2) - 1, 0);
        return new Interval(slopes[low], slopes[high], confidence);
    }

    private static double ties(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double sum = 0;
        for (int i = 0, j; i < sorted.length; i = j) {
            for (j = i + 1; j < sorted.length && sorted[j] == sorted[i]; j++) {}
            double k = j - i;
            sum += k * (k - 1) * (2 * k + 5);
        }
        return sum;
    }

    private static double finite(OptionalDouble value) {
        return value.orElseThrow(() -> new IllegalArgumentException("no finite value"));
    }
}
