package pairdown.phase;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import pairdown.stats.Robust;
import pairdown.units.Estimate;

/**
 * The instant at which an opening begins to brake. It is read from what only a canopy does: speed
 * is lost and the fall is stopped, while a turn that ends as the flyer reaches for the handle
 * changes neither. Before the instant each of the two is a straight line in time; from it on a pull
 * grows from nothing, c₁τ + c₂τ² (m/s²), as the canopy fills. Every instant of a stretch is weighed
 * by how likely the samples are with the pull beginning then, whatever the coefficients within
 * their spreads (a linear model with Gaussian coefficients, whose likelihood is closed: C. M.
 * Bishop, Pattern Recognition and Machine Learning (2006), equation 3.86); the instant is the mean
 * of the weights. Where a pull crosses some limit would be late by as much as the pull grows
 * slowly.
 */
final class OpeningInstant {
    /** The flight before it is looked at from this long before a pull that is under way (s). */
    private static final double WINDOW_S = 4;

    /** An opening begins at most this long before the last sample looked at (s). */
    private static final double REACH_S = 3;

    private static final double STEP_S = 0.05;

    /** The pull is looked at until so much speed, or so much sink, is lost: then drag eases. */
    private static final double MOST_SPEED_MPS = 4;

    private static final double MOST_SINK_MPS = 7;

    /**
     * How the pull of a usual opening grows in speed and in sink, and its spread (m/s³, m/s⁴): full
     * in two to four seconds at two to five g (common practice, no published source).
     */
    private static final Law USUAL = new Law(new Growth(8, -6, 5), new Growth(12, 8, 6));

    /** A hard opening: at once, at ten g and more. */
    private static final Law HARD = new Law(new Growth(60, 0, 60), new Growth(100, 0, 100));

    private static final double HARD_SHARE = 0.1;

    /** A flyer's own acceleration before it. */
    private static final double STEADY_SPREAD_MPS2 = 2;

    private static final double SPEED_SPREAD_MPS = 100;

    /** Velocity noise, and what steering and gusts add to a straight line for so long (m/s, s). */
    private static final double NOISE_MPS = 0.25;

    private static final double NOISE_TIME_S = 0.5;

    private static final double POSITION_NOISE_M = 0.4;

    /** A log's own noise is measured over this long a flight before (s), by so many samples. */
    private static final double NOISE_WINDOW_S = 15;

    private static final int LEAST_NOISE_SAMPLES = 8;

    /**
     * What the law of the pull leaves (s), where the pull is seen by velocities of the receiver's
     * own or by differences of places, and the share of the time between samples that comes on top:
     * guard, own runs.
     */
    private static final double LAW_S = 0.2;

    private static final double DIFFERENCED_LAW_S = 0.3;
    private static final double LAW_STEP_SHARE = 0.3;

    private static final int TERMS = 4;

    private final Motion motion;
    private final double from_s;
    private final double to_s;

    /** Spreads of c₁ about 0 (m/s³) and of c₂ about its usual value (m/s⁴). */
    private record Growth(double first, double second, double secondSpread) {}

    private record Law(Growth speed, Growth up) {}

    private OpeningInstant(Motion motion, double pulling_s) {
        this.motion = motion;
        this.from_s = pulling_s - WINDOW_S;
        this.to_s = until_s(pulling_s);
    }

    /**
     * Looks for the beginning of an opening's pull.
     *
     * @param pulling_s when it surely pulls
     */
    static Estimate before(Motion motion, double pulling_s) {
        return new OpeningInstant(motion, pulling_s).find();
    }

    /**
     * When the most speed or sink that is looked at is lost: by the receiver's own velocities, else
     * by the smoothed motion.
     */
    private double until_s(double pulling_s) {
        Motion.Columns up = motion.samples().vertical();
        boolean own = up.blur_s() == 0 && motion.samples().step_s() <= NOISE_TIME_S;
        double fastest_mps = 0;
        double sink_mps = 0;
        double t_s = from_s;
        for (int k = own ? up.firstFrom(from_s) : motion.index(from_s);
                t_s < pulling_s + REACH_S && k < (own ? up.size() : motion.size());
                k++) {
            t_s = own ? up.time_s(k) : motion.time_s(k);
            double sinkNow_mps = own ? -up.first(k) : motion.sink_mps(k);
            double levelNow_mps = Math.hypot(motion.east().at(t_s), motion.north().at(t_s));
            double speed_mps = Math.hypot(levelNow_mps, sinkNow_mps);
            fastest_mps = Math.max(fastest_mps, Double.isNaN(speed_mps) ? 0 : speed_mps);
            sink_mps = Math.max(sink_mps, Double.isNaN(sinkNow_mps) ? 0 : sinkNow_mps);
            if (fastest_mps - speed_mps > MOST_SPEED_MPS
                    || sink_mps - sinkNow_mps > MOST_SINK_MPS) {
                break;
            }
        }
        return own ? t_s : sampleFrom_s(up, t_s);
    }

    /** Smoothed motion knows of the loss before the sample that shows it: that one is read, too. */
    private static double sampleFrom_s(Motion.Columns c, double t_s) {
        int next = c.firstFrom(t_s);
        return next < c.size() ? c.time_s(next) : t_s;
    }

    private Estimate find() {
        double first_s = to_s - REACH_S;
        double[] instants_s = new double[(int) (REACH_S / STEP_S)];
        Arrays.setAll(instants_s, i -> first_s + i * STEP_S);
        double[] likelihood = new double[instants_s.length];
        for (int i = 0; i < instants_s.length; i++) {
            double usual = likelihood(USUAL, instants_s[i]);
            double hard = likelihood(HARD, instants_s[i]) + Math.log(HARD_SHARE);
            double most = Math.max(usual, hard);
            likelihood[i] = most + Math.log(Math.exp(usual - most) + Math.exp(hard - most));
        }
        Estimate found = Posterior.of(instants_s, likelihood);
        return new Estimate(found.value(), Math.hypot(found.sigma(), law_s()));
    }

    private double law_s() {
        boolean own = motion.samples().vertical().blur_s() == 0;
        double unseen_s = LAW_STEP_SHARE * motion.samples().step_s();
        return Math.hypot(own ? LAW_S : DIFFERENCED_LAW_S, unseen_s);
    }

    private double likelihood(Law law, double begin_s) {
        Motion.Columns level = motion.samples().level();
        Motion.Columns vertical = motion.samples().vertical();
        return likelihood(level, k -> speed_mps(level, k), law.speed, begin_s)
                + likelihood(vertical, vertical::first, law.up, begin_s);
    }

    private double speed_mps(Motion.Columns level, int i) {
        double up_mps = motion.up().at(level.time_s(i));
        return Math.hypot(Math.hypot(level.first(i), level.second(i)), up_mps);
    }

    private double likelihood(
            Motion.Columns c, IntToDoubleFunction value_mps, Growth growth, double begin_s) {
        double noise_mps = noise_mps(c, value_mps);
        RealMatrix a = new Array2DRowRealMatrix(TERMS, TERMS);
        RealVector b = new ArrayRealVector(TERMS);
        double w = 1 / (noise_mps * noise_mps);
        double square = 0;
        for (int i = c.firstFrom(from_s); i < c.size() && c.time_s(i) <= to_s; i++) {
            double tau = c.time_s(i) - begin_s;
            double[] row = {1, tau, grown(tau, c.blur_s(), 2), 2 * grown(tau, c.blur_s(), 3)};
            double y = value_mps.applyAsDouble(i) - growth.second * row[3];
            if (Double.isNaN(y)) {
                continue;
            }
            square += w * y * y;
            for (int j = 0; j < TERMS; j++) {
                b.addToEntry(j, w * row[j] * y);
                for (int k = 0; k < TERMS; k++) {
                    a.addToEntry(j, k, w * row[j] * row[k]);
                }
            }
        }
        double[] spread = {SPEED_SPREAD_MPS, STEADY_SPREAD_MPS2, growth.first, growth.secondSpread};
        double spreads = 1;
        for (int j = 0; j < TERMS; j++) {
            a.addToEntry(j, j, 1 / (spread[j] * spread[j]));
            spreads *= spread[j];
        }
        CholeskyDecomposition solved = new CholeskyDecomposition(a);
        double explained = b.dotProduct(solved.getSolver().solve(b));
        return -0.5 * (square - explained + Math.log(solved.getDeterminant())) - Math.log(spreads);
    }

    /**
     * Of a sample, such that many within the time that steering lasts are no more than one; between
     * sparse ones steering adds up. Errors of neighbouring differences undo each other, unless the
     * few there are tell a shape.
     */
    private double noise_mps(Motion.Columns c, IntToDoubleFunction value_mps) {
        double dense = NOISE_TIME_S / motion.samples().step_s();
        double many = Math.max(dense, 1 / dense);
        double steering_mps = NOISE_MPS * Math.sqrt(many);
        if (c.blur_s() == 0) {
            return steering_mps;
        }
        double place_m = Math.max(POSITION_NOISE_M, placeNoise_m(c, value_mps));
        return c.blur_s() > NOISE_TIME_S
                ? Math.hypot(steering_mps, Math.sqrt(2) * place_m / c.blur_s())
                : Math.max(steering_mps, place_m / Math.sqrt(c.blur_s() * NOISE_TIME_S));
    }

    /**
     * One standard deviation of the places that were differenced, by the third differences of
     * theirs, which have √20 times it, in the flight before; 0 where too few tell.
     */
    private double placeNoise_m(Motion.Columns c, IntToDoubleFunction value_mps) {
        double[] size_m =
                IntStream.range(c.firstFrom(from_s - NOISE_WINDOW_S), c.firstFrom(from_s))
                        .filter(i -> i > 0 && i + 1 < c.size())
                        .mapToDouble(
                                i ->
                                        value_mps.applyAsDouble(i - 1)
                                                - 2 * value_mps.applyAsDouble(i)
                                                + value_mps.applyAsDouble(i + 1))
                        .filter(Double::isFinite)
                        .map(bend_mps -> Math.abs(bend_mps) * c.blur_s())
                        .sorted()
                        .toArray();
        return size_m.length < LEAST_NOISE_SAMPLES
                ? 0
                : size_m[size_m.length / 2] * Robust.MAD_TO_SIGMA / Math.sqrt(20);
    }

    /** Mean of max(0, τ)ⁿ/n! over {@code blur_s} about {@code tau}; n is 2 or 3. */
    private static double grown(double tau, double blur_s, int n) {
        double factorial = n == 2 ? 2 : 6;
        if (blur_s == 0) {
            return Math.pow(Math.max(0, tau), n) / factorial;
        }
        double high = Math.max(0, tau + blur_s / 2);
        double low = Math.max(0, tau - blur_s / 2);
        return (Math.pow(high, n + 1.0) - Math.pow(low, n + 1.0)) / ((n + 1) * factorial * blur_s);
    }
}
