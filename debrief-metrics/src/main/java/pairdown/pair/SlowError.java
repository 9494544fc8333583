package pairdown.pair;

import java.util.Arrays;
import java.util.List;

/**
 * One axis of a slow error: a stationary first-order Gauss–Markov process observed with white noise
 * at some instants, estimated at any.
 *
 * <p>Filter forward, Rauch–Tung–Striebel smoother backward over the observed instants; before the
 * first and after the last the estimate decays with e^(−Δ/τ). Between two observed instants it is
 * the process's own bridge, whose mean and variance given both ends are exact.
 */
final class SlowError {
    private final double tau_s;
    private final double[] time_s;
    private final double[] mean_m;
    private final double[] variance_m2;

    /** Covariance of the smoothed value at i with that at i + 1. */
    private final double[] withNext_m2;

    private SlowError(double tau_s, int n) {
        this.tau_s = tau_s;
        this.time_s = new double[n];
        this.mean_m = new double[n];
        this.variance_m2 = new double[n];
        this.withNext_m2 = new double[n];
    }

    /**
     * One observation.
     *
     * @param value_m what was seen of the error
     * @param variance_m2 of the white noise on it
     * @param stationary_m one standard deviation of the process there
     */
    record Seen(double time_s, double value_m, double variance_m2, double stationary_m) {}

    /** The error at an instant: its mean and one standard deviation. */
    record At(double mean_m, double sigma_m) {}

    /**
     * The process as seen.
     *
     * @param seen in rising order of time, at least one
     */
    static SlowError of(List<Seen> seen, double tau_s) {
        SlowError e = new SlowError(tau_s, seen.size());
        double[] predicted_m2 = new double[seen.size()];
        e.filter(seen, predicted_m2);
        e.smooth(predicted_m2);
        return e;
    }

    private void filter(List<Seen> seen, double[] predicted_m2) {
        double mean = 0;
        double variance = 0;
        for (int i = 0; i < seen.size(); i++) {
            Seen s = seen.get(i);
            double stationary = s.stationary_m() * s.stationary_m();
            double keep = i == 0 ? 0 : decay(s.time_s() - time_s[i - 1]);
            mean *= keep;
            variance = keep * keep * variance + stationary * (1 - keep * keep);
            predicted_m2[i] = variance;
            double gain = variance / (variance + s.variance_m2());
            mean += gain * (s.value_m() - mean);
            variance *= 1 - gain;
            time_s[i] = s.time_s();
            mean_m[i] = mean;
            variance_m2[i] = variance;
        }
    }

    private void smooth(double[] predicted_m2) {
        for (int i = time_s.length - 2; i >= 0; i--) {
            double keep = decay(time_s[i + 1] - time_s[i]);
            double gain =
                    predicted_m2[i + 1] > 0 ? variance_m2[i] * keep / predicted_m2[i + 1] : 0;
            mean_m[i] += gain * (mean_m[i + 1] - keep * mean_m[i]);
            variance_m2[i] += gain * gain * (variance_m2[i + 1] - predicted_m2[i + 1]);
            withNext_m2[i] = gain * variance_m2[i + 1];
        }
    }

    private double decay(double step_s) {
        return Math.exp(-Math.abs(step_s) / tau_s);
    }

    /** The error at an instant, the process having this standard deviation there. */
    At at(double t_s, double stationary_m) {
        double stationary = stationary_m * stationary_m;
        int last = time_s.length - 1;
        if (t_s <= time_s[0]) {
            return away(0, t_s, stationary);
        }
        if (t_s >= time_s[last]) {
            return away(last, t_s, stationary);
        }
        int i = Arrays.binarySearch(time_s, t_s);
        return i >= 0 ? new At(mean_m[i], Math.sqrt(variance_m2[i])) : bridge(-i - 2, t_s, stationary);
    }

    private At away(int i, double t_s, double stationary) {
        double keep = decay(t_s - time_s[i]);
        return new At(
                keep * mean_m[i],
                Math.sqrt(keep * keep * variance_m2[i] + stationary * (1 - keep * keep)));
    }

    /** Given both ends: mean a·x₀ + b·x₁, variance s²(1 − d₀²)(1 − d₁²)/(1 − d₀²d₁²). */
    private At bridge(int i, double t_s, double stationary) {
        double d0 = decay(t_s - time_s[i]);
        double d1 = decay(time_s[i + 1] - t_s);
        double whole = 1 - d0 * d0 * d1 * d1;
        double a = d0 * (1 - d1 * d1) / whole;
        double b = d1 * (1 - d0 * d0) / whole;
        double own = stationary * (1 - d0 * d0) * (1 - d1 * d1) / whole;
        double ends =
                a * a * variance_m2[i]
                        + b * b * variance_m2[i + 1]
                        + 2 * a * b * withNext_m2[i];
        return new At(a * mean_m[i] + b * mean_m[i + 1], Math.sqrt(own + ends));
    }
}
