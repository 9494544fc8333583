package pairdown.tail;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What preceded an episode and what it ended after. A start known to within its sigma may look
 * earlier than the move it followed, so the search reaches one and a half past it, up to two
 * seconds; a lag is then never under 0. Backwards it reaches one sigma further than the setting.
 */
final class Pairing {
    private static final double GRACE_SIGMAS = 1.5;

    private static final double GREATEST_GRACE_S = 2;

    private final TailSettings.Power settings;

    Pairing(TailSettings.Power settings) {
        this.settings = settings;
    }

    /** Episodes and changes that know of each other. */
    record Paired(List<Episode> episodes, List<PowerChange> changes) {}

    Paired pair(List<Episode> episodes, List<PowerChange> changes) {
        List<PowerChange> marked = new ArrayList<>(changes);
        List<Episode> paired = new ArrayList<>();
        for (int k = 0; k < episodes.size(); k++) {
            Episode e = episodes.get(k);
            int before = preceding(e, changes);
            if (before >= 0) {
                marked.set(before, changes.get(before).followedBy(k));
            }
            paired.add(
                    new Episode(
                            e.span(),
                            e.startSigma_s(),
                            e.signs(),
                            e.grade(),
                            e.minimumEffectiveness(),
                            e.elevatorMargin_pct(),
                            before < 0
                                    ? Optional.empty()
                                    : Optional.of(link(changes.get(before), e.span().start_s(), e)),
                            forward(e, changes).map(c -> link(c, e.span().end_s(), e)),
                            e.why()));
        }
        return new Paired(paired, marked);
    }

    private int preceding(Episode e, List<PowerChange> changes) {
        double start_s = e.span().start_s();
        double latest_s = start_s + Math.min(GREATEST_GRACE_S, GRACE_SIGMAS * e.startSigma_s());
        int found = -1;
        for (int i = 0; i < changes.size(); i++) {
            PowerChange c = changes.get(i);
            if (c.towardReverse()
                    && c.time_s() <= latest_s
                    && c.time_s() >= start_s - settings.before_s() - e.startSigma_s()) {
                found = i;
            }
        }
        return found;
    }

    /** The first forward move since the start and before the end. */
    private static Optional<PowerChange> forward(Episode e, List<PowerChange> changes) {
        return changes.stream()
                .filter(c -> !c.towardReverse())
                .filter(c -> c.time_s() >= e.span().start_s() && c.time_s() <= e.span().end_s())
                .findFirst();
    }

    private static Episode.Link link(PowerChange change, double at_s, Episode e) {
        return new Episode.Link(change, Math.max(0, at_s - change.time_s()), e.startSigma_s());
    }
}
