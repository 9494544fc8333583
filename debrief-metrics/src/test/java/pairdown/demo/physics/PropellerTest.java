package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import pairdown.atmosphere.Atmosphere;
import pairdown.units.Unit;

class PropellerTest {
    private static final String SEED = "20310514";
    private static final double TARGET_MPS = 37.998;
    private static final double SINK_MPS = 17.78;
    private static final double DENSITY = Atmosphere.STANDARD.density_kgpm3(3048);
    private static final double PRESSURE_PA = 0.5 * DENSITY * TARGET_MPS * TARGET_MPS;

    private static double afterSteps(Propeller p, double lever, double lasting_s) {
        for (int i = 0; i < Math.rint(lasting_s / 0.001); i++) {
            p.step(lever, TARGET_MPS, DENSITY, 0.001);
        }
        return p.thrust_N();
    }

    @Test
    void theMapHasItsStatedPoints() {
        // The demo aeroplane's map: common practice, no published source.
        double idle_N = -0.55 * PRESSURE_PA;
        assertEquals(idle_N, Propeller.steady_N(0, TARGET_MPS, DENSITY), 1e-9);
        assertEquals(12_000, Propeller.steady_N(1, 20, 1.225), 1);
        assertEquals(0.75 * 560_000 / 60, Propeller.steady_N(1, 60, 1.225), 1);
        double full_N = 4000 * DENSITY / 1.225 + 1.2 * PRESSURE_PA * Propeller.DISC_M2;
        assertEquals(-full_N, Propeller.steady_N(-1, TARGET_MPS, DENSITY), 1e-6);
    }

    @Test
    void theMapHasNoStepAtIdle() {
        double below_N = Propeller.steady_N(-1e-9, TARGET_MPS, DENSITY);
        double above_N = Propeller.steady_N(1e-9, TARGET_MPS, DENSITY);
        assertEquals(below_N, above_N, 1e-3);
    }

    @Property(tries = 60, seed = SEED)
    void theLeverOfAThrustGivesThatThrust(
            @ForAll @DoubleRange(min = -0.98, max = 0.98) double lever,
            @ForAll @DoubleRange(min = 25, max = 65) double true_mps,
            @ForAll @DoubleRange(min = 0.8, max = 1.2) double density_kgpm3) {
        double thrust_N = Propeller.steady_N(lever, true_mps, density_kgpm3);
        double found = Propeller.lever(thrust_N, true_mps, density_kgpm3);
        assertEquals(thrust_N, Propeller.steady_N(found, true_mps, density_kgpm3), 0.1);
    }

    @Property(tries = 60, seed = SEED)
    void moreLeverIsMoreThrust(
            @ForAll @DoubleRange(min = -1, max = 0.99) double lever,
            @ForAll @DoubleRange(min = 25, max = 65) double true_mps) {
        assertTrue(
                Propeller.steady_N(lever, true_mps, DENSITY)
                        <= Propeller.steady_N(lever + 0.01, true_mps, DENSITY));
    }

    @Test
    void theBladeFollowsInFourTenthsOfASecondAndTheTorqueInOne() {
        Propeller p = new Propeller();
        double idle_N = afterSteps(p, 0, 5);
        double fresh_pct = p.torque_pct();
        double wanted_N = Propeller.steady_N(-0.6, TARGET_MPS, DENSITY);
        double after_N = afterSteps(p, -0.6, 0.4);
        // A first-order lag has done 1 − 1/e of its step after its time constant.
        assertEquals(1 - Math.exp(-1), (after_N - idle_N) / (wanted_N - idle_N), 2e-3);
        assertEquals(11 - 25 * 0.6 * (1 - Math.exp(-1)), p.bladeAngle_deg(), 0.05);
        afterSteps(p, -0.6, 0.6);
        double wanted_pct = fresh_pct + 54 * 0.6;
        assertEquals(
                1 - Math.exp(-1), (p.torque_pct() - fresh_pct) / (wanted_pct - fresh_pct), 2e-3);
    }

    @Test
    void aBrakingCoefficientOfOneIsFourKilonewtonsAtTheTarget() {
        assertEquals(6.158, Propeller.DISC_M2, 5e-4);
        double thrust_N = -653 * Propeller.DISC_M2;
        assertEquals(4021, -thrust_N, 1);
        Propeller p = new Propeller();
        double lever = Propeller.lever(thrust_N, TARGET_MPS, DENSITY);
        afterSteps(p, lever, 8);
        assertEquals(1, p.coefficient(653), 1e-3);
    }

    @Test
    void theTargetAsksForFourAndAHalfKilonewtonsOfBraking() {
        // Balance along a steady path: T_rev = W sin γ − D, lift = W cos γ; 1,650 kg, full flap.
        double weight_N = 1650 * Atmosphere.GRAVITY_MPS2;
        double sine = SINK_MPS / TARGET_MPS;
        assertEquals(27.90, Math.toDegrees(Math.asin(sine)), 0.01);
        double lift_N = weight_N * Math.sqrt(1 - sine * sine);
        assertEquals(0.88, lift_N / weight_N, 0.005);
        double braking_N = weight_N * sine - Airframe.drag_N(1, lift_N, PRESSURE_PA);
        assertEquals(4500, braking_N, 50);
        assertEquals(1.11, braking_N / (PRESSURE_PA * Propeller.DISC_M2), 0.01);
    }

    @Test
    void withoutReverseNoAirspeedHasBothNumbers() {
        // The demo aeroplane with full flap at 10,000 ft: 1,500 to 1,660 ft/min at 85 mph, and
        // 3,500 ft/min only at 115 to 121 mph, between no thrust and idle drag.
        for (double idle_m2 : new double[] {0, 0.55}) {
            double slow = Unit.FOOT_PER_MINUTE.fromBase(sink_mps(37.998, idle_m2));
            assertEquals(1580, slow, 90, "at 85 mph");
            double fast = 30;
            while (sink_mps(fast, idle_m2) < SINK_MPS) {
                fast += 0.01;
            }
            assertEquals(118, Unit.MILE_PER_HOUR.fromBase(fast), 3.5, "at 3,500 ft/min");
        }
    }

    /** Sink in a steady glide at an airspeed, by the balance along and across the path. */
    private static double sink_mps(double true_mps, double idle_m2) {
        double q_Pa = 0.5 * DENSITY * true_mps * true_mps;
        double weight_N = 1650 * Atmosphere.GRAVITY_MPS2;
        double sine = 0;
        for (int i = 0; i < 50; i++) {
            double lift_N = weight_N * Math.sqrt(1 - sine * sine);
            sine = (Airframe.drag_N(1, lift_N, q_Pa) + idle_m2 * q_Pa) / weight_N;
        }
        return true_mps * sine;
    }
}
