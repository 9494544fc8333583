package pairdown.demo.physics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pairdown.demo.truth.TrueEpisode;
import pairdown.demo.truth.TruePowerChange;
import pairdown.demo.truth.TrueTail;

/**
 * Where the tail truly lost its air: the elevator's share of dynamic pressure fell below 0.6 of its
 * median over the dive, until it was back above 0.75 of it.
 */
final class Episodes {
    private static final double LOST = 0.6;
    private static final double BACK = 0.75;

    /** A move toward reverse so long before counts as what preceded it (s). */
    private static final double BEFORE_S = 4;

    private Episodes() {}

    static List<TrueEpisode> of(TrueTail tail, List<TruePowerChange> changes, double step_s) {
        double own = median(tail);
        List<TrueEpisode> out = new ArrayList<>();
        int from = -1;
        for (int i = 0; i < tail.elevator().length; i++) {
            double ratio = tail.elevator()[i] / own;
            if (from < 0 && tail.diving()[i] && ratio < LOST) {
                from = i;
            } else if (from >= 0 && ratio > BACK) {
                out.add(episode(from * step_s, i * step_s, changes));
                from = -1;
            }
        }
        return out;
    }

    private static double median(TrueTail tail) {
        double[] in = new double[tail.elevator().length];
        int n = 0;
        for (int i = 0; i < in.length; i++) {
            if (tail.diving()[i]) {
                in[n++] = tail.elevator()[i];
            }
        }
        double[] sorted = Arrays.copyOf(in, n);
        Arrays.sort(sorted);
        return n == 0 ? 1 : sorted[n / 2];
    }

    private static TrueEpisode episode(
            double start_s, double end_s, List<TruePowerChange> changes) {
        Optional<TruePowerChange> before =
                changes.stream()
                        .filter(c -> c.to_pct() < c.from_pct())
                        .filter(c -> c.time_s() <= start_s && c.time_s() > start_s - BEFORE_S)
                        .reduce((a, b) -> b);
        Optional<TruePowerChange> after =
                changes.stream()
                        .filter(c -> c.to_pct() > c.from_pct())
                        .filter(c -> c.time_s() > start_s && c.time_s() <= end_s)
                        .findFirst();
        return new TrueEpisode(start_s, end_s, before, after);
    }
}
