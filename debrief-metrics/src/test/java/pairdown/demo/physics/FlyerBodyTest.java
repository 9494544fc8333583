package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import pairdown.atmosphere.Atmosphere;
import pairdown.vector.Vec3;

class FlyerBodyTest {
    private static final String SEED = "20310514";
    private static final double G = Atmosphere.GRAVITY_MPS2;
    private static final double DENSITY = Atmosphere.STANDARD.density_kgpm3(3048);
    private static final Vec3 TARGET_MPS = new Vec3(0, Math.sqrt(38 * 38 - 17.78 * 17.78), -17.78);

    /** Lift area and drag area without lift of the target pose. */
    private static final double LIFT_M2 = 1.26;

    private static final double PLAIN_M2 = 0.67 - FlyerBody.INDUCED_PERM2 * LIFT_M2 * LIFT_M2;

    private static FlyerBody flying(Vec3 velocity_mps, double lift_m2, double plain_m2) {
        FlyerBody body = new FlyerBody(95, Vec3.ZERO, velocity_mps, new Vec3(1, 0, 0));
        body.lift_m2 = lift_m2;
        body.plainDrag_m2 = plain_m2;
        return body;
    }

    private static void fly(FlyerBody body, double lasting_s, double dt_s) {
        for (int i = 0; i < Math.rint(lasting_s / dt_s); i++) {
            body.feel(Vec3.ZERO, DENSITY);
            body.step(Vec3.ZERO, 0, dt_s);
        }
    }

    @Test
    void theTargetPoseGlidesAtTheTarget() {
        // By inversion of the balance at 95 kg, 10,000 ft, 38 m/s and 17.8 m/s down: lift area
        // 1.26, drag area 0.67 m², lift over drag 1.89.
        FlyerBody body = flying(TARGET_MPS, LIFT_M2, PLAIN_M2);
        fly(body, 90, 0.02);
        assertEquals(38, body.velocity_mps.norm(), 0.2);
        assertEquals(17.78, -body.velocity_mps.z(), 0.15);
        assertEquals(1.89, TARGET_MPS.y() / -TARGET_MPS.z(), 0.01);
        assertEquals(1, body.felt_mps2.norm() / G, 1e-6);
    }

    @Property(tries = 25, seed = SEED)
    void anySteadyGlideBalancesWeight(
            @ForAll @DoubleRange(min = 0.5, max = 1.5) double lift_m2,
            @ForAll @DoubleRange(min = 0.15, max = 0.5) double plain_m2) {
        FlyerBody body = flying(TARGET_MPS, lift_m2, plain_m2);
        fly(body, 150, 0.02);
        double drag_m2 = plain_m2 + FlyerBody.INDUCED_PERM2 * lift_m2 * lift_m2;
        double v = body.velocity_mps.norm();
        double q_Pa = 0.5 * DENSITY * v * v;
        double sine = -body.velocity_mps.z() / v;
        assertEquals(95 * G * sine, q_Pa * drag_m2, 0.5); // W sin γ = D
        assertEquals(95 * G * Math.sqrt(1 - sine * sine), q_Pa * lift_m2, 0.5); // W cos γ = L
    }

    @Test
    void fallingFlatItReachesTheTerminalSpeedOfItsDrag() {
        FlyerBody body = flying(new Vec3(0, 0.01, -1), 0, FlyerBody.SMALL_DRAG_M2);
        fly(body, 60, 0.02);
        double terminal_mps = Math.sqrt(2 * 95 * G / (DENSITY * FlyerBody.SMALL_DRAG_M2));
        assertEquals(terminal_mps, body.velocity_mps.norm(), 0.01);
    }

    @Test
    void aTrimmedGlideSwingsAsTheLinearisedEquationsSay() {
        // Constant lift and drag areas: V̇ = g sin γ − d·V², V·γ̇ = g cos γ − l·V², linear about
        // the
        // glide: natural frequency √2·g/V (Lanchester 1908), damping 3·sin γ/(2√2).
        double v = TARGET_MPS.norm();
        double sine = 17.78 / v;
        double natural = Math.sqrt(2) * G / v;
        double damping = 3 * sine / (2 * Math.sqrt(2));
        assertEquals(17.2, 2 * Math.PI / natural, 0.1);
        double lift_m2 = 95 * G * Math.sqrt(1 - sine * sine) / (0.5 * DENSITY * v * v);
        double drag_m2 = 95 * G * sine / (0.5 * DENSITY * v * v);
        double off_mps = 0.1;
        FlyerBody body =
                flying(
                        TARGET_MPS.times(1 + off_mps / v),
                        lift_m2,
                        drag_m2 - FlyerBody.INDUCED_PERM2 * lift_m2 * lift_m2);
        double decay = damping * natural;
        double turning = natural * Math.sqrt(1 - damping * damping);
        // Slope at the start: −2·g·sin γ/V of the excess of speed.
        double slope = -2 * G * sine / v * off_mps;
        for (double t = 0; t < 24; t += 1) {
            double expected =
                    Math.exp(-decay * t)
                            * (off_mps * Math.cos(turning * t)
                                    + (slope + decay * off_mps) / turning * Math.sin(turning * t));
            assertEquals(expected, body.velocity_mps.norm() - v, 0.03 * off_mps, "at " + t + " s");
            fly(body, 1, 0.005);
        }
    }

    @Test
    void halfTheStepHalvesTheError() {
        // Semi-implicit steps are of first order.
        Vec3[] end_m = new Vec3[4];
        for (int i = 0; i < end_m.length; i++) {
            FlyerBody body = flying(new Vec3(0, 31, 0), 0.8, 0.3);
            fly(body, 12, 0.04 / (1 << i));
            end_m[i] = body.place_m;
        }
        double first_m = end_m[0].minus(end_m[1]).norm();
        double second_m = end_m[1].minus(end_m[2]).norm();
        double third_m = end_m[2].minus(end_m[3]).norm();
        assertEquals(2, first_m / second_m, 0.1);
        assertEquals(2, second_m / third_m, 0.1);
        // At the simulator's step of 0.02 s twice the next halving is left: under two thousandths
        // of the way flown.
        assertTrue(2 * second_m < 0.002 * end_m[3].norm(), () -> second_m + " m");
    }

    @Test
    void energyGoesNowhereButIntoDrag() {
        FlyerBody body = flying(new Vec3(0, 31, 0), 1.1, 0.3);
        double before_J = energy_J(body);
        double lost_J = 0;
        for (int i = 0; i < 1500; i++) {
            body.feel(Vec3.ZERO, DENSITY);
            double v = body.velocity_mps.norm();
            double drag_m2 = 0.3 + FlyerBody.INDUCED_PERM2 * 1.1 * 1.1;
            lost_J += 0.5 * DENSITY * v * v * drag_m2 * v * 0.02;
            body.step(Vec3.ZERO, 0, 0.02);
        }
        assertEquals(lost_J, before_J - energy_J(body), 0.01 * lost_J);
    }

    private static double energy_J(FlyerBody body) {
        return 95 * (body.velocity_mps.normSquared() / 2 + G * body.place_m.z());
    }

    @Test
    void bankTurnsAtTheRateOfACoordinatedTurn() {
        FlyerBody body = flying(TARGET_MPS, LIFT_M2, PLAIN_M2);
        body.bank_rad = 0.3;
        fly(body, 0.5, 0.01);
        double before_rad = Route.course_rad(body.velocity_mps);
        fly(body, 0.2, 0.01);
        double turned = Route.wrapped(Route.course_rad(body.velocity_mps) - before_rad) / 0.2;
        double level_mps = Math.hypot(body.velocity_mps.x(), body.velocity_mps.y());
        double v = body.velocity_mps.norm();
        double lift_mps2 = 0.5 * DENSITY * v * v * LIFT_M2 / 95;
        assertEquals(lift_mps2 * Math.sin(0.3) / level_mps, turned, 0.01);
        assertTrue(turned > 0, "right bank turns right");
    }

    @Property(tries = 40, seed = SEED)
    void aPoseWithinReachGivesTheAccelerationAskedFor(
            @ForAll @DoubleRange(min = -0.8, max = 0.8) double along,
            @ForAll @DoubleRange(min = -1, max = 1) double side,
            @ForAll @DoubleRange(min = -1, max = 1) double up) {
        Vec3 ahead = TARGET_MPS.unit();
        Vec3 right = new Vec3(ahead.y(), -ahead.x(), 0).unit();
        Vec3 wanted = ahead.times(along).plus(right.times(side)).plus(right.cross(ahead).times(up));
        FlyerBody body = flying(TARGET_MPS, LIFT_M2, PLAIN_M2);
        for (int i = 0; i < 400; i++) {
            body.feel(Vec3.ZERO, DENSITY);
            body.pose(wanted, 1, new double[] {LIFT_M2, PLAIN_M2}, 0.02);
        }
        body.step(Vec3.ZERO, 0, 1e-4);
        Vec3 got = body.felt_mps2.plus(new Vec3(0, 0, -G));
        assertTrue(got.minus(wanted).norm() < 0.1, () -> wanted + " asked, " + got + " given");
    }

    @Test
    void aPoseTakesTimeByItsRange() {
        FlyerBody body = flying(TARGET_MPS, 0.15, FlyerBody.CLEAN_M2);
        for (int i = 0; i < 50; i++) {
            body.take(9, 9, 9, 1, 0.02);
        }
        // 0.4 of the range in one second.
        assertEquals(0.15 + 0.4 * (FlyerBody.STALL_M2 - 0.15), body.lift_m2, 1e-9);
        assertEquals(0.15 + 0.4 * 0.35, body.plainDrag_m2, 1e-9);
        assertEquals(1.2, body.bank_rad, 1e-9);
    }
}
