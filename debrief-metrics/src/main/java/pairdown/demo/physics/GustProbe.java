package pairdown.demo.physics;

import pairdown.vector.Vec3;

/**
 * The air's motion where one body is. Gusts are looked up ten times a second, which is 4 m of
 * flight, and joined by straight lines: each body feels them a tenth of a second late, all alike.
 */
final class GustProbe {
    private static final double STEP_S = 0.1;

    private final Air air;
    private double since_s = Double.NEGATIVE_INFINITY;
    private Vec3 before_mps = Vec3.ZERO;
    private Vec3 latest_mps = Vec3.ZERO;

    GustProbe(Air air) {
        this.air = air;
    }

    Vec3 gust_mps(Vec3 place_m, double time_s) {
        if (time_s - since_s >= STEP_S - 1e-9) {
            Vec3 now_mps = air.gust_mps(place_m, time_s);
            before_mps = since_s < 0 ? now_mps : latest_mps;
            latest_mps = now_mps;
            since_s = time_s;
        }
        double u = (time_s - since_s) / STEP_S;
        return before_mps.times(1 - u).plus(latest_mps.times(u));
    }

    /** Mean wind and gust (m/s). */
    Vec3 wind_mps(Vec3 place_m, double time_s) {
        return air.meanWind_mps(air.height_m(place_m)).plus(gust_mps(place_m, time_s));
    }
}
