package pairdown.phase;

import java.util.List;

/**
 * Something that happened.
 *
 * @param time_s on the attempt's axis
 * @param sigma_s one standard deviation of the instant; 0 where it is exact by definition
 * @param participants ids of those concerned
 * @param text for a person
 */
public record Event(
        double time_s, double sigma_s, EventKind kind, List<String> participants, String text) {
    public Event {
        participants = List.copyOf(participants);
    }
}
