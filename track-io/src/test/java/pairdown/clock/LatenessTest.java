package pairdown.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import pairdown.units.Estimate;

class LatenessTest {
    private static final double S = 0.1;

    @Test
    void aLoneReferenceIsLateAsReceiversAre() {
        assertEquals(S, Lateness.alone(S).kept_s(new Estimate(0, 0.04)), 1e-12);
        assertEquals(S, Lateness.alone(S).shifted_s(0), 1e-12);
    }

    @Test
    void aLogSetByOthersIsAsLateAsTheirMean() {
        assertEquals(Math.hypot(0.05, 0.03), new Lateness(S, 4, false).shifted_s(0.03), 1e-12);
    }

    /** By drawing receivers, and keeping draws with the very same measurement. */
    @Test
    void aLogKeptAtItsOwnTimeIsLateAsDrawsWithItsMeasurementAre() {
        assertEquals(drawn_s(1, false, 0.08), new Lateness(S, 1, false).kept_s(at(0.08)), 0.003);
        assertEquals(drawn_s(3, false, 0.02), new Lateness(S, 3, false).kept_s(at(0.02)), 0.003);
        assertEquals(drawn_s(3, true, 0.08), new Lateness(S, 3, true).kept_s(at(0.08)), 0.003);
    }

    private static Estimate at(double beside_s) {
        return new Estimate(beside_s, 0.04);
    }

    private static double drawn_s(int voters, boolean isVoter, double beside_s) {
        Random random = new Random(17);
        double squares = 0;
        int n = 0;
        for (int draw = 0; draw < 400_000; draw++) {
            double own_s = S * random.nextGaussian();
            double sum_s = isVoter ? own_s : S * random.nextGaussian();
            for (int i = 1; i < voters; i++) {
                sum_s += S * random.nextGaussian();
            }
            double measured_s = own_s - sum_s / voters + 0.04 * random.nextGaussian();
            if (Math.abs(measured_s - beside_s) < 0.005) {
                squares += own_s * own_s;
                n++;
            }
        }
        return Math.sqrt(squares / n);
    }
}
