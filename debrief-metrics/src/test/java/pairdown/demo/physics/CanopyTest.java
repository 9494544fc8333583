package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pairdown.atmosphere.Atmosphere;
import pairdown.geodesy.Geodetic;
import pairdown.vector.Vec3;

/** An opening from 44 m/s at 1,150 m in still air; what openings are like is common practice. */
class CanopyTest {
    private static final double STEP_S = 0.02;
    private static final int ROWS = 2000;
    private static final double[] SPEED_MPS = new double[ROWS];
    private static final double[] LOAD_G = new double[ROWS];
    private static final FlyerBody BODY =
            new FlyerBody(95, new Vec3(0, -3000, 1150), new Vec3(0, 38, -20), new Vec3(1, 0, 0));

    @BeforeAll
    static void open() {
        AirPlan still = AirPlan.USUAL.withWind(0, 0.01, 0.01, 0).withGusts(GustLevel.STILL);
        Air air = new Air(still, Geodetic.ofDegrees(-30, 127, 160), new Random(1));
        Canopy canopy = new Canopy(air, Vec3.ZERO, new Random(1));
        BODY.lift_m2 = 0.9;
        BODY.plainDrag_m2 = FlyerBody.CLEAN_M2;
        for (int i = 0; i < ROWS; i++) {
            BODY.feel(Vec3.ZERO, 1.13);
            canopy.step(BODY, i * STEP_S, 1000, STEP_S);
            BODY.step(Vec3.ZERO, 0, STEP_S);
            SPEED_MPS[i] = BODY.velocity_mps.norm();
            LOAD_G[i] = BODY.felt_mps2.norm() / Atmosphere.GRAVITY_MPS2;
        }
    }

    private static double speed_mps(double since_s) {
        return SPEED_MPS[(int) Math.rint(since_s / STEP_S)];
    }

    private static double load_g(double since_s) {
        return LOAD_G[(int) Math.rint(since_s / STEP_S)];
    }

    @Test
    void nothingShowsBeforeTheDragBegins() {
        for (double t = 0.02; t < Canopy.SNATCH_S; t += STEP_S) {
            assertEquals(load_g(0), load_g(t), 0.12);
        }
        assertTrue(load_g(Canopy.SNATCH_S + 0.6) > load_g(0) + 0.5);
    }

    @Test
    void theOpeningPullsSeveralGsAndNotTooMany() {
        double most = 0;
        double when_s = 0;
        for (int i = 0; i < ROWS; i++) {
            if (LOAD_G[i] > most) {
                most = LOAD_G[i];
                when_s = i * STEP_S;
            }
        }
        // Common practice, no published source: 2.5 to 6 g for a usual opening.
        assertTrue(most > 2.5 && most < 6, most + " g");
        assertTrue(when_s > Canopy.SNATCH_S && when_s < 4, when_s + " s");
    }

    @Test
    void itIsSlowWithinFiveSecondsAndGlidesTwoForOne() {
        assertTrue(speed_mps(5) < 16, speed_mps(5) + " m/s");
        double glide =
                Math.hypot(BODY.velocity_mps.x(), BODY.velocity_mps.y()) / -BODY.velocity_mps.z();
        assertEquals(2, glide, 0.3);
        assertEquals(12, SPEED_MPS[ROWS - 1], 1.5);
    }
}
