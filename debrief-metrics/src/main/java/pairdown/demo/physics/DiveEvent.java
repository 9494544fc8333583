package pairdown.demo.physics;

/**
 * Something planned for the lead's dive.
 *
 * <p>{@link #after_s()} counts from the end of the entry, when the lever first came to where the
 * target is held.
 */
public sealed interface DiveEvent {
    double after_s();

    /**
     * Reverse added beyond what the tail bears, then taken off again.
     *
     * @param coefficient the braking coefficient Tc′ the lever is set for; above 1.2 the tail
     *     blanks
     * @param correction_s until the pilot moves the lever forward
     */
    record OverReverse(double after_s, double coefficient, double correction_s)
            implements DiveEvent {}

    /**
     * The lever goes forward and, after a while, back by as much: a clear move toward reverse that
     * the tail does not mind.
     *
     * @param step_pct how far
     * @param between_s from the forward move to the one back
     */
    record HarmlessPower(double after_s, double step_pct, double between_s) implements DiveEvent {}

    /**
     * Rough air that shakes the aircraft while the lever rests.
     *
     * @param rate_dps root mean square of the pitch and yaw rates it makes
     */
    record Turbulence(double after_s, double duration_s, double rate_dps) implements DiveEvent {}

    /** The rudder is held against the aileron: the aircraft slips. */
    record Sideslip(double after_s, double duration_s, double angle_deg) implements DiveEvent {}
}
