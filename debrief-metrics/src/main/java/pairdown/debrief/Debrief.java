package pairdown.debrief;

import java.util.List;
import java.util.Optional;
import pairdown.air.Wind;
import pairdown.attempt.Attempt;
import pairdown.clock.ClockResult;
import pairdown.geodesy.LocalFrame;
import pairdown.height.HeightResult;
import pairdown.pair.PairDebrief;
import pairdown.phase.Event;
import pairdown.safety.Finding;
import pairdown.tail.TailControl;
import pairdown.time.Span;
import pairdown.time.TimeAxis;

/**
 * The whole of what was found out about one attempt; immutable. Report, viewer and files are made
 * from this alone.
 *
 * @param settings what it was judged by beyond the attempt's own plan
 * @param axis times in here are seconds on this axis
 * @param frame positions in here are east, north, up in this frame
 * @param span first to last instant of any trajectory
 * @param notes what was assumed, and what could not be known and why, beyond single logs
 */
public record Debrief(
        Attempt attempt,
        DebriefSettings settings,
        TimeAxis axis,
        LocalFrame frame,
        Span span,
        List<ClockResult> clock,
        List<HeightResult> heights,
        List<LogQuality> quality,
        Wind wind,
        List<ParticipantDebrief> participants,
        List<Event> events,
        List<PairDebrief> pairs,
        Optional<TailControl> tailControl,
        List<Finding> safety,
        List<String> notes) {
    public Debrief {
        clock = List.copyOf(clock);
        heights = List.copyOf(heights);
        quality = List.copyOf(quality);
        participants = List.copyOf(participants);
        events = List.copyOf(events);
        pairs = List.copyOf(pairs);
        safety = List.copyOf(safety);
        notes = List.copyOf(notes);
    }

    public Optional<ParticipantDebrief> participant(String id) {
        return participants.stream().filter(p -> p.id().equals(id)).findFirst();
    }

    public Optional<ParticipantDebrief> lead() {
        return attempt.lead().flatMap(p -> participant(p.id()));
    }
}
