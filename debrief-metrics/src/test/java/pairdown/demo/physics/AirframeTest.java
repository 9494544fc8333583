package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import pairdown.atmosphere.Atmosphere;
import pairdown.vector.Vec3;

class AirframeTest {
    private static final double DENSITY = Atmosphere.STANDARD.density_kgpm3(3048);
    private static final double STEP_S = 0.01;

    /** Level, wings level, at the target's dynamic pressure, nothing turning. */
    private static Airframe flying() {
        Airframe a = new Airframe(1650, new Tail(new Random(1)), new Vec3(0, 0, 3000), 0);
        double speed_mps = Math.sqrt(2 * Airframe.REFERENCE_PA / DENSITY);
        a.velocity_mps = new Vec3(0, speed_mps, 0);
        a.feel(Vec3.ZERO, DENSITY);
        return a;
    }

    /** One step with nothing shaking it: a shake that has not begun. */
    private static void step(Airframe a, Controls c, Push push, double dt_s) {
        a.feel(Vec3.ZERO, DENSITY);
        a.step(c, push, new Shake(new Random(1)), DENSITY, dt_s);
    }

    private static Controls controls(double elevator, double rudder, double aileron) {
        return new Controls(elevator, rudder, aileron, 0.3, 0);
    }

    @Test
    void aHandAtTheTipRollsItTwoDegreesASecond() {
        // 100 N down at a 7.1 m tip: about 2°/s of steady roll, reached with 0.17 s.
        Push push = Push.at(new Vec3(0, 7.1, 0), new Vec3(0, 0, -100));
        assertEquals(710, push.roll_Nm(), 1e-9);
        Airframe a = flying();
        double at_s = 0;
        double afterOne = Double.NaN;
        for (int i = 0; i < 100; i++) {
            step(a, controls(0, 0, 0), push, STEP_S);
            at_s += STEP_S;
            if (Double.isNaN(afterOne) && at_s >= Airframe.ROLL_S - 1e-9) {
                afterOne = a.rollRate_radps;
            }
        }
        double steady_dps = Math.toDegrees(a.rollRate_radps);
        assertEquals(2, steady_dps, 0.1);
        // After the time constant 1 − 1/e of it; steps of 0.01 s against 0.17 s add 0.02.
        assertEquals(1 - Math.exp(-1), afterOne / a.rollRate_radps, 0.03);
    }

    @Test
    void pushesTurnItTheWayTheyPush() {
        // Ahead, right, above: a pull back on the right tip turns right, up on it rolls left.
        assertTrue(Push.at(new Vec3(0, 7, 0), new Vec3(-50, 0, 0)).yaw_Nm() > 0);
        assertTrue(Push.at(new Vec3(0, 7, 0), new Vec3(0, 0, 50)).roll_Nm() < 0);
        assertTrue(Push.at(new Vec3(2, 0, 0), new Vec3(0, 0, 50)).pitch_Nm() > 0);
        Push two = Push.at(new Vec3(0, 7, 0), new Vec3(0, 0, 50));
        Push sum = two.plus(Push.at(new Vec3(0, -7, 0), new Vec3(0, 0, 50)));
        assertEquals(0, sum.roll_Nm(), 1e-9);
        assertEquals(100, sum.force_N().z(), 1e-9);
    }

    @Test
    void theTailAnswersAsFirstOrderRates() {
        // q̇ = 6·η·δe − 2·q and ṙ = 6·η·δr − 2·r at the reference pressure (rad, s).
        Airframe a = flying();
        step(a, controls(0.2, -0.3, 0), Push.NONE, 0.001);
        double travel = Airframe.TRAVEL_RAD;
        assertEquals(6 * 0.2 * travel, a.pitchRate_radps / 0.001, 0.01);
        assertEquals(-6 * 0.3 * travel, a.yawRate_radps / 0.001, 0.01);
        a.pitchRate_radps = 0.1;
        double before = a.pitchRate_radps;
        step(a, controls(0, 0, 0), Push.NONE, 0.001);
        assertEquals(-2 * 0.1, (a.pitchRate_radps - before) / 0.001, 0.01);
    }

    @Test
    void aSlipIsWeathercockedAway() {
        Airframe a = flying();
        a.heading_rad = -0.1; // the wind comes from the right
        a.feel(Vec3.ZERO, DENSITY);
        assertEquals(0.1, a.slip_rad, 1e-6);
        step(a, controls(0, 0, 0), Push.NONE, 0.2);
        assertTrue(a.yawRate_radps > 0, "turns right, into it");
    }

    @Test
    void liftIsCappedAtItsMost() {
        Airframe a = flying();
        a.pitch_rad = 0.6;
        a.feel(Vec3.ZERO, DENSITY);
        double most_N = 2.2 * Airframe.WING_M2 * a.dynamicPressure_Pa;
        assertEquals(most_N, a.lift_N(1), 1e-6);
        for (int i = 0; i < 400; i++) {
            a.tail.step(1, 0.01);
        }
        assertEquals(0.9 * most_N, a.lift_N(1), 1e-6, "braking takes a tenth at Tc′ = 1");
    }

    @Test
    void dragIsThatOfItsCoefficients() {
        // CD = 0.05 clean, 0.14 with full flap, and 0.054·CL² (common practice, no source).
        double q_Pa = 653;
        double lift_N = 14_000;
        double cl = lift_N / (q_Pa * 27);
        assertEquals(q_Pa * 27 * (0.05 + 0.054 * cl * cl), Airframe.drag_N(0, lift_N, q_Pa), 1e-6);
        assertEquals(q_Pa * 27 * (0.14 + 0.054 * cl * cl), Airframe.drag_N(1, lift_N, q_Pa), 1e-6);
    }

    @Test
    void halfTheStepHalvesTheError() {
        Vec3[] end_m = new Vec3[4];
        for (int i = 0; i < end_m.length; i++) {
            double dt_s = 0.02 / (1 << i);
            Airframe a = flying();
            for (int k = 0; k < Math.rint(4 / dt_s); k++) {
                a.feel(Vec3.ZERO, DENSITY);
                glide(a, dt_s);
            }
            end_m[i] = a.place_m;
        }
        double first = end_m[0].minus(end_m[1]).norm();
        double second = end_m[1].minus(end_m[2]).norm();
        double third = end_m[2].minus(end_m[3]).norm();
        assertEquals(2, first / second, 0.15);
        assertEquals(2, second / third, 0.15);
    }

    /** A step with the attitude held. */
    private static void glide(Airframe a, double dt_s) {
        double pitch_rad = a.pitch_rad;
        a.step(Controls.NEUTRAL, Push.NONE, new Shake(new Random(1)), DENSITY, dt_s);
        a.pitch_rad = pitch_rad;
        a.heading_rad = 0;
        a.roll_rad = 0;
        a.pitchRate_radps = 0;
        a.yawRate_radps = 0;
        a.rollRate_radps = 0;
    }

    @Test
    void theStrapsFeelWhatSlowsItDown() {
        Airframe a = flying();
        a.feel(Vec3.ZERO, DENSITY);
        double before_mps = a.velocity_mps.norm();
        double sine = -a.velocity_mps.z() / before_mps;
        step(a, controls(0, 0, 0), Push.NONE, 0.001);
        double slowing = (a.velocity_mps.norm() - before_mps) / 0.001;
        // V̇ = g·(sin γ − f), f the retarding force over weight.
        assertEquals(Atmosphere.GRAVITY_MPS2 * (sine - a.retarding), slowing, 0.01);
    }
}
