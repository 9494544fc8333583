package pairdown.debrief;

import java.util.List;
import java.util.Optional;
import pairdown.air.AirData;
import pairdown.attempt.Attempt;
import pairdown.attempt.Participant;
import pairdown.attempt.Role;
import pairdown.phase.Phase;
import pairdown.phase.PhaseSpan;
import pairdown.phase.Phases;
import pairdown.tail.TailAnalysis;
import pairdown.tail.TailControl;
import pairdown.tail.TailInput;
import pairdown.tail.TailSettings;
import pairdown.time.Span;

/** The step from the lead's motion, air data and systems channels to its power and tail. */
final class Tails {
    private Tails() {}

    /** Power and tail of the lead; empty, with the reason in the notes, where it left no trace. */
    static Optional<TailControl> of(
            Attempt attempt, InAir air, Phases phases, TailSettings settings, List<String> notes) {
        Optional<InAir.Member> lead =
                air.members().stream()
                        .filter(m -> m.smoothed().participant().role() == Role.LEAD)
                        .findFirst();
        if (lead.isEmpty() || (lead.get().motion().isEmpty() && lead.get().systems().isEmpty())) {
            notes.add("power and tail: neither motion nor systems of a lead are known");
            return Optional.empty();
        }
        return Optional.of(
                TailAnalysis.analyse(input(attempt, lead.get(), air, phases).with(settings)));
    }

    private static TailInput input(Attempt attempt, InAir.Member lead, InAir air, Phases phases) {
        Participant p = lead.smoothed().participant();
        List<Span> descents =
                phases.of(p.id()).stream()
                        .filter(s -> s.phase() == Phase.DESCENT)
                        .map(PhaseSpan::span)
                        .toList();
        return TailInput.of(p.id(), lead.systems(), descents)
                .with(
                        new TailInput.Motion(
                                lead.motion(),
                                lead.airData().flatMap(AirData::calibratedAirspeed_mps),
                                lead.airData().flatMap(AirData::trueAirspeed_mps),
                                Optional.of(air.air().atmosphere())))
                .with(new TailInput.Aircraft(p.mass_kg(), Optional.empty()))
                .with(attempt.target());
    }
}
