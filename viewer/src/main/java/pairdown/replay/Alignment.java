package pairdown.replay;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.debrief.Debrief;
import pairdown.pair.Approach;
import pairdown.pair.MatchedWindow;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;
import pairdown.phase.Event;
import pairdown.phase.EventKind;

/**
 * How the time of a second attempt lies against the first's: the same moment of both is shown at
 * once. Never by the clock.
 *
 * @param on which moment they share
 * @param first_s that moment of the first attempt, on its axis
 * @param other_s the same moment of the other, on its own axis
 */
public record Alignment(On on, double first_s, double other_s) {
    /** What two attempts can be aligned on. */
    public enum On {
        EXIT,
        FIRST_MATCH,
        CLOSEST,
        /** The first time the gap comes down to a chosen size. */
        GAP;

        /** The spelling on the command line: {@code "first-match"}. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * The alignment of two attempts; empty where one of them has no such moment.
     *
     * @param gap_m for {@link On#GAP}
     */
    public static Optional<Alignment> of(Debrief first, Debrief other, On on, double gap_m) {
        String flyer = commonFlyer(first, other);
        OptionalDouble a = moment_s(first, on, gap_m, flyer);
        OptionalDouble b = moment_s(other, on, gap_m, flyer);
        return a.isPresent() && b.isPresent()
                ? Optional.of(new Alignment(on, a.getAsDouble(), b.getAsDouble()))
                : Optional.empty();
    }

    /** The other attempt's time that is shown with a time of the first. */
    public double toOther_s(double t_s) {
        return t_s - first_s + other_s;
    }

    /** The first flyer of the first attempt who also flew in the other; else nobody. */
    private static String commonFlyer(Debrief first, Debrief other) {
        return first.pairs().stream()
                .map(PairDebrief::flyer)
                .filter(id -> other.pairs().stream().anyMatch(p -> p.flyer().equals(id)))
                .findFirst()
                .orElse("");
    }

    private static Optional<PairDebrief> pairOf(Debrief debrief, String flyer) {
        return debrief.pairs().stream()
                .filter(p -> p.flyer().equals(flyer))
                .findFirst()
                .or(() -> debrief.pairs().stream().findFirst());
    }

    private static OptionalDouble moment_s(Debrief debrief, On on, double gap_m, String flyer) {
        return switch (on) {
            case EXIT ->
                    debrief.events().stream()
                            .filter(e -> e.kind() == EventKind.EXIT)
                            .filter(e -> flyer.isEmpty() || e.participants().contains(flyer))
                            .mapToDouble(Event::time_s)
                            .min();
            case FIRST_MATCH ->
                    pairOf(debrief, flyer).stream()
                            .flatMap(p -> p.matched().windows().stream())
                            .map(MatchedWindow::span)
                            .mapToDouble(s -> s.start_s())
                            .min();
            case CLOSEST ->
                    pairOf(debrief, flyer).flatMap(PairDebrief::closest).stream()
                            .sorted(Comparator.comparingDouble(a -> a.separation_m().value()))
                            .mapToDouble(Approach::time_s)
                            .findFirst();
            case GAP ->
                    pairOf(debrief, flyer)
                            .map(p -> firstInside_s(p.series(), gap_m))
                            .orElse(OptionalDouble.empty());
        };
    }

    private static OptionalDouble firstInside_s(PairSeries series, double gap_m) {
        for (int row = 0; row < series.size(); row++) {
            double gap = series.value(Figure.GAP, row);
            if ((Double.isNaN(gap) ? series.value(Figure.SEPARATION, row) : gap) <= gap_m) {
                return OptionalDouble.of(series.time_s(row));
            }
        }
        return OptionalDouble.empty();
    }
}
