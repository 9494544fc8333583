package pairdown.motion;

/**
 * The errors of one receiver, one standard deviation per axis. A position is off by a white part, a
 * slow part of its own that wanders with {@code biasTime_s} (first-order Gauss–Markov), and a part
 * it shares with every receiver under the same sky, which pairs do not see.
 *
 * @param levelWhite_m white, east and north
 * @param verticalWhite_m white, up
 * @param levelBias_m slow and its own, east and north
 * @param verticalBias_m slow and its own, up
 * @param biasTime_s time constant of the slow part
 * @param levelVelocity_mps white, east and north
 * @param verticalVelocity_mps white, up
 * @param levelCommon_m shared with other receivers, east and north; enters absolute sigmas only
 * @param verticalCommon_m shared with other receivers, up
 */
public record ReceiverNoise(
        double levelWhite_m,
        double verticalWhite_m,
        double levelBias_m,
        double verticalBias_m,
        double biasTime_s,
        double levelVelocity_mps,
        double verticalVelocity_mps,
        double levelCommon_m,
        double verticalCommon_m) {
    /**
     * A consumer receiver in the open (common practice, no published source, but for velocity: 0.2
     * m/s at 95 % per axis, a published receiver figure).
     */
    public static final ReceiverNoise DEFAULT =
            new ReceiverNoise(0.2, 0.35, 0.8, 1.35, 45, 0.10, 0.18, 1.0, 1.8);

    public ReceiverNoise {
        if (!(levelWhite_m > 0
                && verticalWhite_m > 0
                && levelBias_m > 0
                && verticalBias_m > 0
                && biasTime_s > 0
                && levelVelocity_mps > 0
                && verticalVelocity_mps > 0
                && levelCommon_m >= 0
                && verticalCommon_m >= 0)) {
            throw new IllegalArgumentException("a receiver's errors must be greater than 0");
        }
    }

    double white_m(int axis) {
        return axis == 2 ? verticalWhite_m : levelWhite_m;
    }

    double bias_m(int axis) {
        return axis == 2 ? verticalBias_m : levelBias_m;
    }

    double velocity_mps(int axis) {
        return axis == 2 ? verticalVelocity_mps : levelVelocity_mps;
    }

    /** The same with all position errors times {@code factor}. */
    ReceiverNoise positionTimes(double factor) {
        return new ReceiverNoise(
                levelWhite_m * factor,
                verticalWhite_m * factor,
                levelBias_m * factor,
                verticalBias_m * factor,
                biasTime_s,
                levelVelocity_mps,
                verticalVelocity_mps,
                levelCommon_m * factor,
                verticalCommon_m * factor);
    }
}
