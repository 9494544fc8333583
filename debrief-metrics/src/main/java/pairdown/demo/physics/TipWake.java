package pairdown.demo.physics;

import pairdown.vector.Vec3;

/**
 * Air set in motion by the lead's wing: from each tip a vortex trails along the path, up outboard
 * of it and down inboard. Strength Γ = L/(ρ·V·π/4·b) of an elliptic lift, half of a full vortex
 * abeam its start and all of it far behind (Biot–Savart for a half-infinite line), core 0.5 m.
 * About 3.4 m/s two metres beside a full vortex at the target point.
 */
final class TipWake {
    private static final double CORE_M = 0.5;

    private final Airframe body;
    private final double strength_m2ps;

    TipWake(Airframe body, double lift_N, double density_kgpm3) {
        this.body = body;
        this.strength_m2ps =
                lift_N / (density_kgpm3 * body.airspeed_mps * Math.PI / 4 * Side.SPAN_M);
    }

    Vec3 wind_mps(Vec3 place_m) {
        return from(Side.LEFT, place_m).plus(from(Side.RIGHT, place_m));
    }

    private Vec3 from(Side side, Vec3 place_m) {
        Vec3 tip_m = body.place_m.plus(body.enuToBody.transposeTimes(side.tip().vector_m()));
        Vec3 along = body.airVelocity_mps.times(1 / body.airspeed_mps);
        Vec3 off_m = place_m.minus(tip_m);
        double behind_m = -off_m.dot(along);
        Vec3 out_m = off_m.plus(along.times(behind_m));
        double r2 = out_m.normSquared();
        double share = 0.5 * (1 + behind_m / Math.sqrt(behind_m * behind_m + r2 + 1e-6));
        double perMetre = strength_m2ps / (2 * Math.PI) / (r2 + CORE_M * CORE_M) * share;
        return along.cross(out_m).times(-side.sign() * perMetre);
    }
}
