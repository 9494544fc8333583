package pairdown.attempt;

/**
 * When two machines count as matched.
 *
 * @param horizontal_mps tolerance of the level rate
 * @param vertical_mps tolerance of the vertical rate
 * @param dwell_s how long both must hold before a window begins
 */
public record MatchedSettings(double horizontal_mps, double vertical_mps, double dwell_s) {
    public static final MatchedSettings DEFAULT = new MatchedSettings(1.5, 1.0, 3);
}
