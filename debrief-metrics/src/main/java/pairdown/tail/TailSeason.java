package pairdown.tail;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import pairdown.stats.Proportion;
import pairdown.stats.TwoByTwo;

/**
 * What one aircraft's attempts say together about power and tail: counts over all power changes of
 * their dives, averages about them, and lags over all episodes. Idle drag, and with it the level of
 * Tc′, is taken from the flight at idle of all of them.
 *
 * @param participant the aircraft
 * @param attempts how many
 * @param episodes over all of them
 * @param idle_s how long they flew at idle in all
 * @param changeTable as {@link TailReview#changeTable}, summed
 * @param stretchTable as {@link TailReview#stretchTable}, summed
 * @param averages of effectiveness and of Tc′ about all changes of one direction
 * @param precededLag as {@link TailReview#precededLag}
 * @param endedLag as {@link TailReview#endedLag}
 * @param forwardThenRestored as {@link TailReview#forwardThenRestored}
 */
public record TailSeason(
        String participant,
        int attempts,
        int episodes,
        double idle_s,
        Optional<PowerTable> changeTable,
        Optional<PowerTable> stretchTable,
        List<EventAverage> averages,
        Optional<TailReview.LagSummary> precededLag,
        Optional<TailReview.LagSummary> endedLag,
        Proportion forwardThenRestored) {
    public TailSeason {
        averages = List.copyOf(averages);
    }

    /** One for each aircraft, in the order of their first attempts. */
    public static List<TailSeason> of(List<TailSummary> attempts, TailSettings settings) {
        Map<String, List<TailSummary>> byAircraft = new LinkedHashMap<>();
        attempts.forEach(
                a -> byAircraft.computeIfAbsent(a.participant(), p -> new ArrayList<>()).add(a));
        return byAircraft.values().stream().map(all -> together(all, settings)).toList();
    }

    private static TailSeason together(List<TailSummary> all, TailSettings settings) {
        TailSettings.Review review = settings.review();
        Optional<IdleEvidence> idle =
                all.stream()
                        .filter(a -> !a.idle().isEmpty())
                        .map(a -> IdleEvidence.of(a.idle()))
                        .reduce(IdleEvidence::and);
        int restored = all.stream().mapToInt(TailSummary::restored).sum();
        int forward = all.stream().mapToInt(TailSummary::forward).sum();
        return new TailSeason(
                all.get(0).participant(),
                all.size(),
                all.stream().mapToInt(TailSummary::episodes).sum(),
                idle.map(i -> i.met().duration_s()).orElse(0.0),
                table(PowerTable.CHANGES, all, TailSummary::changes, review),
                table(PowerTable.STRETCHES, all, TailSummary::stretches, review),
                averages(all, idle.map(IdleEvidence::drag), settings),
                lags(all, TailSummary::precededLags_s, review),
                lags(all, TailSummary::endedLags_s, review),
                new Proportion(restored, forward));
    }

    private static Optional<PowerTable> table(
            String unit,
            List<TailSummary> all,
            Function<TailSummary, List<Integer>> counts,
            TailSettings.Review settings) {
        int[] sum = new int[4];
        for (TailSummary a : all) {
            List<Integer> n = counts.apply(a);
            for (int i = 0; i < n.size(); i++) {
                sum[i] += n.get(i);
            }
        }
        TwoByTwo together = new TwoByTwo(sum[0], sum[1], sum[2], sum[3]);
        return together.total() == 0
                ? Optional.empty()
                : Optional.of(PowerTable.of(unit, together, settings.confidence()));
    }

    private static Optional<TailReview.LagSummary> lags(
            List<TailSummary> all,
            Function<TailSummary, List<Double>> lags,
            TailSettings.Review settings) {
        return Reviewer.lags(
                all.stream()
                        .flatMap(a -> lags.apply(a).stream())
                        .mapToDouble(Double::doubleValue)
                        .toArray(),
                settings);
    }

    private static List<EventAverage> averages(
            List<TailSummary> all, Optional<IdleDrag> idle, TailSettings settings) {
        double disc_m2 = settings.force().disc_m2();
        List<EventAverage> averages = new ArrayList<>();
        for (boolean towardReverse : new boolean[] {true, false}) {
            List<PowerCurve> curves =
                    all.stream()
                            .flatMap(a -> a.curves().stream())
                            .filter(c -> c.towardReverse() == towardReverse)
                            .toList();
            averages.add(
                    EventAverage.of(
                            TailFigures.EFFECTIVENESS,
                            towardReverse,
                            curves.stream().map(PowerCurve::effectiveness).toList(),
                            settings.review()));
            idle.ifPresent(
                    drag ->
                            averages.add(
                                    EventAverage.of(
                                            TailFigures.RETARDING_COEFFICIENT,
                                            towardReverse,
                                            curves.stream()
                                                    .map(c -> c.coefficient(drag, disc_m2))
                                                    .toList(),
                                            settings.review())));
        }
        averages.removeIf(a -> a.changes() == 0);
        return averages;
    }
}
