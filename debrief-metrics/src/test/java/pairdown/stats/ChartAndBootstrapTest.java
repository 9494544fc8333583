package pairdown.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ChartAndBootstrapTest {
    // NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2, flow rate of ten batches: mean
    // 50.81,
    // mean range 1.8778, limits 45.8159 and 55.8041 (from memory, recomputed by hand).
    private static final double[] FLOW = {
        49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1
    };

    private static final double[] SAMPLE = {2.1, 3.4, 1.9, 5.6, 4.4, 3.8, 2.7, 6.1, 3.3, 4.9};

    @Test
    void limitsEqualTheHandbookExample() {
        IndividualsChart chart = IndividualsChart.of(FLOW);
        assertEquals(50.81, chart.mean(), 1e-9);
        assertEquals(1.8778, chart.meanRange(), 5e-5);
        assertEquals(45.8159, chart.limits().orElseThrow().low(), 5e-5);
        assertEquals(55.8041, chart.limits().orElseThrow().high(), 5e-5);
        assertTrue(chart.outside().isEmpty());
    }

    @Test
    void aWildFigureIsOutside() {
        double[] wild = Arrays.copyOf(FLOW, FLOW.length + 1);
        wild[FLOW.length] = 70;
        assertEquals(List.of(FLOW.length), IndividualsChart.of(wild).outside());
    }

    @Test
    void sevenPointsHaveNoLimits() {
        assertTrue(IndividualsChart.of(Arrays.copyOf(FLOW, 7)).limits().isEmpty());
        assertTrue(IndividualsChart.of(Arrays.copyOf(FLOW, 8)).limits().isPresent());
        assertThrows(IllegalArgumentException.class, IndividualsChart::of);
    }

    // SciPy 1.17.1 bootstrap((s,), np.mean, n_resamples=200000, method='percentile'): 3.00 to 4.67;
    // np.median: 2.7 to 5.0. With 20000 resamples the ends wander by about 0.01.
    @Test
    void percentileIntervalsEqualTheLibrary() {
        Bootstrap bootstrap = new Bootstrap(1, 20_000);
        Interval mean =
                bootstrap
                        .interval(SAMPLE, s -> Arrays.stream(s).average().orElseThrow(), 0.95)
                        .orElseThrow();
        assertEquals(3.00, mean.low(), 0.03);
        assertEquals(4.67, mean.high(), 0.03);
        Interval median =
                bootstrap.interval(SAMPLE, s -> Robust.median(s).orElseThrow(), 0.95).orElseThrow();
        assertEquals(2.7, median.low(), 0.06);
        assertEquals(5.0, median.high(), 0.16);
    }

    @Test
    void theSameSeedGivesTheSameInterval() {
        assertEquals(
                Bootstrap.DEFAULT.interval(SAMPLE, s -> s[0] + s[1], 0.9),
                Bootstrap.DEFAULT.interval(SAMPLE, s -> s[0] + s[1], 0.9));
    }

    @Test
    void threeValuesHaveNoInterval() {
        assertTrue(Bootstrap.DEFAULT.interval(new double[] {1, 2, 3}, s -> s[0], 0.95).isEmpty());
    }

    @Test
    void theBandCoversTheTrueMeanAboutAsOftenAsItSays() {
        Random random = new Random(5);
        int covered = 0;
        int places = 0;
        for (int trial = 0; trial < 40; trial++) {
            List<double[]> curves = new ArrayList<>();
            for (int i = 0; i < 20; i++) {
                curves.add(random.doubles(5, 0, 2).toArray());
            }
            for (Bootstrap.BandPoint p : new Bootstrap(trial, 500).band(curves, 0.95)) {
                places++;
                covered += p.low() <= 1 && p.high() >= 1 ? 1 : 0;
            }
        }
        // 95 % nominal, some 92 % for percentile intervals of 20; 200 places, 40 independent.
        assertEquals(0.925, covered / (double) places, 0.06);
    }

    @Test
    void aMissingValueCountsOneCurveLess() {
        double nan = Double.NaN;
        List<double[]> curves =
                List.of(
                        new double[] {1, nan},
                        new double[] {2, nan},
                        new double[] {3, nan},
                        new double[] {4, 8});
        List<Bootstrap.BandPoint> band = Bootstrap.DEFAULT.band(curves, 0.95);
        assertEquals(4, band.get(0).count());
        assertEquals(2.5, band.get(0).mean(), 1e-12);
        assertEquals(1, band.get(1).count());
        assertEquals(8, band.get(1).mean(), 1e-12);
        assertTrue(Double.isNaN(band.get(1).low()));
    }
}
