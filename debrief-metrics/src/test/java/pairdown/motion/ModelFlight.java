package pairdown.motion;

import java.util.Random;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/** A flight whose motion and noise are drawn from the smoother's own model. */
final class ModelFlight {
    static final double[] START_VELOCITY = {30, -15, -10};

    final double dt;
    final int size;

    /** By axis, epoch, and state (position, velocity, acceleration, bias). */
    final double[][][] truth;

    /** Measured by axis and epoch. */
    final double[][] position;

    final double[][] velocity;

    ModelFlight(double seconds, double dt, double q, ReceiverNoise noise, long seed) {
        this.dt = dt;
        this.size = (int) Math.round(seconds / dt) + 1;
        this.truth = new double[3][size][];
        this.position = new double[3][size];
        this.velocity = new double[3][size];
        Random random = new Random(seed);
        for (int axis = 0; axis < 3; axis++) {
            draw(axis, q, noise, random);
        }
    }

    /** The measurements, with the noise they were drawn with. */
    Fixes fixes(ReceiverNoise noise) {
        double[] time_s = new double[size];
        int[] row = new int[size];
        float[][] positionVariance = new float[3][size];
        float[][] velocityVariance = new float[3][size];
        for (int i = 0; i < size; i++) {
            time_s[i] = i * dt;
            row[i] = i;
            for (int axis = 0; axis < 3; axis++) {
                positionVariance[axis][i] = (float) Math.pow(noise.white_m(axis), 2);
                velocityVariance[axis][i] = (float) Math.pow(noise.velocity_mps(axis), 2);
            }
        }
        return new Fixes(
                time_s, row, position, velocity, positionVariance, velocityVariance, 0, noise);
    }

    private void draw(int axis, double q, ReceiverNoise noise, Random random) {
        RealMatrix phi = DenseSmoother.transition(dt, noise.biasTime_s());
        RealMatrix root =
                new CholeskyDecomposition(
                                DenseSmoother.processNoise(
                                        dt, q, noise.bias_m(axis), noise.biasTime_s()),
                                1e-12,
                                1e-300)
                        .getL();
        double[] x = {0, START_VELOCITY[axis], 0, noise.bias_m(axis) * random.nextGaussian()};
        for (int i = 0; i < size; i++) {
            truth[axis][i] = x.clone();
            position[axis][i] = x[0] + x[3] + noise.white_m(axis) * random.nextGaussian();
            velocity[axis][i] = x[1] + noise.velocity_mps(axis) * random.nextGaussian();
            double[] w = new double[4];
            for (int j = 0; j < 4; j++) {
                w[j] = random.nextGaussian();
            }
            double[] driven = root.operate(w);
            x = phi.operate(x);
            for (int j = 0; j < 4; j++) {
                x[j] += driven[j];
            }
        }
    }
}
