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
        if (windows.isEmpty()) {
            return OptionalDouble.empty();
        }
        double after_s = windows.get(windows.size() - 1).span().end_s();
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
