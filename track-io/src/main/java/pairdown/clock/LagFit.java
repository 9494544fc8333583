package pairdown.clock;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * The lag and rate at which one signal, read at another clock's times, is a linear mix of others.
 *
 * <p>At points τ of the recorder: g(t) = Σ cⱼ xⱼ(τ, t) + noise at t = τ + δ + ρ(τ − τ₀), with g the
 * satellite signal, xⱼ the recorder's, some of them times one of the satellite log, and τ₀ the
 * middle. Gauss–Newton on δ, ρ and all cⱼ; the rate, and what is known of the cⱼ, have priors of
 * mean 0. Variances are cluster-robust over blocks, as in {@link RideFit}.
 */
final class LagFit {
    private static final int ITERATIONS = 12;

    /** Longer than the noise remembers (s). */
    private static final double BLOCK_S = 20;

    /** Misfits beyond this many robust sigmas are left out, once the fit has settled. */
    private static final double TRIM = 4;

    private static final int SETTLED = 5;

    /** Farther from the start than this, the fit ran away (s). */
    private static final double REACH_S = 4;

    private static final int LEAST_POINTS = 100;

    private final Problem problem;
    private final double[] weight;
    private double delta_s;
    private double rate;
    private double[] coefficients;

    private LagFit(Problem problem, double delta_s) {
        this.problem = problem;
        this.delta_s = delta_s;
        this.weight = new double[problem.size()];
        this.coefficients = new double[problem.terms() + 2];
        Arrays.fill(weight, 1);
    }

    /** What is to be fitted; a value that is NaN takes its point out. */
    interface Problem {
        int size();

        /** The recorder's time of a point (s). */
        double time_s(int k);

        /** The middle of the recorder's times (s). */
        double middle_s();

        /** Number of linear terms. */
        int terms();

        /** The satellite signal at an instant of its own clock, for the component of point k. */
        double signal(int k, double t_s);

        /** Its rate of change. */
        double slope(int k, double t_s);

        /** A linear term, at an instant of the satellite log's clock where it needs one. */
        double term(int k, int j, double t_s);

        /** A term's rate of change with that instant. */
        default double termSlope(int k, int j, double t_s) {
            return 0;
        }

        /** How large a term's factor is usually, one standard deviation about 0. */
        default double usual(int j) {
            return Double.POSITIVE_INFINITY;
        }
    }

    /**
     * A fit.
     *
     * @param delta_s lag at the middle
     * @param residual root mean square, in the signal's unit
     */
    record Fit(
            double delta_s, double deltaSigma_s, double rate, double rateSigma, double residual) {
        /** One standard deviation of the lag at a distance from the middle. */
        double sigma_s(double fromMiddle_s) {
            return Math.hypot(deltaSigma_s, rateSigma * fromMiddle_s);
        }
    }

    /**
     * Fits from a lag right to a second or so.
     *
     * @return empty if the points are too few or the fit runs away
     */
    static Optional<Fit> from(
            Problem problem, double delta_s, double rateSigma, double maximumRate) {
        return new LagFit(problem, delta_s).run(rateSigma, maximumRate);
    }

    private Optional<Fit> run(double rateSigma, double maximumRate) {
        double start_s = delta_s;
        Normal n = new Normal();
        for (int i = 0; i < ITERATIONS; i++) {
            n = accumulate(rateSigma);
            if (n.points < LEAST_POINTS) {
                return Optional.empty();
            }
            double[] c;
            try {
                c = n.solve();
            } catch (MathRuntimeException singular) {
                return Optional.empty();
            }
            int p = problem.terms();
            coefficients = c;
            delta_s += Math.max(-1, Math.min(1, c[p]));
            rate = Math.max(-maximumRate, Math.min(maximumRate, rate + c[p + 1]));
            if (!(Math.abs(delta_s - start_s) < REACH_S)) {
                return Optional.empty();
            }
            if (i >= SETTLED) {
                trim(c);
            }
        }
        return Optional.of(variance(n));
    }

    private double at_s(int k) {
        double t_s = problem.time_s(k);
        return t_s + delta_s + rate * (t_s - problem.middle_s());
    }

    /** Derivatives of the model with respect to all unknowns, and the misfit; false in a hole. */
    private boolean row(int k, double[] row) {
        int p = problem.terms();
        double t_s = at_s(k);
        double slope = problem.slope(k, t_s);
        for (int j = 0; j < p; j++) {
            row[j] = problem.term(k, j, t_s);
            slope -= coefficients[j] * problem.termSlope(k, j, t_s);
        }
        row[p] = -slope;
        row[p + 1] = -slope * (problem.time_s(k) - problem.middle_s());
        row[p + 2] = problem.signal(k, t_s);
        double sum = 0;
        for (double v : row) {
            sum += v;
        }
        return !Double.isNaN(sum);
    }

    private Normal accumulate(double rateSigma) {
        int p = problem.terms();
        Normal n = new Normal();
        double[] row = new double[p + 3];
        for (int k = 0; k < problem.size(); k++) {
            if (weight[k] > 0 && row(k, row)) {
                n.add(row);
            }
        }
        n.residual = n.points == 0 ? 0 : n.residualOf();
        for (int j = 0; j < p; j++) {
            double share = n.residual / problem.usual(j);
            n.matrix.addToEntry(j, j, share * share);
        }
        double prior = n.residual * n.residual / (rateSigma * rateSigma);
        n.matrix.addToEntry(p + 1, p + 1, prior);
        n.right.addToEntry(p + 1, -prior * rate);
        return n;
    }

    private void trim(double[] c) {
        int p = problem.terms();
        double[] row = new double[p + 3];
        double[] off = new double[problem.size()];
        double[] sorted = new double[problem.size()];
        int count = 0;
        for (int k = 0; k < off.length; k++) {
            off[k] = Double.NaN;
            if (row(k, row)) {
                off[k] = Math.abs(misfit(row, c));
                sorted[count++] = off[k];
            }
        }
        Arrays.sort(sorted, 0, count);
        double limit = count == 0 ? 0 : TRIM * 1.4826 * sorted[count / 2];
        for (int k = 0; k < off.length; k++) {
            weight[k] = off[k] <= limit ? 1 : 0;
        }
    }

    /** Misfit of the linear part at the present lag. */
    private double misfit(double[] row, double[] c) {
        int p = problem.terms();
        double y = row[p + 2];
        for (int j = 0; j < p; j++) {
            y -= row[j] * c[j];
        }
        return y;
    }

    private Fit variance(Normal n) {
        int p = problem.terms();
        double[] c = n.solve();
        RealMatrix inverse = new LUDecomposition(n.matrix).getSolver().getInverse();
        double[] row = new double[p + 3];
        double[] block = new double[p + 2];
        RealMatrix meat = new Array2DRowRealMatrix(p + 2, p + 2);
        double end_s = Double.NEGATIVE_INFINITY;
        double squares = 0;
        int blocks = 0;
        for (int k = 0; k < problem.size(); k++) {
            if (!(weight[k] > 0) || !row(k, row)) {
                continue;
            }
            if (Math.abs(problem.time_s(k) - end_s) > BLOCK_S) {
                addOuter(meat, block);
                Arrays.fill(block, 0);
                end_s = problem.time_s(k);
                blocks++;
            }
            double off = misfit(row, c);
            squares += off * off;
            for (int j = 0; j < p + 2; j++) {
                block[j] += row[j] * off;
            }
        }
        addOuter(meat, block);
        double residual = Math.sqrt(squares / n.points);
        // The prior is one more, independent, observation of the rate.
        double correction = blocks > 1 ? blocks / (blocks - 1.0) : Double.POSITIVE_INFINITY;
        RealMatrix v = inverse.multiply(meat.scalarMultiply(correction)).multiply(inverse);
        double model = inverse.getEntry(p + 1, p + 1) * residual * residual;
        return new Fit(
                delta_s,
                Math.sqrt(v.getEntry(p, p)),
                rate,
                Math.sqrt(Math.max(v.getEntry(p + 1, p + 1), model)),
                residual);
    }

    private static void addOuter(RealMatrix m, double[] v) {
        for (int i = 0; i < v.length; i++) {
            for (int j = 0; j < v.length; j++) {
                m.addToEntry(i, j, v[i] * v[j]);
            }
        }
    }

    /** Normal equations over the points used. */
    private final class Normal {
        final RealMatrix matrix =
                new Array2DRowRealMatrix(problem.terms() + 2, problem.terms() + 2);
        final ArrayRealVector right = new ArrayRealVector(problem.terms() + 2);
        double squares;
        double residual;
        int points;

        void add(double[] row) {
            int n = row.length - 1;
            double y = row[n];
            for (int i = 0; i < n; i++) {
                right.addToEntry(i, row[i] * y);
                for (int j = 0; j < n; j++) {
                    matrix.addToEntry(i, j, row[i] * row[j]);
                }
            }
            squares += y * y;
            points++;
        }

        double[] solve() {
            return new LUDecomposition(matrix).getSolver().solve(right).toArray();
        }

        double residualOf() {
            try {
                double explained = right.dotProduct(new ArrayRealVector(solve()));
                return Math.sqrt(Math.max(1e-12 * squares, squares - explained) / points);
            } catch (MathRuntimeException singular) {
                return Math.sqrt(squares / points);
            }
        }
    }
}
