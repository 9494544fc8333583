package pairdown.stats;

/**
 * A confidence interval, ends included.
 *
 * @param low the lower end; may be −∞
 * @param high the upper end; may be +∞
 * @param confidence the share of such intervals that hold the true value, 0 to 1
 */
public record Interval(double low, double high, double confidence) {
    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException(
                    "an interval cannot run from " + low + " to " + high);
        }
        requireConfidence(confidence);
    }

    public boolean contains(double value) {
        return value >= low && value <= high;
    }

    /**
     * The share left out at either end.
     *
     * @throws IllegalArgumentException unless 0 &lt; confidence &lt; 1
     */
    static double tail(double confidence) {
        requireConfidence(confidence);
        return (1 - confidence) / 2;
    }

    private static void requireConfidence(double confidence) {
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException(
                    "confidence lies between 0 and 1, not " + confidence);
        }
    }
}
