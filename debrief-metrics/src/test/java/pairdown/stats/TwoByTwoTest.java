package pairdown.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TwoByTwoTest {
    // Row 1: R. A. Fisher's tea tasting, The Design of Experiments (1935), odds ratio 6.408, p
    // 0.4857;
    // row 2: convictions of twins, The Logic of Inductive Inference (1935), odds ratio 0.0469, p
    // 0.0005367 (from memory). All rows recomputed with SciPy 1.17.1
    // contingency.odds_ratio(t, kind='conditional').confidence_interval(0.95) and fisher_exact(t),
    // whose root finder stops at some 1e-6 of the value.
    @ParameterizedTest
    @CsvSource({
        "3, 1, 1, 3, 6.408319658199662, 0.21173559544657966, 626.2435305888141, 0.48571428571428565",
        "2, 15, 10, 3, 0.04693663904968004, 0.003317163950657366, 0.36318960235667996, 0.0005367241191434358",
        "7, 2, 3, 28, 27.84439191439364, 3.481132959310028, 397.9711562846496, 0.00019587558287248688",
        "5, 0, 2, 9, Infinity, 1.925978411337942, Infinity, 0.004807692307692307"
    })
    void oddsRatioIntervalAndProbabilityEqualThePublishedOnes(
            int a, int b, int c, int d, double odds, double low, double high, double p) {
        TwoByTwo table = new TwoByTwo(a, b, c, d);
        assertClose(odds, table.oddsRatio(), 1e-5);
        assertClose(low, table.oddsRatioInterval(0.95).low(), 1e-5);
        assertClose(high, table.oddsRatioInterval(0.95).high(), 1e-5);
        assertEquals(p, table.fisher(), 1e-10);
    }

    @Test
    void oneTableOnlySaysNothing() {
        TwoByTwo table = new TwoByTwo(0, 0, 4, 7);
        assertTrue(Double.isNaN(table.oddsRatio()));
        assertEquals(
                new Interval(0, Double.POSITIVE_INFINITY, 0.95), table.oddsRatioInterval(0.95));
        assertEquals(1, table.fisher());
        assertEquals(1, new TwoByTwo(0, 0, 0, 0).fisher());
    }

    @Test
    void aNegativeCountIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new TwoByTwo(0, -1, 0, 0));
    }

    @Property(tries = 200, seed = "11")
    void turningTheTableChangesNothing(
            @ForAll @IntRange(min = 1, max = 25) int a,
            @ForAll @IntRange(min = 1, max = 25) int b,
            @ForAll @IntRange(min = 1, max = 25) int c,
            @ForAll @IntRange(min = 1, max = 25) int d) {
        TwoByTwo table = new TwoByTwo(a, b, c, d);
        TwoByTwo turned = new TwoByTwo(a, c, b, d);
        TwoByTwo rowsSwapped = new TwoByTwo(c, d, a, b);
        assertClose(table.oddsRatio(), turned.oddsRatio(), 1e-8);
        assertClose(table.oddsRatio(), 1 / rowsSwapped.oddsRatio(), 1e-8);
        assertEquals(table.fisher(), turned.fisher(), 1e-9);
        assertTrue(table.oddsRatioInterval(0.95).contains(table.oddsRatio()));
    }

    private static void assertClose(double expected, double found, double relative) {
        if (Double.isInfinite(expected)) {
            assertEquals(expected, found);
        } else {
            assertEquals(expected, found, relative * Math.abs(expected));
        }
    }
}
