package pairdown.clock;

import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import pairdown.track.EvenSeries;

/** What a recorder aboard would have felt, made from its vehicle's satellite log. */
final class VehicleSignals {
    /** A vehicle slower than this turns on the spot (m/s). */
    static final double MOVING_MPS = 12;

    /** Lower and higher by less than this, the wind is one (m). */
    private static final double LEAST_CLIMB_M = 50;

    final RideMotion motion;

    /** East, north, up. */
    final EvenSeries[] velocity = new EvenSeries[3];

    /** −1 at its lowest, 1 at its highest; 0 all along where it did not climb. */
    final EvenSeries height;

    final EvenSeries turn_dps;
    final EvenSeries thrust_g;
    final EvenSeries load_g;

    VehicleSignals(RideMotion motion) {
        this.motion = motion;
        for (int axis = 0; axis < 3; axis++) {
            velocity[axis] = even(motion.velocity[axis]);
        }
        this.height = even(height());
        this.turn_dps = even(trackRate_dps());
        this.thrust_g = even(alongPath_g());
        this.load_g = even(load_g());
    }

    private EvenSeries even(double[] y) {
        return EvenSeries.of(motion.start_s, motion.step_s, y);
    }

    /** Summed up from its climb: what matters is where it was lower and where higher. */
    private double[] height() {
        double[] h = new double[motion.size()];
        for (int k = 1; k < h.length; k++) {
            double up_mps = motion.hasUp ? motion.velocity[2][k] : 0;
            h[k] = h[k - 1] + (Double.isNaN(up_mps) ? 0 : up_mps * motion.step_s);
        }
        DoubleSummaryStatistics range = Arrays.stream(h).summaryStatistics();
        double half = (range.getMax() - range.getMin()) / 2;
        for (int k = 0; k < h.length; k++) {
            h[k] = half > LEAST_CLIMB_M ? (h[k] - range.getMin()) / half - 1 : 0;
        }
        return h;
    }

    /** Speed over ground, climb included. */
    double[] speed_mps() {
        double[] out = new double[motion.size()];
        for (int k = 0; k < out.length; k++) {
            out[k] = speed_mps(k);
        }
        return out;
    }

    private double speed_mps(int k) {
        double up = motion.hasUp ? motion.velocity[2][k] : 0;
        return Math.hypot(Math.hypot(motion.velocity[0][k], motion.velocity[1][k]), up);
    }

    /** Rate of turn, 0 where it stands about. */
    double[] turnWhereMoving_dps() {
        double[] out = trackRate_dps();
        for (int k = 0; k < out.length; k++) {
            double v = Math.hypot(motion.velocity[0][k], motion.velocity[1][k]);
            out[k] = v < MOVING_MPS ? 0 : out[k];
        }
        return out;
    }

    /** What each metre a second of wind takes off a turn's share (s/m): V/V². */
    EvenSeries[] windOnTurn() {
        return perWind(
                (k, axis) -> {
                    double e = motion.velocity[0][k];
                    double n = motion.velocity[1][k];
                    return motion.velocity[axis][k] / (e * e + n * n);
                });
    }

    /**
     * The load along the path for each metre a second of east and north wind (g·s/m): a/(g·|V|).
     */
    EvenSeries[] windOnThrust() {
        return perWind((k, axis) -> rate(axis, k) / (SystemsSignals.G_MPS2 * speed_mps(k)));
    }

    /** A value of a point and an axis, where the vehicle moves. */
    private interface OfWind {
        double of(int k, int axis);
    }

    /** East and north, then what more of them there is the higher it is. */
    private EvenSeries[] perWind(OfWind value) {
        EvenSeries[] out = new EvenSeries[4];
        for (int axis = 0; axis < 2; axis++) {
            double[] wind = new double[motion.size()];
            double[] change = new double[motion.size()];
            for (int k = 0; k < wind.length; k++) {
                double level = Math.hypot(motion.velocity[0][k], motion.velocity[1][k]);
                wind[k] = level > MOVING_MPS ? value.of(k, axis) : Double.NaN;
                change[k] = wind[k] * height.value(k);
            }
            out[axis] = even(wind);
            out[2 + axis] = even(change);
        }
        return out;
    }

    /** Rate of turn of the ground track, clockwise positive; NaN at ends. */
    private double[] trackRate_dps() {
        double[] out = new double[motion.size()];
        for (int k = 0; k < out.length; k++) {
            double e = motion.velocity[0][k];
            double n = motion.velocity[1][k];
            double v2 = e * e + n * n;
            boolean moving = v2 > MOVING_MPS * MOVING_MPS;
            out[k] = moving ? Math.toDegrees((rate(0, k) * n - e * rate(1, k)) / v2) : Double.NaN;
        }
        return out;
    }

    private double rate(int axis, int k) {
        return k < 1 || k + 1 >= motion.size()
                ? Double.NaN
                : (motion.velocity[axis][k + 1] - motion.velocity[axis][k - 1])
                        / (2 * motion.step_s);
    }

    /**
     * Specific force along the path: (v·a + g·climb)/(g·|v|), what a forward accelerometer feels.
     */
    private double[] alongPath_g() {
        double[] out = new double[motion.size()];
        for (int k = 0; k < out.length; k++) {
            double e = motion.velocity[0][k];
            double n = motion.velocity[1][k];
            double u = motion.velocity[2][k];
            double v = Math.sqrt(e * e + n * n + u * u);
            double power =
                    e * rate(0, k) + n * rate(1, k) + u * (rate(2, k) + SystemsSignals.G_MPS2);
            out[k] = v > MOVING_MPS ? power / (v * SystemsSignals.G_MPS2) : Double.NaN;
        }
        return out;
    }

    /**
     * Size of the specific force, |a + g·up|/g: what accelerometers feel, however they are turned.
     */
    private double[] load_g() {
        double[] out = new double[motion.size()];
        for (int k = 0; k < out.length; k++) {
            double level = Math.hypot(rate(0, k), rate(1, k));
            out[k] = Math.hypot(level, rate(2, k) + SystemsSignals.G_MPS2) / SystemsSignals.G_MPS2;
        }
        return out;
    }
}
