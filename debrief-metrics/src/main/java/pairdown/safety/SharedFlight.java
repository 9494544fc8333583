package pairdown.safety;

import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.time.Span;

/** The stretch in which two bodies' separation counts. */
final class SharedFlight {
    private SharedFlight() {}

    /**
     * From some seconds after the later exit to the first opening, whether or not the logs reach.
     *
     * @param jumper one who leaves the exit aircraft
     * @param other another such, or an aircraft, which has neither exit nor opening
     * @return empty where an exit or opening needed was not found, or nothing is left
     */
    static Optional<Span> of(Body jumper, Body other, SafetySettings settings) {
        OptionalDouble exit_s = jumper.exit_s();
        OptionalDouble opening_s = jumper.opening_s();
        if (exit_s.isEmpty() || opening_s.isEmpty()) {
            return Optional.empty();
        }
        if (other.role().isJumper() && (other.exit_s().isEmpty() || other.opening_s().isEmpty())) {
            return Optional.empty();
        }
        double later_s = Math.max(exit_s.getAsDouble(), other.exit_s().orElse(-1e300));
        double first_s = Math.min(opening_s.getAsDouble(), other.opening_s().orElse(1e300));
        double from_s = later_s + settings.afterExit_s();
        return first_s > from_s ? Optional.of(new Span(from_s, first_s)) : Optional.empty();
    }
}
