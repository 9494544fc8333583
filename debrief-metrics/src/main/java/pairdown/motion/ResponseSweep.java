package pairdown.motion;

/** The sweeps of one axis behind {@link PosteriorResponse}. */
final class ResponseSweep {
    private static final int TRIANGLE = 10;

    private final SmoothedTrajectory trajectory;
    private final PosteriorResponse.Epochs epochs;
    private final int axis;
    private final double[] instants_s;
    private final Fixes fixes;
    private final AxisModel model;
    private final double[] saved;
    private final double[] adjoint;

    ResponseSweep(
            SmoothedTrajectory trajectory,
            PosteriorResponse.Epochs epochs,
            int axis,
            double[] instants_s) {
        this.trajectory = trajectory;
        this.epochs = epochs;
        this.axis = axis;
        this.instants_s = instants_s;
        this.fixes = trajectory.fixes();
        this.model = new AxisModel(fixes.noise.bias_m(axis), fixes.noise.biasTime_s(), fixes.lag_s);
        this.saved = new double[epochs.time_s.length * AxisFilter.SAVED];
        this.adjoint = new double[epochs.time_s.length * TRIANGLE];
    }

    /**
     * Fills position, velocity and acceleration of each instant's column for the epochs from {@code
     * first} to {@code end}.
     */
    void fill(float[] columns, int first, int end) {
        forward();
        backward();
        int n = instants_s.length;
        int j = 0;
        for (int k = 0; k < epochs.source.length; k++) {
            if (epochs.source[k] < 0) {
                column(k, j++, n, columns, first, end);
            }
        }
    }

    private double dt(int k) {
        return k == 0 ? 0 : epochs.time_s[k] - epochs.time_s[k - 1];
    }

    /** Inverse variance of the position at an epoch, 0 for none. */
    private double ip(int k) {
        int i = epochs.source[k];
        return i < 0 ? 0 : 1.0 / trajectory.positionVariance_m2(axis, i);
    }

    private double iv(int k) {
        int i = epochs.source[k];
        return i < 0 ? 0 : 1.0 / trajectory.velocityVariance_m2ps2(axis, i);
    }

    private void forward() {
        AxisFilter f = model.filter();
        f.start(
                0,
                ForwardPass.START_SIGMA_M,
                0,
                ForwardPass.START_SIGMA_MPS,
                ForwardPass.START_SIGMA_MPS2);
        int next = 0;
        for (int k = 0; k < epochs.time_s.length; k++) {
            int i = epochs.source[k];
            next = i < 0 ? next : i;
            int towards = i < 0 ? Math.min(next + 1, fixes.size() - 1) : i;
            f.predict(dt(k), trajectory.jerk_m2ps5(axis, towards));
            if (i >= 0) {
                f.loosenBias(trajectory.loosened_m2(axis, i));
            }
            if (ip(k) > 0) {
                f.updatePosition(0, 1 / ip(k));
            }
            if (iv(k) > 0) {
                f.updateVelocity(0, 1 / iv(k));
            }
            f.save(saved, k * AxisFilter.SAVED);
        }
    }

    private void backward() {
        AxisAdjoint back = new AxisAdjoint(model.lag_s());
        AxisFilter decay = model.filter();
        for (int k = epochs.time_s.length - 1; k >= 0; k--) {
            back.saveMatrix(adjoint, k * TRIANGLE);
            back.measurement(saved, k * AxisFilter.SAVED, 0, ip(k), 0, iv(k));
            if (k > 0) {
                back.back(dt(k), decay.biasDecay(dt(k)));
            }
        }
    }

    private void column(int m, int j, int n, float[] columns, int first, int end) {
        double[] e = {1, 0, 0, 0};
        double[] u = times(saved, m * AxisFilter.SAVED + 4, e);
        double[] w = minus(e, times(adjoint, m * TRIANGLE, u));
        for (int k = m; k >= first; k--) {
            if (k < end) {
                put(columns, k - first, j, n, times(saved, k * AxisFilter.SAVED + 4, w));
            }
            absorbedTransposed(k, w);
            backOver(dt(k), w);
        }
        for (int k = m + 1; k < end; k++) {
            forwardOver(dt(k), u);
            absorbed(k, u);
            double[] later =
                    times(saved, k * AxisFilter.SAVED + 4, times(adjoint, k * TRIANGLE, u));
            put(columns, k - first, j, n, minus(u, later));
        }
    }

    private static void put(float[] columns, int row, int j, int n, double[] x) {
        int at = 3 * (row * n + j);
        columns[at] = (float) x[0];
        columns[at + 1] = (float) x[1];
        columns[at + 2] = (float) x[2];
    }

    /** u becomes (I − KH) u. */
    private void absorbed(int k, double[] u) {
        double[] kp = gain(k, ip(k), 1, model.lag_s(), 1);
        double[] kv = gain(k, iv(k), 0, 1, 0);
        double hp = u[0] + model.lag_s() * u[1] + u[3];
        double hv = u[1];
        for (int i = 0; i < u.length; i++) {
            u[i] -= kp[i] * hp + kv[i] * hv;
        }
    }

    /** w becomes (I − KH)ᵀ w. */
    private void absorbedTransposed(int k, double[] w) {
        double[] kp = gain(k, ip(k), 1, model.lag_s(), 1);
        double[] kv = gain(k, iv(k), 0, 1, 0);
        double gp = dot(kp, w);
        double gv = dot(kv, w);
        w[0] -= gp;
        w[1] -= model.lag_s() * gp + gv;
        w[3] -= gp;
    }

    private double[] gain(int k, double inverse, double hp, double hv, double hb) {
        double[] g = times(saved, k * AxisFilter.SAVED + 4, new double[] {hp, hv, 0, hb});
        for (int i = 0; i < g.length; i++) {
            g[i] *= inverse;
        }
        return g;
    }

    private void forwardOver(double dt, double[] u) {
        u[0] += dt * u[1] + 0.5 * dt * dt * u[2];
        u[1] += dt * u[2];
        u[3] *= Math.exp(-dt / model.biasTime_s());
    }

    private void backOver(double dt, double[] w) {
        w[2] += 0.5 * dt * dt * w[0] + dt * w[1];
        w[1] += dt * w[0];
        w[3] *= Math.exp(-dt / model.biasTime_s());
    }

    /** A symmetric matrix kept as its upper triangle by rows, times a vector. */
    private static double[] times(double[] m, int at, double[] x) {
        return new double[] {
            m[at] * x[0] + m[at + 1] * x[1] + m[at + 2] * x[2] + m[at + 3] * x[3],
            m[at + 1] * x[0] + m[at + 4] * x[1] + m[at + 5] * x[2] + m[at + 6] * x[3],
            m[at + 2] * x[0] + m[at + 5] * x[1] + m[at + 7] * x[2] + m[at + 8] * x[3],
            m[at + 3] * x[0] + m[at + 6] * x[1] + m[at + 8] * x[2] + m[at + 9] * x[3]
        };
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2], a[3] - b[3]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2] + a[3] * b[3];
    }
}
