package pairdown.motion;

import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * The flyer relative to the lead at an instant, in east-north-up axes at the lead; both reference
 * points.
 *
 * @param position_m flyer minus lead
 * @param velocity_mps flyer minus lead
 * @param positionCovariance_m2 of the position: shape, both receivers' biases, the constants left
 *     in heights, the lever arm, and both clocks times the velocities
 * @param velocityCovariance_m2ps2 of the velocity, clocks times accelerations included
 * @param anchored whether an anchor took at least a tenth off the largest position sigma
 * @param leadHole_s time between the lead's fixes on either side; 0 on a fix
 * @param flyerHole_s the same of the flyer
 */
public record RelativeSample(
        double time_s,
        Vec3 position_m,
        Vec3 velocity_mps,
        Mat3 positionCovariance_m2,
        Mat3 velocityCovariance_m2ps2,
        boolean anchored,
        double leadHole_s,
        double flyerHole_s) {

    public double separation_m() {
        return position_m.norm();
    }

    /** One standard deviation of position along a direction of length one (m). */
    public double positionSigma_m(Vec3 direction) {
        return Math.sqrt(Math.max(0, positionCovariance_m2.quadraticForm(direction)));
    }

    /** One standard deviation of velocity along a direction of length one (m/s). */
    public double velocitySigma_mps(Vec3 direction) {
        return Math.sqrt(Math.max(0, velocityCovariance_m2ps2.quadraticForm(direction)));
    }

    /** One standard deviation of the separation: along the line between the two (m). */
    public double separationSigma_m() {
        return separation_m() > 0
                ? positionSigma_m(position_m.unit())
                : Math.sqrt(largestVariance());
    }

    private double largestVariance() {
        return Math.max(
                positionCovariance_m2.row0().x(),
                Math.max(positionCovariance_m2.row1().y(), positionCovariance_m2.row2().z()));
    }
}
