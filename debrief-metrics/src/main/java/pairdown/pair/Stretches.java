package pairdown.pair;

import java.util.ArrayList;
import java.util.List;
import pairdown.time.Span;

/** Stretches of rows in which a quantity is at or above zero, their edges interpolated. */
final class Stretches {
    private Stretches() {}

    /**
     * All of them, in order; a missing value (NaN) ends one at the last row before it.
     *
     * @param margin by row: how far inside the condition
     */
    static List<Span> of(PairRows rows, double[] margin) {
        List<Span> spans = new ArrayList<>();
        double since_s = Double.NaN;
        for (int i = 0; i < rows.size; i++) {
            boolean in = margin[i] >= 0;
            boolean wasIn = !Double.isNaN(since_s);
            boolean known = i > 0 && !Double.isNaN(margin[i - 1]) && !Double.isNaN(margin[i]);
            if (in && !wasIn) {
                since_s = known ? rows.crossing_s(i, margin[i - 1], margin[i]) : rows.time_s[i];
            } else if (!in && wasIn) {
                double end_s =
                        known ? rows.crossing_s(i, margin[i - 1], margin[i]) : rows.time_s[i - 1];
                spans.add(new Span(since_s, end_s));
                since_s = Double.NaN;
            }
        }
        if (!Double.isNaN(since_s)) {
            spans.add(new Span(since_s, rows.last_s()));
        }
        return spans;
    }

    /** Only those at least this long. */
    static List<Span> lasting(List<Span> spans, double least_s) {
        return spans.stream().filter(s -> s.duration_s() >= least_s - 1e-9).toList();
    }

    /** Neighbours no further apart than this, joined. */
    static List<Span> joined(List<Span> spans, double apart_s) {
        List<Span> out = new ArrayList<>();
        for (Span s : spans) {
            int last = out.size() - 1;
            if (last >= 0 && s.start_s() - out.get(last).end_s() <= apart_s) {
                out.set(last, new Span(out.get(last).start_s(), s.end_s()));
            } else {
                out.add(s);
            }
        }
        return out;
    }

    static double total_s(List<Span> spans) {
        return spans.stream().mapToDouble(Span::duration_s).sum();
    }
}
