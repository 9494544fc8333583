package pairdown.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.hipparchus.filtering.kalman.ProcessEstimate;
import org.hipparchus.filtering.kalman.linear.LinearEvolution;
import org.hipparchus.filtering.kalman.linear.LinearKalmanFilter;
import org.hipparchus.linear.CholeskyDecomposer;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

class AxisSmootherTest {
    private static final double INF = Double.POSITIVE_INFINITY;
    private static final double TAU = 45;
    private static final double BIAS = 0.8;
    private static final double LAG = -0.15;
    private static final double Q = 5;
    private static final double[] POSITION = {1, LAG, 0, 1};
    private static final double[] VELOCITY = {0, 1, 0, 0};

    /** A case with uneven steps, missing measurements and a hole. */
    private static final class Case {
        final double[] time = new double[60];
        final double[] z = new double[60];
        final double[] zv = new double[60];
        final float[] r = new float[60];
        final float[] rv = new float[60];
        final double[] saved = new double[60 * AxisFilter.SAVED];

        Case() {
            Random random = new Random(5);
            for (int k = 0; k < time.length; k++) {
                time[k] = k == 0 ? 0 : time[k - 1] + (k == 30 ? 4 : 0.2 + 0.3 * (k % 3));
                z[k] = 20 * Math.sin(0.2 * time[k]) + 0.2 * random.nextGaussian();
                zv[k] = 4 * Math.cos(0.2 * time[k]) + 0.1 * random.nextGaussian();
                r[k] = k % 7 == 3 ? Float.POSITIVE_INFINITY : 0.04f;
                rv[k] = k % 5 == 2 ? Float.POSITIVE_INFINITY : 0.01f;
            }
        }

        AxisFilter filter() {
            AxisFilter f = new AxisFilter(BIAS, TAU, LAG);
            f.start(0, 100, 0, 30, 10);
            for (int k = 0; k < time.length; k++) {
                f.predict(k == 0 ? 0 : time[k] - time[k - 1], Q);
                if (r[k] < INF) {
                    f.updatePosition(z[k], r[k]);
                }
                if (rv[k] < INF) {
                    f.updateVelocity(zv[k], rv[k]);
                }
                f.save(saved, k * AxisFilter.SAVED);
            }
            return f;
        }

        AxisTrack smooth() {
            filter();
            return AxisTrack.smooth(time, saved, z, r, zv, rv, new AxisModel(BIAS, TAU, LAG));
        }

        DenseSmoother dense(double[] extra) {
            double[] all =
                    Stream.of(time, extra).flatMapToDouble(Arrays::stream).sorted().toArray();
            DenseSmoother dense = new DenseSmoother(all.length);
            dense.prior(new double[4], new double[] {100, 30, 10, BIAS});
            for (int k = 0; k < all.length; k++) {
                if (k > 0) {
                    double dt = all[k] - all[k - 1];
                    dense.step(
                            k - 1,
                            DenseSmoother.transition(dt, TAU),
                            DenseSmoother.processNoise(dt, Q, BIAS, TAU));
                }
                int i = Arrays.binarySearch(time, all[k]);
                if (i >= 0 && r[i] < INF) {
                    dense.measure(k, POSITION, z[i], r[i]);
                }
                if (i >= 0 && rv[i] < INF) {
                    dense.measure(k, VELOCITY, zv[i], rv[i]);
                }
            }
            return dense;
        }
    }

    /** Filtered states against Hipparchus 3.1, {@code LinearKalmanFilter}, to 1e-6. */
    @Test
    void theFilterAgreesWithALibrary() {
        Case c = new Case();
        c.filter();
        RealMatrix p0 =
                MatrixUtils.createRealDiagonalMatrix(new double[] {1e4, 900, 100, BIAS * BIAS});
        record Z(double time, double sinceLast, int epoch, RealVector value, RealMatrix covariance)
                implements org.hipparchus.filtering.kalman.Measurement {
            @Override
            public double getTime() {
                return time;
            }

            @Override
            public RealVector getValue() {
                return value;
            }

            @Override
            public RealMatrix getCovariance() {
                return covariance;
            }
        }
        LinearKalmanFilter<Z> library =
                new LinearKalmanFilter<>(
                        new CholeskyDecomposer(1e-9, 1e-15),
                        z -> {
                            double dt = z.sinceLast();
                            return new LinearEvolution(
                                    DenseSmoother.transition(dt, TAU),
                                    MatrixUtils.createRealMatrix(4, 1),
                                    MatrixUtils.createRealVector(new double[1]),
                                    DenseSmoother.processNoise(dt, Q, BIAS, TAU),
                                    rows(c, z.epoch()));
                        },
                        new ProcessEstimate(0, MatrixUtils.createRealVector(new double[4]), p0));
        double last = 0;
        for (int k = 0; k < c.time.length; k++) {
            double[][] measured = measured(c, k);
            if (measured[0].length == 0) {
                continue;
            }
            ProcessEstimate e =
                    library.estimationStep(
                            new Z(
                                    c.time[k],
                                    c.time[k] - last,
                                    k,
                                    MatrixUtils.createRealVector(measured[0]),
                                    MatrixUtils.createRealDiagonalMatrix(measured[1])));
            last = c.time[k];
            for (int i = 0; i < 4; i++) {
                assertEquals(e.getState().getEntry(i), c.saved[14 * k + i], 1e-6, "epoch " + k);
            }
            assertEquals(e.getCovariance().getEntry(0, 0), c.saved[14 * k + 4], 1e-6);
            assertEquals(e.getCovariance().getEntry(3, 3), c.saved[14 * k + 13], 1e-6);
        }
    }

    private static RealMatrix rows(Case c, int k) {
        boolean p = c.r[k] < INF;
        boolean v = c.rv[k] < INF;
        return MatrixUtils.createRealMatrix(
                p && v
                        ? new double[][] {POSITION, VELOCITY}
                        : new double[][] {p ? POSITION : VELOCITY});
    }

    private static double[][] measured(Case c, int k) {
        boolean p = c.r[k] < INF;
        boolean v = c.rv[k] < INF;
        if (p && v) {
            return new double[][] {{c.z[k], c.zv[k]}, {c.r[k], c.rv[k]}};
        }
        return p
                ? new double[][] {{c.z[k]}, {c.r[k]}}
                : v ? new double[][] {{c.zv[k]}, {c.rv[k]}} : new double[2][0];
    }

    /**
     * Smoothed means, covariances and what lies between epochs are those of the dense problem with
     * the instants put in: the interpolation is the model's own, and the covariance is the bound.
     */
    @Test
    void smoothingAndInterpolationAreTheDenseSolution() {
        Case c = new Case();
        AxisTrack track = c.smooth();
        double[] extra = {0.07, 5.1234, c.time[29] + 1.7, c.time[58] + 0.05};
        DenseSmoother dense = c.dense(extra);
        RealVector mean = dense.mean();
        RealMatrix covariance = dense.covariance();
        double[] all = Stream.of(c.time, extra).flatMapToDouble(Arrays::stream).sorted().toArray();
        double[] values = new double[9];
        for (int k = 0; k < all.length; k++) {
            int i = Arrays.binarySearch(c.time, all[k]);
            i = i >= 0 ? i : -i - 2;
            double step = i + 1 < c.time.length ? c.time[i + 1] - c.time[i] : 0;
            track.mean(i, all[k] - c.time[i], step, values, 0);
            AxisCovariance s = track.covariance(i, all[k] - c.time[i], step, Q);
            assertEquals(mean.getEntry(4 * k), values[0], 1e-5, "position at " + all[k]);
            assertEquals(mean.getEntry(4 * k + 1), values[3], 1e-5, "velocity at " + all[k]);
            assertEquals(mean.getEntry(4 * k + 2), values[6], 1e-4, "acceleration " + all[k]);
            assertClose(covariance.getEntry(4 * k, 4 * k), s.position_m2());
            assertClose(covariance.getEntry(4 * k + 1, 4 * k + 1), s.velocity_m2ps2());
            assertClose(covariance.getEntry(4 * k + 2, 4 * k + 2), s.acceleration_m2ps4());
            assertClose(covariance.getEntry(4 * k + 3, 4 * k + 3), s.bias_m2());
        }
    }

    /** Covariances are kept in single precision. */
    private static void assertClose(double expected, double actual) {
        assertEquals(expected, actual, 1e-3 * expected);
    }

    /**
     * A published-style table: constant velocity, T = 1, Q = 0.04·[1/3, 1/2; 1/2, 1], R = 0.25,
     * first state (0, 1), covariance I; computed outside this project as the dense least-squares
     * solution (NumPy), to 1e-8. Velocity and acceleration of our state are that model.
     */
    @Test
    void theRauchTungStriebelTableIsMet() {
        double[] z = {0, 1.2, 1.9, 3.3, 3.9, 5.2};
        double[][] table = {
            {0.042282235, 1.018675566, 0.129077562},
            {1.059921905, 1.015194366, 0.070843555},
            {2.073587566, 1.014462965, 0.060244520},
            {3.088870850, 1.013800608, 0.061475035},
            {4.102212905, 1.016210620, 0.077404701},
            {5.122553980, 1.022406302, 0.151149311}
        };
        double[] time = {0, 1, 2, 3, 4, 5};
        float[] none = new float[6];
        float[] r = new float[6];
        Arrays.fill(none, Float.POSITIVE_INFINITY);
        Arrays.fill(r, 0.25f);
        double[] saved = new double[6 * AxisFilter.SAVED];
        AxisFilter f = new AxisFilter(1, 1, 0);
        f.start(0, 1, 0, 1, 1);
        f.a = 1;
        for (int k = 0; k < 6; k++) {
            f.predict(k == 0 ? 0 : 1, 0.04);
            f.updateVelocity(z[k], 0.25);
            f.save(saved, k * AxisFilter.SAVED);
        }
        AxisTrack track =
                AxisTrack.smooth(time, saved, new double[6], none, z, r, new AxisModel(1, 1, 0));
        double[] values = new double[9];
        for (int k = 0; k < 6; k++) {
            track.mean(k, 0, 1, values, 0);
            assertEquals(table[k][0], values[3], 1e-6);
            assertEquals(table[k][1], values[6], 1e-6);
            assertEquals(table[k][2], track.covariance(k, 0, 1, 0.04).velocity_m2ps2(), 1e-6);
        }
    }

    /**
     * Nile flow 1871 to 1970, local level with q 1469.1 and r 15099, prior variance 1e7 at the
     * first observation: R 4.2.2 {@code KalmanSmooth}, to 1e-6 of the flow. A bias that never
     * forgets is a local level; the motion is nailed down. Data: R {@code datasets}, after Durbin
     * and Koopman.
     */
    @Test
    void theNileTableIsMet() {
        double[] z = nile();
        int n = z.length;
        double tau = 1e9;
        double q = 1469.1;
        AxisFilter f = new AxisFilter(Math.sqrt(q * tau / 2), tau, 0);
        f.start(0, 0, 0, 0, 0);
        f.bb = 1e7;
        double[] time = new double[n];
        float[] r = new float[n];
        float[] none = new float[n];
        double[] saved = new double[n * AxisFilter.SAVED];
        for (int k = 0; k < n; k++) {
            time[k] = k;
            r[k] = 15099f;
            none[k] = Float.POSITIVE_INFINITY;
            f.predict(k == 0 ? 0 : 1, 0);
            f.updatePosition(z[k], r[k]);
            f.save(saved, k * AxisFilter.SAVED);
        }
        int[] row = {0, 1, 49, 98, 99};
        double[] level = {
            1111.220257568, 1110.529257012, 834.763258994, 804.049595666, 798.370292608
        };
        AxisAdjoint back = new AxisAdjoint(0);
        double[] smoothed = new double[n];
        for (int k = n - 1; k >= 0; k--) {
            smoothed[k] = saved[14 * k + 3] - saved[14 * k + 13] * back.l3;
            back.measurement(saved, 14 * k, z[k], 1 / 15099.0, 0, 0);
            back.back(1, f.biasDecay(1));
        }
        for (int i = 0; i < row.length; i++) {
            assertEquals(level[i], smoothed[row[i]], 2e-5, "row " + row[i]);
        }
    }

    private static double[] nile() {
        return Arrays.stream(NILE.split("\\s+")).mapToDouble(Double::parseDouble).toArray();
    }

    private static final String NILE =
            "1120 1160 963 1210 1160 1160 813 1230 1370 1140 995 935 1110 994 "
                    + "1020 960 1180 799 958 1140 1100 1210 1150 1250 1260 1220 1030 1100 "
                    + "774 840 874 694 940 833 701 916 692 1020 1050 969 831 726 "
                    + "456 824 702 1120 1100 832 764 821 768 845 864 862 698 845 "
                    + "744 796 1040 759 781 865 845 944 984 897 822 1010 771 676 "
                    + "649 846 812 742 801 1040 860 874 848 890 744 749 838 1050 "
                    + "918 986 797 923 975 815 1020 906 901 1170 912 746 919 718 "
                    + "714 740";
}
