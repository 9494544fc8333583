package pairdown.pair;

import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.units.Estimate;

/**
 * One instant of a pair: the closest approach or the least gap.
 *
 * @param time_s on the attempt's axis
 * @param separation_m between the reference points
 * @param gap_m from the flyer's logger to its slot, where it has one
 * @param closureRate_mps positive while closing; absent under three sigma of range
 * @param bearing where the flyer is seen from the lead; absent under three sigma of range, and
 *     without axes
 * @param ahead_m the flyer seen from the lead's centre of gravity, in the pair's axes
 */
public record Approach(
        double time_s,
        Estimate separation_m,
        Optional<Estimate> gap_m,
        OptionalDouble closureRate_mps,
        Optional<Bearing> bearing,
        double ahead_m,
        double right_m,
        double above_m) {}
