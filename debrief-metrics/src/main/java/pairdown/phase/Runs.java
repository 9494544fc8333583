package pairdown.phase;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** Stretches of points where something holds. */
final class Runs {
    private Runs() {}

    /**
     * A stretch.
     *
     * @param from first point
     * @param to last point
     */
    record Run(int from, int to) {
        int length() {
            return to - from + 1;
        }
    }

    /**
     * Stretches of at least {@code least} points where {@code holds}, breaks of up to {@code
     * bridge} points forgiven.
     */
    static List<Run> of(int size, IntPredicate holds, int least, int bridge) {
        List<Run> out = new ArrayList<>();
        int from = -1;
        int last = -1;
        for (int k = 0; k < size; k++) {
            if (from >= 0 && k - last > bridge + 1) {
                keep(out, from, last, least);
                from = -1;
            }
            if (holds.test(k)) {
                from = from < 0 ? k : from;
                last = k;
            }
        }
        keep(out, from, last, least);
        return out;
    }

    private static void keep(List<Run> out, int from, int last, int least) {
        if (from >= 0 && last - from + 1 >= least) {
            out.add(new Run(from, last));
        }
    }
}
