package pairdown.clock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Offsets of logs that are tied by measured lags: one number a log, known up to a constant in each
 * group of tied logs. Weighted least squares; a lag that contradicts the others loses weight.
 */
final class OffsetNetwork {
    /** No lag is believed to better than this (s). */
    private static final double LEAST_SIGMA_S = 0.005;

    /** Rounds in which contradicting lags lose weight. */
    private static final int ROUNDS = 6;

    /** Misfit in sigmas from which a lag counts as contradicting. */
    private static final double TOLERATED = 3;

    private final int size;
    private final List<Tie> ties = new ArrayList<>();

    OffsetNetwork(int size) {
        this.size = size;
    }

    /** A measured lag: offset of {@code second} minus offset of {@code first}. */
    record Tie(int first, int second, double lag_s, double sigma_s) {}

    void tie(int first, int second, double lag_s, double sigma_s) {
        ties.add(new Tie(first, second, lag_s, Math.max(LEAST_SIGMA_S, sigma_s)));
    }

    /** For each node the lowest node it is tied to, directly or through others. */
    int[] groups() {
        int[] group = new int[size];
        Arrays.setAll(group, i -> i);
        boolean changed = true;
        while (changed) {
            changed = false;
            for (Tie t : ties) {
                int low = Math.min(group[t.first], group[t.second]);
                changed |= group[t.first] != low || group[t.second] != low;
                group[t.first] = low;
                group[t.second] = low;
            }
        }
        return group;
    }

    /** Offsets, that of each group's lowest node being 0. */
    double[] offsets() {
        double[] scale = new double[ties.size()];
        Arrays.fill(scale, 1);
        double[] x = new double[size];
        for (int round = 0; round < ROUNDS; round++) {
            x = solve(scale);
            for (int i = 0; i < scale.length; i++) {
                double misfit = Math.abs(misfit_s(ties.get(i), x)) / ties.get(i).sigma_s;
                scale[i] = misfit > TOLERATED ? TOLERATED / misfit : 1;
                scale[i] *= scale[i];
            }
        }
        return x;
    }

    /** How far a tie is from the offsets (s). */
    static double misfit_s(Tie t, double[] x) {
        return t.lag_s - (x[t.second] - x[t.first]);
    }

    private double[] solve(double[] scale) {
        RealMatrix normal = new Array2DRowRealMatrix(size, size);
        RealVector right = new ArrayRealVector(size);
        for (int i = 0; i < scale.length; i++) {
            Tie t = ties.get(i);
            double w = scale[i] / (t.sigma_s * t.sigma_s);
            normal.addToEntry(t.first, t.first, w);
            normal.addToEntry(t.second, t.second, w);
            normal.addToEntry(t.first, t.second, -w);
            normal.addToEntry(t.second, t.first, -w);
            right.addToEntry(t.second, w * t.lag_s);
            right.addToEntry(t.first, -w * t.lag_s);
        }
        int[] group = groups();
        for (int i = 0; i < size; i++) {
            if (group[i] == i) {
                normal.addToEntry(i, i, 1 / (LEAST_SIGMA_S * LEAST_SIGMA_S));
            }
        }
        return new LUDecomposition(normal).getSolver().solve(right).toArray();
    }
}
