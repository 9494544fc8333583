package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import pairdown.vector.Vec3;

/**
 * A hand on the tip: 400 N/m, 150 N s/m, 150 N of weight, slips above 250 N; common practice, no
 * source.
 */
class GripTest {
    private static final double DT_S = 0.02;

    private static Grip holding() {
        Grip grip = new Grip();
        grip.force_N(new Vec3(0.1, 0, 0), Vec3.ZERO, true, 10, DT_S);
        assertTrue(grip.isHolding());
        return grip;
    }

    @Test
    void aHandTakesHoldWithinReachAndNotTooFast() {
        assertFalse(reaching(0.7, 0.2).isHolding());
        assertFalse(reaching(0.4, 1.3).isHolding());
        Grip grip = reaching(0.4, 0.2);
        assertTrue(grip.isHolding());
        assertEquals(10, grip.since_s());
        assertTrue(Double.isNaN(grip.until_s()));
    }

    private static Grip reaching(double away_m, double speed_mps) {
        Grip grip = new Grip();
        grip.force_N(new Vec3(0, -away_m, 0), new Vec3(0, speed_mps, 0), true, 10, DT_S);
        return grip;
    }

    @Test
    void theArmIsASpringAndADamper() {
        Vec3 force = holding().force_N(new Vec3(0, -0.3, 0), new Vec3(0.2, 0, 0), true, 11, DT_S);
        assertEquals(400 * 0.3, force.y(), 1e-9);
        assertEquals(-150 * 0.2, force.x(), 1e-9);
    }

    @Test
    void theArmTakesWeightWithinATenthOfASecond() {
        Grip grip = holding();
        for (double[] row : new double[][] {{10.05, 75}, {10.1, 150}, {12, 150}}) {
            Vec3 force = grip.force_N(Vec3.ZERO, Vec3.ZERO, true, row[0], DT_S);
            assertEquals(row[1], force.z(), 1e-6, row[0] + " s");
        }
    }

    @Property(tries = 40, seed = "20310514")
    void theHandSlipsAboveTwoHundredAndFiftyNewtons(
            @ForAll @DoubleRange(min = -1, max = 1) double off_m,
            @ForAll @DoubleRange(min = -3, max = 3) double speed_mps) {
        Vec3 off = new Vec3(off_m, 0.2, 0);
        Vec3 force = holding().force_N(off, new Vec3(0, speed_mps, 0), true, 11, DT_S);
        assertTrue(force.norm() <= 250 + 1e-9);
    }

    @Test
    void aHandIsTornAwayAndTakesHoldNoMoreOfItself() {
        Grip grip = holding();
        assertEquals(0, grip.force_N(new Vec3(1.6, 0, 0), Vec3.ZERO, true, 14, DT_S).norm());
        assertFalse(grip.isHolding());
        assertEquals(14, grip.until_s());
    }

    @Test
    void aHandLetsGoWhenItIsWanted() {
        Grip grip = holding();
        grip.force_N(new Vec3(0.1, 0, 0), Vec3.ZERO, false, 16, DT_S);
        assertFalse(grip.isHolding());
    }

    @Test
    void theBlowDiesAwayWithinAQuarterSecond() {
        Grip grip = holding();
        double first_g = grip.blow_g();
        assertTrue(first_g > 0.3, "a logger's jolt of 0.3 g and more");
        for (int i = 0; i < 13; i++) {
            grip.force_N(new Vec3(0.1, 0, 0), Vec3.ZERO, true, 10 + i * DT_S, DT_S);
        }
        assertTrue(grip.blow_g() < 0.05 * first_g);
    }
}
