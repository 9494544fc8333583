package pairdown.demo.receiver;

/**
 * The errors of one receiver in the open: {@code position = truth + common + own + white}, {@code
 * velocity = truth a little earlier + white}.
 *
 * @param common shared by all receivers under the same sky
 * @param own this receiver's alone
 * @param levelWhite_m from fix to fix, east and north
 * @param verticalWhite_m the same, up
 * @param levelVelocity_mps white, east and north
 * @param verticalVelocity_mps white, up
 * @param leastVelocityLag_s how late velocities are behind their positions, drawn from here
 * @param mostVelocityLag_s to here
 */
public record ReceiverErrors(
        Wander common,
        Wander own,
        double levelWhite_m,
        double verticalWhite_m,
        double levelVelocity_mps,
        double verticalVelocity_mps,
        double leastVelocityLag_s,
        double mostVelocityLag_s) {
    /**
     * A consumer receiver (common practice, no published source, but for the velocity: 0.2 m/s at
     * 95 % per level axis, a published receiver figure).
     */
    public static final ReceiverErrors CONSUMER =
            new ReceiverErrors(
                    new Wander(1.0, 1.8, 900),
                    new Wander(0.8, 1.35, 45),
                    0.2,
                    0.35,
                    0.10,
                    0.18,
                    0.1,
                    0.3);

    /** One that tells the truth. */
    public static final ReceiverErrors NONE =
            new ReceiverErrors(new Wander(0, 0, 900), new Wander(0, 0, 45), 0, 0, 0, 0, 0, 0);

    /** One standard deviation of a position, east or north (m). */
    double level_m() {
        return norm(common.level_m(), own.level_m(), levelWhite_m);
    }

    /** One standard deviation of a height (m). */
    double vertical_m() {
        return norm(common.vertical_m(), own.vertical_m(), verticalWhite_m);
    }

    /** One standard deviation of a velocity's component, the mean over axes (m/s). */
    double velocity_mps() {
        return norm(levelVelocity_mps, levelVelocity_mps, verticalVelocity_mps) / Math.sqrt(3);
    }

    private static double norm(double a, double b, double c) {
        return Math.sqrt(a * a + b * b + c * c);
    }

    /** The same receiver with velocities that are not late. */
    public ReceiverErrors promptVelocity() {
        return new ReceiverErrors(
                common,
                own,
                levelWhite_m,
                verticalWhite_m,
                levelVelocity_mps,
                verticalVelocity_mps,
                0,
                0);
    }
}
