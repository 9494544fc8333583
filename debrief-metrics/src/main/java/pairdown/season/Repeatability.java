package pairdown.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.season.AttemptSummary.Dive;
import pairdown.stats.IndividualsChart;
import pairdown.stats.Interval;
import pairdown.stats.Proportion;
import pairdown.stats.Survival;

/**
 * How often the descent was held, how soon it was steady, and whether the run of dives is steady in
 * itself. Only dives of one configuration are trials of one thing.
 *
 * @param configuration of the dives; empty without a dive
 * @param held successes of trials: descents on target for the hold, without a tail episode or an
 *     exceeded limit
 * @param interval Wilson's, at the settings' confidence
 * @param stabilise time to stabilise by the product-limit curve; dives that never were count as
 *     watched only
 * @param runs figures of the dives in order of time, each where at least one dive has it
 */
public record Repeatability(
        Optional<String> configuration,
        Proportion held,
        Interval interval,
        Survival stabilise,
        List<Run> runs) {
    public Repeatability {
        runs = List.copyOf(runs);
    }

    /**
     * One figure over the dives that have it.
     *
     * @param dives the attempts they are of, in step with the chart's values
     */
    public record Run(Quantity quantity, List<AttemptSummary> dives, IndividualsChart chart) {
        public Run {
            dives = List.copyOf(dives);
        }
    }

    /** What a run is of. */
    public enum Quantity {
        TIME_TO_STABILISE("timeToStabilise_s"),
        AIRSPEED_SPREAD("airspeedSd_mps"),
        PEAK_ELEVATOR("peakElevator_pct");

        private final String key;

        Quantity(String key) {
            this.key = key;
        }

        /** The spelling in files, with its unit. */
        public String key() {
            return key;
        }

        private OptionalDouble of(Dive dive) {
            return switch (this) {
                case TIME_TO_STABILISE -> dive.stabilise_s();
                case AIRSPEED_SPREAD -> dive.airspeedSd_mps();
                case PEAK_ELEVATOR -> dive.peakElevator_pct();
            };
        }
    }

    /** By the product-limit curve; absent while more than half were never seen steady. */
    public OptionalDouble medianStabilise_s() {
        return stabilise.quantile(0.5);
    }

    /** Dives that were never steady. */
    public int neverStabilised() {
        return stabilise.cases() - stabilise.events();
    }

    /** Each configuration's, that of the latest dive first; one without dives if there are none. */
    static List<Repeatability> byConfiguration(
            List<AttemptSummary> attempts, SeasonSettings settings) {
        Map<String, List<AttemptSummary>> groups = new LinkedHashMap<>();
        for (int i = attempts.size() - 1; i >= 0; i--) {
            AttemptSummary a = attempts.get(i);
            a.dive()
                    .ifPresent(
                            d ->
                                    groups.computeIfAbsent(
                                                    d.configuration(), k -> new ArrayList<>())
                                            .add(0, a));
        }
        return groups.isEmpty()
                ? List.of(of(Optional.empty(), List.of(), settings))
                : groups.entrySet().stream()
                        .map(g -> of(Optional.of(g.getKey()), g.getValue(), settings))
                        .toList();
    }

    private static Repeatability of(
            Optional<String> configuration,
            List<AttemptSummary> attempts,
            SeasonSettings settings) {
        List<Boolean> outcomes = attempts.stream().flatMap(a -> a.descentHeld().stream()).toList();
        Proportion held =
                new Proportion((int) outcomes.stream().filter(h -> h).count(), outcomes.size());
        List<Survival.Case> cases =
                attempts.stream()
                        .flatMap(a -> a.dive().stream())
                        .map(
                                d ->
                                        new Survival.Case(
                                                d.stabilise_s().orElse(d.watched_s()),
                                                d.stabilise_s().isPresent()))
                        .toList();
        List<Run> runs = new ArrayList<>();
        for (Quantity q : Quantity.values()) {
            run(q, attempts).ifPresent(runs::add);
        }
        return new Repeatability(
                configuration, held, held.wilson(settings.confidence()), Survival.of(cases), runs);
    }

    private static Optional<Run> run(Quantity quantity, List<AttemptSummary> attempts) {
        List<AttemptSummary> dives = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (AttemptSummary a : attempts) {
            OptionalDouble value = a.dive().map(quantity::of).orElse(OptionalDouble.empty());
            if (value.isPresent()) {
                dives.add(a);
                values.add(value.getAsDouble());
            }
        }
        return dives.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Run(
                                quantity,
                                dives,
                                IndividualsChart.of(
                                        values.stream().mapToDouble(v -> v).toArray())));
    }
}
