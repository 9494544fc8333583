package pairdown.demo.physics;

/**
 * The day's air. The mean wind grows and turns linearly from the field up to {@link #TOP_M} above
 * it and is steady beyond.
 *
 * @param qnh_hPa pressure at mean sea level
 * @param temperatureDeviation_C from the standard atmosphere, alike at all heights
 * @param from_deg where the wind at the field comes from
 * @param field_mps its speed at the field
 * @param aloft_mps its speed at the top
 * @param veer_deg how far it has turned clockwise at the top
 * @param gusts how rough it is
 */
public record AirPlan(
        double qnh_hPa,
        double temperatureDeviation_C,
        double from_deg,
        double field_mps,
        double aloft_mps,
        double veer_deg,
        GustLevel gusts) {
    /** Height above the field at which the wind stops growing (m). */
    public static final double TOP_M = 3700;

    /**
     * Standard air; wind of 4 m/s at the field to 12 m/s aloft, veering 25° (common practice, no
     * published source); smooth.
     */
    public static final AirPlan USUAL = new AirPlan(1013.25, 0, 240, 4, 12, 25, GustLevel.SMOOTH);

    public AirPlan withGusts(GustLevel other) {
        return new AirPlan(
                qnh_hPa, temperatureDeviation_C, from_deg, field_mps, aloft_mps, veer_deg, other);
    }

    public AirPlan withWind(double from, double atField_mps, double atTop_mps, double veer) {
        return new AirPlan(
                qnh_hPa, temperatureDeviation_C, from, atField_mps, atTop_mps, veer, gusts);
    }

    public AirPlan withWeather(double qnh, double deviation_C) {
        return new AirPlan(qnh, deviation_C, from_deg, field_mps, aloft_mps, veer_deg, gusts);
    }
}
