package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;
import pairdown.time.Span;

class CrossLagTest {
    private static final Grid GRID = Grid.over(new Span(0, 200), 0.1);

    private static double[] slow(long seed) {
        Random random = new Random(seed);
        double[] column = new double[GRID.size()];
        for (int i = 1; i < column.length; i++) {
            column[i] = 0.95 * column[i - 1] + random.nextGaussian();
        }
        return column;
    }

    private static double[] later(double[] column, int by, double noise, long seed) {
        Random random = new Random(seed);
        double[] later = new double[column.length];
        for (int i = 0; i < later.length; i++) {
            later[i] = -column[Math.max(0, i - by)] + noise * random.nextGaussian();
        }
        return later;
    }

    private static LagEstimate lag(double[] x, double[] y) {
        boolean[] all = new boolean[x.length];
        Arrays.fill(all, true);
        return CrossLag.of("x", x, "y", y, all, GRID, TailSettings.Review.DEFAULT).orElseThrow();
    }

    @Test
    void aFollowersLagIsFoundAndNoShiftIsAsStrong() {
        double[] x = slow(1);
        LagEstimate found = lag(x, later(x, 12, 0.5, 2));
        assertEquals(1.2, found.lag_s(), 0.05);
        assertEquals(1.0 / (found.shifts() + 1), found.probability(), 1e-12);
    }

    /** Reference: Hipparchus 3.1, PearsonsCorrelation over the overlap at the lag found. */
    @Test
    void theCorrelationIsThatOfAReferenceLibrary() {
        double[] x = slow(3);
        double[] y = later(x, 7, 1, 4);
        double r =
                new PearsonsCorrelation()
                        .correlation(
                                Arrays.copyOf(x, x.length - 7), Arrays.copyOfRange(y, 7, y.length));
        assertEquals(r, lag(x, y).correlation(), 1e-12);
    }

    /**
     * A test is honest where, with nothing to find, one in ten is at or below 0.1: of 60 between 1
     * and 13, which is 6 give or take three standard deviations of a binomial.
     */
    @Test
    void columnsThatKnowNothingOfEachOtherAreRarelyTakenToFollow() {
        int low = 0;
        for (int k = 0; k < 60; k++) {
            low += lag(slow(100 + k), slow(200 + k)).probability() <= 0.1 ? 1 : 0;
        }
        assertTrue(low <= 13, low + " of 60");
    }
}
