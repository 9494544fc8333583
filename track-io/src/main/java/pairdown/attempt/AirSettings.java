package pairdown.attempt;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The day's air as typed in.
 *
 * @param qnh_hPa pressure reduced to mean sea level
 * @param temperatureDeviation_C from the standard atmosphere
 * @param wind winds aloft, by rising height
 */
public record AirSettings(
        OptionalDouble qnh_hPa, OptionalDouble temperatureDeviation_C, List<WindAloft> wind) {
    public static final AirSettings NONE =
            new AirSettings(OptionalDouble.empty(), OptionalDouble.empty(), List.of());

    public AirSettings {
        wind = List.copyOf(wind);
    }

    /**
     * A wind typed in.
     *
     * @param height_m above mean sea level
     * @param from_deg true direction it blows from
     */
    public record WindAloft(double height_m, double from_deg, double speed_mps) {}
}
