package pairdown.season;

/**
 * Thresholds of a season's figures (common practice, no published source, unless said).
 *
 * @param segment_s a steady segment lasts at least this
 * @param airspeedSd_mps spread of airspeed within it
 * @param sinkSd_mps spread of sink within it
 * @param acceleration_mps2 mean change of speed within it
 * @param bank_deg largest bank within it
 * @param stable_s both tolerances held this long is stabilised
 * @param steepPath_deg a path this steep starts the clock where no reverse is logged
 * @param reverse_pct lever below this is behind flight idle
 * @param airspeedScale_mps what counts as one step of airspeed when distances between envelopes are
 *     taken
 * @param sinkScale_mps the same for sink
 * @param confidence of every interval
 */
public record SeasonSettings(
        double segment_s,
        double airspeedSd_mps,
        double sinkSd_mps,
        double acceleration_mps2,
        double bank_deg,
        double stable_s,
        double steepPath_deg,
        double reverse_pct,
        double airspeedScale_mps,
        double sinkScale_mps,
        double confidence) {
    public static final SeasonSettings DEFAULT =
            new SeasonSettings(5, 1.0, 0.7, 0.3, 15, 5, 10, -1, 2, 1, 0.95);
}
