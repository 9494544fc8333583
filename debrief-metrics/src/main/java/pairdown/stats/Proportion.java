package pairdown.stats;

import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * So many of so many, with intervals for the chance behind it. Built from counts, never from a
 * ratio, so that no rounding can change the count. With no trials the share is absent and every
 * interval is 0 to 1.
 *
 * @param successes how many held
 * @param trials of how many
 */
public record Proportion(int successes, int trials) {
    public Proportion {
        if (successes < 0 || trials < successes) {
            throw new IllegalArgumentException(
                    "successes lie between 0 and the trials, not " + successes + " of " + trials);
        }
    }

    /** Successes over trials; absent with no trials. */
    public OptionalDouble share() {
        return trials == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of((double) successes / trials);
    }

    /**
     * The score interval without continuity correction. Source: E. B. Wilson, Probable inference,
     * the law of succession, and statistical inference, JASA 22 (1927) 209–212.
     *
     * @throws IllegalArgumentException unless 0 &lt; confidence &lt; 1
     */
    public Interval wilson(double confidence) {
        double tail = Interval.tail(confidence);
        if (trials == 0) {
            return new Interval(0, 1, confidence);
        }
        double n = trials;
        double p = successes / n;
        double z = -new NormalDistribution().inverseCumulativeProbability(tail);
        double z2n = z * z / n;
        double middle = (p + z2n / 2) / (1 + z2n);
        double half = Math.sqrt(p * (1 - p) * z2n + z2n * z2n / 4) / (1 + z2n);
        return new Interval(
                successes == 0 ? 0 : middle - half,
                successes == trials ? 1 : middle + half,
                confidence);
    }

    /**
     * The exact (Clopper–Pearson) interval by quantiles of the beta distribution: never covers less
     * than it says. Source: C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404–413.
     *
     * @throws IllegalArgumentException unless 0 &lt; confidence &lt; 1
     */
    public Interval exact(double confidence) {
        double tail = Interval.tail(confidence);
        int failures = trials - successes;
        double low = successes == 0 ? 0 : beta(successes, failures + 1.0, tail);
        double high = failures == 0 ? 1 : beta(successes + 1.0, failures, 1 - tail);
        return new Interval(low, high, confidence);
    }

    private static double beta(double a, double b, double p) {
        return new BetaDistribution(a, b).inverseCumulativeProbability(p);
    }
}
