package pairdown.motion;

/**
 * Measurement noise as the innovations show it: what the assumed standard deviations were
 * multiplied by, and the mean normalised innovation squared that came out (1 is as expected).
 */
public record FittedNoise(
        double levelPositionFactor,
        double verticalPositionFactor,
        double levelVelocityFactor,
        double verticalVelocityFactor,
        double levelPositionNis,
        double verticalPositionNis,
        double levelVelocityNis,
        double verticalVelocityNis) {

    static FittedNoise of(NoiseScale scale, double[] nis) {
        return new FittedNoise(
                Math.sqrt(scale.levelPosition()),
                Math.sqrt(scale.verticalPosition()),
                Math.sqrt(scale.levelVelocity()),
                Math.sqrt(scale.verticalVelocity()),
                nis[0],
                nis[1],
                nis[2],
                nis[3]);
    }
}
