package pairdown.safety;

import java.util.OptionalDouble;
import pairdown.attempt.Role;
import pairdown.motion.Trajectory;

/**
 * One participant as far as limits concern it.
 *
 * @param clockSigma_s one standard deviation of its clock's offset
 * @param exit_s when it left the exit aircraft, where it did and that was found
 * @param opening_s when its canopy opened, likewise
 */
public record Body(
        String id,
        Role role,
        Trajectory trajectory,
        double clockSigma_s,
        OptionalDouble exit_s,
        OptionalDouble opening_s) {}
