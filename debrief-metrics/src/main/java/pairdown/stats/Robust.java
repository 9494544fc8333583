package pairdown.stats;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.hipparchus.stat.descriptive.rank.Percentile;

/** Middle and spread that a few wild values cannot move. What is not finite is left out. */
public final class Robust {
    /**
     * Median absolute deviation to standard deviation of a normal distribution: 1/Φ⁻¹(3/4), by
     * definition.
     */
    public static final double MAD_TO_SIGMA = 1.482602218505602;

    private Robust() {}

    /** The median; absent with no finite value. */
    public static OptionalDouble median(double... values) {
        return quantile(0.5, values);
    }

    /**
     * A quantile, linear between order statistics (type 7 of R. J. Hyndman and Y. Fan, The American
     * Statistician 50 (1996) 361–365); absent with no finite value.
     *
     * @param share 0 to 1
     */
    public static OptionalDouble quantile(double share, double... values) {
        double[] sorted = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
        if (sorted.length == 0) {
            return OptionalDouble.empty();
        }
        if (share <= 0) {
            return OptionalDouble.of(sorted[0]);
        }
        return OptionalDouble.of(
                new Percentile()
                        .withEstimationType(Percentile.EstimationType.R_7)
                        .evaluate(sorted, Math.min(1, share) * 100));
    }

    /** The median absolute deviation from the median, unscaled; absent with no finite value. */
    public static OptionalDouble mad(double... values) {
        OptionalDouble middle = median(values);
        if (middle.isEmpty()) {
            return middle;
        }
        double m = middle.getAsDouble();
        return median(Arrays.stream(values).map(v -> Math.abs(v - m)).toArray());
    }

    /** One standard deviation as the scaled median absolute deviation; absent with no value. */
    public static OptionalDouble sigma(double... values) {
        OptionalDouble mad = mad(values);
        return mad.isEmpty() ? mad : OptionalDouble.of(MAD_TO_SIGMA * mad.getAsDouble());
    }
}
