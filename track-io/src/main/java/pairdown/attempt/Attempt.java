package pairdown.attempt;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An attempt as planned and brought home: who took part, which logs, target, gate and limits.
 *
 * @param id the attempt's name in results
 * @param folder where its files lie
 * @param gate_m the planned distance from the slot
 * @param settings numbers that this team wants otherwise than usual
 * @param notes what was assumed in the absence of an {@code attempt.json}: a guessed lead, say
 */
public record Attempt(
        String id,
        Optional<String> title,
        Path folder,
        List<Participant> participants,
        Optional<Target> target,
        MatchedSettings matched,
        OptionalDouble gate_m,
        Limits limits,
        AirSettings air,
        ChosenSettings settings,
        List<String> notes) {
    public Attempt {
        participants = List.copyOf(participants);
        notes = List.copyOf(notes);
    }

    public Optional<Participant> lead() {
        return participants.stream().filter(p -> p.role() == Role.LEAD).findFirst();
    }

    public List<Participant> flyers() {
        return participants.stream().filter(p -> p.role() == Role.FLYER).toList();
    }

    public Optional<Participant> participant(String id) {
        return participants.stream().filter(p -> p.id().equals(id)).findFirst();
    }
}
