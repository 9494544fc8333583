package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

class LevelSmootherTest {
    private static final double STEP_S = 0.1;
    private static final double KEEP = Math.exp(-2 * STEP_S);
    private static final double REACH_S = (1 - KEEP) / 2;
    private static final double LEVEL = 0.42;

    /** Power that moves no faster leaves the trim to what was fitted. */
    private static final double SLOWLY_PERS = 0.019;

    private final Random random = new Random(4711);

    /** A pitching aircraft whose control moves at random; nothing but white gusts disturbs it. */
    private TurnModel flown(int n, double gust_dps2, double rate_dps) {
        double[] rate = new double[n];
        double[] push = new double[n];
        double[] power = new double[n];
        double truth = 0;
        double deflection = 0;
        double gust = 0;
        rate[0] = 0;
        for (int i = 1; i < n; i++) {
            deflection = 0.9 * deflection + 8 * random.nextGaussian();
            push[i] = 1.5 * deflection;
            power[i] = SLOWLY_PERS * i * STEP_S;
            truth = KEEP * truth + REACH_S * (LEVEL * push[i] + gust + 5 + 3 * power[i]);
            gust = gust_dps2 * random.nextGaussian();
            rate[i] = truth + rate_dps * random.nextGaussian();
        }
        return new TurnModel(
                rate,
                push,
                filled(n, 0),
                filled(n, KEEP),
                filled(n, REACH_S),
                filled(n, 1),
                power,
                0,
                1.5,
                STEP_S);
    }

    private static double[] filled(int n, double value) {
        double[] column = new double[n];
        Arrays.fill(column, value);
        return column;
    }

    private static double[][] smooth(TurnModel model, TurnModel.Noise noise, double[] change) {
        int n = model.size();
        double[] level = new double[n];
        double[] sigma = new double[n];
        double trim =
                new LevelSmoother(model, new Disturbances(noise, filled(n, 1)))
                        .smooth(new Masks.Run(0, n - 1), 1, 100, change, level, sigma);
        return new double[][] {level, sigma, {trim}};
    }

    /**
     * Where nothing but white acceleration disturbs it and the level can't change, the estimate is
     * ordinary least squares on (rate − kept rate)/reach. Reference: Hipparchus 3.1,
     * OLSMultipleLinearRegression on the same data; its sigma by the same known variance. The
     * priors, which least squares has not, move the estimate by less than the tolerance.
     */
    @Test
    void aConstantLevelIsThatOfAReferenceLeastSquares() {
        int n = 400;
        double gust_dps2 = 4;
        TurnModel model = flown(n, gust_dps2, 0);
        double[][] found =
                smooth(model, new TurnModel.Noise(1e-5, gust_dps2, 1e-3, 1e-6), new double[n]);
        double[] y = new double[n - 1];
        double[][] x = new double[n - 1][];
        for (int i = 1; i < n; i++) {
            y[i - 1] = (model.rate_dps()[i] - KEEP * model.rate_dps()[i - 1]) / REACH_S;
            x[i - 1] = new double[] {model.push_dps2()[i], model.power()[i]};
        }
        OLSMultipleLinearRegression reference = new OLSMultipleLinearRegression();
        reference.newSampleData(y, x);
        double[] b = reference.estimateRegressionParameters();
        assertEquals(b[1], found[0][n / 2], 1e-4);
        assertEquals(b[2], found[2][0], 2e-2);
        double root = reference.estimateRegressionParametersStandardErrors()[1];
        double scatter = reference.estimateRegressionStandardError();
        assertEquals(root / scatter * gust_dps2, found[1][n / 2], 1e-4);
    }

    @Test
    void aDropIsFollowedFromBothSidesWithAnHonestSigma() {
        int within = 0;
        int judged = 0;
        for (int flight = 0; flight < 20; flight++) {
            int n = 600;
            TurnModel model = dropping(n);
            double[] change = filled(n, 0.1 * 0.1 * STEP_S);
            double[][] found = smooth(model, new TurnModel.Noise(1, 1.5, 0.7, 0.3), change);
            for (int i = 60; i < n; i += 30) {
                double truth = i < n / 2 ? LEVEL : LEVEL / 2;
                if (Math.abs(i - n / 2) > 30) {
                    judged++;
                    within += Math.abs(found[0][i] - truth) < 2 * found[1][i] ? 1 : 0;
                }
            }
        }
        assertTrue(within > 0.9 * judged, within + " of " + judged + " within two sigmas");
    }

    private TurnModel dropping(int n) {
        TurnModel model = flown(n, 1.5, 1);
        double truth = model.rate_dps()[n / 2 - 1];
        double gust = 0;
        for (int i = n / 2; i < n; i++) {
            double pushed = LEVEL / 2 * model.push_dps2()[i];
            truth = KEEP * truth + REACH_S * (pushed + gust + 5 + 3 * model.power()[i]);
            gust = Math.exp(-STEP_S / 0.7) * gust + 0.5 * random.nextGaussian();
            model.rate_dps()[i] = truth + random.nextGaussian();
        }
        return model;
    }

    @Test
    void whereTheControlIsHeldStillTheSigmaGrows() {
        int n = 600;
        TurnModel model = flown(n, 1.5, 1);
        Arrays.fill(model.push_dps2(), n / 3, n, 0);
        double[][] found =
                smooth(model, new TurnModel.Noise(1, 1.5, 0.7, 0.3), filled(n, 0.1 * 0.1 * STEP_S));
        assertTrue(found[1][n - 1] > 3 * found[1][n / 6]);
    }
}
