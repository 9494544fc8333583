package pairdown.app;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.debrief.Debrief;
import pairdown.replay.Alignment;
import pairdown.replay.Alignment.On;

/**
 * On which moment a second attempt is laid over the first.
 *
 * @param on which
 * @param typed_m for {@link On#GAP} the gap a person chose; empty for the first attempt's gate
 */
record GhostChoice(On on, OptionalDouble typed_m) {
    /** Taken where the attempt has no gate. */
    private static final double USUAL_GAP_M = 30;

    private static final List<On> ROUND = List.of(On.EXIT, On.FIRST_MATCH, On.GAP, On.CLOSEST);

    static GhostChoice of(On on) {
        return new GhostChoice(on, OptionalDouble.empty());
    }

    static GhostChoice ofGap(double gap_m) {
        return new GhostChoice(On.GAP, OptionalDouble.of(gap_m));
    }

    /**
     * Reads {@code closest}, {@code exit}, {@code first-match} or a number of metres.
     *
     * @return empty for anything else
     */
    static Optional<GhostChoice> parse(String text) {
        for (On on : ROUND) {
            if (on != On.GAP && on.key().equals(text)) {
                return Optional.of(of(on));
            }
        }
        try {
            double gap_m = Double.parseDouble(text);
            return gap_m > 0 ? Optional.of(ofGap(gap_m)) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    double gap_m(Debrief first) {
        return typed_m.orElse(first.attempt().gate_m().orElse(USUAL_GAP_M));
    }

    Optional<Alignment> alignment(Debrief first, Debrief other) {
        return Alignment.of(first, other, on, gap_m(first));
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
        return new GhostChoice(ROUND.get((ROUND.indexOf(on) + 1) % ROUND.size()), typed_m);
    }
}
