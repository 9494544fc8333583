package pairdown.motion;

/**
 * What one log says, as columns in the attempt's east-north-up frame: an epoch a row, an array an
 * axis (0 east, 1 north, 2 up). NaN marks what an epoch lacks. Variances are those before tuning.
 */
final class Fixes {
    static final int AXES = 3;

    final double[] time_s;
    final int[] row;
    final double[][] position_m;
    final double[][] velocity_mps;
    final float[][] positionVariance_m2;
    final float[][] velocityVariance_m2ps2;

    /** Velocity coefficient of a position measurement: minus how far position lags velocity. */
    final double lag_s;

    final ReceiverNoise noise;

    Fixes(
            double[] time_s,
            int[] row,
            double[][] position_m,
            double[][] velocity_mps,
            float[][] positionVariance_m2,
            float[][] velocityVariance_m2ps2,
            double lag_s,
            ReceiverNoise noise) {
        this.time_s = time_s;
        this.row = row;
        this.position_m = position_m;
        this.velocity_mps = velocity_mps;
        this.positionVariance_m2 = positionVariance_m2;
        this.velocityVariance_m2ps2 = velocityVariance_m2ps2;
        this.lag_s = lag_s;
        this.noise = noise;
    }

    int size() {
        return time_s.length;
    }

    boolean hasVelocity(int i) {
        return !Double.isNaN(velocity_mps[0][i]);
    }

    boolean hasPosition(int i) {
        return !Double.isNaN(position_m[0][i]);
    }
}
