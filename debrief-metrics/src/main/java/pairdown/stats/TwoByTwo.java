package pairdown.stats;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.distribution.discrete.HypergeometricDistribution;

/**
 * A 2 × 2 table of counts with the exact test and the exact interval of the odds ratio, both
 * conditional on its margins.
 *
 * <p>Given the margins and odds ratio ψ, the first cell follows Fisher's noncentral hypergeometric
 * distribution, P(x) ∝ C(r₁, x) C(r₂, c₁ − x) ψˣ. The estimate is the ψ whose mean is the count
 * seen; the interval's ends are the ψ that leave half of 1 − confidence in either tail. Sources: R.
 * A. Fisher (1935); J. Cornfield (1956); A. Agresti, Categorical Data Analysis, section on exact
 * inference for tables.
 *
 * @param both first row, first column: cases with both features
 * @param firstOnly first row, second column: with the first feature alone
 * @param secondOnly second row, first column: with the second alone
 * @param neither second row, second column: with neither
 */
public record TwoByTwo(int both, int firstOnly, int secondOnly, int neither) {
    /** Odds ratios beyond e to this power are not told apart from 0 or infinity. */
    private static final double LOG_REACH = 60;

    public TwoByTwo {
        if (both < 0 || firstOnly < 0 || secondOnly < 0 || neither < 0) {
            throw new IllegalArgumentException("a count is at least 0");
        }
    }

    public int total() {
        return both + firstOnly + secondOnly + neither;
    }

    /**
     * The conditional maximum-likelihood odds ratio: 0 or +∞ at the ends of what the margins allow,
     * NaN where they allow one table only.
     */
    public double oddsRatio() {
        double[] log = logWeights();
        if (log.length == 1) {
            return Double.NaN;
        }
        int seen = both - least();
        if (seen == 0) {
            return 0;
        }
        if (seen == log.length - 1) {
            return Double.POSITIVE_INFINITY;
        }
        return Math.exp(solve(logPsi -> mean(log, logPsi) - seen));
    }

    /**
     * The exact interval of the odds ratio, 0 to +∞ where the margins allow one table only.
     *
     * @throws IllegalArgumentException unless 0 &lt; confidence &lt; 1
     */
    public Interval oddsRatioInterval(double confidence) {
        double tail = Interval.tail(confidence);
        double[] log = logWeights();
        int seen = both - least();
        int last = log.length - 1;
        double low = seen == 0 ? 0 : Math.exp(solve(p -> between(log, p, seen, last) - tail));
        double high =
                seen == last
                        ? Double.POSITIVE_INFINITY
                        : Math.exp(solve(p -> tail - between(log, p, 0, seen)));
        return new Interval(low, high, confidence);
    }

    /**
     * Fisher's exact two-sided probability: of all tables with these margins, those no likelier
     * than this one, were rows and columns independent.
     */
    public double fisher() {
        double[] log = logWeights();
        // Equal probabilities must count as equal despite rounding.
        double bar = log[both - least()] + 1e-7;
        double p = 0;
        for (double l : log) {
            p += l <= bar ? Math.exp(l) : 0;
        }
        return Math.min(1, p);
    }

    private int least() {
        return Math.max(0, both + secondOnly - (secondOnly + neither));
    }

    private double[] logWeights() {
        int row = both + firstOnly;
        int column = both + secondOnly;
        int most = Math.min(row, column);
        double[] log = new double[most - least() + 1];
        if (log.length == 1) {
            return log;
        }
        HypergeometricDistribution d = new HypergeometricDistribution(total(), row, column);
        for (int i = 0; i < log.length; i++) {
            log[i] = d.logProbability(least() + i);
        }
        return log;
    }

    private static double mean(double[] log, double logPsi) {
        double sum = 0;
        double weighted = 0;
        double top = top(log, logPsi);
        for (int i = 0; i < log.length; i++) {
            double w = Math.exp(log[i] + i * logPsi - top);
            sum += w;
            weighted += i * w;
        }
        return weighted / sum;
    }

    private static double between(double[] log, double logPsi, int from, int to) {
        double sum = 0;
        double inside = 0;
        double top = top(log, logPsi);
        for (int i = 0; i < log.length; i++) {
            double w = Math.exp(log[i] + i * logPsi - top);
            sum += w;
            inside += i >= from && i <= to ? w : 0;
        }
        return inside / sum;
    }

    private static double top(double[] log, double logPsi) {
        double top = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < log.length; i++) {
            top = Math.max(top, log[i] + i * logPsi);
        }
        return top;
    }

    private static double solve(DoubleUnaryOperator rising) {
        return new BrentSolver(1e-12, 1e-12)
                .solve(500, rising::applyAsDouble, -LOG_REACH, LOG_REACH);
    }
}
