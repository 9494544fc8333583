package pairdown.motion;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * The whole trajectory of one axis as one least-squares problem: every epoch's four states at once,
 * the information matrix assembled row by row and inverted. Slow, and independent of any recursion.
 *
 * <p>That inverse is the posterior Cramér–Rao bound: for a linear Gaussian model the Bayesian
 * information matrix is J = Σ Fᵀ Q⁻¹ F + Σ Hᵀ R⁻¹ H + P₀⁻¹ whatever the data, and no estimator has
 * a smaller mean squared error than the diagonal of J⁻¹ (H. L. Van Trees, Detection, Estimation and
 * Modulation Theory I, 1968, section 2.4).
 */
final class DenseSmoother {
    private final RealMatrix information;
    private final RealVector right;
    private final int n;

    DenseSmoother(int n) {
        this.n = n;
        this.information = MatrixUtils.createRealMatrix(4 * n, 4 * n);
        this.right = MatrixUtils.createRealVector(new double[4 * n]);
    }

    static RealMatrix transition(double dt, double biasTime_s) {
        return new Array2DRowRealMatrix(
                new double[][] {
                    {1, dt, dt * dt / 2, 0},
                    {0, 1, dt, 0},
                    {0, 0, 1, 0},
                    {0, 0, 0, Math.exp(-dt / biasTime_s)}
                });
    }

    static RealMatrix processNoise(double dt, double q, double bias_m, double biasTime_s) {
        double f = Math.exp(-dt / biasTime_s);
        return new Array2DRowRealMatrix(
                new double[][] {
                    {q * Math.pow(dt, 5) / 20, q * Math.pow(dt, 4) / 8, q * Math.pow(dt, 3) / 6, 0},
                    {q * Math.pow(dt, 4) / 8, q * Math.pow(dt, 3) / 3, q * dt * dt / 2, 0},
                    {q * Math.pow(dt, 3) / 6, q * dt * dt / 2, q * dt, 0},
                    {0, 0, 0, bias_m * bias_m * (1 - f * f)}
                });
    }

    void prior(double[] mean, double[] sigma) {
        for (int i = 0; i < 4; i++) {
            information.addToEntry(i, i, 1 / (sigma[i] * sigma[i]));
            right.addToEntry(i, mean[i] / (sigma[i] * sigma[i]));
        }
    }

    void step(int k, RealMatrix phi, RealMatrix noise) {
        RealMatrix weight = MatrixUtils.inverse(noise);
        RealMatrix row = MatrixUtils.createRealMatrix(4, 8);
        row.setSubMatrix(phi.scalarMultiply(-1).getData(), 0, 0);
        row.setSubMatrix(MatrixUtils.createRealIdentityMatrix(4).getData(), 0, 4);
        RealMatrix block = row.transpose().multiply(weight).multiply(row);
        for (int i = 0; i < 8; i++) {
            for (int j = 0; j < 8; j++) {
                information.addToEntry(4 * k + i, 4 * k + j, block.getEntry(i, j));
            }
        }
    }

    void measure(int k, double[] h, double z, double variance) {
        for (int i = 0; i < 4; i++) {
            right.addToEntry(4 * k + i, h[i] * z / variance);
            for (int j = 0; j < 4; j++) {
                information.addToEntry(4 * k + i, 4 * k + j, h[i] * h[j] / variance);
            }
        }
    }

    /** Covariance of all states of all epochs. */
    RealMatrix covariance() {
        return new CholeskyDecomposition(scaled(), 1e-9, 1e-300)
                .getSolver()
                .getInverse()
                .preMultiply(scaling())
                .multiply(scaling());
    }

    RealVector mean() {
        return covariance().operate(right);
    }

    private RealMatrix scaling() {
        double[] d = new double[4 * n];
        for (int i = 0; i < d.length; i++) {
            d[i] = 1 / Math.sqrt(information.getEntry(i, i));
        }
        return MatrixUtils.createRealDiagonalMatrix(d);
    }

    private RealMatrix scaled() {
        RealMatrix whole = information.add(information.transpose()).scalarMultiply(0.5);
        return scaling().multiply(whole).multiply(scaling());
    }
}
