package pairdown.tail;

import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * One axis's equation of motion on the grid, angular acceleration = M·(deflection × dynamic
 * pressure) + damping·rate + slow part, with every term smoothed alike. Dynamic pressure is over
 * that of the dive, so M is what the control does at the dive's dynamic pressure.
 *
 * @param acceleration_dps2 slope of the smoothed rate
 * @param drive deflection (%) × dynamic pressure ratio
 * @param others rate × root of the pressure ratio and, where logged, the axis's load: what turns
 *     the aircraft besides the control
 */
// Columns of the package's own working, never handed out: copies would cost more than they guard.
@SuppressWarnings("ArrayRecordComponent")
record Equation(double[] acceleration_dps2, double[] drive, List<double[]> others) {
    /** Slow changes of trim are taken off over this long when the baseline is fitted. */
    private static final double TRIM_MEMORY_S = 4;

    Equation {
        others = List.copyOf(others);
    }

    static Equation of(ControlAxis axis, Signals signals, double[] pressureRatio, LocalLine line) {
        double[] control = signals.column(axis.control());
        double[] rate = signals.column(axis.rate());
        int n = control.length;
        double[] drive = new double[n];
        double[] damping = new double[n];
        for (int i = 0; i < n; i++) {
            drive[i] = control[i] * pressureRatio[i];
            damping[i] = rate[i] * Math.sqrt(pressureRatio[i]);
        }
        List<double[]> others =
                signals.has(axis.load())
                        ? List.of(line.value(damping), line.value(signals.column(axis.load())))
                        : List.of(line.value(damping));
        return new Equation(line.slope(rate), line.value(drive), others);
    }

    /**
     * The same axis sample by sample, unsmoothed, for a filter.
     *
     * @param factors M, then the other terms' factors, as {@link #fit} gives them
     */
    static TurnModel turning(ControlAxis axis, Flight flight, double[] factors) {
        Signals signals = flight.signals();
        double[] pressure = flight.pressureRatio();
        double[] control = signals.column(axis.control());
        double[] load = signals.has(axis.load()) ? signals.column(axis.load()) : control;
        int n = control.length;
        double step_s = signals.grid().step_s();
        double[] push = new double[n];
        double[] restoring = new double[n];
        double[] keep = new double[n];
        double[] reach = new double[n];
        double[] moment = new double[n];
        for (int i = 0; i < n; i++) {
            int b = Math.max(0, i - 1);
            push[i] = factors[0] * (control[i] * pressure[i] + control[b] * pressure[b]) / 2;
            // An aircraft that a load turns further, and not back, is none that can be flown.
            restoring[i] =
                    factors.length > 2 ? Math.min(0, factors[2]) * (load[i] + load[b]) / 2 : 0;
            if (axis.restoringFades()) {
                push[i] += restoring[i];
                restoring[i] = 0;
            }
            // Damping that the fit found to be none or the wrong way is none.
            double damping = Math.min(-1e-3, factors[1] * Math.sqrt(pressure[i]));
            keep[i] = Math.exp(damping * step_s);
            reach[i] = (keep[i] - 1) / damping;
            moment[i] = pressure[i];
            if (!Double.isFinite(damping + push[i] + restoring[i])) {
                push[i] = Double.NaN;
                restoring[i] = 0;
                keep[i] = 1;
                reach[i] = step_s;
                moment[i] = 1;
            }
        }
        return new TurnModel(
                signals.column(axis.rate()),
                push,
                restoring,
                keep,
                reach,
                moment,
                flight.thrust().power(),
                0,
                factors[0],
                step_s);
    }

    boolean known(int i) {
        double sum = acceleration_dps2[i] + drive[i];
        for (double[] o : others) {
            sum += o[i];
        }
        return Double.isFinite(sum);
    }

    /** What the control is left to explain: acceleration less the other terms' share. */
    double[] left(double[] otherFactors) {
        double[] left = acceleration_dps2.clone();
        for (int k = 0; k < otherFactors.length; k++) {
            double[] o = others.get(k);
            for (int i = 0; i < left.length; i++) {
                left[i] -= otherFactors[k] * o[i];
            }
        }
        return left;
    }

    /**
     * Least squares over the places of a mask, slow parts taken off.
     *
     * @return M, then the other terms' factors; empty where the terms can't be told apart
     */
    Optional<double[]> fit(boolean[] mask, double step_s) {
        double[][] terms = new double[others.size() + 2][];
        Forgetting trim = new Forgetting(TRIM_MEMORY_S, step_s);
        double[] weight = trim.sum(ones(mask));
        terms[0] = quick(drive, mask, trim, weight);
        for (int k = 0; k < others.size(); k++) {
            terms[k + 1] = quick(others.get(k), mask, trim, weight);
        }
        terms[terms.length - 1] = quick(acceleration_dps2, mask, trim, weight);
        return solve(terms, mask);
    }

    private static Optional<double[]> solve(double[][] terms, boolean[] mask) {
        int p = terms.length - 1;
        RealMatrix normal = new Array2DRowRealMatrix(p, p);
        RealVector right = new ArrayRealVector(p);
        for (int i = 0; i < mask.length; i++) {
            if (!mask[i]) {
                continue;
            }
            for (int a = 0; a < p; a++) {
                right.addToEntry(a, terms[a][i] * terms[p][i]);
                for (int b = 0; b < p; b++) {
                    normal.addToEntry(a, b, terms[a][i] * terms[b][i]);
                }
            }
        }
        for (int a = 0; a < p; a++) {
            if (!(normal.getEntry(a, a) > 0)) {
                return Optional.empty();
            }
            // A trace of ridge: two terms that always moved together share their effect.
            normal.multiplyEntry(a, a, 1 + 1e-9);
        }
        return Optional.of(
                new CholeskyDecomposition(normal, 1e-9, 0).getSolver().solve(right).toArray());
    }

    private static double[] quick(double[] c, boolean[] mask, Forgetting trim, double[] weight) {
        double[] kept = new double[c.length];
        for (int i = 0; i < c.length; i++) {
            kept[i] = mask[i] ? c[i] : Double.NaN;
        }
        double[] sum = trim.sum(kept);
        for (int i = 0; i < c.length; i++) {
            kept[i] -= sum[i] / weight[i];
        }
        return kept;
    }

    private static double[] ones(boolean[] mask) {
        double[] ones = new double[mask.length];
        for (int i = 0; i < ones.length; i++) {
            ones[i] = mask[i] ? 1 : 0;
        }
        return ones;
    }
}
