package pairdown.format.source;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Tracks of one file that run at the same time: they are of several loggers, and put together they
 * would be one that jumps to and fro. The one with most rows is kept of them, the others are left
 * out and counted. Tracks one after the other are one log with gaps.
 */
final class SideBySide {
    /** Tracks that meet may share an instant or two. */
    private static final long SHARED_NS = 2_000_000_000L;

    private static final class Part {
        private final int from;
        private int to;
        private long first_ns = Long.MAX_VALUE;
        private long last_ns = Long.MIN_VALUE;

        Part(int from) {
            this.from = from;
            this.to = from;
        }

        void add(long t_ns) {
            to++;
            first_ns = Math.min(first_ns, t_ns);
            last_ns = Math.max(last_ns, t_ns);
        }

        int size() {
            return to - from;
        }

        boolean overlaps(Part other) {
            return Math.min(last_ns, other.last_ns) - Math.max(first_ns, other.first_ns)
                    > SHARED_NS;
        }
    }

    private final Rows rows;
    private final Notes notes;
    private final Longs starts;

    /**
     * @param starts the row each track begins with
     */
    SideBySide(Rows rows, Notes notes, Longs starts) {
        this.rows = rows;
        this.notes = notes;
        this.starts = starts;
    }

    /** The rows to keep of those given in file order. */
    int[] kept(int[] order) {
        List<Part> parts = parts(order);
        boolean[] out = new boolean[parts.size()];
        int left = 0;
        TreeMap<Long, Part> kept = new TreeMap<>();
        List<Integer> longestFirst =
                IntStream.range(0, parts.size())
                        .boxed()
                        .sorted(Comparator.comparing(i -> -parts.get(i).size()))
                        .toList();
        for (int i : longestFirst) {
            Part part = parts.get(i);
            if (overlapsOne(kept, part)) {
                out[i] = true;
                left++;
            } else {
                kept.put(part.first_ns, part);
            }
        }
        return left == 0 ? order : without(order, parts, out, left);
    }

    private List<Part> parts(int[] order) {
        List<Part> parts = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < order.length; i++) {
            boolean begins = parts.isEmpty();
            while (next < starts.size() && starts.get(next) <= order[i]) {
                begins = true;
                next++;
            }
            if (begins) {
                parts.add(new Part(i));
            }
            parts.get(parts.size() - 1).add(rows.time_ns(order[i]));
        }
        return parts;
    }

    /** What is kept lies one behind the other, so that only the neighbours can overlap. */
    private static boolean overlapsOne(NavigableMap<Long, Part> kept, Part part) {
        Map.Entry<Long, Part> before = kept.floorEntry(part.first_ns);
        if (before != null && before.getValue().overlaps(part)) {
            return true;
        }
        return kept.tailMap(part.first_ns, false).values().stream()
                .takeWhile(p -> p.first_ns <= part.last_ns)
                .anyMatch(part::overlaps);
    }

    private int[] without(int[] order, List<Part> parts, boolean[] out, int left) {
        int[] kept = order.clone();
        int n = 0;
        for (int p = 0; p < out.length; p++) {
            for (int i = parts.get(p).from; i < parts.get(p).to; i++) {
                if (out[p]) {
                    notes.skip(rows.line(order[i]), "fix of a further track at the same time");
                } else {
                    kept[n++] = order[i];
                }
            }
        }
        notes.warn(
                "the file holds tracks side by side: the longest was read, "
                        + left
                        + " left out; give each logger a file of its own");
        return Arrays.copyOf(kept, n);
    }
}
