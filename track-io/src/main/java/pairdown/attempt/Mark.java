package pairdown.attempt;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A moment that a person marked, with what they saw there. Kept beside an attempt's logs, never in
 * them.
 *
 * @param time the moment
 * @param kind what the person says it is
 * @param participants ids of those concerned; for {@link Kind#TOUCH} the flyer and the lead
 * @param note in the person's words; may be empty
 * @param video file and frame or time in it, where the moment was tied to one
 */
public record Mark(
        Instant time, Kind kind, List<String> participants, String note, Optional<String> video) {
    /** What a mark says. */
    public enum Kind {
        /** A moment to come back to. */
        MOMENT("moment"),
        /** A touch, seen on video or by a witness. */
        TOUCH("touch");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        /** The spelling in files. */
        public String key() {
            return key;
        }
    }

    public Mark {
        participants = List.copyOf(participants);
    }
}
