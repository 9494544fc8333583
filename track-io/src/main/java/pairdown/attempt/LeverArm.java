package pairdown.attempt;

import pairdown.vector.Vec3;

/**
 * A place on an aircraft, from its centre of gravity in its body axes (m).
 *
 * @param ahead_m towards the nose
 * @param right_m towards the right wing
 * @param above_m towards the cabin roof
 */
public record LeverArm(double ahead_m, double right_m, double above_m) {
    public static final LeverArm NONE = new LeverArm(0, 0, 0);

    /** Ahead, right, above as a vector in body axes. */
    public Vec3 vector_m() {
        return new Vec3(ahead_m, right_m, above_m);
    }
}
