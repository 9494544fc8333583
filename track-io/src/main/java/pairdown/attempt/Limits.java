package pairdown.attempt;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The team's own limits. What has no default is absent unless typed in, and what needs it is then
 * not judged.
 *
 * @param maximumAirspeed_mps the lead's, calibrated, over its descent
 * @param minimumSeparation_m between participants that are no lead–flyer pair
 */
public record Limits(
        Optional<BreakOff> breakOff,
        OptionalDouble maximumAirspeed_mps,
        ClosureSettings closure,
        OptionalDouble minimumSeparation_m) {
    public static final Limits NONE =
            new Limits(
                    Optional.empty(),
                    OptionalDouble.empty(),
                    ClosureSettings.DEFAULT,
                    OptionalDouble.empty());
}
