package pairdown.motion;

import pairdown.vector.Vec3;

/**
 * A participant's motion at an instant, in the attempt's east-north-up frame. Axes are estimated
 * independently, so every covariance is diagonal and a sigma per axis is the whole of it.
 *
 * @param time_s on the attempt's axis
 * @param positionSigma_m one standard deviation per axis, absolute: shape and bias together
 * @param shapeSigma_m the part that forgets within seconds
 * @param biasSigma_m the slow part: the receiver's wandering bias and the constant left in heights
 * @param predicted true inside a gap in the data, where the model alone speaks
 */
public record State(
        double time_s,
        Vec3 position_m,
        Vec3 velocity_mps,
        Vec3 acceleration_mps2,
        Vec3 positionSigma_m,
        Vec3 shapeSigma_m,
        Vec3 biasSigma_m,
        Vec3 velocitySigma_mps,
        boolean predicted) {}
