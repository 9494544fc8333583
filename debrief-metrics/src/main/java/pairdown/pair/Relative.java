package pairdown.pair;

import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * A flyer minus its lead at an instant, in east-north-up at the lead.
 *
 * @param offset_m flyer minus lead
 * @param velocity_mps its rate of change
 * @param shapeSigma_m relative, per axis, the part that forgets within seconds
 * @param biasSigma_m relative, per axis, the slow part
 * @param velocitySigma_mps relative, per axis
 * @param leadVelocitySigma_mps the lead's own, per axis
 * @param leadHeight_m above the ellipsoid
 * @param toLead the rotation from the attempt's frame to east-north-up at the lead
 * @param predicted whether either state is one inside a gap
 */
public record Relative(
        double time_s,
        Vec3 offset_m,
        Vec3 velocity_mps,
        Vec3 shapeSigma_m,
        Vec3 biasSigma_m,
        Vec3 velocitySigma_mps,
        Vec3 leadVelocity_mps,
        Vec3 flyerVelocity_mps,
        Vec3 leadAcceleration_mps2,
        Vec3 flyerAcceleration_mps2,
        Vec3 leadVelocitySigma_mps,
        double leadHeight_m,
        Mat3 toLead,
        boolean predicted) {

    /** The same with another offset and slow sigma. */
    Relative corrected(Vec3 offset, Vec3 biasSigma) {
        return new Relative(
                time_s,
                offset,
                velocity_mps,
                shapeSigma_m,
                biasSigma,
                velocitySigma_mps,
                leadVelocity_mps,
                flyerVelocity_mps,
                leadAcceleration_mps2,
                flyerAcceleration_mps2,
                leadVelocitySigma_mps,
                leadHeight_m,
                toLead,
                predicted);
    }
}
