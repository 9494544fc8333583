package pairdown.demo.truth;

import java.util.Map;
import java.util.OptionalDouble;
import pairdown.attempt.Role;
import pairdown.track.Channel;

/**
 * One participant as it truly was.
 *
 * @param motion of the reference point: an aircraft's centre of gravity, a flyer's logger
 * @param systems true values without noise or lag, a value a row of {@code motion}: attitude,
 *     rates, loads, controls, power and air data of an aircraft; for a flyer what its logger feels
 * @param mass_kg all-up
 * @param exit_s when a jumper left the exit aircraft
 * @param opening_s when a jumper's canopy began to brake: the start of the opening's deceleration,
 *     not the pull, which comes before it
 */
public record TrueBody(
        String id,
        Role role,
        TrueMotion motion,
        Map<Channel, double[]> systems,
        double mass_kg,
        OptionalDouble exit_s,
        OptionalDouble opening_s) {
    public TrueBody {
        systems = Map.copyOf(systems);
    }
}
