package pairdown.clock;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The lag and rate at which one signal, read at another clock's times, is a linear mix of others.
 *
 * <p>At points τ of the recorder: g(t) = Σ cⱼ xⱼ(τ, t) + noise at t = τ + δ + ρ(τ − τ₀), with g the
 * satellite signal, xⱼ the recorder's, some of them times one of the satellite log, and τ₀ the
 * middle. Gauss–Newton on δ, ρ and all cⱼ; the rate, and what is known of the cⱼ, have priors of
 * mean 0.
 *
 * <p>Variances are cluster-robust over blocks, as in {@link RideFit}, and no less than the misfits'
 * autocorrelation leaves: where one turn's end decides, its own block shows no misfit. They are
 * taken about the true curvature of the sum of squares: Gauss–Newton's counts what noise of g rises
 * and falls as if it told the lag, and where g is mostly noise (gusts on a straight track) its
 * sigma would be many times too small (the full Hessian of a least-squares sum: J. Nocedal and S.
 * Wright, Numerical Optimization (2006), equation 10.5).
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

    /** Lags on trial about a found one are so far apart (s), … */
    private static final double RIVAL_STEP_S = 0.5;

    /** … beyond so many sigmas of it, and must fit worse by so many sigmas. */
    private static final double RIVAL_SIGMAS = 3;

    /** Slopes this far before and after an instant give their change (s). */
    private static final double BEND_S = 0.25;

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
     * @param deltaSigma_s infinite where the misfit is least at no lag about this one
     * @param residual root mean square, in the signal's unit
     * @param factors of the linear terms
     */
    record Fit(
            double delta_s,
            double deltaSigma_s,
            double rate,
            double rateSigma,
            double residual,
            List<Double> factors) {
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
        double slope = slope(k, t_s);
        for (int j = 0; j < p; j++) {
            row[j] = problem.term(k, j, t_s);
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

    /** How the misfit of a point changes with the instant it is read at. */
    private double slope(int k, double t_s) {
        double slope = problem.slope(k, t_s);
        for (int j = 0; j < problem.terms(); j++) {
            slope -= coefficients[j] * problem.termSlope(k, j, t_s);
        }
        return slope;
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
        n.residual = n.points == 0 ? 0 : n.residualOf(p + 2);
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
        RealMatrix curvature = n.matrix.copy();
        double[] off = new double[problem.size()];
        Arrays.fill(off, Double.NaN);
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
            off[k] = misfit(row, c);
            squares += off[k] * off[k];
            addBend(curvature, k, off[k]);
            for (int j = 0; j < p + 2; j++) {
                block[j] += row[j] * off[k];
            }
        }
        addOuter(meat, block);
        double residual = Math.sqrt(squares / n.points);
        double correction = blocks > 1 ? blocks / (blocks - 1.0) : Double.POSITIVE_INFINITY;
        try {
            RealMatrix inverse = new LUDecomposition(curvature).getSolver().getInverse();
            if (inverse.getEntry(p, p) > 0 && inverse.getEntry(p + 1, p + 1) > 0) {
                return fit(
                        n.points,
                        residual,
                        alike(off),
                        inverse,
                        inverse.multiply(meat.scalarMultiply(correction)).multiply(inverse));
            }
        } catch (MathRuntimeException singular) {
            // As where the curvature has the wrong sign: nothing tells the lag.
        }
        double unknown = Double.POSITIVE_INFINITY;
        return new Fit(delta_s, unknown, rate, unknown, residual, factors());
    }

    /**
     * @param alike how many neighbouring misfits are one
     * @param inverse of the curvature
     * @param v covariance by blocks
     */
    private Fit fit(int points, double residual, double alike, RealMatrix inverse, RealMatrix v) {
        int p = problem.terms();
        double square = residual * residual;
        double sigma_s =
                Math.sqrt(Math.max(v.getEntry(p, p), alike * square * inverse.getEntry(p, p)));
        // The prior is one more, independent, observation of the rate.
        double rateSigma =
                Math.sqrt(
                        Math.max(
                                v.getEntry(p + 1, p + 1), square * inverse.getEntry(p + 1, p + 1)));
        return new Fit(
                delta_s,
                hasRival(points, alike, sigma_s) ? Double.POSITIVE_INFINITY : sigma_s,
                rate,
                rateSigma,
                residual,
                factors());
    }

    /**
     * The misfits' integrated autocorrelation, 1 + 2 Σ ρ, tapered over a block, in points: the mean
     * of so many scatters like one.
     */
    private double alike(double[] off) {
        double sum = 0;
        double squares = 0;
        for (int k = 0; k < off.length; k++) {
            squares += Double.isNaN(off[k]) ? 0 : off[k] * off[k];
            for (int l = k + 1; l < off.length; l++) {
                double apart_s = problem.time_s(l) - problem.time_s(k);
                if (!(apart_s >= 0 && apart_s < BLOCK_S)) {
                    break;
                }
                double product = off[k] * off[l];
                sum += Double.isNaN(product) ? 0 : (1 - apart_s / BLOCK_S) * product;
            }
        }
        return squares > 0 ? Math.max(1, 1 + 2 * sum / squares) : 1;
    }

    private List<Double> factors() {
        return Arrays.stream(coefficients).limit(problem.terms()).boxed().toList();
    }

    private static void addOuter(RealMatrix m, double[] v) {
        for (int i = 0; i < v.length; i++) {
            for (int j = 0; j < v.length; j++) {
                m.addToEntry(i, j, v[i] * v[j]);
            }
        }
    }

    /**
     * Whether a lag well beside the found one fits hardly worse: then the two signals have little
     * in common, and one of many chance likenesses was found.
     *
     * @param alike how many neighbouring misfits are one
     */
    private boolean hasRival(int points, double alike, double sigma_s) {
        double best2 = meanSquare(0);
        boolean rival = false;
        for (double off_s = -REACH_S; off_s <= REACH_S && !rival; off_s += RIVAL_STEP_S) {
            if (Math.abs(off_s) > RIVAL_SIGMAS * sigma_s) {
                double worse = meanSquare(off_s) / best2 - 1;
                rival = worse * points / alike < RIVAL_SIGMAS * RIVAL_SIGMAS;
            }
        }
        return rival;
    }

    /** Of the misfits this far beside the found lag, with the linear terms that fit best there. */
    private double meanSquare(double off_s) {
        double found_s = delta_s;
        delta_s += off_s;
        double residual = accumulate(Double.POSITIVE_INFINITY).residualOf(problem.terms());
        delta_s = found_s;
        return residual * residual;
    }

    /** What a misfit's second derivatives with lag and rate add to the curvature of its square. */
    private void addBend(RealMatrix curvature, int k, double off) {
        int p = problem.terms();
        double t_s = at_s(k);
        double bend = (slope(k, t_s + BEND_S) - slope(k, t_s - BEND_S)) / (2 * BEND_S);
        if (!Double.isNaN(bend)) {
            double from_s = problem.time_s(k) - problem.middle_s();
            curvature.addToEntry(p, p, off * bend);
            curvature.addToEntry(p, p + 1, off * bend * from_s);
            curvature.addToEntry(p + 1, p, off * bend * from_s);
            curvature.addToEntry(p + 1, p + 1, off * bend * from_s * from_s);
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

        /** Of the misfits, with the first unknowns as they fit best and the others unchanged. */
        double residualOf(int unknowns) {
            try {
                RealMatrix m = matrix.getSubMatrix(0, unknowns - 1, 0, unknowns - 1);
                RealVector r = right.getSubVector(0, unknowns);
                double explained = r.dotProduct(new LUDecomposition(m).getSolver().solve(r));
                return Math.sqrt(Math.max(1e-12 * squares, squares - explained) / points);
            } catch (MathRuntimeException singular) {
                return Math.sqrt(squares / points);
            }
        }
    }
}
