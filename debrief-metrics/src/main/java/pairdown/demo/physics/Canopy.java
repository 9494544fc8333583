package pairdown.demo.physics;

import java.util.Random;
import pairdown.vector.Vec3;

/**
 * A flyer under canopy: nothing shows for {@value #SNATCH_S} s after the pull, then it fills within
 * 2.8 s, flies one full circle, goes to its landing place, circles down over it and lands into the
 * wind.
 */
final class Canopy {
    /** From the pull to the first drag (s; common practice, no published source). */
    static final double SNATCH_S = 0.8;

    private static final double FILL_S = 2.8;
    private static final double CIRCLE_BANK_RAD = 0.36;
    private static final double MOST_BANK_RAD = 0.42;
    private static final double NEAR_M = 130;
    private static final double FINAL_M = 150;
    private static final double FLARE_M = 5;

    private final Air air;
    private final Vec3 home_m;
    private final int turn;
    private double turned_rad;
    private double last_rad = Double.NaN;

    Canopy(Air air, Vec3 home_m, Random random) {
        this.air = air;
        this.home_m = home_m;
        this.turn = random.nextBoolean() ? 1 : -1;
    }

    void step(FlyerBody body, double since_s, double agl_m, double dt_s) {
        double fill = Math.max(0, Math.min(1, (since_s - SNATCH_S) / FILL_S));
        body.canopy = fill * fill;
        body.flare = Math.max(0, Math.min(1, body.flare + (agl_m < FLARE_M ? 1.5 : -1) * dt_s));
        double bank = since_s < 7 ? 0 : bank_rad(body, agl_m);
        body.take(0.9, FlyerBody.CLEAN_M2, bank, 1, dt_s);
    }

    private double bank_rad(FlyerBody body, double agl_m) {
        double now_rad = Route.course_rad(body.airVelocity_mps);
        if (!Double.isNaN(last_rad)) {
            turned_rad += Math.abs(Route.wrapped(now_rad - last_rad));
        }
        last_rad = now_rad;
        Vec3 wind_mps = air.meanWind_mps(air.field_m());
        if (agl_m < FINAL_M) {
            return toward(now_rad, Route.course_rad(wind_mps.times(-1)));
        }
        Vec3 to_m = home_m.minus(body.place_m);
        boolean near = Math.hypot(to_m.x(), to_m.y()) < NEAR_M;
        if (near || turned_rad < 2.1 * Math.PI) {
            return turn * CIRCLE_BANK_RAD;
        }
        return toward(now_rad, Route.course_rad(to_m));
    }

    private static double toward(double now_rad, double wanted_rad) {
        double off_rad = Route.wrapped(wanted_rad - now_rad);
        return LeadPilot.bounded(0.9 * off_rad, -MOST_BANK_RAD, MOST_BANK_RAD);
    }
}
