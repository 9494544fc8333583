package pairdown.pair;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.LeverArm;

/**
 * All that was found out about one lead and one flyer.
 *
 * @param slot the flyer's slot by name, where it has one
 * @param slotArm where that slot is on the lead
 * @param closest least separation between exit and opening; empty where it can't be known
 * @param leastGap least gap, where there is a slot
 * @param anchoredClosest {@code closest} with the slow bias corrected, where a touch anchors it
 * @param gateHeld where a gate was planned
 * @param onTarget where a target was set and airspeeds are known
 * @param heightLeftAtMatch_s seconds to the break-off height at first match, at the sink then
 * @param breakOff_s when the pair broke off, where found
 * @param refusals what these data may not be asked, and why
 * @param series on a regular grid from exit to opening
 * @param anchoredLeastGap {@code leastGap} with the slow bias corrected, where a touch anchors it
 * @param heightBudget seconds left above the break-off height, where one was set
 * @param gateIn_s when the gap first came inside the planned gate, where it did
 * @param leaving_s when the flyer left its last matched window or, with none, its closest approach;
 *     empty where the data end there
 * @param motion relative motion at any instant, for drawing; empty where the logs share no time
 * @param anchoredMotion the same with the slow bias corrected, where a touch anchors it
 */
public record PairDebrief(
        String lead,
        String flyer,
        Optional<String> slot,
        Optional<LeverArm> slotArm,
        Axes axes,
        Optional<Approach> closest,
        Optional<Approach> leastGap,
        Optional<Approach> anchoredClosest,
        Matched matched,
        Optional<GateHeld> gateHeld,
        Optional<OnTarget> onTarget,
        List<Touch> touch,
        List<ClosureExceedance> closureExceedances,
        OptionalDouble heightLeftAtMatch_s,
        OptionalDouble breakOff_s,
        List<String> refusals,
        PairSeries series,
        Optional<Approach> anchoredLeastGap,
        Optional<HeightBudget> heightBudget,
        OptionalDouble gateIn_s,
        OptionalDouble leaving_s,
        Optional<RelativeMotion> motion,
        Optional<RelativeMotion> anchoredMotion) {
    public PairDebrief {
        touch = List.copyOf(touch);
        closureExceedances = List.copyOf(closureExceedances);
        refusals = List.copyOf(refusals);
    }
}
