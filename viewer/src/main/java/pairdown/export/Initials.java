package pairdown.export;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import pairdown.attempt.Attempt;
import pairdown.attempt.Participant;

/**
 * What stands for each participant's name: its first letter, or the first letter of its role where
 * a name has none; numbered where two begin alike.
 */
final class Initials {
    private final Map<String, String> byId = new LinkedHashMap<>();

    Initials(Attempt attempt) {
        for (Participant p : attempt.participants()) {
            String initial = initial(p);
            String unused = initial;
            for (int n = 2; byId.containsValue(unused); n++) {
                unused = initial + n;
            }
            byId.put(p.id(), unused);
        }
    }

    private static String initial(Participant p) {
        return (p.id() + p.role().key())
                .codePoints()
                .filter(Character::isLetter)
                .mapToObj(Character::toString)
                .findFirst()
                .orElse("X")
                .toUpperCase(Locale.ROOT);
    }

    /**
     * The initials of a participant.
     *
     * @throws IllegalArgumentException if nobody of that name took part
     */
    String of(String id) {
        String initials = byId.get(id);
        if (initials == null) {
            throw new IllegalArgumentException("nobody of that name took part");
        }
        return initials;
    }
}
