package pairdown.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;
import pairdown.season.AttemptSummary.FlyerSummary;
import pairdown.stats.Interval;
import pairdown.stats.LinearFit;

/**
 * The step-down: for each flyer, what gap was planned and reached in each attempt, and where it
 * goes.
 *
 * @param flyers by name
 */
public record Ladder(List<FlyerLadder> flyers) {
    /** A fit needs this many attempts to say anything about a trend. */
    private static final int LEAST_FOR_TREND = 3;

    public Ladder {
        flyers = List.copyOf(flyers);
    }

    /**
     * One flyer's ladder.
     *
     * @param rungs in order of time
     * @param trend how the gap went from one attempt to the next; absent with fewer than three
     */
    public record FlyerLadder(String flyer, List<Rung> rungs, Optional<Trend> trend) {
        public FlyerLadder {
            rungs = List.copyOf(rungs);
        }
    }

    /**
     * A straight line through ln(gap in metres) on the rungs' places.
     *
     * @param factor by which the gap changed per attempt, with its interval: under 1 is nearer
     */
    public record Trend(LinearFit fit, double factor, double low, double high) {
        /** The line's gap at a place in the ladder (m). */
        public double gap_m(double place) {
            return Math.exp(fit.at(place));
        }

        /** The line's band at a place in the ladder (m). */
        public Interval band_m(double place, double confidence) {
            Interval ln = fit.interval(place, confidence);
            return new Interval(Math.exp(ln.low()), Math.exp(ln.high()), confidence);
        }
    }

    /**
     * One attempt of one flyer.
     *
     * @param place of the attempt among those with a flyer, from 0
     * @param against what this attempt's gap is against the one before: {@code nearer}, {@code
     *     further}, {@code no measurable change}, or empty where either is unknown
     */
    public record Rung(
            int place,
            String attempt,
            String folder,
            OptionalDouble planned_m,
            FlyerSummary flown,
            Optional<String> against) {}

    /** Names that differ in capitals alone: likely one person's, whose ladder they would split. */
    List<List<String>> namesApartByCase() {
        Map<String, List<String>> alike = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        for (FlyerLadder f : flyers) {
            alike.computeIfAbsent(f.flyer(), k -> new ArrayList<>()).add(f.flyer());
        }
        return alike.values().stream().filter(names -> names.size() > 1).toList();
    }

    /** The ladder of usable attempts in order of time. */
    static Ladder of(List<AttemptSummary> attempts, SeasonSettings settings) {
        TreeSet<String> names = new TreeSet<>();
        List<AttemptSummary> joined = attempts.stream().filter(a -> !a.flyers().isEmpty()).toList();
        joined.forEach(a -> a.flyers().forEach(f -> names.add(f.flyer())));
        return new Ladder(names.stream().map(n -> ladder(n, joined, settings)).toList());
    }

    private static FlyerLadder ladder(
            String name, List<AttemptSummary> attempts, SeasonSettings settings) {
        List<Rung> rungs = new ArrayList<>();
        Optional<FlyerSummary> before = Optional.empty();
        for (int i = 0; i < attempts.size(); i++) {
            AttemptSummary a = attempts.get(i);
            int place = i;
            Optional<FlyerSummary> flown =
                    a.flyers().stream().filter(f -> f.flyer().equals(name)).findFirst();
            if (flown.isPresent()) {
                Optional<FlyerSummary> last = before;
                rungs.add(
                        new Rung(
                                place,
                                a.attempt(),
                                a.folder(),
                                a.gate_m(),
                                flown.get(),
                                last.flatMap(b -> against(b, flown.get()))));
                before = flown.get().medianGap_m().isPresent() ? flown : before;
            }
        }
        return new FlyerLadder(name, rungs, trend(rungs, settings));
    }

    /** Two gaps differ only beyond two sigma of their difference. */
    private static Optional<String> against(FlyerSummary before, FlyerSummary now) {
        boolean known =
                before.medianGap_m().isPresent()
                        && now.medianGap_m().isPresent()
                        && before.sigma_m().isPresent()
                        && now.sigma_m().isPresent();
        if (!known) {
            return Optional.empty();
        }
        double change_m = now.medianGap_m().getAsDouble() - before.medianGap_m().getAsDouble();
        double sigma_m = Math.hypot(before.sigma_m().getAsDouble(), now.sigma_m().getAsDouble());
        if (Math.abs(change_m) <= 2 * sigma_m) {
            return Optional.of("no measurable change");
        }
        return Optional.of(change_m < 0 ? "nearer" : "further");
    }

    private static Optional<Trend> trend(List<Rung> rungs, SeasonSettings settings) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (Rung r : rungs) {
            OptionalDouble gap_m = r.flown().medianGap_m();
            if (gap_m.isPresent() && gap_m.getAsDouble() > 0) {
                x.add((double) r.place());
                y.add(Math.log(gap_m.getAsDouble()));
            }
        }
        if (x.size() < LEAST_FOR_TREND) {
            return Optional.empty();
        }
        LinearFit fit = LinearFit.of(array(x), array(y));
        Interval slope = fit.slopeInterval(settings.confidence());
        return Optional.of(
                new Trend(
                        fit, Math.exp(fit.slope()), Math.exp(slope.low()), Math.exp(slope.high())));
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
