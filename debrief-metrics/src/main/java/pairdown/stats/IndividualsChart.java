package pairdown.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Individuals and moving-range chart: is a run of single figures steady?
 *
 * <p>Limits: mean ± 3/d₂ mean moving range with d₂ = 1.128 for pairs; the range's own upper limit
 * is D₄ = 3.267 times its mean. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2
 * (factors from memory, the limits recomputed).
 */
public final class IndividualsChart {
    /** Expected range of two values of a normal distribution over its sigma. */
    static final double D2 = 1.128;

    static final double D4 = 3.267;

    /** Fewer points give limits that say more about luck than about the process. */
    public static final int MINIMUM = 8;

    private final List<Double> values;
    private final double mean;
    private final double meanRange;

    private IndividualsChart(List<Double> values, double mean, double meanRange) {
        this.values = values;
        this.mean = mean;
        this.meanRange = meanRange;
    }

    /**
     * The chart of figures in order of time.
     *
     * @throws IllegalArgumentException with no value, or one that is not finite
     */
    public static IndividualsChart of(double... values) {
        List<Double> kept = new ArrayList<>();
        double sum = 0;
        double range = 0;
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException("value " + i + " is " + values[i]);
            }
            kept.add(values[i]);
            sum += values[i];
            range += i == 0 ? 0 : Math.abs(values[i] - values[i - 1]);
        }
        if (kept.isEmpty()) {
            throw new IllegalArgumentException("a chart needs at least one value");
        }
        return new IndividualsChart(
                List.copyOf(kept),
                sum / values.length,
                values.length == 1 ? 0 : range / (values.length - 1));
    }

    public List<Double> values() {
        return values;
    }

    public double mean() {
        return mean;
    }

    /** Mean of the absolute steps from one value to the next; 0 with a single value. */
    public double meanRange() {
        return meanRange;
    }

    /**
     * The limits.
     *
     * @param low of single values
     * @param high of single values
     * @param rangeHigh of steps from one to the next
     */
    public record Limits(double low, double high, double rangeHigh) {}

    /** The limits; empty with fewer than {@link #MINIMUM} values. */
    public Optional<Limits> limits() {
        if (values.size() < MINIMUM) {
            return Optional.empty();
        }
        double reach = 3 * meanRange / D2;
        return Optional.of(new Limits(mean - reach, mean + reach, D4 * meanRange));
    }

    /** Places of the values outside the limits; none where there are no limits. */
    public List<Integer> outside() {
        List<Integer> places = new ArrayList<>();
        limits().ifPresent(
                        l -> {
                            for (int i = 0; i < values.size(); i++) {
                                double v = values.get(i);
                                if (v < l.low() || v > l.high()) {
                                    places.add(i);
                                }
                            }
                        });
        return places;
    }
}
