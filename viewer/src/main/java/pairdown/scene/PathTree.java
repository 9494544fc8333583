package pairdown.scene;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A path at every level of detail. The leaves hold stretches of the path, thinned; each level above
 * joins two stretches and keeps only the points that matter most, with the error that makes.
 * Drawing goes down from the top and stops where the error is under a pixel, so a far path costs
 * few segments and a near one is exact, and no stretch is ever drawn twice.
 *
 * <p>Simplification: D. Douglas and T. Peucker, "Algorithms for the reduction of the number of
 * points required to represent a digitized line", Cartographica 10 (1973) 112–122, run to the end
 * once, each point remembering the tolerance at which it goes.
 */
final class PathTree {
    /** Points of a leaf; those of the levels above have at most as many. */
    static final int LEAF_POINTS = 128;

    /**
     * A point is left out where the path without it is off by no more than this: under what a
     * receiver knows by far.
     */
    private static final double THINNED_M = 0.03;

    /** Points thinned at a time. */
    private static final int THINNED_POINTS = 1024;

    /** Figures a point: east, north, up (or right, ahead, up), time. */
    static final int WIDTH = 4;

    private final List<Node> tops = new ArrayList<>();
    private final List<float[]> parts = new ArrayList<>();
    private int points;

    /**
     * One stretch at one level.
     *
     * @param first number of its first point among all that are uploaded
     * @param count its points
     * @param anchorX_m its first point, which its places are relative to
     * @param start_s its first point's time, which its times are relative to
     * @param radius_m of a ball round the anchor that holds it
     * @param error_m furthest it lies from the path as sampled
     * @param instants of its points
     */
    record Node(
            int first,
            int count,
            double anchorX_m,
            double anchorY_m,
            double anchorZ_m,
            double radius_m,
            double error_m,
            double start_s,
            double end_s,
            Instants instants,
            List<Node> parts) {
        /** The last of its points at or before an instant; the first where there is none. */
        int pointBefore(double t_s) {
            return instants.before((float) (t_s - start_s));
        }
    }

    /** Rising times since the first (s). */
    private static final class Instants {
        private final float[] since_s;

        /**
         * @param since_s not copied
         */
        Instants(float[] since_s) {
            this.since_s = since_s;
        }

        int before(float t_s) {
            int found = Arrays.binarySearch(since_s, t_s);
            return Math.max(0, found >= 0 ? found : -found - 2);
        }
    }

    /**
     * Adds a stretch without gaps.
     *
     * @param places {@link #WIDTH} figures a point, places in world metres
     */
    void add(double[] places) {
        if (places.length < 2 * WIDTH) {
            return;
        }
        double[] thin = thinned(places);
        int n = thin.length / WIDTH;
        List<Node> level = new ArrayList<>();
        List<double[]> kept = new ArrayList<>();
        for (int from = 0; from < n - 1; from += LEAF_POINTS - 1) {
            int to = Math.min(n, from + LEAF_POINTS);
            double[] stretch = Arrays.copyOfRange(thin, from * WIDTH, to * WIDTH);
            level.add(node(stretch, THINNED_M, List.of()));
            kept.add(stretch);
        }
        while (level.size() > 1) {
            level = joined(level, kept);
        }
        tops.addAll(level);
    }

    private static double[] thinned(double[] places) {
        int n = places.length / WIDTH;
        double[] out = new double[places.length];
        int size = 0;
        for (int from = 0; from < n - 1; from += THINNED_POINTS - 1) {
            int to = Math.min(n, from + THINNED_POINTS);
            double[] stretch = Arrays.copyOfRange(places, from * WIDTH, to * WIDTH);
            double[] fewer = reduced(stretch, weights(stretch), THINNED_M);
            // The last point comes again as the next stretch's first.
            int used = to == n ? fewer.length : fewer.length - WIDTH;
            System.arraycopy(fewer, 0, out, size, used);
            size += used;
        }
        return Arrays.copyOf(out, size);
    }

    /** Pairs of neighbours become one; {@code kept} is changed along with the level. */
    private List<Node> joined(List<Node> level, List<double[]> kept) {
        List<Node> above = new ArrayList<>();
        List<double[]> keptAbove = new ArrayList<>();
        for (int i = 0; i < level.size(); i += 2) {
            if (i + 1 == level.size()) {
                above.add(level.get(i));
                keptAbove.add(kept.get(i));
                continue;
            }
            double[] both = concatenated(kept.get(i), kept.get(i + 1));
            double[] weights = weights(both);
            double limit = limit(weights);
            double[] fewer = reduced(both, weights, limit);
            double error = limit + Math.max(level.get(i).error_m(), level.get(i + 1).error_m());
            above.add(node(fewer, error, List.of(level.get(i), level.get(i + 1))));
            keptAbove.add(fewer);
        }
        kept.clear();
        kept.addAll(keptAbove);
        return above;
    }

    private Node node(double[] places, double error_m, List<Node> children) {
        int n = places.length / WIDTH;
        double[] anchor = middle(places);
        float[] relative = new float[places.length];
        float[] times_s = new float[n];
        double radius2 = 0;
        for (int i = 0; i < n; i++) {
            double d2 = 0;
            for (int k = 0; k < WIDTH; k++) {
                double d = places[i * WIDTH + k] - anchor[k];
                relative[i * WIDTH + k] = (float) d;
                d2 += k < 3 ? d * d : 0;
            }
            radius2 = Math.max(radius2, d2);
            times_s[i] = relative[i * WIDTH + 3];
        }
        Node made =
                new Node(
                        points,
                        n,
                        anchor[0],
                        anchor[1],
                        anchor[2],
                        Math.sqrt(radius2) + error_m,
                        error_m,
                        places[3],
                        places[places.length - 1],
                        new Instants(times_s),
                        children);
        parts.add(relative);
        points += n;
        return made;
    }

    /** The middle of the box that holds the places, and the first time. */
    private static double[] middle(double[] places) {
        double[] middle = {0, 0, 0, places[3]};
        for (int k = 0; k < 3; k++) {
            double low = places[k];
            double high = places[k];
            for (int i = k; i < places.length; i += WIDTH) {
                low = Math.min(low, places[i]);
                high = Math.max(high, places[i]);
            }
            middle[k] = (low + high) / 2;
        }
        return middle;
    }

    /** One after the other; the point they share once. */
    private static double[] concatenated(double[] a, double[] b) {
        double[] both = Arrays.copyOf(a, a.length + b.length - WIDTH);
        System.arraycopy(b, WIDTH, both, a.length, b.length - WIDTH);
        return both;
    }

    /** For each point the tolerance (m) up to which it is kept; the ends for ever. */
    static double[] weights(double[] places) {
        int n = places.length / WIDTH;
        double[] weights = new double[n];
        weights[0] = Double.POSITIVE_INFINITY;
        weights[n - 1] = Double.POSITIVE_INFINITY;
        weigh(places, weights, 0, n - 1, Double.POSITIVE_INFINITY);
        return weights;
    }

    private static void weigh(double[] places, double[] weights, int a, int b, double most) {
        if (b - a < 2) {
            return;
        }
        int furthest = a + 1;
        double away = -1;
        for (int i = a + 1; i < b; i++) {
            double d = awayFromChord_m(places, i, a, b);
            if (d > away) {
                away = d;
                furthest = i;
            }
        }
        // Not more than the point that split this stretch, or it would outlive it.
        weights[furthest] = Math.min(most, away);
        weigh(places, weights, a, furthest, weights[furthest]);
        weigh(places, weights, furthest, b, weights[furthest]);
    }

    /**
     * How far a point lies from where the chord is at its time: the error of a path through time,
     * which also keeps the speed along it right.
     */
    private static double awayFromChord_m(double[] p, int i, int a, int b) {
        double span = p[b * WIDTH + 3] - p[a * WIDTH + 3];
        double share = span > 0 ? (p[i * WIDTH + 3] - p[a * WIDTH + 3]) / span : 0;
        double sum = 0;
        for (int k = 0; k < 3; k++) {
            double from = p[a * WIDTH + k];
            double d = p[i * WIDTH + k] - from - share * (p[b * WIDTH + k] - from);
            sum += d * d;
        }
        return Math.sqrt(sum);
    }

    /** The tolerance at which no more than a leaf's worth of points is left. */
    private static double limit(double[] weights) {
        if (weights.length <= LEAF_POINTS) {
            return 0;
        }
        double[] sorted = weights.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length - LEAF_POINTS - 1];
    }

    private static double[] reduced(double[] places, double[] weights, double limit) {
        double[] out = new double[places.length];
        int n = 0;
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] > limit || i == 0 || i == weights.length - 1) {
                System.arraycopy(places, i * WIDTH, out, n, WIDTH);
                n += WIDTH;
            }
        }
        return Arrays.copyOf(out, n);
    }

    /** The top of each stretch without gaps, by time. */
    List<Node> tops() {
        return tops;
    }

    /** How many points all levels have together. */
    int points() {
        return points;
    }

    /** All points one after the other, as their nodes count them; this keeps them no longer. */
    List<float[]> takePoints() {
        List<float[]> taken = List.copyOf(parts);
        parts.clear();
        return taken;
    }
}
