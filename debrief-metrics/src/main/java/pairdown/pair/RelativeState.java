package pairdown.pair;

import pairdown.vector.Vec3;

/**
 * A flyer relative to its lead at an instant.
 *
 * @param relative_m flyer seen from the lead's centre of gravity: ahead, right, above in the pair's
 *     axes
 * @param rate_mps its rate of change in those axes
 * @param matchRate_mps its rate of change in level axes turning with the lead's direction through
 *     the air: ahead, right, up
 * @param separation_m between the reference points
 * @param separationSigma_m along the line between them
 * @param gap_m to the slot, NaN where the flyer has none
 * @param closureRate_mps NaN under three sigma of range
 * @param closureSigma_mps along the line between them
 * @param anchored whether a touch or shared ride nearby corrected the slow relative bias
 * @param measured false inside a gap of over one second of either log
 */
public record RelativeState(
        double time_s,
        Vec3 relative_m,
        Vec3 rate_mps,
        Vec3 matchRate_mps,
        double separation_m,
        double separationSigma_m,
        double gap_m,
        double gapSigma_m,
        double closureRate_mps,
        double closureSigma_mps,
        boolean anchored,
        boolean measured) {}
