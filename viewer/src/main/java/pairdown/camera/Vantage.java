package pairdown.camera;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pairdown.attempt.Role;
import pairdown.debrief.Debrief;

/**
 * A place the scene is seen from.
 *
 * @param who the participant whose eyes these are, for {@link Kind#EYES}; empty for the first flyer
 */
public record Vantage(Kind kind, Optional<String> who) {
    /** The vantage points. */
    public enum Kind {
        SQUARE_ON("square-on", "from the side, square-on to the descent plane"),
        SQUARE_ON_LEFT("square-on-left", "the same from the lead's left"),
        ASTERN_ABOVE("astern-above", "behind and above the lead, looking forward"),
        LEFT_WINDOW("left-window", "through the lead's left window"),
        RIGHT_WINDOW("right-window", "through the lead's right window"),
        LEFT_WINGTIP("left-wingtip", "from the lead's left wingtip, looking aft"),
        RIGHT_WINGTIP("right-wingtip", "from the lead's right wingtip, looking aft"),
        EYES("eyes", "a flyer's eyes; eyes-ID for a certain one"),
        PLAN("plan", "from above, the lead's nose up"),
        DOOR("door", "from the exit aircraft's door"),
        GROUND("ground", "an observer on the ground"),
        ORBIT("orbit", "free, around the lead");

        private final String key;
        private final String meaning;

        Kind(String key, String meaning) {
            this.key = key;
            this.meaning = meaning;
        }

        /** Its name on the command line: {@code "left-window"}. */
        public String key() {
            return key;
        }

        /** What it is, for a person. */
        public String meaning() {
            return meaning;
        }
    }

    /** What a replay starts with. */
    public static final Vantage DEFAULT = of(Kind.SQUARE_ON);

    private static final String EYES_OF = Kind.EYES.key() + "-";

    public static Vantage of(Kind kind) {
        return new Vantage(kind, Optional.empty());
    }

    public static Vantage eyesOf(String participant) {
        return new Vantage(Kind.EYES, Optional.of(participant));
    }

    /** The vantage point of a name, e.g. {@code "square-on"} or {@code "eyes-blue"}. */
    public static Optional<Vantage> named(String name) {
        Optional<Vantage> plain =
                Arrays.stream(Kind.values())
                        .filter(kind -> kind.key().equals(name))
                        .map(Vantage::of)
                        .findFirst();
        if (plain.isEmpty() && name.startsWith(EYES_OF) && name.length() > EYES_OF.length()) {
            return Optional.of(eyesOf(name.substring(EYES_OF.length())));
        }
        return plain;
    }

    /** Its name on the command line. */
    public String name() {
        return who.map(id -> EYES_OF + id).orElse(kind.key());
    }

    /** All that make sense for a debrief: one's eyes for each flyer, a door only with a ship. */
    public static List<Vantage> of(Debrief debrief) {
        return Arrays.stream(Kind.values())
                .flatMap(
                        kind ->
                                switch (kind) {
                                    case EYES ->
                                            debrief.attempt().participants().stream()
                                                    .filter(p -> p.role().isJumper())
                                                    .map(p -> eyesOf(p.id()));
                                    case DOOR ->
                                            debrief.attempt().participants().stream()
                                                    .filter(p -> p.role() == Role.JUMPSHIP)
                                                    .limit(1)
                                                    .map(p -> of(kind));
                                    default -> java.util.stream.Stream.of(of(kind));
                                })
                .toList();
    }

    /** All names, for a message. */
    public static String names() {
        return Arrays.stream(Kind.values())
                .map(k -> k == Kind.EYES ? "eyes, eyes-ID" : k.key())
                .collect(Collectors.joining(", "));
    }
}
