package pairdown.demo.physics;

import pairdown.vector.Vec3;

/**
 * What acts on an aircraft from outside, in its body axes.
 *
 * @param force_N ahead, right, above
 * @param roll_Nm right wing down positive
 * @param pitch_Nm nose up positive
 * @param yaw_Nm nose right positive
 */
record Push(Vec3 force_N, double roll_Nm, double pitch_Nm, double yaw_Nm) {
    static final Push NONE = new Push(Vec3.ZERO, 0, 0, 0);

    /** A force at an arm from the centre of gravity, both in body axes ahead, right, above. */
    static Push at(Vec3 arm_m, Vec3 force_N) {
        return new Push(
                force_N,
                arm_m.z() * force_N.y() - arm_m.y() * force_N.z(),
                arm_m.x() * force_N.z() - arm_m.z() * force_N.x(),
                arm_m.x() * force_N.y() - arm_m.y() * force_N.x());
    }

    Push plus(Push o) {
        return new Push(
                force_N.plus(o.force_N),
                roll_Nm + o.roll_Nm,
                pitch_Nm + o.pitch_Nm,
                yaw_Nm + o.yaw_Nm);
    }
}
