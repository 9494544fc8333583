package pairdown.season;

import java.util.OptionalDouble;
import pairdown.attempt.AirspeedKind;

/**
 * A stretch of steady flight of one machine.
 *
 * @param machine the participant's id
 * @param role its role's key
 * @param configuration what shape it was in, as far as its log tells: flap and power
 * @param start_s on its attempt's axis
 * @param calibratedAirspeed_mps mean
 * @param trueAirspeed_mps mean
 * @param sink_mps mean, down positive, corrected for the mean change of speed: V (sin γ − V̇/g)
 * @param mass_kg all-up, where given
 */
public record SteadySegment(
        String machine,
        String role,
        String configuration,
        double start_s,
        double duration_s,
        double calibratedAirspeed_mps,
        double trueAirspeed_mps,
        double sink_mps,
        OptionalDouble mass_kg) {
    boolean inReverse() {
        return configuration.endsWith(Configurations.REVERSE);
    }

    double airspeed_mps(AirspeedKind kind) {
        return kind == AirspeedKind.TRUE ? trueAirspeed_mps : calibratedAirspeed_mps;
    }
}
