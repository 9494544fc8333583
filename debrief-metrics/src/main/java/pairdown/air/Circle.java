package pairdown.air;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * A circle through ground velocities: centre the wind, radius the airspeed. The algebraic fit of I.
 * Kåsa, IEEE Trans. Instrum. Meas. 25 (1976) 8–14: exact on exact points, drawn towards the points
 * on short noisy arcs, and so a start and a rough look only.
 */
record Circle(double east_mps, double north_mps, double radius_mps) {

    /**
     * Least squares of x² + y² = 2ax + 2by + c; the centre of the points where they do not
     * determine a circle.
     */
    static Circle through(List<WindArc.Sample> samples) {
        double meanE = samples.stream().mapToDouble(WindArc.Sample::east_mps).average().orElse(0);
        double meanN = samples.stream().mapToDouble(WindArc.Sample::north_mps).average().orElse(0);
        double[][] rows = new double[samples.size()][];
        double[] right = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            double x = samples.get(i).east_mps() - meanE;
            double y = samples.get(i).north_mps() - meanN;
            rows[i] = new double[] {2 * x, 2 * y, 1};
            right[i] = x * x + y * y;
        }
        Array2DRowRealMatrix a = new Array2DRowRealMatrix(rows, false);
        if (new SingularValueDecomposition(a).getRank() < 3) {
            return new Circle(meanE, meanN, 0);
        }
        RealVector s = new QRDecomposition(a).getSolver().solve(new ArrayRealVector(right, false));
        double radius2 = s.getEntry(2) + square(s.getEntry(0)) + square(s.getEntry(1));
        return new Circle(
                meanE + s.getEntry(0), meanN + s.getEntry(1), Math.sqrt(Math.max(0, radius2)));
    }

    private static double square(double x) {
        return x * x;
    }
}
