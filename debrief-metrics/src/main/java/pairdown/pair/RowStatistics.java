package pairdown.pair;

import java.util.Arrays;
import java.util.OptionalDouble;
import pairdown.time.Span;

/** Means, medians and least values over a stretch of rows; missing values are left out. */
final class RowStatistics {
    private RowStatistics() {}

    static OptionalDouble median(double[] values) {
        double[] sorted = Arrays.stream(values).filter(v -> !Double.isNaN(v)).sorted().toArray();
        int n = sorted.length;
        if (n == 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of((sorted[(n - 1) / 2] + sorted[n / 2]) / 2);
    }

    static double[] known(PairRows rows, double[] column, Span span) {
        int from = rows.rowAtOrAfter(span.start_s());
        int to = rows.rowAtOrBefore(span.end_s());
        return from > to
                ? new double[0]
                : Arrays.stream(column, from, to + 1).filter(v -> !Double.isNaN(v)).toArray();
    }

    static OptionalDouble mean(PairRows rows, double[] column, Span span) {
        return Arrays.stream(known(rows, column, span)).average();
    }

    static OptionalDouble median(PairRows rows, double[] column, Span span) {
        return median(known(rows, column, span));
    }

    static OptionalDouble least(PairRows rows, double[] column, Span span) {
        return Arrays.stream(known(rows, column, span)).min();
    }
}
