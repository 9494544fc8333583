package pairdown.safety;

import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.time.Span;

/** The stretch in which two bodies' separation counts. */
final class SharedFlight {
    private SharedFlight() {}

    /**
     * From some seconds after the later exit to the first opening, as far as both logs reach.
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
        double to_s =
                Math.min(
                        first_s, Math.min(jumper.trajectory().end_s(), other.trajectory().end_s()));
        double start_s =
                Math.max(
                        from_s,
                        Math.max(jumper.trajectory().start_s(), other.trajectory().start_s()));
        return to_s > start_s ? Optional.of(new Span(start_s, to_s)) : Optional.empty();
    }
}
