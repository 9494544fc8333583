package pairdown.pair;

import java.util.OptionalDouble;

/**
 * The height above the break-off height as seconds of sink: (height − break-off height) / sink, at
 * the sink around that instant (2 s mean).
 *
 * @param atExit_s seconds left at the exit, at the sink of the target or, with none, that of the
 *     first match; empty where neither is known
 * @param atGateIn_s where the gap first came inside the gate
 * @param atFirstMatch_s where the first matched window began
 * @param atClosest_s at the closest approach
 * @param atLeaving_s where the flyer left its last matched window
 * @param sigma_s one standard deviation of such a figure: the height's over the sink
 */
public record HeightBudget(
        OptionalDouble atExit_s,
        OptionalDouble atGateIn_s,
        OptionalDouble atFirstMatch_s,
        OptionalDouble atClosest_s,
        OptionalDouble atLeaving_s,
        OptionalDouble sigma_s) {
    /**
     * Seconds left above a height.
     *
     * @return empty unless sinking
     */
    public static OptionalDouble secondsLeft_s(double above_m, double sink_mps) {
        return sink_mps > 0 ? OptionalDouble.of(above_m / sink_mps) : OptionalDouble.empty();
    }
}
