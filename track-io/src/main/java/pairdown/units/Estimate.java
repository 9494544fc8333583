package pairdown.units;

/**
 * A measured value with its standard uncertainty, in the unit its holder's name says.
 *
 * @param value the best estimate
 * @param sigma one standard deviation, never negative
 */
public record Estimate(double value, double sigma) {
    public Estimate {
        if (!Double.isFinite(value) || !(sigma >= 0)) {
            throw new IllegalArgumentException(
                    "an estimate needs a finite value and a sigma of at least 0, not "
                            + value
                            + " ± "
                            + sigma);
        }
    }
}
