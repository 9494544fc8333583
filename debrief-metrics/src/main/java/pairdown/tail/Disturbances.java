package pairdown.tail;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * What disturbs an axis during the descents, fitted to them by the greatest likelihood, and larger
 * where the air was rougher.
 *
 * @param usual over all descents
 * @param scale at each place over the usual, at least 1
 */
// Columns of the package's own working, never handed out: copies would cost more than they guard.
@SuppressWarnings("ArrayRecordComponent")
record Disturbances(TurnModel.Noise usual, double[] scale) {
    /** Roughness is taken over this long about each place. */
    private static final double ROUGH_S = 2;

    /**
     * The scale follows the innovations' variance to this power: wholly (one half) would take a
     * loss of control for rough air, not at all (0) rough air for a loss.
     */
    private static final double ROUGH_SHARE = 0.3;

    /** One wild sample does not make rough air: squares count up to this many times the usual. */
    private static final double WILD = 16;

    /** The fit is good enough where no step changes the log likelihood by this. */
    private static final double ENOUGH = 1e-2;

    private static final int MOST_TRIALS = 400;
    private static final double FIRST_STEP = 0.7;

    /** Before anything is known: a steady hand in light turbulence. */
    static Disturbances unknown(int size) {
        double[] scale = new double[size];
        Arrays.fill(scale, 1);
        return new Disturbances(new TurnModel.Noise(1, 6, 0.5, 1), scale);
    }

    /** Fitted again, with the level known better. */
    Disturbances fitted(TurnModel model, List<Masks.Run> runs, double[] levels, Grid grid) {
        double[] start = {
            Math.log(usual.rate_dps()),
            Math.log(usual.gust_dps2()),
            Math.log(usual.gust_s()),
            Math.log(usual.wander_dps2())
        };
        PointValuePair best =
                new SimplexOptimizer(new SimpleValueChecker(1e-6, ENOUGH))
                        .optimize(
                                new MaxEval(MOST_TRIALS),
                                new ObjectiveFunction(
                                        p -> likelihood(model, runs, levels, noise(p))),
                                GoalType.MAXIMIZE,
                                new InitialGuess(start),
                                new NelderMeadSimplex(start.length, FIRST_STEP));
        TurnModel.Noise noise = noise(best.getPoint());
        return new Disturbances(noise, roughness(model, runs, levels, noise, grid));
    }

    /** Within what any aircraft and recorder could show. */
    private static TurnModel.Noise noise(double[] log) {
        return new TurnModel.Noise(
                bounded(log[0], 0.05, 8),
                bounded(log[1], 0.5, 60),
                bounded(log[2], 0.1, 1.5),
                bounded(log[3], 0.1, 10));
    }

    private static double bounded(double log, double low, double high) {
        return Math.max(low, Math.min(high, Math.exp(log)));
    }

    private double likelihood(
            TurnModel model, List<Masks.Run> runs, double[] levels, TurnModel.Noise noise) {
        Disturbances tried = new Disturbances(noise, scale);
        return runs.stream()
                .mapToDouble(r -> model.likelihood(r.from(), r.to(), levels, tried))
                .sum();
    }

    private static double[] roughness(
            TurnModel model,
            List<Masks.Run> runs,
            double[] levels,
            TurnModel.Noise noise,
            Grid grid) {
        int n = model.size();
        double[] square = Signals.nothing(n);
        for (Masks.Run run : runs) {
            model.innovations(run.from(), run.to(), levels, noise, square);
        }
        double[] one = new double[n];
        for (int i = 0; i < n; i++) {
            one[i] = Double.isFinite(square[i]) ? 1 : 0;
            square[i] = Math.min(square[i], WILD);
        }
        Forgetting window = new Forgetting(ROUGH_S / 2, grid.step_s());
        double[] sum = window.sum(square);
        double[] count = window.sum(one);
        double[] scale = new double[n];
        for (int i = 0; i < n; i++) {
            double over = count[i] > 1 ? sum[i] / count[i] : 1;
            scale[i] = Math.max(1, Math.pow(over, ROUGH_SHARE));
        }
        return scale;
    }
}
