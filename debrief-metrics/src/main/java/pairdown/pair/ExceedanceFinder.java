package pairdown.pair;

import java.util.ArrayList;
import java.util.List;
import pairdown.time.Span;
import pairdown.units.Estimate;

/** Finds where a flyer closed faster than the closing limit at its gap. */
final class ExceedanceFinder {
    private ExceedanceFinder() {}

    /**
     * Stretches over the limit by more than the settings' margin, for as long as they say.
     *
     * @param limit_mps by row; NaN where it is not judged
     */
    static List<ClosureExceedance> find(PairRows rows, double[] limit_mps, PairSettings settings) {
        double[] over = new double[rows.size];
        for (int i = 0; i < rows.size; i++) {
            double margin_mps =
                    Math.max(settings.over_mps(), settings.overSigmas() * rows.closureSigma_mps[i]);
            over[i] = rows.closure_mps[i] - limit_mps[i] - margin_mps;
        }
        List<ClosureExceedance> found = new ArrayList<>();
        for (Span span : Stretches.lasting(Stretches.of(rows, over), settings.overFor_s())) {
            found.add(worst(rows, limit_mps, span));
        }
        return found;
    }

    private static ClosureExceedance worst(PairRows rows, double[] limit_mps, Span span) {
        int worst = rows.rowAtOrAfter(span.start_s());
        for (int i = worst; i <= rows.rowAtOrBefore(span.end_s()); i++) {
            if (rows.closure_mps[i] - limit_mps[i] > rows.closure_mps[worst] - limit_mps[worst]) {
                worst = i;
            }
        }
        return new ClosureExceedance(
                span,
                new Estimate(rows.closure_mps[worst], rows.closureSigma_mps[worst]),
                limit_mps[worst],
                rows.separation_m[worst],
                rows.time_s[worst]);
    }
}
