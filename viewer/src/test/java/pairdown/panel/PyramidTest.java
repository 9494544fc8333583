package pairdown.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import pairdown.track.Series;

class PyramidTest {
    @Property(tries = 200, seed = "20310514")
    void anyStretchHasTheLeastAndGreatestOfItsSamples(
            @ForAll @IntRange(min = 1, max = 500) int size,
            @ForAll @IntRange(min = 0, max = 499) int from,
            @ForAll @IntRange(min = 0, max = 499) int to,
            @ForAll long seed) {
        Random random = new Random(seed);
        float[] values = new float[size];
        for (int i = 0; i < size; i++) {
            values[i] = random.nextInt(10) == 0 ? Float.NaN : (float) random.nextGaussian();
        }
        Pyramid pyramid = Pyramid.of(100, 0.5, values);
        float least = Float.NaN;
        float greatest = Float.NaN;
        for (int i = from; i <= Math.min(to, size - 1); i++) {
            if (!Float.isNaN(values[i])) {
                least = Float.isNaN(least) ? values[i] : Math.min(least, values[i]);
                greatest = Float.isNaN(greatest) ? values[i] : Math.max(greatest, values[i]);
            }
        }
        double from_s = 100 + 0.5 * from;
        double to_s = 100 + 0.5 * to;
        assertEquals(least, pyramid.least(from_s, to_s));
        assertEquals(greatest, pyramid.greatest(from_s, to_s));
    }

    @Test
    void aSinglePeakOfAnUnevenLogIsKept() {
        double[] t_s = new double[1000];
        float[] v = new float[1000];
        for (int i = 0; i < 1000; i++) {
            t_s[i] = i * 0.1 + (i % 3) * 0.01;
        }
        v[517] = 9;
        Pyramid pyramid = Pyramid.of(Series.of(t_s, v, false));
        assertEquals(9, pyramid.greatest(0, 100));
        assertEquals(0, pyramid.greatest(0, 50));
    }

    @Test
    void aHoleStaysAHole() {
        double[] t_s = {0, 0.1, 0.2, 0.3, 9.0, 9.1, 9.2};
        float[] v = {1, 1, 1, 1, 2, 2, 2};
        Pyramid pyramid = Pyramid.of(Series.of(t_s, v, false));
        assertTrue(Float.isNaN(pyramid.least(1, 8)));
        assertTrue(Double.isNaN(pyramid.at(5)));
        assertEquals(2, pyramid.least(8, 10));
    }
}
