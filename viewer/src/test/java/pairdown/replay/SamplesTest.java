package pairdown.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SamplesTest {
    private int asked;

    private Samples line() {
        return Samples.ofFigures(
                0,
                100,
                10,
                1,
                (t_s, into, from) -> {
                    asked++;
                    into[from] = (float) (3 * t_s);
                });
    }

    @Test
    void betweenSamplesValuesAreStraight() {
        Samples samples = line();
        float[] value = new float[1];
        for (double t_s : new double[] {0, 0.05, 12.34, 99.99, 100}) {
            samples.read(t_s, value);
            assertEquals(3 * t_s, value[0], 1e-3);
        }
    }

    @Test
    void outsideTheNearestEndHolds() {
        Samples samples = line();
        float[] value = new float[1];
        samples.read(-5, value);
        assertEquals(0, value[0]);
        samples.read(500, value);
        assertEquals(300, value[0], 1e-3);
    }

    @Test
    void whatWasTakenBesideIsNotTakenAgain() {
        Samples samples = line();
        float[] value = new float[1];
        samples.read(50, value);
        samples.takeBeside(50);
        int before = asked;
        assertTrue(before < 110, () -> before + " samples for three blocks of 32");
        for (double t_s = 47; t_s < 53; t_s += 0.1) {
            samples.read(t_s, value);
        }
        assertEquals(before, asked);
    }
}
