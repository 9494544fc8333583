package pairdown.debrief;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Columns written at 20 Hz. */
class HeldValuesTest {
    private static final int ROWS = 2000;
    private static final double ROW_S = 0.05;

    private static double[] times() {
        return IntStream.range(0, ROWS).mapToDouble(i -> i * ROW_S).toArray();
    }

    /** A noisy channel measured in every so many rows and repeated until then. */
    private static float[] held(int rows) {
        Random random = new Random(7);
        float[] value = new float[ROWS];
        for (int i = 0; i < ROWS; i++) {
            value[i] = i % rows == 0 ? (float) random.nextGaussian() : value[i - 1];
        }
        return value;
    }

    private static int[] all() {
        return IntStream.range(0, ROWS).toArray();
    }

    @Test
    void everyRowOfAChannelMeasuredInEveryRowCounts() {
        assertArrayEquals(all(), HeldValues.measured(times(), held(1)));
    }

    @Test
    void repeatsAreNoMeasurements() {
        int[] kept = HeldValues.measured(times(), held(10));
        assertArrayEquals(IntStream.range(0, ROWS / 10).map(k -> 10 * k).toArray(), kept);
    }

    @Test
    void updatesThatDoNotFallOnRowsAreFoundAsWell() {
        Random random = new Random(8);
        float[] value = new float[ROWS];
        double next_s = 0;
        for (int i = 0; i < ROWS; i++) {
            value[i] = i * ROW_S >= next_s ? (float) random.nextGaussian() : value[i - 1];
            next_s += i * ROW_S >= next_s ? 0.17 : 0;
        }
        int[] kept = HeldValues.measured(times(), value);
        assertEquals(ROWS * ROW_S / 0.17, kept.length, 2);
    }

    @Test
    void aLeverAtRestKeepsItsSamplesAndMovesAfterTheLastOfThem() {
        float[] lever = new float[ROWS];
        for (int i = 0; i < ROWS; i++) {
            int update = i - i % 10;
            double swing_s = update * ROW_S % 20;
            lever[i] = (float) (swing_s < 10 ? -60 : Math.max(-80, -60 - 8 * (swing_s - 10)));
        }
        int[] kept = HeldValues.measured(times(), lever);
        int moved =
                IntStream.range(0, kept.length)
                        .filter(k -> lever[kept[k]] < -60)
                        .findFirst()
                        .orElseThrow();
        double before_s = kept[moved - 1] * ROW_S;
        assertTrue(kept[moved] * ROW_S - before_s <= 1, before_s + " s");
        for (int k = 1; k < kept.length; k++) {
            assertTrue((kept[k] - kept[k - 1]) * ROW_S < 1.1);
        }
    }

    @Test
    void aChannelThatSeldomChangesKeepsAllRows() {
        float[] flap = new float[ROWS];
        for (int i = 0; i < ROWS; i++) {
            flap[i] = (float) Math.floor(i / 60.0);
        }
        assertArrayEquals(all(), HeldValues.measured(times(), flap));
    }
}
