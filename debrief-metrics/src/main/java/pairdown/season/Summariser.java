package pairdown.season;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import pairdown.debrief.Debrief;
import pairdown.debrief.JsonValues;
import pairdown.pair.Approach;
import pairdown.pair.GateHeld;
import pairdown.pair.MatchedWindow;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;
import pairdown.safety.Finding;
import pairdown.season.AttemptSummary.FlyerSummary;
import pairdown.season.AttemptSummary.Spread;
import pairdown.tail.TailControl;
import pairdown.tail.TailSummary;
import pairdown.units.Estimate;

/** Makes the summary of an attempt from its debrief. */
final class Summariser {
    private final SeasonSettings settings;

    Summariser(SeasonSettings settings) {
        this.settings = settings;
    }

    AttemptSummary summarise(Debrief d, String folder) {
        return new AttemptSummary(
                d.attempt().id(),
                folder,
                Optional.empty(),
                new JsonValues(d.axis()).time(d.span().start_s()),
                d.attempt().gate_m(),
                d.pairs().stream().map(Summariser::flyer).toList(),
                DiveReview.of(d, settings),
                d.tailControl().filter(TailControl::tellsEpisodes).map(t -> t.episodes().size()),
                d.pairs().stream().mapToInt(p -> p.closureExceedances().size()).sum(),
                d.safety().stream().noneMatch(Summariser::closureUntold),
                exceeded(d, f -> true),
                exceeded(d, f -> d.lead().filter(l -> l.id().equals(f.participant())).isPresent()),
                d.attempt().target(),
                d.tailControl().filter(TailControl::tellsEpisodes).map(TailSummary::of),
                new SteadySegments(settings).of(d));
    }

    private static boolean closureUntold(Finding f) {
        return f.rule().equals(Finding.CLOSURE) && f.outcome() == Finding.Outcome.CANNOT_TELL;
    }

    private static List<String> exceeded(Debrief d, Predicate<Finding> by) {
        return d.safety().stream()
                .filter(by)
                .filter(f -> f.outcome() == Finding.Outcome.EXCEEDED)
                .map(Finding::rule)
                .distinct()
                .toList();
    }

    private static FlyerSummary flyer(PairDebrief p) {
        Optional<GateHeld> gate = p.gateHeld();
        Optional<GateHeld> judged = gate.filter(g -> g.verdict() != GateHeld.Verdict.NO_DATA);
        Optional<Estimate> least = p.leastGap().flatMap(Approach::gap_m);
        OptionalDouble median =
                gate.map(GateHeld::median_m)
                        .filter(OptionalDouble::isPresent)
                        .orElseGet(() -> medianGap(p));
        return new FlyerSummary(
                p.flyer(),
                least.map(e -> OptionalDouble.of(e.value())).orElse(OptionalDouble.empty()),
                median,
                sigma(p, least),
                judged.map(g -> OptionalDouble.of(g.held_s())).orElse(OptionalDouble.empty()),
                longest(p),
                judged.map(GateHeld::overshoots),
                gate.map(g -> g.verdict().key()),
                p.matched().longest().flatMap(w -> spread(p.series(), w)));
    }

    private static OptionalDouble longest(PairDebrief p) {
        return p.matched().isKnown()
                ? OptionalDouble.of(
                        p.matched().longest().map(MatchedWindow::duration_s).orElse(0.0))
                : OptionalDouble.empty();
    }

    private static OptionalDouble medianGap(PairDebrief p) {
        return p.matched()
                .longest()
                .map(w -> inside(p.series(), w, Figure.GAP))
                .filter(v -> v.length > 0)
                .map(v -> OptionalDouble.of(v[v.length / 2]))
                .orElse(OptionalDouble.empty());
    }

    /**
     * The gap's sigma over the best window, which a median of many does not shrink: it is mostly
     * slow.
     */
    private static OptionalDouble sigma(PairDebrief p, Optional<Estimate> least) {
        Optional<double[]> sigmas =
                p.matched()
                        .longest()
                        .map(w -> inside(p.series(), w, Figure.GAP_SIGMA))
                        .filter(v -> v.length > 0);
        if (sigmas.isPresent()) {
            return OptionalDouble.of(sigmas.get()[sigmas.get().length / 2]);
        }
        return least.map(e -> OptionalDouble.of(e.sigma())).orElse(OptionalDouble.empty());
    }

    /** Known values of a figure inside a window, sorted. */
    private static double[] inside(PairSeries s, MatchedWindow w, Figure figure) {
        return IntStream.range(0, s.size())
                .filter(i -> w.span().contains(s.time_s(i)))
                .mapToDouble(i -> s.value(figure, i))
                .filter(v -> !Double.isNaN(v))
                .sorted()
                .toArray();
    }

    private static Optional<Spread> spread(PairSeries s, MatchedWindow w) {
        int n = 0;
        double[] sum = new double[3];
        double[][] square = new double[3][3];
        for (int i = 0; i < s.size(); i++) {
            double[] place = {
                s.value(Figure.AHEAD, i), s.value(Figure.RIGHT, i), s.value(Figure.ABOVE, i)
            };
            if (w.span().contains(s.time_s(i)) && !Double.isNaN(place[0] + place[1] + place[2])) {
                n++;
                for (int a = 0; a < 3; a++) {
                    sum[a] += place[a];
                    for (int b = 0; b < 3; b++) {
                        square[a][b] += place[a] * place[b];
                    }
                }
            }
        }
        if (n < 2) {
            return Optional.empty();
        }
        double[] sd = new double[3];
        for (int a = 0; a < 3; a++) {
            sd[a] = Math.sqrt(Math.max(0, square[a][a] / n - sum[a] / n * (sum[a] / n)));
        }
        double covariance = square[0][1] / n - sum[0] / n * (sum[1] / n);
        double correlation = sd[0] > 0 && sd[1] > 0 ? covariance / (sd[0] * sd[1]) : 0;
        return Optional.of(
                new Spread(sum[0] / n, sum[1] / n, sum[2] / n, sd[0], sd[1], sd[2], correlation));
    }
}
