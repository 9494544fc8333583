package pairdown.pair;

import java.util.Optional;
import pairdown.vector.Vec3;

/**
 * Where two bodies come closest if neither changes its velocity.
 *
 * @param in_s until then, from now; at most the horizon
 * @param miss_m how far apart they are then
 * @param sigma_m one standard deviation of that distance, unforeseen acceleration included
 */
public record PredictedMiss(double in_s, double miss_m, double sigma_m) {
    /**
     * The miss of an offset that changes at a steady velocity: t* = clamp(−r·v/‖v‖², 0, horizon), d
     * = ‖r + v t*‖, σ² = σ_r² + (t*σ_v)² + (½ a t*²)².
     *
     * @param offsetSigma_m one standard deviation of the offset along any line
     * @param velocitySigma_mps the same of the velocity
     * @return empty while the two hold: slower against each other than the settings say
     */
    public static Optional<PredictedMiss> of(
            Vec3 offset_m,
            Vec3 velocity_mps,
            double offsetSigma_m,
            double velocitySigma_mps,
            PairSettings settings) {
        double speed_mps = velocity_mps.norm();
        if (!(speed_mps >= settings.holding_mps())) {
            return Optional.empty();
        }
        double free_s = timeToClosest_s(offset_m, velocity_mps);
        double t_s = Math.min(Math.max(free_s, 0), settings.horizon_s());
        double unforeseen_m = 0.5 * settings.unforeseen_mps2() * t_s * t_s;
        double steady_m = Math.hypot(offsetSigma_m, t_s * velocitySigma_mps);
        return Optional.of(
                new PredictedMiss(
                        t_s,
                        offset_m.plus(velocity_mps.times(t_s)).norm(),
                        Math.hypot(steady_m, unforeseen_m)));
    }

    /** −r·v/‖v‖² (s): negative once past; not a number without motion. */
    public static double timeToClosest_s(Vec3 offset_m, Vec3 velocity_mps) {
        return -offset_m.dot(velocity_mps) / velocity_mps.normSquared();
    }
}
