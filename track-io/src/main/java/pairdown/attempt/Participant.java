package pairdown.attempt;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One who took part.
 *
 * @param id short and unique within the attempt
 * @param logs in the order of the attempt's file
 * @param slots the lead's joining places by name
 * @param slot the name of the lead's slot this flyer goes to
 * @param antenna where the lead's receiver sits
 * @param mass_kg all-up, where given
 */
public record Participant(
        String id,
        Role role,
        List<LogRef> logs,
        Map<String, LeverArm> slots,
        Optional<String> slot,
        Optional<LeverArm> antenna,
        OptionalDouble mass_kg) {
    public Participant {
        logs = List.copyOf(logs);
        slots = Map.copyOf(slots);
    }
}
