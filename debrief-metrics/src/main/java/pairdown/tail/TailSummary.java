package pairdown.tail;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pairdown.stats.Proportion;

/**
 * What several attempts' tails together need of one: small, of plain values, to be kept in a file.
 *
 * @param participant the aircraft
 * @param episodes how many there were
 * @param changes counts of {@link TailReview#changeTable}, row by row; empty where not counted
 * @param stretches counts of {@link TailReview#stretchTable} likewise
 * @param precededLags_s from the preceding move towards reverse to each start
 * @param endedLags_s from the forward move to each end
 * @param restored episodes that ended soon after a forward move …
 * @param forward … of those with one
 * @param curves one a power change in the dives
 * @param idle what flight at idle says about drag, as {@link IdleEvidence#numbers}; empty if none
 */
public record TailSummary(
        String participant,
        int episodes,
        List<Integer> changes,
        List<Integer> stretches,
        List<Double> precededLags_s,
        List<Double> endedLags_s,
        int restored,
        int forward,
        List<PowerCurve> curves,
        List<Double> idle) {
    public TailSummary {
        changes = List.copyOf(changes);
        stretches = List.copyOf(stretches);
        precededLags_s = List.copyOf(precededLags_s);
        endedLags_s = List.copyOf(endedLags_s);
        curves = List.copyOf(curves);
        idle = List.copyOf(idle);
    }

    /** Of one attempt. */
    public static TailSummary of(TailControl t) {
        TailReview r = t.review();
        Proportion restored = r.forwardThenRestored();
        return new TailSummary(
                t.participant(),
                t.episodes().size(),
                counts(r.changeTable()),
                counts(r.stretchTable()),
                lags(t, Episode::precededBy),
                lags(t, Episode::endedAfter),
                restored.successes(),
                restored.trials(),
                r.curves(),
                r.idle().map(IdleEvidence::numbers).orElse(List.of()));
    }

    private static List<Integer> counts(Optional<PowerTable> table) {
        return table.map(PowerTable::counts)
                .map(c -> List.of(c.both(), c.firstOnly(), c.secondOnly(), c.neither()))
                .orElse(List.of());
    }

    private static List<Double> lags(
            TailControl t, Function<Episode, Optional<Episode.Link>> link) {
        return t.episodes().stream()
                .flatMap(e -> link.apply(e).stream())
                .map(Episode.Link::lag_s)
                .toList();
    }
}
