package pairdown.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SurvivalTest {
    /**
     * Weeks in remission under 6-mercaptopurine, negative where still in remission when last seen.
     * E. J. Freireich and others, Blood 21 (1963) 699; a standard example of the textbooks (from
     * memory).
     */
    private static final int[] REMISSION = {
        6, 6, 6, -6, 7, -9, 10, -10, -11, 13, 16, -17, -19, -20, 22, 23, -25, -32, -32, -34, -35
    };

    private static Survival remission() {
        double[] time = new double[REMISSION.length];
        boolean[] happened = new boolean[REMISSION.length];
        for (int i = 0; i < time.length; i++) {
            time[i] = Math.abs(REMISSION[i]);
            happened[i] = REMISSION[i] > 0;
        }
        return Survival.of(time, happened);
    }

    // SciPy 1.17.1 ecdf(CensoredData.right_censored(...)).sf; Greenwood sigma from its 'linear'
    // interval over 1.959963984540054, except at 6 where that interval is cut at 1: 0.0764 is the
    // textbooks' figure (from memory).
    @Test
    void curveAndGreenwoodSigmaEqualTheWorkedExample() {
        double[][] expected = {
            {6, 21, 3, 0.85714286, 0.07636035},
            {7, 17, 1, 0.80672269, 0.08693529},
            {10, 15, 1, 0.75294118, 0.09634965},
            {13, 12, 1, 0.69019608, 0.10681471},
            {16, 11, 1, 0.62745098, 0.11405387},
            {22, 7, 1, 0.53781513, 0.12823375},
            {23, 6, 1, 0.44817927, 0.13459146}
        };
        List<Survival.Step> steps = remission().steps();
        assertEquals(expected.length, steps.size());
        for (int i = 0; i < expected.length; i++) {
            Survival.Step s = steps.get(i);
            double[] found = {s.time_s(), s.atRisk(), s.events(), s.surviving(), s.sigma()};
            for (int k = 0; k < found.length; k++) {
                assertEquals(expected[i][k], found[k], 1e-8, "step " + i + " figure " + k);
            }
        }
    }

    // SciPy, as above, confidence_interval(0.95, method='log-log').
    @Test
    void logLogIntervalEqualsTheLibrary() {
        Survival.Step at7 = remission().steps().get(1);
        assertEquals(0.56314656, Survival.interval(at7, 0.95).low(), 1e-7);
        assertEquals(0.92280902, Survival.interval(at7, 0.95).high(), 1e-7);
    }

    @Test
    void medianIsTheTimeTheCurveFallsToAHalf() {
        assertEquals(23, remission().quantile(0.5).orElseThrow());
        assertTrue(remission().quantile(0.9).isEmpty());
        assertEquals(2, Survival.of(new double[] {1, 2, 3, 4}, all(4)).quantile(0.5).orElseThrow());
    }

    @Test
    void valuesBetweenStepsAreTheLastStep() {
        Survival s = remission();
        assertEquals(1, s.surviving(5.9));
        assertEquals(s.surviving(7), s.surviving(9.9));
        assertEquals(9, s.events());
        assertEquals(21, s.cases());
        assertEquals(35, s.longest_s());
    }

    @Test
    void noCaseKeepsTheCurveAtOne() {
        Survival none = Survival.of(List.of());
        assertEquals(1, none.surviving(100));
        assertTrue(none.quantile(0.5).isEmpty());
    }

    @Test
    void timesAndOutcomesMustGoInStep() {
        assertThrows(IllegalArgumentException.class, () -> Survival.of(new double[2], all(1)));
    }

    private static boolean[] all(int n) {
        boolean[] happened = new boolean[n];
        java.util.Arrays.fill(happened, true);
        return happened;
    }
}
