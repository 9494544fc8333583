package pairdown.tail;

import java.util.Arrays;

/**
 * How an axis turns when its control works at some level: a Kalman filter for the rate ω, the gusts
 * g and the trim c in ω̇ = level·(M·drive + others) + damping·ω + g + pressure·c. Gusts come and go
 * (first-order Gauss–Markov); trim wanders slowly (random walk) and moves when power does, since
 * power changes the moment that the control has to hold. What a sample differs by from its
 * prediction is the innovation; its likelihood under several levels tells them apart, and unlike
 * differenced rates innovations are independent of each other.
 *
 * <p>Source of the recursion: R. E. Kalman, Trans. ASME J. Basic Eng. 82 (1960) 35; of the
 * likelihood from innovations: F. C. Schweppe, IEEE Trans. Inf. Theory 11 (1965) 61.
 *
 * @param rate_dps the logged rate; NaN where missing
 * @param push_dps2 what the control, and slip with the fin, would have done over the step that ends
 *     here at their forward-thrust effect; NaN where not known
 * @param restoring_dps2 what angle of attack did over the step, whatever the level; 0 where slip is
 *     in {@code push_dps2}
 * @param keep how much of the rate is left after a step
 * @param reach what a steady acceleration adds to the rate in a step (s)
 * @param pressure dynamic pressure over that of the dive: what a moment's effect grows with
 * @param power as it acts on the aircraft, 0 at idle and about 1 away from it in full reverse
 * @param powerTrim_dps2 what full reverse adds to the trim at the dive's dynamic pressure
 * @param effect_dps2 what a per cent of the control does there at its forward-thrust effect
 * @param step_s between samples
 */
// Columns of the package's own working, never handed out: copies would cost more than they guard.
@SuppressWarnings("ArrayRecordComponent")
record TurnModel(
        double[] rate_dps,
        double[] push_dps2,
        double[] restoring_dps2,
        double[] keep,
        double[] reach,
        double[] pressure,
        double[] power,
        double powerTrim_dps2,
        double effect_dps2,
        double step_s) {
    /**
     * What a move of power from idle to full reverse adds to the trim beyond what was fitted, in
     * per cent of the control's travel in forward-thrust flight (common practice, no published
     * source).
     */
    private static final double UNFITTED_PCT = 3;

    /** Slower than this share of the way in a second is the sensor's noise. */
    private static final double STILL_PERS = 0.02;

    /** Nothing is known of the trim at first: as much as any control could balance. */
    private static final double FIRST_TRIM_DPS2 = 30;

    /** Where a control or a rate is missing, the next rate is known to no more than this. */
    static final double UNKNOWN_RATE_DPS = 10;

    /**
     * What disturbs an axis.
     *
     * @param rate_dps standard deviation of a logged rate: sensor and buffet
     * @param gust_dps2 standard deviation of the gusts' angular acceleration in calm air
     * @param gust_s their correlation time
     * @param wander_dps2 how far the trim wanders in one second
     */
    record Noise(double rate_dps, double gust_dps2, double gust_s, double wander_dps2) {}

    /** Rate, gust and trim with their covariance. */
    static final class State {
        private final double[] x = new double[3];

        /** Rate-rate, rate-gust, rate-trim, gust-gust, gust-trim, trim-trim. */
        private final double[] p = new double[6];

        double rate() {
            return x[0];
        }

        double rateVariance() {
            return p[0];
        }

        double gustVariance() {
            return p[3];
        }

        double trimVariance() {
            return p[5];
        }

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
        s.p[0] = square(seen ? noise.rate_dps() : UNKNOWN_RATE_DPS);
        s.p[3] = square(noise.gust_dps2());
        s.p[5] = square(FIRST_TRIM_DPS2);
    }

    /**
     * From the place before to this one.
     *
     * @param level of the control's effect over the step
     * @param rough the gusts' size over that in calm air
     * @param to the state at this place
     * @return log likelihood of the rate logged here; 0 where none is
     */
    double step(State from, int i, double level, Noise noise, double rough, State to) {
        predict(from, i, level, noise, rough, to);
        double seen = rate_dps[i];
        if (!Double.isFinite(seen)) {
            return 0;
        }
        double[] p = to.p;
        double off = seen - to.x[0];
        double spread = p[0] + square(noise.rate_dps());
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

    private void predict(State from, int i, double level, Noise noise, double rough, State to) {
        boolean known = Double.isFinite(push_dps2[i]);
        double k = keep[i];
        double b = reach[i];
        double d = b * pressure[i];
        double r = Math.exp(-step_s / noise.gust_s());
        double control = (known ? level * push_dps2[i] : 0) + restoring_dps2[i];
        to.x[0] =
                k * from.x[0]
                        + b * (control + from.x[1])
                        + d * (from.x[2] + powerTrim_dps2 * power[i]);
        to.x[1] = r * from.x[1];
        to.x[2] = from.x[2];
        double[] p = from.p;
        // The covariance of (rate, b·gust + d·trim) is what a step mixes.
        double rateTurn = b * p[1] + d * p[2];
        double gustTurn = b * p[3] + d * p[4];
        double trimTurn = b * p[4] + d * p[5];
        to.p[0] =
                k * k * p[0]
                        + 2 * k * rateTurn
                        + b * gustTurn
                        + d * trimTurn
                        + (known ? 0 : square(UNKNOWN_RATE_DPS));
        to.p[1] = r * (k * p[1] + gustTurn);
        to.p[2] = k * p[2] + trimTurn;
        to.p[3] = r * r * p[3] + (1 - r * r) * square(noise.gust_dps2() * rough);
        to.p[4] = r * p[4];
        to.p[5] = p[5] + square(noise.wander_dps2()) * step_s + shift(i);
    }

    /** Variance that a move of power adds to the trim over the step that ends here ((°/s²)²). */
    double shift(int i) {
        return square(UNFITTED_PCT * effect_dps2) * moved(i);
    }

    /** How far power moved over the step that ends here, beyond its sensor's noise. */
    double moved(int i) {
        double moved = i == 0 ? 0 : Math.abs(power[i] - power[i - 1]) - STILL_PERS * step_s;
        return Math.max(0, moved);
    }

    /** With the trim's change by power fitted. */
    TurnModel withPowerTrim(double trim_dps2) {
        return new TurnModel(
                rate_dps,
                push_dps2,
                restoring_dps2,
                keep,
                reach,
                pressure,
                power,
                trim_dps2,
                effect_dps2,
                step_s);
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
            sum += step(now, i, levels[i], d.usual(), d.rough()[i], next);
            State spare = now;
            now = next;
            next = spare;
        }
        return sum;
    }

    private static double square(double v) {
        return v * v;
    }
}
