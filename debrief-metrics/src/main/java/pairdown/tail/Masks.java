package pairdown.tail;

import java.util.ArrayList;
import java.util.List;
import pairdown.time.Span;

/** Places on the grid where something holds. */
final class Masks {
    private Masks() {}

    /** A run of places, both ends in it. */
    record Run(int from, int to) {
        int length() {
            return to - from + 1;
        }
    }

    static List<Run> runs(boolean[] mask) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < mask.length; i++) {
            if (mask[i]) {
                int from = i;
                while (i + 1 < mask.length && mask[i + 1]) {
                    i++;
                }
                runs.add(new Run(from, i));
            }
        }
        return runs;
    }

    /** Runs of at least {@code least} places, runs closer than {@code bridge} joined first. */
    static List<Run> runs(boolean[] mask, int least, int bridge) {
        List<Run> joined = new ArrayList<>();
        for (Run run : runs(mask)) {
            int last = joined.size() - 1;
            if (last >= 0 && run.from() - joined.get(last).to() <= bridge) {
                joined.set(last, new Run(joined.get(last).from(), run.to()));
            } else {
                joined.add(run);
            }
        }
        joined.removeIf(r -> r.length() < least);
        return joined;
    }

    static boolean[] within(Grid grid, List<Span> spans) {
        boolean[] mask = new boolean[grid.size()];
        for (Span span : spans) {
            double last =
                    Math.min(grid.size() - 1.0, (span.end_s() - grid.start_s()) / grid.step_s());
            int from =
                    (int) Math.max(0, Math.ceil((span.start_s() - grid.start_s()) / grid.step_s()));
            for (int i = from; i <= last; i++) {
                mask[i] = true;
            }
        }
        return mask;
    }

    static int count(boolean[] mask, Run run) {
        int n = 0;
        for (int i = run.from(); i <= run.to(); i++) {
            n += mask[i] ? 1 : 0;
        }
        return n;
    }

    static int count(boolean[] mask) {
        int n = 0;
        for (boolean b : mask) {
            n += b ? 1 : 0;
        }
        return n;
    }
}
