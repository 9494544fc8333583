package pairdown.height;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import pairdown.units.Estimate;

/**
 * Constant height biases of logs from their differences on shared rides. Least squares: each bias
 * has a prior of mean 0 and the log's own sigma, which makes the consensus lean on the logs that
 * need no geoid model; what the rides can't tell, the height of all together, stays in the sigma.
 */
final class BiasNetwork {
    private final double[] prior_m;
    private final List<Difference> differences = new ArrayList<>();

    BiasNetwork(double[] prior_m) {
        this.prior_m = prior_m.clone();
    }

    /** Height of {@code first} minus height of {@code second} in one vehicle. */
    record Difference(int first, int second, double above_m, double sigma_m) {}

    void add(Difference d) {
        differences.add(d);
    }

    List<Difference> differences() {
        return differences;
    }

    /** By log its bias, empty where no ride says anything. */
    List<Optional<Estimate>> solve() {
        int n = prior_m.length;
        RealMatrix normal = new Array2DRowRealMatrix(n, n);
        ArrayRealVector right = new ArrayRealVector(n);
        boolean[] tied = new boolean[n];
        for (int i = 0; i < n; i++) {
            normal.setEntry(i, i, 1 / (prior_m[i] * prior_m[i]));
        }
        for (Difference d : differences) {
            double w = 1 / (d.sigma_m * d.sigma_m);
            normal.addToEntry(d.first, d.first, w);
            normal.addToEntry(d.second, d.second, w);
            normal.addToEntry(d.first, d.second, -w);
            normal.addToEntry(d.second, d.first, -w);
            right.addToEntry(d.first, w * d.above_m);
            right.addToEntry(d.second, -w * d.above_m);
            tied[d.first] = true;
            tied[d.second] = true;
        }
        RealMatrix covariance = new LUDecomposition(normal).getSolver().getInverse();
        double[] bias_m = covariance.operate(right.toArray());
        List<Optional<Estimate>> out = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double sigma_m = Math.sqrt(covariance.getEntry(i, i));
            out.add(tied[i] ? Optional.of(new Estimate(bias_m[i], sigma_m)) : Optional.empty());
        }
        return out;
    }
}
