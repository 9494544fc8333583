package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import pairdown.vector.Vec3;

/** Lags, wander, shaking and the streams they draw from. */
class NoiseAndLagTest {
    @Test
    void aLagHasDoneTwoThirdsOfItsStepAfterItsTime() {
        Lag lag = new Lag(0.5, 1);
        for (int i = 0; i < 500; i++) {
            lag.step(3, 0.001);
        }
        assertEquals(1 + 2 * (1 - Math.exp(-1)), lag.value(), 1e-3);
        assertEquals(7, new Lag(0.1, 0).step(7, 5), 0, "never past what it follows");
    }

    @Test
    void aWanderKeepsUnitVarianceAndItsTime() {
        Wander wander = new Wander(new Random(8), 1.5);
        double squares = 0;
        double products = 0;
        double[] last = new double[75];
        int n = 400_000;
        for (int i = 0; i < n; i++) {
            double now = wander.step(0.02);
            squares += now * now;
            products += now * last[i % last.length];
            last[i % last.length] = now;
        }
        // 8,000 s at 1.5 s: some 2,700 independent squares, sigma 0.03.
        assertEquals(1, squares / n, 0.09);
        // After its time, 75 steps of 0.02 s, a correlation of 1/e.
        assertEquals(Math.exp(-1), products / squares, 0.06);
    }

    @Test
    void buffetMakesRatesOfTheStatedSize() {
        // (0.3 + 4·max(0, Tc′ − 0.7))°/s in pitch and yaw, and 0.2°/s of slow unrest.
        for (double coefficient : new double[] {0.5, 1.1}) {
            Airframe a = new Airframe(1650, new Tail(new Random(1)), new Vec3(0, 0, 3000), 0);
            double density = 2 * Airframe.REFERENCE_PA / (38 * 38);
            a.velocity_mps = new Vec3(0, 38, 0);
            a.feel(Vec3.ZERO, density);
            a.tail.step(coefficient, 0.01);
            Shake shake = new Shake(new Random(5));
            double rate = 0;
            double squares = 0;
            int n = 60_000;
            for (int i = 0; i < n; i++) {
                shake.step(a, 0, 0.01);
                rate += (shake.pitch_radps2() - Airframe.DAMPING * rate) * 0.01;
                squares += rate * rate;
            }
            double buffet_dps = 0.3 + 4 * Math.max(0, coefficient - 0.7);
            assertEquals(
                    Math.hypot(buffet_dps, 0.2),
                    Math.toDegrees(Math.sqrt(squares / n)),
                    0.1 * buffet_dps,
                    "at Tc′ " + coefficient);
        }
    }

    @Test
    void theLeverMovesAtAnEvenRateInWholePerCents() {
        LeverHand hand = new LeverHand();
        hand.move(5, -0.4037);
        assertEquals(-0.40, hand.wanted(), 1e-12);
        for (int i = 0; i < 20; i++) {
            hand.step(0.01);
        }
        assertEquals(-0.65 * 0.2, hand.lever(), 1e-9);
        for (int i = 0; i < 100; i++) {
            hand.step(0.01);
        }
        assertEquals(-0.40, hand.lever(), 1e-12);
        hand.move(9, -0.401); // the same whole per cent
        hand.move(11, -7);
        assertEquals(-1, hand.wanted(), 1e-12);
        assertEquals(2, hand.changes().size());
        assertEquals(5, hand.changes().get(0).time_s());
        assertEquals(-40, hand.changes().get(0).to_pct(), 1e-9);
        assertEquals(-40, hand.changes().get(1).from_pct(), 1e-9);
        assertEquals(3, hand.rested_s(14), 1e-12);
    }

    @Test
    void aStreamIsThatOfItsSeedAndPurpose() {
        double first = Streams.of(7, "air").nextGaussian();
        assertEquals(first, Streams.of(7, "air").nextGaussian());
        assertNotEquals(first, Streams.of(8, "air").nextGaussian());
        assertNotEquals(first, Streams.of(7, "ship").nextGaussian());
    }

    @Test
    void streamsOfNearSeedsAreUnlike() {
        double products = 0;
        for (long seed = 0; seed < 4000; seed++) {
            products +=
                    Streams.of(seed, "air").nextGaussian()
                            * Streams.of(seed + 1, "air").nextGaussian();
        }
        assertEquals(0, products / 4000, 3 / Math.sqrt(4000));
    }
}
