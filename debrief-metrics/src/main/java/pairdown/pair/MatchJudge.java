package pairdown.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.time.Span;
import pairdown.track.Series;

/** A pair's matched windows with all that is told of each. */
final class MatchJudge {
    private final PairInput input;
    private final PairRows rows;
    private final MatchRates rates;
    private final double dwell_s;
    private final PairSettings settings;

    MatchJudge(PairInput input, PairRows rows, double dwell_s, PairSettings settings) {
        this.input = input;
        this.rows = rows;
        this.rates = MatchRates.of(rows, settings.match().smoothing_s());
        this.dwell_s = dwell_s;
        this.settings = settings;
    }

    MatchRates rates() {
        return rates;
    }

    /** Nothing judged, and why. */
    static Matched refused(List<String> why) {
        return new Matched(List.of(), 0, 0, OptionalDouble.empty(), OptionalDouble.empty(), why);
    }

    Matched judge() {
        List<String> tooFine = DataLimits.tooFine(rows, rates, input, settings);
        if (!tooFine.isEmpty()) {
            return refused(tooFine);
        }
        List<MatchedWindow> windows = new ArrayList<>();
        List<MatchFinder.Stretch> slower = stretches(-1);
        List<MatchFinder.Stretch> faster = stretches(1);
        List<MatchFinder.Stretch> found = stretches(0);
        for (MatchFinder.Stretch s : found) {
            windows.add(window(s, faster, slower));
        }
        Optional<MatchFinder.Nearest> nearest =
                windows.isEmpty()
                        ? MatchFinder.nearest(rates, rows, input.matched(), dwell_s)
                        : Optional.empty();
        return new Matched(
                windows,
                Math.max(0, MatchFinder.total_s(found) - MatchFinder.total_s(faster)),
                Math.max(0, MatchFinder.total_s(slower) - MatchFinder.total_s(found))
                        + MatchFinder.unseen_s(slower, rows),
                nearest.map(n -> OptionalDouble.of(n.level_mps())).orElse(OptionalDouble.empty()),
                nearest.map(n -> OptionalDouble.of(n.vertical_mps()))
                        .orElse(OptionalDouble.empty()),
                List.of());
    }

    private List<MatchFinder.Stretch> stretches(double sigmas) {
        return MatchFinder.find(rates, rows, input.matched(), dwell_s, settings.match(), sigmas);
    }

    private MatchedWindow window(
            MatchFinder.Stretch s,
            List<MatchFinder.Stretch> faster,
            List<MatchFinder.Stretch> slower) {
        Span span = s.span();
        double duration_s = span.duration_s();
        return new MatchedWindow(
                span,
                Math.max(0, duration_s - MatchFinder.overlapping_s(faster, span)),
                Math.max(0, MatchFinder.overlapping_s(slower, span) - duration_s),
                airspeedDifference_mps(span),
                sinkDifference_mps(span),
                RowStatistics.median(rows, rows.separation_m, span).orElse(Double.NaN),
                RowStatistics.least(rows, rows.separation_m, span).orElse(Double.NaN),
                s.endedBy(),
                Double.isNaN(s.endedBy_mps())
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(s.endedBy_mps()),
                s.bridged());
    }

    private double sinkDifference_mps(Span span) {
        return RowStatistics.mean(rows, rows.flyerSink_mps, span).orElse(Double.NaN)
                - RowStatistics.mean(rows, rows.leadSink_mps, span).orElse(Double.NaN);
    }

    private OptionalDouble airspeedDifference_mps(Span span) {
        double[] difference_mps = new double[rows.size];
        int from = Math.max(0, rows.rowAtOrAfter(span.start_s()));
        int to = rows.rowAtOrBefore(span.end_s());
        for (int i = from; i <= to; i++) {
            difference_mps[i] = airspeedDifference_mps(input, rows, i);
        }
        return RowStatistics.mean(rows, difference_mps, span);
    }

    /** Calibrated airspeed, flyer minus lead, in a measured row; NaN where one is not known. */
    static double airspeedDifference_mps(PairInput input, PairRows rows, int row) {
        Optional<Series> lead_mps = input.lead().calibratedAirspeed_mps();
        Optional<Series> flyer_mps = input.flyer().calibratedAirspeed_mps();
        if (!rows.measured[row] || lead_mps.isEmpty() || flyer_mps.isEmpty()) {
            return Double.NaN;
        }
        double t_s = rows.time_s[row];
        return flyer_mps.get().at(t_s) - lead_mps.get().at(t_s);
    }
}
