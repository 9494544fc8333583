package pairdown.tail;

/**
 * A control's level over time with its sigma, when it may wander: the level and the trim's change
 * by power join rate, gust and trim as states of the filter, in which it is linear, and a smoother
 * looks both ways. It is least squares with forgetting into past and future, but on innovations: a
 * pilot who answers gusts makes plain least squares take the gust for the control's effect, and
 * this not.
 *
 * <p>Source: H. E. Rauch, F. Tung and C. T. Striebel, AIAA Journal 3 (1965) 1445; the coefficient
 * as a state: L. Ljung, System Identification, 2nd ed. (1999), section 11.6.
 */
final class LevelSmoother {
    /** Rate, gust, trim, level and the trim's change by power. */
    private static final int N = 5;

    /** Full reverse changes the trim by no more than this of travel in forward-thrust flight. */
    private static final double MOST_TRIM_PCT = 20;

    private final TurnModel model;
    private final Disturbances disturbances;

    LevelSmoother(TurnModel model, Disturbances disturbances) {
        this.model = model;
        this.disturbances = disturbances;
    }

    /**
     * The level and its sigma at every place of a run, put into the columns.
     *
     * @param first level at the start
     * @param firstSigma of that
     * @return what full reverse adds to the trim (°/s²)
     * @param change variance by which the level may change over the step that ends at each place
     */
    double smooth(
            Masks.Run run,
            double first,
            double firstSigma,
            double[] change,
            double[] level,
            double[] sigma) {
        int n = run.length();
        double[][] mean = new double[n][N];
        double[][] predicted = new double[n][N];
        double[][][] cov = new double[n][N][N];
        double[][][] priorCov = new double[n][N][N];
        double[][][] move = new double[n][N][N];
        TurnModel.Noise noise = disturbances.usual();
        begin(run.from(), first, firstSigma, mean[0], cov[0]);
        for (int k = 1; k < n; k++) {
            int i = run.from() + k;
            transition(i, noise, move[k]);
            predict(
                    i,
                    noise,
                    change[i],
                    move[k],
                    mean[k - 1],
                    cov[k - 1],
                    predicted[k],
                    priorCov[k]);
            update(i, noise, predicted[k], priorCov[k], mean[k], cov[k]);
        }
        backwards(run, mean, cov, predicted, priorCov, move, level, sigma);
        return model.powerTrim_dps2() + mean[n - 1][4];
    }

    private void begin(int i, double first, double firstSigma, double[] x, double[][] p) {
        TurnModel.State s = new TurnModel.State();
        model.begin(i, s, disturbances.usual());
        x[0] = s.rate();
        x[3] = first;
        p[0][0] = s.rateVariance();
        p[1][1] = s.gustVariance();
        p[2][2] = s.trimVariance();
        p[3][3] = firstSigma * firstSigma;
        double trim = MOST_TRIM_PCT * model.effect_dps2();
        p[4][4] = trim * trim;
    }

    private void transition(int i, TurnModel.Noise noise, double[][] f) {
        double push = model.push_dps2()[i];
        f[0][0] = model.keep()[i];
        f[0][1] = model.reach()[i];
        f[0][2] = model.reach()[i] * model.pressure()[i];
        f[0][3] = Double.isFinite(push) ? model.reach()[i] * push : 0;
        f[1][1] = Math.exp(-model.step_s() / noise.gust_s());
        f[2][2] = 1;
        f[0][4] = f[0][2] * model.power()[i];
        f[3][3] = 1;
        f[4][4] = 1;
    }

    private void predict(
            int i,
            TurnModel.Noise noise,
            double change,
            double[][] f,
            double[] x,
            double[][] p,
            double[] toX,
            double[][] toP) {
        boolean known = Double.isFinite(model.push_dps2()[i]);
        for (int a = 0; a < N; a++) {
            toX[a] = dot(f[a], x);
        }
        toX[0] += f[0][4] * model.powerTrim_dps2() + model.reach()[i] * model.restoring_dps2()[i];
        double[][] fp = times(f, p);
        for (int a = 0; a < N; a++) {
            for (int b = 0; b < N; b++) {
                toP[a][b] = dot(fp[a], f[b]);
            }
        }
        double gust = noise.gust_dps2() * disturbances.rough()[i];
        toP[0][0] += known ? 0 : TurnModel.UNKNOWN_RATE_DPS * TurnModel.UNKNOWN_RATE_DPS;
        toP[1][1] += (1 - f[1][1] * f[1][1]) * gust * gust;
        toP[2][2] += noise.wander_dps2() * noise.wander_dps2() * model.step_s() + model.shift(i);
        toP[3][3] += change;
    }

    private void update(
            int i, TurnModel.Noise noise, double[] x, double[][] p, double[] toX, double[][] toP) {
        double seen = model.rate_dps()[i];
        if (!Double.isFinite(seen)) {
            System.arraycopy(x, 0, toX, 0, N);
            for (int a = 0; a < N; a++) {
                System.arraycopy(p[a], 0, toP[a], 0, N);
            }
            return;
        }
        double spread = p[0][0] + noise.rate_dps() * noise.rate_dps();
        for (int a = 0; a < N; a++) {
            double gain = p[a][0] / spread;
            toX[a] = x[a] + gain * (seen - x[0]);
            for (int b = 0; b < N; b++) {
                toP[a][b] = p[a][b] - gain * p[0][b];
            }
        }
    }

    private static void backwards(
            Masks.Run run,
            double[][] mean,
            double[][][] cov,
            double[][] predicted,
            double[][][] priorCov,
            double[][][] move,
            double[] level,
            double[] sigma) {
        int last = mean.length - 1;
        double[] x = mean[last];
        double[][] p = cov[last];
        for (int k = last; k >= 0; k--) {
            if (k < last) {
                double[][] gain = gain(cov[k], move[k + 1], priorCov[k + 1]);
                x = smoothed(mean[k], gain, x, predicted[k + 1]);
                p = smoothed(cov[k], gain, p, priorCov[k + 1]);
            }
            level[run.from() + k] = x[3];
            sigma[run.from() + k] = Math.sqrt(Math.max(0, p[3][3]));
        }
    }

    /** P·Fᵀ·P′⁻¹, row by row. */
    private static double[][] gain(double[][] p, double[][] f, double[][] prior) {
        double[][] gain = new double[N][N];
        double[][] root = cholesky(prior);
        for (int a = 0; a < N; a++) {
            for (int b = 0; b < N; b++) {
                gain[a][b] = dot(p[a], f[b]);
            }
            solve(root, gain[a]);
        }
        return gain;
    }

    private static double[] smoothed(
            double[] mean, double[][] gain, double[] later, double[] predicted) {
        double[] x = mean.clone();
        for (int a = 0; a < N; a++) {
            for (int b = 0; b < N; b++) {
                x[a] += gain[a][b] * (later[b] - predicted[b]);
            }
        }
        return x;
    }

    private static double[][] smoothed(
            double[][] cov, double[][] gain, double[][] later, double[][] prior) {
        double[][] less = new double[N][N];
        for (int a = 0; a < N; a++) {
            for (int b = 0; b < N; b++) {
                less[a][b] = later[a][b] - prior[a][b];
            }
        }
        double[][] gl = times(gain, less);
        double[][] p = new double[N][N];
        for (int a = 0; a < N; a++) {
            for (int b = 0; b < N; b++) {
                p[a][b] = cov[a][b] + dot(gl[a], gain[b]);
            }
        }
        return p;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int k = 0; k < N; k++) {
            sum += a[k] * b[k];
        }
        return sum;
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] c = new double[N][N];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                for (int k = 0; k < N; k++) {
                    c[i][j] += a[i][k] * b[k][j];
                }
            }
        }
        return c;
    }

    /** The lower root of a covariance, a trace of its own size added so that it has one. */
    private static double[][] cholesky(double[][] p) {
        double[][] l = new double[N][N];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = i == j ? p[i][i] * (1 + 1e-9) + 1e-12 : p[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= l[i][k] * l[j][k];
                }
                l[i][j] = i == j ? Math.sqrt(Math.max(1e-15, sum)) : sum / l[j][j];
            }
        }
        return l;
    }

    /** Solves in place with the root. */
    private static void solve(double[][] l, double[] b) {
        for (int i = 0; i < N; i++) {
            for (int k = 0; k < i; k++) {
                b[i] -= l[i][k] * b[k];
            }
            b[i] /= l[i][i];
        }
        for (int i = N - 1; i >= 0; i--) {
            for (int k = i + 1; k < N; k++) {
                b[i] -= l[k][i] * b[k];
            }
            b[i] /= l[i][i];
        }
    }
}
