package pairdown.pair;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.air.Wind;
import pairdown.attempt.Attempt;
import pairdown.attempt.LeverArm;
import pairdown.attempt.Limits;
import pairdown.attempt.MatchedSettings;
import pairdown.attempt.Participant;
import pairdown.attempt.Target;
import pairdown.geodesy.LocalFrame;
import pairdown.time.Span;

/**
 * What the analysis of one pair starts from.
 *
 * @param slot the flyer's slot by name, where it has one
 * @param slotArm where that slot is on the lead; empty where the flyer has none
 * @param frame the attempt's frame, in which the trajectories are
 * @param undulation_m height of the geoid above the ellipsoid at the place
 * @param touchMarks when a person, by video or as a witness, says that the two touched
 */
public record PairInput(
        PairMember lead,
        PairMember flyer,
        Optional<String> slot,
        Optional<LeverArm> slotArm,
        LocalFrame frame,
        double undulation_m,
        Wind wind,
        Optional<Target> target,
        MatchedSettings matched,
        OptionalDouble gate_m,
        Limits limits,
        List<Span> touchMarks) {
    public PairInput {
        touchMarks = List.copyOf(touchMarks);
    }

    /** A pair of an attempt, with its plan, slot and limits; both members must be in it. */
    public static PairInput of(
            Attempt attempt,
            PairMember lead,
            PairMember flyer,
            LocalFrame frame,
            double undulation_m,
            Wind wind) {
        Participant leader = attempt.participant(lead.id()).orElseThrow();
        Optional<String> slot =
                attempt.participant(flyer.id())
                        .orElseThrow()
                        .slot()
                        .filter(leader.slots()::containsKey);
        return new PairInput(
                lead,
                flyer,
                slot,
                slot.map(leader.slots()::get),
                frame,
                undulation_m,
                wind,
                attempt.target(),
                attempt.matched(),
                attempt.gate_m(),
                attempt.limits(),
                List.of());
    }

    public PairInput withTouchMarks(List<Span> marks) {
        return new PairInput(
                lead,
                flyer,
                slot,
                slotArm,
                frame,
                undulation_m,
                wind,
                target,
                matched,
                gate_m,
                limits,
                marks);
    }
}
