package pairdown.pair;

import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.State;
import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * A flyer minus its lead at an instant, in east-north-up at the lead.
 *
 * @param offset_m flyer minus lead
 * @param velocity_mps its rate of change
 * @param offsetCovariance_m2 of the offset: trajectories, lever arms and both clocks
 * @param velocityCovariance_m2ps2 of the velocity
 * @param leadVelocitySigma_mps the lead's own, one standard deviation per level axis
 * @param leadHeight_m above the ellipsoid
 * @param toLead the rotation from the attempt's frame to east-north-up at the lead
 * @param anchored whether known offsets corrected the slow error
 * @param predicted whether either state is one inside a gap
 */
record Relative(
        double time_s,
        Vec3 offset_m,
        Vec3 velocity_mps,
        Mat3 offsetCovariance_m2,
        Mat3 velocityCovariance_m2ps2,
        Vec3 leadVelocity_mps,
        Vec3 flyerVelocity_mps,
        double leadVelocitySigma_mps,
        double leadHeight_m,
        Mat3 toLead,
        boolean anchored,
        boolean predicted) {

    /** The lead's place at an instant and the way to its own level axes. */
    record Place(double height_m, Mat3 toLead) {
        /** At 10 km from a frame's origin its "up" leans by 0.09°: 5 m over an offset of 3 km. */
        static Place of(Vec3 lead_m, LocalFrame frame) {
            Geodetic place = frame.toGeodetic(lead_m);
            return new Place(place.height_m(), frame.rotationTo(LocalFrame.at(place)));
        }
    }

    static double levelSigma_mps(State lead) {
        return lead.velocitySigma_mps().levelNorm() / Math.sqrt(2);
    }

    /** One standard deviation of the velocity per axis. */
    Vec3 velocitySigma_mps() {
        return new Vec3(
                Math.sqrt(velocityCovariance_m2ps2.row0().x()),
                Math.sqrt(velocityCovariance_m2ps2.row1().y()),
                Math.sqrt(velocityCovariance_m2ps2.row2().z()));
    }
}
