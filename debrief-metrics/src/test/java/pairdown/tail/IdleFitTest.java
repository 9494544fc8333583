package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.stat.regression.GLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

class IdleFitTest {
    private static final TailSettings.Force FORCE = TailSettings.Force.DEFAULT;
    private static final double CLEAN_M2 = 1.9;
    private static final double FLAP_M2 = 2.6;
    private static final double LIFT_PERM2 = 0.0021;

    /** Idle flight at varied speeds and flaps in rising and sinking air that lasts. */
    private static List<IdleFit.Sample> samples(int count, double air_m2, long seed) {
        Random random = new Random(seed);
        List<IdleFit.Sample> samples = new ArrayList<>();
        double air = air_m2 * random.nextGaussian();
        double keep = Math.exp(-0.5 / FORCE.verticalAir_s());
        for (int i = 0; i < count; i++) {
            air = keep * air + air_m2 * Math.sqrt(1 - keep * keep) * random.nextGaussian();
            double flap_deg = 40 * ((i / 7) % 5) / 4.0;
            double lift_m2 = 14 + 14 * ((i / 11) % 7) / 6.0;
            double area_m2 = CLEAN_M2 + FLAP_M2 * flap_deg / 40 + LIFT_PERM2 * lift_m2 * lift_m2;
            samples.add(new IdleFit.Sample(i * 0.5, area_m2 + air, flap_deg, lift_m2, 40, air_m2));
        }
        return samples;
    }

    /** The reference: Hipparchus GLSMultipleLinearRegression, given the same covariance. */
    @Test
    void withMuchDataItIsGeneralisedLeastSquares() {
        List<IdleFit.Sample> samples = samples(150, 0.05, 5);
        int n = samples.size();
        double[] y = new double[n];
        double[][] x = new double[n][];
        double[][] covariance = new double[n][n];
        for (int i = 0; i < n; i++) {
            IdleFit.Sample a = samples.get(i);
            double f = a.flap_deg() / 40;
            y[i] = a.area_m2();
            x[i] = new double[] {1, f, f * (1 - f), a.lift_m2() * a.lift_m2()};
            for (int j = 0; j < n; j++) {
                double apart = Math.abs(i - j) * 0.5 / FORCE.verticalAir_s();
                covariance[i][j] = 0.05 * 0.05 * Math.exp(-apart) * (i == j ? 2 : 1);
            }
        }
        GLSMultipleLinearRegression reference = new GLSMultipleLinearRegression();
        reference.setNoIntercept(true);
        reference.newSampleData(y, x, covariance);
        double[] expected = reference.estimateRegressionParameters();
        IdleEvidence evidence = IdleFit.evidence(samples, FORCE);
        RealMatrix found =
                new CholeskyDecomposition(evidence.normal(), 1e-9, 1e-15)
                        .getSolver()
                        .solve(evidence.right());
        for (int k = 0; k < IdleDrag.TERMS; k++) {
            assertEquals(expected[k], found.getEntry(k, 0), 1e-6 * (1 + Math.abs(expected[k])));
        }
    }

    /** Of 200 made logs the area's error is within one sigma in about 68 %, two in about 95 %. */
    @Test
    void theSigmaOfTheAreaIsHonest() {
        int one = 0;
        int two = 0;
        int logs = 200;
        double truth_m2 = CLEAN_M2 + FLAP_M2 + LIFT_PERM2 * 22 * 22;
        for (int k = 0; k < logs; k++) {
            IdleDrag drag = IdleFit.evidence(samples(40, 0.5, k), FORCE).drag();
            double off = Math.abs(drag.area_m2(40, 22) - truth_m2) / drag.areaSigma_m2(40, 22);
            one += off < 1 ? 1 : 0;
            two += off < 2 ? 1 : 0;
        }
        assertTrue(one > 0.6 * logs && one < 0.9 * logs, one + " within one sigma");
        assertTrue(two > 0.9 * logs, two + " within two");
    }

    @Test
    void logsOfOneAircraftTogetherKnowItsDragBetter() {
        IdleEvidence one = IdleFit.evidence(samples(40, 0.5, 1), FORCE);
        IdleEvidence many = one;
        for (int k = 2; k <= 9; k++) {
            many = many.and(IdleFit.evidence(samples(40, 0.5, k), FORCE));
        }
        double ratio = many.drag().areaSigma_m2(40, 22) / one.drag().areaSigma_m2(40, 22);
        assertEquals(1.0 / 3, ratio, 0.06);
        double truth_m2 = CLEAN_M2 + FLAP_M2 + LIFT_PERM2 * 22 * 22;
        assertEquals(truth_m2, many.drag().area_m2(40, 22), 3 * many.drag().areaSigma_m2(40, 22));
        assertEquals(9 * one.met().duration_s(), many.met().duration_s(), 1e-9);
    }

    @Test
    void aFlapBeyondThoseMetIsSaidToBe() {
        IdleDrag drag = IdleFit.evidence(samples(8, 0.5, 1), FORCE).drag();
        assertEquals(0, drag.met().lowestFlap_deg(), 1e-9);
        assertEquals(10, drag.met().highestFlap_deg(), 1e-9);
        assertEquals(0, drag.flapBeyond_deg(5), 1e-9);
        assertEquals(30, drag.flapBeyond_deg(40), 1e-9);
        assertEquals(0, drag.flapBeyond_deg(Double.NaN), 1e-9);
        assertTrue(drag.areaSigma_m2(40, 22) > 2 * drag.areaSigma_m2(5, 22));
    }
}
