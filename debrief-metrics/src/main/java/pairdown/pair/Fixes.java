package pairdown.pair;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pairdown.motion.Trajectory;
import pairdown.time.Span;

/** Where a trajectory rests on fixes and where it does not. */
final class Fixes {
    private Fixes() {}

    /** Median time between two fixes (s); 0 where there are none. */
    static double medianStep_s(Trajectory trajectory) {
        int n = trajectory.fixCount() - 1;
        if (n < 1) {
            return 0;
        }
        double[] step_s = new double[n];
        for (int i = 0; i < n; i++) {
            step_s[i] = trajectory.fixTime_s(i + 1) - trajectory.fixTime_s(i);
        }
        Arrays.sort(step_s);
        return step_s[n / 2];
    }

    /**
     * Stretches without a fix that are longer than {@code longest_s}, in order; before the first
     * and after the last fix as well.
     */
    static List<Span> holes(Trajectory trajectory, double longest_s) {
        List<Span> holes = new ArrayList<>();
        double last_s = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < trajectory.fixCount(); i++) {
            double t_s = trajectory.fixTime_s(i);
            if (t_s - last_s > longest_s) {
                holes.add(new Span(last_s, t_s));
            }
            last_s = t_s;
        }
        holes.add(new Span(last_s, Double.POSITIVE_INFINITY));
        return holes;
    }

    /** For each rising instant, whether it lies outside all holes; a hole's ends are outside. */
    static boolean[] outside(List<Span> holes, double[] time_s) {
        boolean[] out = new boolean[time_s.length];
        int h = 0;
        for (int i = 0; i < time_s.length; i++) {
            while (h < holes.size() && holes.get(h).end_s() <= time_s[i]) {
                h++;
            }
            out[i] = h == holes.size() || time_s[i] <= holes.get(h).start_s();
        }
        return out;
    }

    /** Whether an instant lies outside all holes. */
    static boolean outside(List<Span> holes, double t_s) {
        int low = 0;
        int high = holes.size();
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (holes.get(mid).end_s() <= t_s) {
                low = mid + 1;
            } else {
                high = mid;
            }
        }
        return low == holes.size() || t_s <= holes.get(low).start_s();
    }
}
