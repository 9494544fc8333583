package pairdown.motion;

import java.util.HashMap;
import java.util.Map;

/**
 * One axis smoothed: states at the epochs, and what is needed for the exact covariance at any
 * instant between them. 96 bytes an epoch.
 *
 * <p>Between epochs the model itself interpolates. Given position, velocity and acceleration at
 * both ends the mean of a white-jerk motion is the fifth-degree polynomial that meets all six; the
 * covariance at t is P(t) − P(t) Λ(t) P(t), with P filtered forward from the epoch before and Λ
 * carried back from the epoch after.
 */
final class AxisTrack {
    private static final int TRIANGLE = 10;

    /** Across a longer step, and while a filter still starts, single precision would cancel out. */
    private static final double WIDE_STEP_S = 1.5;

    private static final int STARTING = 5;

    private final double[] p;
    private final float[] v;
    private final float[] a;
    private final float[] filtered;
    private final float[] adjoint;
    private final Map<Integer, double[]> wide = new HashMap<>();
    private final double bias_m;
    private final double biasTime_s;
    private final double lag_s;

    private AxisTrack(int n, double bias_m, double biasTime_s, double lag_s) {
        p = new double[n];
        v = new float[n];
        a = new float[n];
        filtered = new float[n * TRIANGLE];
        adjoint = new float[n * TRIANGLE];
        this.bias_m = bias_m;
        this.biasTime_s = biasTime_s;
        this.lag_s = lag_s;
    }

    /**
     * Smooths backwards over what a filter saved.
     *
     * @param time_s of the epochs
     * @param saved {@link AxisFilter#SAVED} values an epoch, after its measurements
     * @param z positions, with their variances {@code r} (infinite: none)
     * @param zv velocities, with their variances {@code rv}
     */
    static AxisTrack smooth(
            double[] time_s,
            double[] saved,
            double[] z,
            float[] r,
            double[] zv,
            float[] rv,
            AxisModel model) {
        int n = time_s.length;
        AxisTrack track = new AxisTrack(n, model.bias_m(), model.biasTime_s(), model.lag_s());
        AxisAdjoint back = new AxisAdjoint(model.lag_s());
        AxisFilter clock = model.filter();
        for (int i = n - 1; i >= 0; i--) {
            int at = i * AxisFilter.SAVED;
            track.set(i, saved, at, back);
            back.measurement(saved, at, z[i], 1.0 / r[i], zv[i], 1.0 / rv[i]);
            back.saveMatrix(track.adjoint, i * TRIANGLE);
            if (i > 0) {
                double dt = time_s[i] - time_s[i - 1];
                if (dt > WIDE_STEP_S || i < STARTING) {
                    track.keepWide(i - 1, saved, back);
                }
                back.back(dt, clock.biasDecay(dt));
            }
        }
        return track;
    }

    private void keepWide(int i, double[] saved, AxisAdjoint back) {
        double[] kept = new double[2 * TRIANGLE];
        System.arraycopy(saved, i * AxisFilter.SAVED + 4, kept, 0, TRIANGLE);
        back.saveMatrix(kept, TRIANGLE);
        wide.put(i, kept);
    }

    private void set(int i, double[] saved, int at, AxisAdjoint back) {
        double pp = saved[at + 4];
        double pv = saved[at + 5];
        double pa = saved[at + 6];
        double pb = saved[at + 7];
        p[i] = saved[at] - (pp * back.l0 + pv * back.l1 + pa * back.l2 + pb * back.l3);
        v[i] =
                (float)
                        (saved[at + 1]
                                - (pv * back.l0
                                        + saved[at + 8] * back.l1
                                        + saved[at + 9] * back.l2
                                        + saved[at + 10] * back.l3));
        a[i] =
                (float)
                        (saved[at + 2]
                                - (pa * back.l0
                                        + saved[at + 9] * back.l1
                                        + saved[at + 11] * back.l2
                                        + saved[at + 12] * back.l3));
        for (int j = 0; j < TRIANGLE; j++) {
            filtered[i * TRIANGLE + j] = (float) saved[at + 4 + j];
        }
    }

    /**
     * Position, velocity and acceleration {@code s} after epoch i into {@code into[axis, +3, +6]}.
     */
    void mean(int i, double s, double step, double[] into, int axis) {
        if (s == 0 || i + 1 >= p.length) {
            into[axis] = p[i];
            into[axis + 3] = v[i];
            into[axis + 6] = a[i];
            return;
        }
        double t = step;
        double v0 = v[i];
        double a0 = a[i];
        double dp = p[i + 1] - (p[i] + v0 * t + 0.5 * a0 * t * t);
        double dv = (v[i + 1] - (v0 + a0 * t)) * t;
        double da = 0.5 * (a[i + 1] - a0) * t * t;
        double u = s / t;
        double c3 = 10 * dp - 4 * dv + da;
        double c4 = -15 * dp + 7 * dv - 2 * da;
        double c5 = 6 * dp - 3 * dv + da;
        double u2 = u * u;
        into[axis] = p[i] + s * (v0 + 0.5 * a0 * s) + u2 * u * (c3 + u * (c4 + u * c5));
        into[axis + 3] = v0 + a0 * s + u2 * (3 * c3 + u * (4 * c4 + u * 5 * c5)) / t;
        into[axis + 6] = a0 + u * (6 * c3 + u * (12 * c4 + u * 20 * c5)) / (t * t);
    }

    /**
     * The covariance {@code s} after epoch i.
     *
     * @param step to the next epoch
     * @param q jerk density on the way there
     */
    AxisCovariance covariance(int i, double s, double step, double q) {
        AxisFilter f = new AxisFilter(bias_m, biasTime_s, lag_s);
        AxisAdjoint back = new AxisAdjoint(lag_s);
        double[] kept = wide.get(i);
        boolean inside = i + 1 < p.length;
        if (kept == null) {
            f.loadCovariance(filtered, i * TRIANGLE);
            if (inside) {
                back.loadMatrix(adjoint, (i + 1) * TRIANGLE);
            }
        } else {
            f.loadCovariance(kept, 0);
            back.loadMatrix(kept, TRIANGLE);
        }
        if (s > 0) {
            f.predict(s, q);
        }
        if (inside) {
            back.back(step - s, Math.exp(-(step - s) / biasTime_s));
        }
        return AxisCovariance.of(f, back);
    }
}
