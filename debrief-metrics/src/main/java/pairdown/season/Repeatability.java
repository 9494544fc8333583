package pairdown.season;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.season.AttemptSummary.Dive;
import pairdown.stats.IndividualsChart;
import pairdown.stats.Interval;
import pairdown.stats.Proportion;
import pairdown.stats.Survival;

/**
 * How often the descent was held, and how soon it was steady.
 *
 * @param held successes of trials
 * @param interval Wilson's, at the settings' confidence
 * @param medianStabilise_s by the product-limit curve, dives that never were counting as watched
 *     only
 * @param neverStabilised dives that never were
 * @param chart the run of times to stabilise, where any
 */
public record Repeatability(
        Proportion held,
        Interval interval,
        OptionalDouble medianStabilise_s,
        int neverStabilised,
        Optional<IndividualsChart> chart) {

    static Repeatability of(List<AttemptSummary> attempts, SeasonSettings settings) {
        List<Boolean> outcomes = attempts.stream().flatMap(a -> a.descentHeld().stream()).toList();
        Proportion held =
                new Proportion((int) outcomes.stream().filter(h -> h).count(), outcomes.size());
        List<Dive> dives = attempts.stream().flatMap(a -> a.dive().stream()).toList();
        List<Survival.Case> cases =
                dives.stream()
                        .map(
                                d ->
                                        new Survival.Case(
                                                d.stabilise_s().orElse(d.watched_s()),
                                                d.stabilise_s().isPresent()))
                        .toList();
        double[] times_s =
                dives.stream()
                        .filter(d -> d.stabilise_s().isPresent())
                        .mapToDouble(d -> d.stabilise_s().getAsDouble())
                        .toArray();
        return new Repeatability(
                held,
                held.wilson(settings.confidence()),
                Survival.of(cases).quantile(0.5),
                (int) cases.stream().filter(c -> !c.happened()).count(),
                times_s.length == 0 ? Optional.empty() : Optional.of(IndividualsChart.of(times_s)));
    }
}
