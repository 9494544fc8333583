package pairdown.season;

/**
 * Thresholds of a season's figures (common practice, no published source, unless said).
 *
 * @param segment_s length of a steady segment; longer steady flight gives several
 * @param airspeedSd_mps spread of airspeed within it
 * @param sinkSd_mps spread of sink within it
 * @param acceleration_mps2 mean change of speed within it
 * @param bank_deg largest bank within it
 * @param pathRate_dps mean change of the path's slope within it
 * @param stable_s both tolerances held this long is stabilised
 * @param steepPath_deg a path this steep starts the clock where no reverse is logged
 * @param reverse_pct lever below this is behind flight idle
 * @param airspeedScale_mps what counts as one step of airspeed when distances between envelopes are
 *     taken
 * @param sinkScale_mps the same for sink
 * @param nearTarget_mps a segment this near the target's airspeed tells of the force there
 * @param massShare one standard deviation of a mass that was typed in, as a share of it
 * @param sinkSigma_mps one standard deviation of a segment's mean sink that more segments do not
 *     shrink
 * @param airspeedSigma_mps the same for airspeed
 * @param confidence of every interval
 */
public record SeasonSettings(
        double segment_s,
        double airspeedSd_mps,
        double sinkSd_mps,
        double acceleration_mps2,
        double bank_deg,
        double pathRate_dps,
        double stable_s,
        double steepPath_deg,
        double reverse_pct,
        double airspeedScale_mps,
        double sinkScale_mps,
        double nearTarget_mps,
        double massShare,
        double sinkSigma_mps,
        double airspeedSigma_mps,
        double confidence) {
    public static final SeasonSettings DEFAULT =
            new SeasonSettings(5, 1.0, 0.7, 0.3, 15, 1.5, 5, 10, -1, 2, 1, 2, 0.03, 0.3, 1, 0.95);
}
