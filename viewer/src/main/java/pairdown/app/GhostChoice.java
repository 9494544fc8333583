package pairdown.app;

import java.util.List;
import java.util.Optional;
import pairdown.debrief.Debrief;
import pairdown.replay.Alignment;
import pairdown.replay.Alignment.On;

/**
 * On which moment a second attempt is laid over the first: as wished, or the next that both have.
 *
 * @param on the wish
 * @param gap_m for {@link On#GAP}
 */
record GhostChoice(On on, double gap_m) {
    /** Asked for where the attempt has no gate of its own. */
    private static final double USUAL_GAP_M = 30;

    private static final List<On> ROUND = List.of(On.EXIT, On.FIRST_MATCH, On.GAP, On.CLOSEST);

    static final GhostChoice DEFAULT = new GhostChoice(On.CLOSEST, USUAL_GAP_M);

    /**
     * Reads {@code closest}, {@code exit}, {@code first-match} or a number of metres.
     *
     * @return empty for anything else
     */
    static Optional<GhostChoice> parse(String text) {
        for (On on : ROUND) {
            if (on != On.GAP && on.key().equals(text)) {
                return Optional.of(new GhostChoice(on, USUAL_GAP_M));
            }
        }
        try {
            double gap_m = Double.parseDouble(text);
            return gap_m > 0 ? Optional.of(new GhostChoice(On.GAP, gap_m)) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    Optional<Alignment> alignment(Debrief first, Debrief other) {
        return Alignment.of(first, other, on, gap_m);
    }

    /** This choice, or the first after it that both attempts have; empty if they share none. */
    Optional<GhostChoice> orNext(Debrief first, Debrief other) {
        GhostChoice choice = this;
        for (int i = 0; i < ROUND.size(); i++) {
            if (choice.alignment(first, other).isPresent()) {
                return Optional.of(choice);
            }
            choice = choice.next();
        }
        return Optional.empty();
    }

    /** The next in the round. */
    GhostChoice next() {
        return new GhostChoice(ROUND.get((ROUND.indexOf(on) + 1) % ROUND.size()), gap_m);
    }

    /** The same with the gap a team planned. */
    GhostChoice withGate(Debrief debrief) {
        return new GhostChoice(on, debrief.attempt().gate_m().orElse(gap_m));
    }
}
