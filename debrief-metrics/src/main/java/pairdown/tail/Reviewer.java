package pairdown.tail;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.stats.Proportion;
import pairdown.stats.Robust;
import pairdown.stats.TwoByTwo;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;

/** Makes the pilot's tables and averages from what the analysis found. */
final class Reviewer {
    private static final List<String> AVERAGED =
            List.of(
                    TailFigures.EFFECTIVENESS,
                    TailFigures.RETARDING_COEFFICIENT,
                    TailFigures.RETARDING_SHARE);

    private final TailInput input;
    private final Flight flight;
    private final Optional<Effectiveness> judge;
    private final TailSettings.Review settings;
    private final List<Span> dives;
    private final boolean[] diving;

    Reviewer(TailInput input, Flight flight, Optional<Effectiveness> judge) {
        this.input = input;
        this.flight = flight;
        this.judge = judge;
        this.settings = input.settings().review();
        Grid grid = flight.signals().grid();
        this.dives = flight.reviewed().stream().map(r -> grid.span(r.from(), r.to())).toList();
        this.diving = Masks.within(grid, dives);
    }

    TailControl review(TailControl bare) {
        List<DescentSequence> sequences =
                new Sequences(input, flight).of(bare.powerChanges(), bare.episodes());
        TailReview review =
                new TailReview(
                        flight.balance().ownIdle(),
                        dives,
                        sequences,
                        changeTable(bare),
                        stretchTable(bare),
                        averages(bare),
                        curves(bare),
                        // Without reverse there is nothing for effectiveness to follow.
                        judge.filter(e -> e.standing().isPresent())
                                .flatMap(
                                        e ->
                                                CrossLag.of(
                                                        TailFigures.RETARDING_COEFFICIENT,
                                                        flight.balance().coefficient(),
                                                        TailFigures.EFFECTIVENESS,
                                                        e.ratio(),
                                                        diving,
                                                        flight.signals().grid(),
                                                        settings)),
                        lags(bare.episodes(), Episode::precededBy),
                        lags(bare.episodes(), Episode::endedAfter),
                        restored(bare.episodes()),
                        judge.map(
                                        e ->
                                                new EffectivenessMap(flight, settings)
                                                        .cells(e, bare.episodes(), diving))
                                .orElse(List.of()));
        return bare.with(review);
    }

    private Optional<PowerTable> changeTable(TailControl t) {
        if (t.powerChanges().isEmpty() || judge.isEmpty()) {
            return Optional.empty();
        }
        int[][] n = new int[2][2];
        for (PowerChange c : t.powerChanges()) {
            if (inDive(c.time_s())) {
                boolean followed =
                        c.episode().isPresent()
                                || starts(t, c.time_s(), input.settings().power().before_s());
                n[c.towardReverse() ? 0 : 1][followed ? 0 : 1]++;
            }
        }
        return table(PowerTable.CHANGES, n);
    }

    private Optional<PowerTable> stretchTable(TailControl t) {
        if (judge.isEmpty() || flight.signals().grid().size() == 0) {
            return Optional.empty();
        }
        double length_s = input.settings().power().before_s();
        int[][] n = new int[2][2];
        for (Span dive : dives) {
            for (double s = dive.start_s(); s + length_s <= dive.end_s(); s += length_s) {
                double from_s = s;
                boolean moved =
                        t.powerChanges().stream()
                                .anyMatch(
                                        c ->
                                                c.towardReverse()
                                                        && c.time_s() >= from_s - length_s / 2
                                                        && c.time_s() < from_s + length_s / 2);
                n[moved ? 0 : 1][starts(t, s, length_s) ? 0 : 1]++;
            }
        }
        return table(PowerTable.STRETCHES, n);
    }

    private Optional<PowerTable> table(String unit, int[][] n) {
        TwoByTwo counts = new TwoByTwo(n[0][0], n[0][1], n[1][0], n[1][1]);
        return counts.total() == 0
                ? Optional.empty()
                : Optional.of(PowerTable.of(unit, counts, settings.confidence()));
    }

    private static boolean starts(TailControl t, double from_s, double length_s) {
        return t.episodes().stream()
                .anyMatch(
                        e ->
                                e.span().start_s() >= from_s
                                        && e.span().start_s() < from_s + length_s);
    }

    private boolean inDive(double t_s) {
        return TailReview.NONE.over(dives).inDive(t_s);
    }

    private List<EventAverage> averages(TailControl t) {
        List<EventAverage> averages = new ArrayList<>();
        for (String figure : AVERAGED) {
            for (boolean towardReverse : new boolean[] {true, false}) {
                EventAverage a =
                        EventAverage.over(
                                List.of(t.with(TailReview.NONE.over(dives))),
                                figure,
                                towardReverse,
                                settings);
                if (a.changes() > 0) {
                    averages.add(a);
                }
            }
        }
        return averages;
    }

    private List<PowerCurve> curves(TailControl t) {
        Grid grid = flight.signals().grid();
        double[] q_Pa = flight.air().dynamicPressure_Pa();
        double[] flap = flight.signals().column(Channel.FLAP);
        double disc_m2 = input.settings().force().disc_m2();
        double[] whole = new double[grid.size()];
        for (int i = 0; i < whole.length; i++) {
            whole[i] =
                    flight.balance().weight_N() * flight.balance().share()[i] / (q_Pa[i] * disc_m2);
        }
        double[] ratio = judge.map(Effectiveness::ratio).orElse(Signals.nothing(grid.size()));
        Series effectiveness = grid.series(ratio);
        Series force = grid.series(whole);
        List<PowerCurve> curves = new ArrayList<>();
        for (PowerChange c : t.powerChanges()) {
            if (inDive(c.time_s())) {
                int at = grid.place(c.time_s());
                double sine = flight.air().sinePath()[at];
                double lift_N = flight.balance().weight_N() * Math.sqrt(1 - sine * sine);
                curves.add(
                        new PowerCurve(
                                c.towardReverse(),
                                EventAverage.about(effectiveness, c.time_s(), settings),
                                EventAverage.about(force, c.time_s(), settings),
                                IdleDrag.terms(flap[at], lift_N / q_Pa[at])));
            }
        }
        return curves;
    }

    private interface LinkOf {
        Optional<Episode.Link> of(Episode e);
    }

    private Optional<TailReview.LagSummary> lags(Collection<Episode> episodes, LinkOf link) {
        return lags(
                episodes.stream()
                        .flatMap(e -> link.of(e).stream())
                        .mapToDouble(Episode.Link::lag_s)
                        .toArray(),
                settings);
    }

    static Optional<TailReview.LagSummary> lags(double[] lags, TailSettings.Review settings) {
        OptionalDouble median = Robust.median(lags);
        if (median.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new TailReview.LagSummary(
                        lags.length,
                        median.getAsDouble(),
                        Robust.quantile(0, lags).orElseThrow(),
                        Robust.quantile(1, lags).orElseThrow(),
                        lags.length >= settings.leastEpisodes()));
    }

    private Proportion restored(List<Episode> episodes) {
        List<Episode.Link> forward =
                episodes.stream().flatMap(e -> e.endedAfter().stream()).toList();
        long within =
                forward.stream()
                        .filter(l -> l.lag_s() <= input.settings().power().before_s())
                        .count();
        return new Proportion((int) within, forward.size());
    }
}
