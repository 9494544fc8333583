package pairdown.demo.receiver;

import pairdown.vector.Vec3;

/**
 * A slow error: first-order Gauss–Markov on each axis, by its discrete form {@code b ← e^(−Δt/τ) b
 * + σ √(1 − e^(−2Δt/τ)) n}.
 *
 * @param level_m standard deviation east and north
 * @param vertical_m standard deviation up
 * @param time_s τ
 */
public record Wander(double level_m, double vertical_m, double time_s) {
    public Wander {
        if (!(level_m >= 0 && vertical_m >= 0 && time_s > 0)) {
            throw new IllegalArgumentException(
                    "wander of " + level_m + ", " + vertical_m + " m over " + time_s + " s");
        }
    }

    Vec3 first(Draws draws) {
        return draws.gaussian(level_m, vertical_m);
    }

    Vec3 next(Vec3 now, double step_s, Draws draws) {
        double keep = StrictMath.exp(-step_s / time_s);
        double fresh = Math.sqrt(1 - keep * keep);
        return now.times(keep).plus(draws.gaussian(level_m, vertical_m).times(fresh));
    }
}
