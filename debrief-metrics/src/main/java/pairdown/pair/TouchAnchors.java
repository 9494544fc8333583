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
    private TouchAnchors() {}

    /** Empty where no touch is likely or the trajectories are not the smoother's own. */
    static Optional<RelativeMotion> anchored(
            PairInput input, RelativeMotion raw, List<Touch> touches, PairSettings settings) {
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
        RelativeTrack track = JointTrack.of(lead.get(), flyer.get(), anchors);
        return Optional.of(PairAxes.motion(input, track, settings));
    }

    private static RelativeAnchor anchor(
            Touch touch, Vec3 slot, RelativeMotion raw, PairSettings settings) {
        return new RelativeAnchor(
                touch.span(), t_s -> raw.slotInEnu_m(slot, t_s), settings.touch().reach_m());
    }
}
