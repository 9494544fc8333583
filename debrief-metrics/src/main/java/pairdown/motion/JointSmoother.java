package pairdown.motion;

import java.util.List;
import java.util.Optional;

/**
 * The joint smoother of a pair: both logs' measurements, and stretches in which the relative place
 * is known from something else. An anchor observes the slow relative bias (receivers, heights and
 * clocks); its effect fades away from it as the bias model forgets, and the constants stay.
 */
public final class JointSmoother {
    private JointSmoother() {}

    /** Between the antennas themselves. */
    public static RelativeTrajectory relative(
            SmoothedTrajectory lead, SmoothedTrajectory flyer, List<RelativeAnchor> anchors) {
        return relative(ReferencePoint.antennaOf(lead), ReferencePoint.antennaOf(flyer), anchors);
    }

    /**
     * Between reference points.
     *
     * @param anchors may be empty: then the difference of the two smoothers. Parts of an anchor
     *     that a log does not cover are left out
     * @throws IllegalArgumentException if the two are in different frames
     */
    public static RelativeTrajectory relative(
            ReferencePoint lead, ReferencePoint flyer, List<RelativeAnchor> anchors) {
        if (!lead.antenna().frame().origin().equals(flyer.antenna().frame().origin())) {
            throw new IllegalArgumentException("lead and flyer are in different frames");
        }
        Optional<AnchorCorrection> correction = AnchorCorrection.of(lead, flyer, anchors);
        return new RelativeTrajectory(lead, flyer, correction);
    }
}
