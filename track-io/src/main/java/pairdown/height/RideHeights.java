package pairdown.height;

import java.util.Arrays;
import java.util.OptionalDouble;
import pairdown.clock.ClockResult;
import pairdown.clock.LoadedLog;
import pairdown.clock.SharedRide;
import pairdown.time.Span;
import pairdown.time.TimeAxis;
import pairdown.track.EvenSeries;
import pairdown.track.Track;

/** One log's heights above the ellipsoid on the attempt's axis, smoothed, for comparison. */
final class RideHeights {
    /** Points this far apart tell all there is about a constant (s). */
    private static final double STEP_S = 2;

    /** Logs are compared over at most this long from their start (s); it bounds memory. */
    private static final double LONGEST_S = 36 * 3600.0;

    private final EvenSeries heights;

    private RideHeights(EvenSeries heights) {
        this.heights = heights;
    }

    static RideHeights of(LoadedLog log, ClockResult clock, TimeAxis axis, EllipsoidHeights read) {
        Track track = log.track();
        double start_s =
                track.epoch()
                        .map(e -> axis.seconds(e) + clock.map().offset_s())
                        .orElseGet(() -> axis.seconds(clock.zero().orElseThrow()));
        double[] t = new double[track.size()];
        double[] h = new double[track.size()];
        for (int i = 0; i < t.length; i++) {
            t[i] = start_s + track.time_s(i) * (1 + clock.map().rate());
            h[i] = read.at(i);
        }
        double span_s = Math.min(LONGEST_S, t[t.length - 1] - t[0]);
        double usual_s = span_s / Math.max(1, t.length - 1);
        double kernel_s = Math.max(STEP_S / 2, 2 * usual_s);
        int count = 1 + (int) (span_s / STEP_S);
        return new RideHeights(EvenSeries.smooth(t, h, t[0], STEP_S, count, kernel_s));
    }

    /** Median of this minus other while they rode together; empty without common heights. */
    OptionalDouble above_m(RideHeights other, SharedRide ride) {
        double[] d = new double[heights.size()];
        int n = 0;
        for (Span span : ride.spans()) {
            for (double t_s = span.start_s(); t_s <= span.end_s() && n < d.length; t_s += STEP_S) {
                double off_m = heights.at(t_s) - other.heights.at(t_s);
                if (!Double.isNaN(off_m)) {
                    d[n++] = off_m;
                }
            }
        }
        Arrays.sort(d, 0, n);
        return n == 0 ? OptionalDouble.empty() : OptionalDouble.of(d[n / 2]);
    }
}
