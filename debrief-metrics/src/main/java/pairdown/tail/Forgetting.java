package pairdown.tail;

/**
 * Sums over a column with weights that forget exponentially into past and future alike, λ^|k|, so
 * that a change shows where it happens and not a memory later. Missing places (NaN) weigh nothing.
 */
final class Forgetting {
    private final double lambda;

    /**
     * @param memory_s time constant of the forgetting
     * @param step_s between samples
     */
    Forgetting(double memory_s, double step_s) {
        this.lambda = Math.exp(-step_s / memory_s);
    }

    private Forgetting(double lambda) {
        this.lambda = lambda;
    }

    /** The same with every weight squared: for the variance of a weighted fit. */
    Forgetting squared() {
        return new Forgetting(lambda * lambda);
    }

    /** The factor from one sample to the next. */
    double lambda() {
        return lambda;
    }

    /** The weighted sum about every place. */
    double[] sum(double[] column) {
        int n = column.length;
        double[] out = new double[n];
        double running = 0;
        for (int i = 0; i < n; i++) {
            running = running * lambda + finite(column[i]);
            out[i] = running;
        }
        running = 0;
        for (int i = n - 1; i >= 0; i--) {
            out[i] += running * lambda;
            running = running * lambda + finite(column[i]);
        }
        return out;
    }

    private static double finite(double v) {
        return Double.isFinite(v) ? v : 0;
    }
}
