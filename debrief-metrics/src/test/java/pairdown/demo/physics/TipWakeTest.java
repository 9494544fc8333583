package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import pairdown.atmosphere.Atmosphere;
import pairdown.vector.Vec3;

/** The upwash beside the tips at the target, level, nose and motion to the north. */
class TipWakeTest {
    private static final double WEIGHT_N = 1650 * Atmosphere.GRAVITY_MPS2;
    private static final double DENSITY = Atmosphere.STANDARD.density_kgpm3(3048);

    /** A receiver's slot and tip lie so far behind and above the centre of gravity (m). */
    private static final Vec3 TIP_M = new Vec3(0, -0.4, 0.3);

    private static TipWake wake() {
        Airframe body = new Airframe(1650, new Tail(new Random(1)), Vec3.ZERO, 0);
        body.velocity_mps = new Vec3(0, 38, 0);
        body.feel(Vec3.ZERO, DENSITY);
        return new TipWake(body, WEIGHT_N, DENSITY);
    }

    /** The wind so far outside the right tip and behind it. */
    private static Vec3 outside_mps(double out_m, double behind_m) {
        return wake().wind_mps(TIP_M.plus(new Vec3(7.1 + out_m, -behind_m, 0)));
    }

    @Test
    void theStrengthIsThatOfAnEllipticLift() {
        // Γ = L/(ρ·V·(π/4)·b): 43 m²/s, Kutta–Joukowski with an elliptic span loading.
        double strength = WEIGHT_N / (DENSITY * 38 * Math.PI / 4 * Side.SPAN_M);
        assertEquals(43, strength, 1);
        // Far behind, Γ/2πr from the near tip less the same from the far one.
        for (double out_m : new double[] {2, 4, 8}) {
            double near = strength / (2 * Math.PI) * out_m / (out_m * out_m + 0.25);
            double far_m = out_m + Side.SPAN_M;
            double far = strength / (2 * Math.PI) * far_m / (far_m * far_m + 0.25);
            assertEquals(near - far, outside_mps(out_m, 2000).z(), 0.01, out_m + " m");
        }
    }

    @Test
    void upwashBesideAFullVortexIsThatOfTheTable() {
        // Biot–Savart: 6.8 m/s at 1 m, 3.4 at 2 m, 1.7 at 4 m, the near vortex alone without its
        // core; the far tip and the core take up to a fifth.
        double[][] rows = {{1, 6.8}, {2, 3.4}, {4, 1.7}};
        for (double[] row : rows) {
            double found = outside_mps(row[0], 2000).z();
            assertTrue(found < row[1] && found > 0.7 * row[1], row[0] + " m: " + found);
        }
    }

    @Test
    void abeamItsStartAVortexHasHalfItsStrength() {
        assertEquals(0.5, outside_mps(2, 0).z() / outside_mps(2, 3000).z(), 0.01);
        assertTrue(outside_mps(2, -20).z() < 0.01);
    }

    @Test
    void airGoesUpOutsideTheTipsAndDownBetweenThem() {
        assertTrue(outside_mps(1.5, 5).z() > 0);
        assertTrue(wake().wind_mps(TIP_M.plus(new Vec3(0, -20, 0))).z() < 0);
    }

    @Property(tries = 30, seed = "20310514")
    void leftAndRightAreMirrored(
            @ForAll @DoubleRange(min = 0, max = 30) double right_m,
            @ForAll @DoubleRange(min = -10, max = 30) double behind_m,
            @ForAll @DoubleRange(min = -5, max = 5) double above_m) {
        Vec3 a = wake().wind_mps(new Vec3(right_m, -behind_m, above_m));
        Vec3 b = wake().wind_mps(new Vec3(-right_m, -behind_m, above_m));
        assertEquals(a.x(), -b.x(), 1e-9);
        assertEquals(a.y(), b.y(), 1e-9);
        assertEquals(a.z(), b.z(), 1e-9);
    }
}
