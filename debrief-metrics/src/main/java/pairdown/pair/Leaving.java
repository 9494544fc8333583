package pairdown.pair;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.time.Span;

/** When a flyer left the lead. */
final class Leaving {
    private Leaving() {}

    /**
     * The end of the last matched window or, with none, the closest approach; empty where the data
     * end there or matching could not be judged.
     */
    static OptionalDouble at_s(Matched matched, Optional<Approach> closest) {
        if (!matched.refusals().isEmpty()) {
            return OptionalDouble.empty();
        }
        List<MatchedWindow> windows = matched.windows();
        if (windows.isEmpty()) {
            return closest.map(c -> OptionalDouble.of(c.time_s())).orElse(OptionalDouble.empty());
        }
        MatchedWindow last = windows.get(windows.size() - 1);
        return last.endedBy() == MatchedWindow.EndedBy.DATA
                ? OptionalDouble.empty()
                : OptionalDouble.of(last.span().end_s());
    }

    /** When the separation first opened lastingly faster than a break-off, after the last match. */
    static OptionalDouble breakOff_s(Matched matched, PairRows rows, PairSettings settings) {
        List<MatchedWindow> windows = matched.windows();
        return windows.isEmpty()
                ? OptionalDouble.empty()
                : opening_s(windows.get(windows.size() - 1).span().end_s(), rows, settings);
    }

    /**
     * Until when a flyer joins, and so a closing limit applies: the break-off or, with no match,
     * the first such opening after its closest approach once it flies; the last row where there is
     * neither.
     */
    static double joinsUntil_s(Matched matched, PairRows rows, PairSettings settings) {
        OptionalDouble until_s =
                matched.windows().isEmpty()
                        ? opening_s(nearest_s(rows, settings.settled_s()), rows, settings)
                        : breakOff_s(matched, rows, settings);
        return until_s.orElse(Double.POSITIVE_INFINITY);
    }

    /** When the separation was least, from some time after the exit. */
    private static double nearest_s(PairRows rows, double settled_s) {
        int best = rows.rowAtOrAfter(rows.start_s + settled_s);
        for (int i = best; i < rows.size; i++) {
            if (Double.isNaN(rows.separation_m[best])
                    || rows.separation_m[i] < rows.separation_m[best]) {
                best = i;
            }
        }
        return best < rows.size ? rows.time_s[best] : rows.last_s();
    }

    private static OptionalDouble opening_s(double after_s, PairRows rows, PairSettings settings) {
        double[] margin = new double[rows.size];
        for (int i = 0; i < rows.size; i++) {
            margin[i] =
                    rows.time_s[i] < after_s
                            ? Double.NaN
                            : -rows.closure_mps[i] - settings.breakOff_mps();
        }
        return Stretches.lasting(Stretches.of(rows, margin), settings.breakOffFor_s()).stream()
                .mapToDouble(Span::start_s)
                .findFirst();
    }
}
