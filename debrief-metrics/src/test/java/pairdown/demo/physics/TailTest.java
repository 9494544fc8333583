package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TailTest {
    private static final double STEP_S = 0.01;

    private static Tail held(Tail tail, double coefficient, double lasting_s) {
        for (int i = 0; i < Math.rint(lasting_s / STEP_S); i++) {
            tail.step(coefficient, STEP_S);
        }
        return tail;
    }

    private static Tail tail() {
        return new Tail(new Random(2));
    }

    /**
     * Wake over free-stream dynamic pressure behind a braking disc, by momentum: the flow through
     * the disc goes at the mean of the speeds far before and far behind it, and braking is mass
     * flow times the speed taken away. Solved here for the wake's speed by bisection. Source:
     * actuator-disc theory (Rankine 1865, Froude 1889), any textbook on propellers.
     */
    private static double wake(double coefficient) {
        double slow = 0;
        double fast = 1;
        for (int i = 0; i < 60; i++) {
            double w = (slow + fast) / 2;
            double braking = (1 + w) / 2 * (1 - w) * 2; // ρ·A·V·(1+w)/2 · V·(1−w) over q·A
            if (braking > coefficient) {
                slow = w;
            } else {
                fast = w;
            }
        }
        return slow * slow;
    }

    @Property(tries = 30, seed = "20310514")
    void theWakeIsThatOfMomentumTheory(@ForAll @DoubleRange(min = 0, max = 0.98) double c) {
        assertEquals(1 - c, wake(c), 1e-9);
        Tail tail = held(tail(), c, 4);
        assertEquals(
                1 - Tail.ELEVATOR_SHARE + Tail.ELEVATOR_SHARE * wake(c), tail.elevator(), 1e-5);
        assertEquals(1 - Tail.RUDDER_SHARE + Tail.RUDDER_SHARE * wake(c), tail.rudder(), 1e-5);
    }

    @Test
    void forwardThrustTakesNothingFromTheTail() {
        Tail tail = held(tail(), -0.4, 3);
        assertEquals(1, tail.elevator(), 1e-9);
        assertEquals(1, tail.rudder(), 1e-9);
    }

    @Test
    void atTheTargetTheTailHasFourTenthsOfItsAir() {
        assertEquals(0.4, held(tail(), 1.11, 5).elevator(), 1e-3);
    }

    @Test
    void theWakeClosesAfterFourTenthsOverOnePointTwo() {
        assertFalse(held(tail(), 1.3, 0.35).isClosed());
        assertTrue(held(tail(), 1.3, 0.45).isClosed());
        assertFalse(held(tail(), 1.19, 20).isClosed());
        assertEquals(0.4 * 0.4, held(tail(), 1.3, 5).elevator(), 1e-3);
    }

    @Test
    void aDipUnderOnePointTwoStartsTheWaitAnew() {
        Tail tail = tail();
        for (int i = 0; i < 20; i++) {
            held(tail, 1.3, 0.3);
            held(tail, 1.15, 0.02);
        }
        assertFalse(tail.isClosed());
    }

    @Test
    void theWakeOpensOnlyWellUnderOneAndAfterAWhile() {
        Tail tail = held(tail(), 1.3, 1);
        assertTrue(held(tail, 1.05, 10).isClosed());
        assertTrue(held(tail, 0.9, 0.25).isClosed());
        assertFalse(held(tail, 0.9, 0.6).isClosed());
    }

    @Test
    void howLongTheWakeStaysShutIsThreeToEightTenths() {
        double least_s = 9;
        double most_s = 0;
        Tail tail = tail();
        for (int i = 0; i < 200; i++) {
            held(tail, 1.3, 1);
            double open_s = 0;
            while (tail.isClosed()) {
                tail.step(0.5, STEP_S);
                open_s += STEP_S;
            }
            least_s = Math.min(least_s, open_s);
            most_s = Math.max(most_s, open_s);
        }
        assertEquals(0.3, least_s, 0.03);
        assertEquals(0.8, most_s, 0.03);
    }

    @Test
    void theAirTakesThreeTenthsFromDiscToTail() {
        Tail tail = held(tail(), 0, 2);
        held(tail, 0.8, 0.3);
        double done = (1 - tail.elevator()) / (0.8 * Tail.ELEVATOR_SHARE);
        assertEquals(1 - Math.exp(-1), done, 0.01);
    }

    @Test
    void buffetGrowsWithBraking() {
        assertEquals(0.3, held(tail(), 0.5, 1).buffet_dps(), 1e-9);
        assertEquals(0.3 + 4 * 0.4, held(tail(), 1.1, 1).buffet_dps(), 1e-9);
    }
}
