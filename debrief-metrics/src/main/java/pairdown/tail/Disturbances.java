package pairdown.tail;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * What disturbs an axis, fitted by the greatest likelihood, and where the air was rougher than
 * usual.
 *
 * @param usual in calm air
 * @param rough at each place the gusts' size over that, at least 1
 */
// Columns of the package's own working, never handed out: copies would cost more than they guard.
@SuppressWarnings("ArrayRecordComponent")
record Disturbances(TurnModel.Noise usual, double[] rough) {
    /** The fit is good enough where no step changes the log likelihood by this. */
    private static final double ENOUGH = 1e-2;

    /** Gusts that turn an aircraft this size last about so long (common practice). */
    private static final double GUST_S = 0.7;

    private static final int MOST_ROUNDS = 120;
    private static final double FIRST_STEP = 0.7;

    /** Before anything is known: a steady hand in light turbulence. */
    static Disturbances unknown(int size) {
        double[] rough = new double[size];
        Arrays.fill(rough, 1);
        return new Disturbances(new TurnModel.Noise(1.5, 1, GUST_S, 1), rough);
    }

    /**
     * Fitted again, with level and roughness known better.
     *
     * @param counted places whose likelihood counts: the others are flown through
     */
    Disturbances fitted(TurnModel model, List<Masks.Run> runs, double[] levels, boolean[] counted) {
        double[] start = {
            Math.log(usual.rate_dps()), Math.log(usual.gust_dps2()), Math.log(usual.wander_dps2())
        };
        return new Disturbances(
                noise(
                        greatest(
                                p -> likelihood(model, runs, levels, counted, noise(p)),
                                start,
                                FIRST_STEP)),
                rough);
    }

    /** Where a function is greatest, from a start. */
    static double[] greatest(MultivariateFunction f, double[] start, double step) {
        return new SimplexOptimizer(new SimpleValueChecker(1e-9, ENOUGH, MOST_ROUNDS))
                .optimize(
                        MaxEval.unlimited(),
                        new ObjectiveFunction(f),
                        GoalType.MAXIMIZE,
                        new InitialGuess(start),
                        new NelderMeadSimplex(start.length, step))
                .getPoint();
    }

    /** Within what any aircraft and recorder could show in calm air. */
    static TurnModel.Noise noise(double[] log) {
        return new TurnModel.Noise(
                bounded(log[0], 0.05, 6), bounded(log[1], 1, 1.5), GUST_S, bounded(log[2], 0.3, 3));
    }

    private static double bounded(double log, double low, double high) {
        return Math.max(low, Math.min(high, Math.exp(log)));
    }

    /** The log likelihood of the places that count. */
    double likelihood(TurnModel model, List<Masks.Run> runs, double[] levels, boolean[] counted) {
        return likelihood(model, runs, levels, counted, usual);
    }

    private double likelihood(
            TurnModel model,
            List<Masks.Run> runs,
            double[] levels,
            boolean[] counted,
            TurnModel.Noise noise) {
        TurnModel.State now = new TurnModel.State();
        TurnModel.State next = new TurnModel.State();
        double sum = 0;
        for (Masks.Run run : runs) {
            model.begin(run.from(), now, noise);
            for (int i = run.from() + 1; i <= run.to(); i++) {
                double l = model.step(now, i, levels[i], noise, rough[i], next);
                sum += counted[i] ? l : 0;
                TurnModel.State spare = now;
                now = next;
                next = spare;
            }
        }
        return sum;
    }
}
