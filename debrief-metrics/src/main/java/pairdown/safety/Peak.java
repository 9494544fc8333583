package pairdown.safety;

import java.util.Optional;
import pairdown.time.Span;
import pairdown.track.Series;

/**
 * The highest value a channel held for a while.
 *
 * @param hasHoles whether part of the stretch has no value
 */
record Peak(double time_s, double value, boolean hasHoles) {
    /**
     * The greatest over a stretch of the least within {@code hold_s}: one row beyond its neighbours
     * is no peak.
     */
    static Optional<Peak> of(Series series, Span span, double hold_s) {
        double best = Double.NEGATIVE_INFINITY;
        double bestAt_s = Double.NaN;
        boolean holes = !coversWhole(series, span);
        for (int i = Math.max(0, series.indexAtOrBefore(span.start_s()));
                i < series.size() && series.time_s(i) <= span.end_s();
                i++) {
            boolean inside = series.time_s(i) >= span.start_s();
            if (Double.isNaN(series.value(i))
                    || (i + 1 < series.size()
                            && series.time_s(i + 1) - series.time_s(i) > Series.MAX_STEP_S)) {
                holes = true;
            }
            double held = inside ? heldFrom(series, i, hold_s) : Double.NaN;
            if (held > best) {
                best = held;
                bestAt_s = series.time_s(i);
            }
        }
        return Double.isNaN(bestAt_s)
                ? Optional.empty()
                : Optional.of(new Peak(bestAt_s, best, holes));
    }

    private static boolean coversWhole(Series series, Span span) {
        return series.size() > 0
                && series.time_s(0) <= span.start_s() + Series.MAX_STEP_S
                && series.time_s(series.size() - 1) >= span.end_s() - Series.MAX_STEP_S;
    }

    /** The least value from a sample on for a while; NaN where one is missing. */
    private static double heldFrom(Series series, int i, double hold_s) {
        double least = series.value(i);
        for (int k = i + 1;
                k < series.size() && series.time_s(k) <= series.time_s(i) + hold_s + 1e-9;
                k++) {
            least = Math.min(least, series.value(k));
        }
        return least;
    }
}
