package pairdown.pair;

import java.util.List;
import java.util.Optional;
import pairdown.attempt.LeverArm;
import pairdown.motion.ReferencePoint;
import pairdown.motion.RelativeAnchor;
import pairdown.vector.Vec3;

/**
 * The anchored track of a pair: while a touch is at least likely, the flyer's true offset is the
 * slot, so the slow relative error is observed, and taken off around it.
 */
final class TouchAnchors {
    /** Mean squared misfit of an anchor against logs that agree with it is about 1. */
    private static final double MOST_MISFIT = 9;

    private TouchAnchors() {}

    /**
     * Empty where no touch is likely, the logs contradict it, or the trajectories are not the
     * smoother's own.
     */
    static Optional<RelativeMotion> anchored(
            PairInput input,
            RelativeMotion raw,
            List<Touch> touches,
            PairSettings settings,
            List<String> refusals) {
        Optional<Vec3> slot = input.slotArm().map(LeverArm::vector_m);
        Optional<ReferencePoint> lead = RelativeTrack.smoothed(input.lead().trajectory());
        Optional<ReferencePoint> flyer = RelativeTrack.smoothed(input.flyer().trajectory());
        List<RelativeAnchor> anchors =
                touches.stream()
                        .filter(t -> t.grade() != Touch.Grade.POSSIBLE)
                        .flatMap(t -> slot.stream().map(s -> anchor(t, s, raw, settings)))
                        .toList();
        if (anchors.isEmpty() || lead.isEmpty() || flyer.isEmpty()) {
            return Optional.empty();
        }
        JointTrack track = JointTrack.of(lead.get(), flyer.get(), anchors);
        if (track.anchorMisfit() > MOST_MISFIT) {
            refusals.add(
                    input.lead().id()
                            + "–"
                            + input.flyer().id()
                            + ": the logs contradict the marked touch, so no track is corrected"
                            + " by it");
            return Optional.empty();
        }
        return Optional.of(PairAxes.motion(input, track, settings));
    }

    private static RelativeAnchor anchor(
            Touch touch, Vec3 slot, RelativeMotion raw, PairSettings settings) {
        return new RelativeAnchor(
                touch.span(), t_s -> raw.slotInEnu_m(slot, t_s), settings.touch().reach_m());
    }
}
