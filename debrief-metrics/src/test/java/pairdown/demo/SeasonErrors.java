package pairdown.demo;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import pairdown.debrief.Debrief;
import pairdown.demo.truth.Truth;
import pairdown.pair.Matched;
import pairdown.pair.MatchedWindow;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;
import pairdown.phase.Phase;
import pairdown.phase.PhaseSpan;
import pairdown.season.AttemptSummary;
import pairdown.season.AttemptSummary.Dive;
import pairdown.season.AttemptSummary.FlyerSummary;
import pairdown.season.Summaries;
import pairdown.time.Span;

/**
 * A season's summaries against the truth: by how many of its sigma each gap is off, and how many of
 * the other figures are what they would be, were all they rest on two sigma larger or smaller.
 */
final class SeasonErrors {
    private static final double SIGMAS = 2;

    /** Two steps of the true figures (s). */
    private static final double STEP_S = 0.2;

    /** Two sigma of an airspeed and a sink against the truth, by {@link DebriefStudy} (m/s). */
    private static final double AIRSPEED_OFF_MPS = 2 * 0.25;

    private static final double SINK_OFF_MPS = 2 * 0.07;

    private final Map<String, Tally> errors = new LinkedHashMap<>();
    private final Map<String, Count> counts = new LinkedHashMap<>();
    private final List<String> misses = new ArrayList<>();

    /** How many of a figure were within what was said of them. */
    record Count(int within, int of) {
        static final Count NONE = new Count(0, 0);

        Count and(boolean right) {
            return new Count(within + (right ? 1 : 0), of + 1);
        }

        double share() {
            return (double) within / of;
        }
    }

    Count count(String figure) {
        return counts.getOrDefault(figure, Count.NONE);
    }

    /** Figures that were not within what was said of them, in words. */
    List<String> misses() {
        return misses;
    }

    private void error(String figure, double error) {
        errors.computeIfAbsent(figure, f -> new Tally()).add(error);
    }

    private void within(String figure, boolean right, Debrief debrief, String found) {
        counts.merge(figure, Count.NONE.and(right), (a, b) -> a.and(right));
        if (!right) {
            misses.add(debrief.attempt().id() + ", " + figure + ": " + found);
        }
    }

    synchronized void add(Truth truth, Debrief debrief) {
        AttemptSummary summary = Summaries.of(debrief);
        for (FlyerSummary found : summary.flyers()) {
            TrueFlyer flown = new TrueFlyer(truth, debrief.attempt(), found.flyer());
            PairDebrief pair =
                    debrief.pairs().stream()
                            .filter(p -> p.flyer().equals(found.flyer()))
                            .findFirst()
                            .orElseThrow();
            gaps(debrief, found, flown);
            if (found.held_s().isPresent()) {
                held(debrief, pair, found, flown);
                verdict(debrief, found, flown);
            }
            if (found.matchedLongest_s().isPresent()) {
                matched(debrief, pair.matched(), found, flown);
            }
        }
        int episodes = truth.episodes().size();
        summary.episodes()
                .ifPresent(
                        n -> within("episodes", n == episodes, debrief, n + ", not " + episodes));
        summary.dive().ifPresent(d -> dive(truth, debrief, d));
    }

    private void gaps(Debrief debrief, FlyerSummary found, TrueFlyer flown) {
        double sigma_m = found.sigma_m().orElse(Double.NaN);
        if (found.leastGap_m().isPresent()) {
            gap(debrief, "least gap", found.leastGap_m(), flown.leastGap_m(), sigma_m);
        }
        if (found.medianGap_m().isPresent() && flown.medianGap_m().isPresent()) {
            double true_m = flown.medianGap_m().getAsDouble();
            gap(debrief, "median gap", found.medianGap_m(), true_m, sigma_m);
        }
    }

    private void gap(
            Debrief debrief, String which, OptionalDouble found_m, double true_m, double sigma_m) {
        double off_m = found_m.orElseThrow() - true_m;
        errors.computeIfAbsent(which + " (m)", f -> new Tally()).add(off_m, sigma_m);
        within(
                "gaps",
                Math.abs(off_m) <= SIGMAS * sigma_m,
                debrief,
                String.format(
                        Locale.ROOT,
                        "%s %.2f, not %.2f, sigma %.2f",
                        which,
                        true_m + off_m,
                        true_m,
                        sigma_m));
    }

    /** Were all gaps two sigma wider, and two narrower. */
    private void held(Debrief debrief, PairDebrief pair, FlyerSummary found, TrueFlyer flown) {
        double held_s = found.held_s().orElseThrow();
        double least_s = Math.min(held_s, held_s(pair.series(), flown.near_m(), SIGMAS));
        double most_s = Math.max(held_s, held_s(pair.series(), flown.near_m(), -SIGMAS));
        error("held (s)", held_s - flown.held_s());
        within(
                "held",
                isBetween(flown.held_s(), least_s, most_s),
                debrief,
                range(held_s, least_s, most_s, flown.held_s()));
    }

    private static boolean isBetween(double true_s, double least_s, double most_s) {
        return true_s >= least_s - STEP_S && true_s <= most_s + STEP_S;
    }

    private static String range(double found_s, double least_s, double most_s, double true_s) {
        return String.format(
                Locale.ROOT, "%.1f s (%.1f to %.1f), not %.1f", found_s, least_s, most_s, true_s);
    }

    private static double held_s(PairSeries s, double near_m, double sigmas) {
        double sum_s = 0;
        for (int i = 1; i < s.size(); i++) {
            double gap_m = s.value(Figure.GAP, i) + sigmas * s.value(Figure.GAP_SIGMA, i);
            sum_s += gap_m <= near_m ? s.time_s(i) - s.time_s(i - 1) : 0;
        }
        return sum_s;
    }

    /** A window that a hole in the data ended says how long it was at least. */
    private void matched(Debrief debrief, Matched matched, FlyerSummary found, TrueFlyer flown) {
        double longest_s = found.matchedLongest_s().orElseThrow();
        double shorter_s = matched.longest().map(MatchedWindow::shorter_s).orElse(0.0);
        double longer_s = matched.longest().map(MatchedWindow::longer_s).orElse(0.0);
        boolean cut =
                matched.windows().stream().anyMatch(w -> w.endedBy() == MatchedWindow.EndedBy.DATA);
        double least_s = longest_s - SIGMAS * shorter_s;
        double most_s = cut ? Double.POSITIVE_INFINITY : longest_s + SIGMAS * longer_s;
        if (!cut) {
            error("longest matched (s)", longest_s - flown.longest_s());
        }
        within(
                cut ? "longest matched, cut by a hole" : "longest matched",
                isBetween(flown.longest_s(), least_s, most_s),
                debrief,
                range(longest_s, least_s, most_s, flown.longest_s()));
    }

    /** A verdict within two sigma is one that the truth has with all gaps up to so much off. */
    private void verdict(Debrief debrief, FlyerSummary found, TrueFlyer flown) {
        String verdict = found.verdict().orElseThrow();
        double sigma_m = found.sigma_m().orElseThrow();
        within(
                "verdict",
                verdict.equals(flown.verdict(0)),
                debrief,
                verdict + ", not " + flown.verdict(0));
        within(
                "verdict within two sigma",
                DoubleStream.iterate(-SIGMAS, k -> k <= SIGMAS, k -> k + 0.25)
                        .anyMatch(k -> verdict.equals(flown.verdict(k * sigma_m))),
                debrief,
                verdict);
    }

    private void dive(Truth truth, Debrief debrief, Dive found) {
        TrueDive dive = new TrueDive(truth, debrief.attempt(), descent(truth, debrief));
        within(
                "dive held",
                found.held() == dive.held(),
                debrief,
                found.held() + ", not " + dive.held());
        double stabilise_s = found.stabilise_s().orElse(Double.POSITIVE_INFINITY);
        double true_s = dive.stabilise_s(0, 0);
        double least_s = dive.stabilise_s(AIRSPEED_OFF_MPS, SINK_OFF_MPS);
        double most_s = dive.stabilise_s(-AIRSPEED_OFF_MPS, -SINK_OFF_MPS);
        error("time to stabilise (s)", stabilise_s - true_s);
        within(
                "time to stabilise",
                Double.isInfinite(stabilise_s) == Double.isInfinite(true_s)
                        && isBetween(stabilise_s, least_s, most_s),
                debrief,
                range(stabilise_s, least_s, most_s, true_s));
    }

    private static Span descent(Truth truth, Debrief debrief) {
        double ahead_s = debrief.axis().seconds(truth.start());
        return debrief.lead().orElseThrow().phases().stream()
                .filter(p -> p.phase() == Phase.DESCENT)
                .map(PhaseSpan::span)
                .max((a, b) -> Double.compare(a.duration_s(), b.duration_s()))
                .map(s -> new Span(s.start_s() - ahead_s, s.end_s() - ahead_s))
                .orElseThrow();
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        errors.forEach((f, t) -> text.append(String.format(Locale.ROOT, "%-34s %s%n", f, t)));
        counts.forEach(
                (f, c) ->
                        text.append(
                                String.format(
                                        Locale.ROOT,
                                        "%-34s %d of %d within%n",
                                        f,
                                        c.within(),
                                        c.of())));
        misses.stream().sorted().forEach(m -> text.append("  ").append(m).append('\n'));
        return text.toString();
    }
}
