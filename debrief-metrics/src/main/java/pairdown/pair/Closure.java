package pairdown.pair;

import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * How fast two bodies close: minus the rate of their separation, positive while closing.
 *
 * @param rate_mps −r·v/R; NaN at no range
 * @param sigma_mps one standard deviation, from that of the velocity along the line and that of the
 *     line's direction
 */
public record Closure(double rate_mps, double sigma_mps) {
    /**
     * Closure of an offset {@code r} that changes by {@code v}.
     *
     * <p>First-order errors: ∂(r·v/R)/∂v is the unit line u, ∂/∂r is the part of v across the line
     * over R, so σ² = uᵀΣᵥu + v⊥ᵀΣᵣv⊥/R².
     *
     * @param offsetCovariance_m2 of r
     * @param velocityCovariance_m2ps2 of v
     */
    public static Closure of(
            Vec3 offset_m,
            Vec3 velocity_mps,
            Mat3 offsetCovariance_m2,
            Mat3 velocityCovariance_m2ps2) {
        double range_m = offset_m.norm();
        if (!(range_m > 0)) {
            return new Closure(Double.NaN, Double.NaN);
        }
        Vec3 u = offset_m.times(1 / range_m);
        double along_mps = u.dot(velocity_mps);
        Vec3 across_mps = velocity_mps.minus(u.times(along_mps));
        double alongVariance = velocityCovariance_m2ps2.quadraticForm(u);
        double turnVariance = offsetCovariance_m2.quadraticForm(across_mps) / (range_m * range_m);
        return new Closure(-along_mps, Math.sqrt(alongVariance + turnVariance));
    }
}
