package pairdown.tail;

/**
 * When a control's effect changed from one level to another, by the likelihood of every instant:
 * the accelerations before follow one level, those after the other, about a common slow part. A
 * flat prior over the instants searched turns the likelihood into a mean and a sigma, which is wide
 * where the pilot happened to hold the control still.
 *
 * <p>Source: the Bayesian change point of A. F. M. Smith, Biometrika 62 (1975) 407, with known
 * levels.
 *
 * @param place on the grid, fractional
 * @param sigma one standard deviation, in places
 */
record EdgeFit(double place, double sigma) {
    /**
     * Finds the change.
     *
     * @param e the axis
     * @param from first place looked at
     * @param to last place looked at
     * @param before ratio before
     * @param after ratio after
     */
    static EdgeFit of(Effectiveness e, int from, int to, double before, double after) {
        int n = to - from + 1;
        double[] gain = new double[n + 1];
        Line early = new Line();
        Line late = new Line();
        for (int i = from; i <= to; i++) {
            late.add(rest(e, i, after));
        }
        gain[0] = late.squares();
        for (int k = 0; k < n; k++) {
            early.add(rest(e, from + k, before));
            late.remove(rest(e, from + k, after));
            gain[k + 1] = early.plus(late).squares();
        }
        double least = Double.POSITIVE_INFINITY;
        for (double g : gain) {
            least = Math.min(least, g);
        }
        double counted = Math.max(1, early.n);
        double residual = Math.max(e.residual_dps2() * e.residual_dps2() / 2, least / counted);
        double scale = 2 * residual * e.inflation();
        double w = 0;
        double x = 0;
        double xx = 0;
        for (int k = 0; k <= n; k++) {
            double p = Math.exp(-(gain[k] - least) / scale);
            w += p;
            x += p * k;
            xx += p * k * k;
        }
        double mean = x / w;
        // A change between two places is known to within their distance.
        double variance = Math.max(0, xx / w - mean * mean) + 1.0 / 12;
        return new EdgeFit(from + mean - 0.5, Math.sqrt(variance));
    }

    private static double rest(Effectiveness e, int i, double level) {
        return e.left()[i] - e.baseline() * level * e.drive()[i];
    }

    /** Sum of squares about the mean, by running sums. */
    private static final class Line {
        private int n;
        private double sum;
        private double squares;

        void add(double v) {
            if (Double.isFinite(v)) {
                n++;
                sum += v;
                squares += v * v;
            }
        }

        void remove(double v) {
            if (Double.isFinite(v)) {
                n--;
                sum -= v;
                squares -= v * v;
            }
        }

        Line plus(Line o) {
            Line both = new Line();
            both.n = n + o.n;
            both.sum = sum + o.sum;
            both.squares = squares + o.squares;
            return both;
        }

        double squares() {
            return n == 0 ? 0 : squares - sum * sum / n;
        }
    }
}
