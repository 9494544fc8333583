package pairdown.attempt;

/**
 * The speeds both machines are to meet.
 *
 * @param airspeed_mps of the kind {@code kind}
 * @param sink_mps down positive
 * @param airspeedTolerance_mps either way
 * @param sinkTolerance_mps either way
 * @param hold_s how long both must be within tolerance
 */
public record Target(
        double airspeed_mps,
        AirspeedKind kind,
        double sink_mps,
        double airspeedTolerance_mps,
        double sinkTolerance_mps,
        double hold_s) {}
