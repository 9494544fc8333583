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

class ProportionTest {
    // First four rows: R. G. Newcombe, Statistics in Medicine 17 (1998) 857, table I (from memory);
    // all rows recomputed with SciPy 1.17.1 binomtest(k, n).proportion_ci(0.95, 'wilson' |
    // 'exact').
    @ParameterizedTest
    @CsvSource({
        "81, 263, 0.2552885198782742, 0.36620957698280004, 0.25273674558504267, 0.36762192260134746",
        "15, 148, 0.06238639953073629, 0.16048724172330803, 0.05784401008344801, 0.16165049034947895",
        "0, 20, 0, 0.16112515805281935, 0, 0.16843347098308548",
        "1, 29, 0.006113214292762667, 0.17175521879320282, 0.0008726468835971072, 0.17764429548841465",
        "9, 10, 0.5958499732047615, 0.9821237869049271, 0.5549838829718047, 0.9974714214555375",
        "10, 10, 0.7224672001371109, 1, 0.6915028921812371, 1",
        "29, 100, 0.21014835749122268, 0.38538891175571116, 0.2035741892507459, 0.38926595890778776"
    })
    void intervalsEqualThePublishedOnes(
            int k, int n, double wLow, double wHigh, double eLow, double eHigh) {
        Proportion p = new Proportion(k, n);
        assertEquals(wLow, p.wilson(0.95).low(), 1e-12);
        assertEquals(wHigh, p.wilson(0.95).high(), 1e-12);
        assertEquals(eLow, p.exact(0.95).low(), 1e-9);
        assertEquals(eHigh, p.exact(0.95).high(), 1e-9);
    }

    @Test
    void noTrialsSayNothing() {
        Proportion none = new Proportion(0, 0);
        assertTrue(none.share().isEmpty());
        assertEquals(new Interval(0, 1, 0.95), none.wilson(0.95));
        assertEquals(new Interval(0, 1, 0.95), none.exact(0.95));
    }

    @Test
    void moreSuccessesThanTrialsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Proportion(11, 10));
        assertThrows(IllegalArgumentException.class, () -> new Proportion(-1, 10));
        assertThrows(IllegalArgumentException.class, () -> new Proportion(1, 10).wilson(1));
    }

    @Property(tries = 200, seed = "7")
    void failuresMirrorSuccesses(
            @ForAll @IntRange(max = 60) int k, @ForAll @IntRange(max = 60) int f) {
        Interval of = new Proportion(k, k + f).wilson(0.9);
        Interval mirrored = new Proportion(f, k + f).wilson(0.9);
        assertEquals(of.low(), 1 - mirrored.high(), 1e-12);
        Interval exact = new Proportion(k, k + f).exact(0.9);
        assertEquals(exact.low(), 1 - new Proportion(f, k + f).exact(0.9).high(), 1e-9);
        new Proportion(k, k + f).share().ifPresent(s -> assertTrue(exact.contains(s)));
    }
}
