package pairdown.debrief;

import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.Role;
import pairdown.motion.Trajectory;
import pairdown.pair.MatchedWindow;
import pairdown.pair.PairDebrief;
import pairdown.phase.Event;
import pairdown.phase.EventKind;

/**
 * What the height between the first exit and the end of the formation was used for, on the lead's
 * heights above the ellipsoid. The end is the last break-off or, where none was found, the first
 * opening.
 *
 * @param exit_m the lead's height at the first exit
 * @param matchStart_m where the longest matched window of all began; empty if there is none
 * @param matchEnd_m where it ended
 * @param end_m at the end
 */
public record HeightUse(
        double exit_m, OptionalDouble matchStart_m, OptionalDouble matchEnd_m, double end_m) {
    /** Less height than this is not worth dividing (m). */
    private static final double LEAST_M = 1;

    /** Empty where no exit, no end, or no descent between them was found. */
    public static Optional<HeightUse> of(Debrief debrief) {
        Optional<Trajectory> lead = debrief.lead().flatMap(ParticipantDebrief::trajectory);
        OptionalDouble exit_s = firstOf(debrief, EventKind.EXIT);
        OptionalDouble end_s = end_s(debrief);
        if (lead.isEmpty() || exit_s.isEmpty() || end_s.isEmpty()) {
            return Optional.empty();
        }
        double top_m = height_m(debrief, lead.get(), exit_s.getAsDouble());
        double bottom_m = height_m(debrief, lead.get(), end_s.getAsDouble());
        return top_m - bottom_m > LEAST_M
                ? Optional.of(divided(debrief, lead.get(), top_m, bottom_m))
                : Optional.empty();
    }

    private static HeightUse divided(
            Debrief debrief, Trajectory lead, double top_m, double bottom_m) {
        Optional<MatchedWindow> best = longestMatch(debrief);
        if (best.isEmpty()) {
            return new HeightUse(top_m, OptionalDouble.empty(), OptionalDouble.empty(), bottom_m);
        }
        double from_m = height_m(debrief, lead, best.get().span().start_s());
        double to_m = height_m(debrief, lead, best.get().span().end_s());
        double start_m = clamp(from_m, bottom_m, top_m);
        return new HeightUse(
                top_m,
                OptionalDouble.of(start_m),
                OptionalDouble.of(clamp(to_m, bottom_m, start_m)),
                bottom_m);
    }

    private static Optional<MatchedWindow> longestMatch(Debrief debrief) {
        return debrief.pairs().stream()
                .map(PairDebrief::matched)
                .flatMap(m -> m.longest().stream())
                .max((a, b) -> Double.compare(a.duration_s(), b.duration_s()));
    }

    private static OptionalDouble end_s(Debrief debrief) {
        OptionalDouble breakOff_s =
                debrief.events().stream()
                        .filter(e -> e.kind() == EventKind.BREAK_OFF)
                        .mapToDouble(Event::time_s)
                        .max();
        return breakOff_s.isPresent() ? breakOff_s : firstOf(debrief, EventKind.OPENING);
    }

    private static OptionalDouble firstOf(Debrief debrief, EventKind kind) {
        return debrief.events().stream()
                .filter(e -> e.kind() == kind)
                .filter(e -> e.participants().stream().anyMatch(id -> jumps(debrief, id)))
                .mapToDouble(Event::time_s)
                .min();
    }

    private static boolean jumps(Debrief debrief, String id) {
        return debrief.participant(id)
                .map(p -> p.participant().role())
                .filter(Role::isJumper)
                .isPresent();
    }

    private static double height_m(Debrief debrief, Trajectory motion, double t_s) {
        double inside_s = clamp(t_s, motion.start_s(), motion.end_s());
        return debrief.frame().toGeodetic(motion.at(inside_s).position_m()).height_m();
    }

    private static double clamp(double v, double low, double high) {
        return Math.max(low, Math.min(high, v));
    }
}
