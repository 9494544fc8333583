package pairdown.tail;

import java.util.Arrays;

/**
 * How an axis turns when its control works at some level: a Kalman filter for the rate ω, the gusts
 * g and the trim c in ω̇ = level·M·drive + others + damping·ω + g + c. Gusts come and go
 * (first-order Gauss–Markov), trim wanders slowly (random walk). What a sample differs by from its
 * prediction is the innovation; its likelihood under several levels tells them apart, and unlike
 * differenced rates innovations are independent of each other.
 *
 * <p>Source of the recursion: R. E. Kalman, Trans. ASME J. Basic Eng. 82 (1960) 35; of the
 * likelihood from innovations: F. C. Schweppe, IEEE Trans. Inf. Theory 11 (1965) 61.
 *
 * @param rate_dps the logged rate; NaN where missing
 * @param push_dps2 what the control at its forward-thrust effect would have done over the step that
 *     ends here
 * @param known_dps2 what the other terms did over that step
 * @param keep how much of the rate is left after a step
 * @param reach what a steady acceleration adds to the rate in a step (s)
 * @param step_s between samples
 */
// Columns of the package's own working, never handed out: copies would cost more than they guard.
@SuppressWarnings("ArrayRecordComponent")
record TurnModel(
        double[] rate_dps,
        double[] push_dps2,
        double[] known_dps2,
        double[] keep,
        double[] reach,
        double step_s) {
    /** Nothing is known of the trim at first: as much as any control could balance. */
    private static final double FIRST_TRIM_DPS2 = 30;

    private static final double FIRST_RATE_DPS = 10;

    /**
     * What disturbs an axis.
     *
     * @param rate_dps standard deviation of a logged rate: sensor and buffet
     * @param gust_dps2 standard deviation of the gusts' angular acceleration
     * @param gust_s their correlation time
     * @param wander_dps2 how far the trim wanders in one second
     */
    record Noise(double rate_dps, double gust_dps2, double gust_s, double wander_dps2) {}

    /** Rate, gust and trim with their covariance. */
    static final class State {
        private final double[] x = new double[3];

        /** Rate-rate, rate-gust, rate-trim, gust-gust, gust-trim, trim-trim. */
        private final double[] p = new double[6];

        void copy(State s) {
            System.arraycopy(s.x, 0, x, 0, 3);
            System.arraycopy(s.p, 0, p, 0, 6);
        }
    }

    int size() {
        return rate_dps.length;
    }

    /** Knowing nothing but the rate logged at a place. */
    void begin(int i, State s, Noise noise) {
        boolean seen = Double.isFinite(rate_dps[i]);
        s.x[0] = seen ? rate_dps[i] : 0;
        s.x[1] = 0;
        s.x[2] = 0;
        Arrays.fill(s.p, 0);
        s.p[0] = square(seen ? noise.rate_dps() : FIRST_RATE_DPS);
        s.p[3] = square(noise.gust_dps2());
        s.p[5] = square(FIRST_TRIM_DPS2);
    }

    /**
     * From the place before to this one.
     *
     * @param level of the control's effect over the step
     * @param scale of the disturbances here over their usual size
     * @param to the state at this place
     * @return log likelihood of the rate logged here; 0 where none is
     */
    double step(State from, int i, double level, Noise noise, double scale, State to) {
        predict(from, i, level, noise, scale, to);
        double seen = rate_dps[i];
        if (!Double.isFinite(seen)) {
            return 0;
        }
        double[] p = to.p;
        double off = seen - to.x[0];
        double spread = p[0] + square(noise.rate_dps() * scale);
        double g0 = p[0] / spread;
        double g1 = p[1] / spread;
        double g2 = p[2] / spread;
        to.x[0] += g0 * off;
        to.x[1] += g1 * off;
        to.x[2] += g2 * off;
        p[3] -= g1 * p[1];
        p[4] -= g1 * p[2];
        p[5] -= g2 * p[2];
        p[0] *= 1 - g0;
        p[1] *= 1 - g0;
        p[2] *= 1 - g0;
        return -0.5 * (off * off / spread + Math.log(2 * Math.PI * spread));
    }

    private void predict(State from, int i, double level, Noise noise, double scale, State to) {
        boolean known = Double.isFinite(push_dps2[i]);
        double k = keep[i];
        double b = reach[i];
        double r = Math.exp(-step_s / noise.gust_s());
        double control = known ? level * push_dps2[i] + known_dps2[i] : 0;
        to.x[0] = k * from.x[0] + b * (control + from.x[1] + from.x[2]);
        to.x[1] = r * from.x[1];
        to.x[2] = from.x[2];
        double[] p = from.p;
        // The covariance of (rate, gust + trim) is what a step mixes.
        double rateTurn = p[1] + p[2];
        double gustTurn = p[3] + p[4];
        double trimTurn = p[4] + p[5];
        to.p[0] =
                k * k * p[0]
                        + 2 * k * b * rateTurn
                        + b * b * (gustTurn + trimTurn)
                        + (known ? 0 : square(FIRST_RATE_DPS));
        to.p[1] = r * (k * p[1] + b * gustTurn);
        to.p[2] = k * p[2] + b * trimTurn;
        to.p[3] = r * r * p[3] + (1 - r * r) * square(noise.gust_dps2() * scale);
        to.p[4] = r * p[4];
        to.p[5] = p[5] + square(noise.wander_dps2()) * step_s;
    }

    /**
     * The log likelihood of a stretch.
     *
     * @param from first place, where nothing is known yet
     * @param levels the level over the step that ends at each place
     */
    double likelihood(int from, int to, double[] levels, Disturbances d) {
        State now = new State();
        State next = new State();
        begin(from, now, d.usual());
        double sum = 0;
        for (int i = from + 1; i <= to; i++) {
            sum += step(now, i, levels[i], d.usual(), d.scale()[i], next);
            now.copy(next);
        }
        return sum;
    }

    /** Squares of the innovations over their variance, put into {@code square}. */
    void innovations(int from, int to, double[] levels, Noise noise, double[] square) {
        State now = new State();
        State next = new State();
        begin(from, now, noise);
        for (int i = from + 1; i <= to; i++) {
            predict(now, i, levels[i], noise, 1, next);
            double spread = next.p[0] + square(noise.rate_dps());
            square[i] = square(rate_dps[i] - next.x[0]) / spread;
            step(now, i, levels[i], noise, 1, next);
            now.copy(next);
        }
    }

    private static double square(double v) {
        return v * v;
    }
}
