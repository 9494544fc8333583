package pairdown.motion;

/**
 * Measurement noise as the innovations show it: what the assumed standard deviations and the jerk
 * densities were multiplied by, and the mean normalised innovation squared that came out (1 is as
 * expected).
 */
public record FittedNoise(
        double levelPositionFactor,
        double verticalPositionFactor,
        double levelVelocityFactor,
        double verticalVelocityFactor,
        double levelJerkFactor,
        double verticalJerkFactor,
        double levelPositionNis,
        double verticalPositionNis,
        double levelVelocityNis,
        double verticalVelocityNis) {

    static FittedNoise of(NoiseScale scale, double[] nis) {
        return new FittedNoise(
                Math.sqrt(scale.level().position()),
                Math.sqrt(scale.vertical().position()),
                Math.sqrt(scale.level().velocity()),
                Math.sqrt(scale.vertical().velocity()),
                scale.level().jerk(),
                scale.vertical().jerk(),
                nis[0],
                nis[1],
                nis[2],
                nis[3]);
    }
}
