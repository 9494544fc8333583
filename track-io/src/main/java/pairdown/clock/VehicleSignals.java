package pairdown.clock;

import pairdown.track.EvenSeries;

/** What a recorder aboard would have felt, made from its vehicle's satellite log. */
final class VehicleSignals {
    /** A vehicle slower than this turns on the spot (m/s). */
    static final double MOVING_MPS = 12;

    final RideMotion motion;

    /** East, north, up. */
    final EvenSeries[] velocity = new EvenSeries[3];

    final EvenSeries turn_dps;
    final EvenSeries thrust_g;
    final EvenSeries load_g;

    VehicleSignals(RideMotion motion) {
        this.motion = motion;
        for (int axis = 0; axis < 3; axis++) {
            velocity[axis] = even(motion.velocity[axis]);
        }
        this.turn_dps = even(trackRate_dps());
        this.thrust_g = even(alongPath_g());
        this.load_g = even(load_g());
    }

    private EvenSeries even(double[] y) {
        return EvenSeries.of(motion.start_s, motion.step_s, y);
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

    /** What each metre a second of east and north wind takes off a turn's share (s/m): V/V². */
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

    private EvenSeries[] perWind(OfWind value) {
        EvenSeries[] out = new EvenSeries[2];
        for (int axis = 0; axis < out.length; axis++) {
            double[] y = new double[motion.size()];
            for (int k = 0; k < y.length; k++) {
                double level = Math.hypot(motion.velocity[0][k], motion.velocity[1][k]);
                y[k] = level > MOVING_MPS ? value.of(k, axis) : Double.NaN;
            }
            out[axis] = even(y);
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
