package pairdown.demo.physics;

import pairdown.vector.Vec3;

/**
 * The lead as flyers see and feel it.
 *
 * @param ahead level unit along its motion through the air, steadied over a second and a half
 * @param acceleration_mps2 steadied over 0.3 s
 * @param body its body at this moment
 * @param wake the upwash beside its tips
 * @param diving whether it is in its dive
 */
record LeadView(
        Vec3 place_m,
        Vec3 velocity_mps,
        Vec3 ahead,
        Vec3 acceleration_mps2,
        Airframe body,
        TipWake wake,
        boolean diving) {
    Vec3 right() {
        return new Vec3(ahead.y(), -ahead.x(), 0);
    }

    /** East, north, up of so much ahead, right, above in its level axes. */
    Vec3 level(double ahead_m, double right_m, double above_m) {
        return ahead.times(ahead_m).plus(right().times(right_m)).plus(new Vec3(0, 0, above_m));
    }

    Vec3 slot_m(Side side) {
        return place_m.plus(body.enuToBody.transposeTimes(side.slot().vector_m()));
    }

    Vec3 slotVelocity_mps(Side side) {
        Vec3 arm_m = side.slot().vector_m();
        Vec3 turning =
                new Vec3(
                        body.yawRate_radps * -arm_m.y() + body.pitchRate_radps * -arm_m.z(),
                        body.yawRate_radps * arm_m.x() + body.rollRate_radps * arm_m.z(),
                        body.pitchRate_radps * arm_m.x() - body.rollRate_radps * arm_m.y());
        return velocity_mps.plus(body.enuToBody.transposeTimes(turning));
    }
}
