package pairdown.pair;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pairdown.height.AlignedLog;
import pairdown.motion.Trajectory;
import pairdown.time.Span;

/**
 * Where a log has no fix for too long, before its first and after its last as well; immutable.
 *
 * <p>A fix that the smoother refused is no hole: the receiver saw the sky, its velocity mostly
 * counted, and where nothing counted the sigmas have grown.
 */
public final class Holes {
    private final List<Span> spans;

    private Holes(List<Span> spans) {
        this.spans = List.copyOf(spans);
    }

    /** Stretches longer than {@code longest_s} between two fixes of a trajectory's log. */
    public static Holes of(Trajectory trajectory, double longest_s) {
        List<Span> spans = new ArrayList<>();
        double last_s = Double.NEGATIVE_INFINITY;
        for (double t_s : fixes_s(trajectory)) {
            if (t_s - last_s > longest_s) {
                spans.add(new Span(last_s, t_s));
            }
            last_s = t_s;
        }
        spans.add(new Span(last_s, Double.POSITIVE_INFINITY));
        return new Holes(spans);
    }

    /** Median time between two fixes (s); 0 where there are none. */
    static double medianStep_s(Trajectory trajectory) {
        double[] fixes_s = fixes_s(trajectory);
        if (fixes_s.length < 2) {
            return 0;
        }
        double[] steps_s = new double[fixes_s.length - 1];
        Arrays.setAll(steps_s, i -> fixes_s[i + 1] - fixes_s[i]);
        Arrays.sort(steps_s);
        return steps_s[steps_s.length / 2];
    }

    /** As logged where the log is known, refused or not; else those the trajectory has. */
    private static double[] fixes_s(Trajectory trajectory) {
        return RelativeTrack.smoothed(trajectory)
                .map(point -> logged_s(point.antenna().log()))
                .orElseGet(() -> used_s(trajectory));
    }

    private static double[] logged_s(AlignedLog log) {
        double[] times_s = new double[log.size()];
        int n = 0;
        for (int row = 0; row < log.size(); row++) {
            if (log.hasFix(row)) {
                times_s[n++] = log.time_s(row);
            }
        }
        double[] fixes_s = Arrays.copyOf(times_s, n);
        Arrays.sort(fixes_s);
        return fixes_s;
    }

    private static double[] used_s(Trajectory trajectory) {
        double[] times_s = new double[trajectory.fixCount()];
        Arrays.setAll(times_s, trajectory::fixTime_s);
        return times_s;
    }

    /** Whether an instant lies inside a hole; a hole's ends do not. */
    boolean around(double t_s) {
        return endOf_s(t_s) > t_s;
    }

    /** Where the hole around an instant ends; the instant itself, if there is none around it. */
    public double endOf_s(double t_s) {
        int low = 0;
        int high = spans.size();
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (spans.get(mid).end_s() <= t_s) {
                low = mid + 1;
            } else {
                high = mid;
            }
        }
        boolean outside = low == spans.size() || t_s <= spans.get(low).start_s();
        return outside ? t_s : spans.get(low).end_s();
    }
}
