package pairdown.tail;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.time.Span;

/**
 * One descent as a row of the table a pilot practises from. Airspeeds are calibrated.
 *
 * @param descent the whole of it
 * @param pushOver_s when the path first went down by the push-over angle for good
 * @param pushOverAirspeed_mps airspeed then
 * @param reverse_s when power first went behind idle
 * @param reverseAirspeed_mps airspeed then
 * @param steps power at each step
 * @param timeToStabilise_s from power behind idle (else from the path passing its trigger angle) to
 *     the first instant after which airspeed and sink stay within tolerance for the settling time
 * @param heldLongest_s longest time within both tolerances; absent without target or air data
 * @param held whether that reached the hold asked for
 * @param episodes indices of the episodes in it
 */
public record DescentSequence(
        Span descent,
        OptionalDouble pushOver_s,
        OptionalDouble pushOverAirspeed_mps,
        OptionalDouble reverse_s,
        OptionalDouble reverseAirspeed_mps,
        List<Step> steps,
        OptionalDouble timeToStabilise_s,
        OptionalDouble heldLongest_s,
        Optional<Boolean> held,
        List<Integer> episodes) {
    public DescentSequence {
        steps = List.copyOf(steps);
        episodes = List.copyOf(episodes);
    }

    /**
     * A power step of the descent.
     *
     * @param airspeed_mps calibrated airspeed as it began
     * @param sink_mps down positive, as it began
     * @param retardingCoefficient Tc′ once it had settled
     */
    public record Step(
            PowerChange change,
            OptionalDouble airspeed_mps,
            OptionalDouble sink_mps,
            OptionalDouble retardingCoefficient) {}
}
