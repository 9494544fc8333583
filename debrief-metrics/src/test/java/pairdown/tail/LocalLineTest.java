package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class LocalLineTest {
    private static final double STEP_S = 0.0625;

    private final LocalLine line = new LocalLine(0.12, STEP_S);

    private static double[] column(int n, java.util.function.DoubleUnaryOperator of) {
        double[] c = new double[n];
        for (int i = 0; i < n; i++) {
            c[i] = of.applyAsDouble(i * STEP_S);
        }
        return c;
    }

    @Test
    void aStraightLineStaysItselfUpToItsEnds() {
        double[] c = column(50, t -> 3 - 2 * t);
        for (int i = 0; i < c.length; i++) {
            assertEquals(c[i], line.value(c)[i], 1e-9);
            assertEquals(-2, line.slope(c)[i], 1e-9);
        }
    }

    // The Gaussian's transfer at angular frequency w is exp(−(w·sigma)²/2) for the value, and the
    // slope is the derivative of that value.
    @Test
    void theSlopeIsTheDerivativeOfTheValue() {
        double w = 4;
        double[] c = column(200, t -> Math.sin(w * t));
        double damping = Math.exp(-w * w * 0.12 * 0.12 / 2);
        for (int i = 20; i < 180; i++) {
            assertEquals(damping * Math.sin(w * i * STEP_S), line.value(c)[i], 5e-3);
            assertEquals(damping * w * Math.cos(w * i * STEP_S), line.slope(c)[i], 2e-2 * w);
        }
    }

    @Test
    void aMissingSampleStaysMissingAndItsNeighboursDoWithoutIt() {
        double[] c = column(50, t -> 3 - 2 * t);
        c[20] = Double.NaN;
        assertTrue(Double.isNaN(line.value(c)[20]));
        assertEquals(3 - 2 * 21 * STEP_S, line.value(c)[21], 1e-9);
        assertEquals(-2, line.slope(c)[19], 1e-9);
    }
}
