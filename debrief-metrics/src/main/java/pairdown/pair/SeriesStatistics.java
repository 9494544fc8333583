package pairdown.pair;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.hipparchus.stat.StatUtils;
import pairdown.track.Series;

/** Statistics of a channel over a stretch of time; missing values are left out. */
final class SeriesStatistics {
    private SeriesStatistics() {}

    /** Samples after {@code from_s}, up to and with {@code to_s}. */
    static double[] values(Series series, double from_s, double to_s) {
        int from = series.indexAtOrBefore(from_s) + 1;
        int to = series.indexAtOrBefore(to_s) + 1;
        double[] values = new double[Math.max(0, to - from)];
        int n = 0;
        for (int i = from; i < to; i++) {
            if (!Double.isNaN(series.value(i))) {
                values[n++] = series.value(i);
            }
        }
        return Arrays.copyOf(values, n);
    }

    static OptionalDouble mean(Series series, double from_s, double to_s) {
        return Arrays.stream(values(series, from_s, to_s)).average();
    }

    /**
     * Means over {@code each_s}, one after another, of all of a stretch; those without data left
     * out.
     */
    static double[] means(Series series, double from_s, double to_s, double each_s) {
        int n = (int) Math.max(0, Math.floor((to_s - from_s) / each_s + 1e-9));
        double[] means = new double[n];
        int found = 0;
        for (int k = 0; k < n; k++) {
            OptionalDouble mean = mean(series, from_s + k * each_s, from_s + (k + 1) * each_s);
            if (mean.isPresent()) {
                means[found++] = mean.getAsDouble();
            }
        }
        return Arrays.copyOf(means, found);
    }

    /** Standard deviation of the samples in a stretch; 0 with fewer than two. */
    static double scatter(Series series, double from_s, double to_s) {
        double[] values = values(series, from_s, to_s);
        return values.length < 2 ? 0 : Math.sqrt(StatUtils.variance(values));
    }

    /** Samples a second, over the whole channel. */
    static double rate_Hz(Series series) {
        int last = series.size() - 1;
        return last < 1 ? 0 : last / (series.time_s(last) - series.time_s(0));
    }
}
