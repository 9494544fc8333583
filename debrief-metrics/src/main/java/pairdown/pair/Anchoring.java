package pairdown.pair;

import java.util.List;

/** Makes the relative track of a pair from instants at which the offset is known. */
@FunctionalInterface
public interface Anchoring {
    /** Takes the slow relative error off a raw track by its own model; see {@link AnchoredTrack}. */
    Anchoring BY_SLOW_BIAS = (raw, anchors) -> AnchoredTrack.of(raw, anchors);

    /**
     * The track corrected by known offsets.
     *
     * @param raw the relative motion as measured
     * @param anchors in order of time; at least one
     */
    RelativeTrack anchored(RelativeMotion raw, List<Anchor> anchors);
}
