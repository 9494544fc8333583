package pairdown.phase;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.units.Estimate;

/**
 * Who did what when.
 *
 * @param spans by participant, each participant's in order of time
 * @param events exit, stable, opening and end of log, in order of time
 */
public record Phases(List<PhaseSpan> spans, List<Event> events) {
    public Phases {
        spans = List.copyOf(spans);
        events = List.copyOf(events);
    }

    /** One participant's phases in order of time. */
    public List<PhaseSpan> of(String participant) {
        return spans.stream().filter(s -> s.participant().equals(participant)).toList();
    }

    /** The participant's phase at an instant, if any. */
    public Optional<Phase> at(String participant, double t_s) {
        return spans.stream()
                .filter(s -> s.participant().equals(participant) && s.span().contains(t_s))
                .map(PhaseSpan::phase)
                .findFirst();
    }

    /** When the participant left the exit aircraft (s on the attempt's axis). */
    public OptionalDouble exit_s(String participant) {
        return instant(participant, EventKind.EXIT);
    }

    /** When the participant's canopy opened (s on the attempt's axis). */
    public OptionalDouble opening_s(String participant) {
        return instant(participant, EventKind.OPENING);
    }

    /** The instant of a participant's first event of a kind with its sigma (s). */
    public Optional<Estimate> estimate(String participant, EventKind kind) {
        return events.stream()
                .filter(e -> e.kind() == kind && e.participants().contains(participant))
                .map(e -> new Estimate(e.time_s(), e.sigma_s()))
                .findFirst();
    }

    private OptionalDouble instant(String participant, EventKind kind) {
        return estimate(participant, kind)
                .map(e -> OptionalDouble.of(e.value()))
                .orElse(OptionalDouble.empty());
    }
}
