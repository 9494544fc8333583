package pairdown.atmosphere;

/**
 * The day's air: the standard atmosphere to 20 km, shifted to a pressure at mean sea level and by a
 * temperature deviation that is the same at all heights. Dry air in hydrostatic balance.
 *
 * <p>Heights are geopotential metres above mean sea level; below 5 km the geometric height is less
 * than 4 m greater. Valid from −1 km to 20 km. Error: rounding only; how far the day is from this
 * shape is the caller's.
 *
 * <p>Source: ISO 2533 / ICAO Doc 7488/3 (1993), layers 0–11 km (lapse L) and 11–20 km (constant
 * temperature). With a deviation ΔT, T = T₀ + ΔT − L·h and p = QNH·((T₀ + ΔT − L·h)/(T₀ +
 * ΔT))^(g₀/RL) below 11 km.
 *
 * @param qnh_hPa pressure at mean sea level
 * @param temperatureDeviation_C air temperature minus the standard's at the same height
 */
public record Atmosphere(double qnh_hPa, double temperatureDeviation_C) {
    /** T₀, temperature at sea level (K); ISO 2533. */
    public static final double SEA_LEVEL_TEMPERATURE_K = 288.15;

    /** p₀, pressure at sea level (hPa); ISO 2533. */
    public static final double SEA_LEVEL_PRESSURE_HPA = 1013.25;

    /** ρ₀, density at sea level (kg/m³); ISO 2533. */
    public static final double SEA_LEVEL_DENSITY_KGPM3 = 1.225;

    /** g₀, standard gravity (m/s²); ISO 2533. */
    public static final double GRAVITY_MPS2 = 9.80665;

    /** Least height served (m). */
    public static final double LOWEST_M = -1000;

    /** Greatest height served (m). */
    public static final double HIGHEST_M = 20_000;

    /** 0 °C in kelvin. */
    private static final double ZERO_CELSIUS_K = 273.15;

    /** R, gas constant of dry air (J/(kg·K)); ISO 2533. */
    private static final double GAS_CONSTANT = 287.05287;

    /** κ, ratio of specific heats; ISO 2533. */
    private static final double HEAT_RATIO = 1.4;

    /** L, fall of temperature with height below the tropopause (K/m); ISO 2533. */
    private static final double LAPSE_KPM = 0.0065;

    /** Height of the tropopause (m); ISO 2533. */
    private static final double TROPOPAUSE_M = 11_000;

    /** g₀/(R·L), the exponent of pressure below the tropopause. */
    private static final double EXPONENT = GRAVITY_MPS2 / (GAS_CONSTANT * LAPSE_KPM);

    /** The standard atmosphere itself. */
    public static final Atmosphere STANDARD = new Atmosphere(SEA_LEVEL_PRESSURE_HPA, 0);

    /**
     * @throws IllegalArgumentException if the pressure is not between 800 and 1100 hPa or the
     *     deviation is beyond ±60 °C: no weather on Earth, more likely a unit mixed up
     */
    public Atmosphere {
        require(qnh_hPa >= 800 && qnh_hPa <= 1100, "QNH", qnh_hPa, "800 to 1100 hPa");
        require(
                Math.abs(temperatureDeviation_C) <= 60,
                "temperature deviation",
                temperatureDeviation_C,
                "±60 °C");
    }

    /**
     * Air temperature at a height above mean sea level (°C).
     *
     * @throws IllegalArgumentException outside −1 to 20 km
     */
    public double temperature_C(double height_m) {
        return temperature_K(height_m) - ZERO_CELSIUS_K;
    }

    /**
     * Static pressure at a height above mean sea level (hPa).
     *
     * @throws IllegalArgumentException outside −1 to 20 km
     */
    public double pressure_hPa(double height_m) {
        requireHeight(height_m);
        double base_K = SEA_LEVEL_TEMPERATURE_K + temperatureDeviation_C;
        double top_K = temperature_K(Math.min(height_m, TROPOPAUSE_M));
        double p_hPa = qnh_hPa * Math.pow(top_K / base_K, EXPONENT);
        double above_m = Math.max(0, height_m - TROPOPAUSE_M);
        return p_hPa * Math.exp(-GRAVITY_MPS2 * above_m / (GAS_CONSTANT * top_K));
    }

    /**
     * Height above mean sea level at which the static pressure is {@code pressure_hPa} (m): the way
     * back of {@link #pressure_hPa}.
     *
     * @throws IllegalArgumentException for a pressure met only outside −1 to 20 km
     */
    public double height_m(double pressure_hPa) {
        require(pressure_hPa > 0, "pressure", pressure_hPa, "above 0 hPa");
        double base_K = SEA_LEVEL_TEMPERATURE_K + temperatureDeviation_C;
        double height_m = base_K / LAPSE_KPM * (1 - Math.pow(pressure_hPa / qnh_hPa, 1 / EXPONENT));
        if (height_m > TROPOPAUSE_M) {
            double scale_m = GAS_CONSTANT * temperature_K(TROPOPAUSE_M) / GRAVITY_MPS2;
            double ratio = pressure_hPa(TROPOPAUSE_M) / pressure_hPa;
            height_m = TROPOPAUSE_M + scale_m * Math.log(ratio);
        }
        requireHeight(height_m);
        return height_m;
    }

    /**
     * Air density at a height above mean sea level (kg/m³).
     *
     * @throws IllegalArgumentException outside −1 to 20 km
     */
    public double density_kgpm3(double height_m) {
        return densityOf_kgpm3(pressure_hPa(height_m), temperature_C(height_m));
    }

    /**
     * Speed of sound at a height above mean sea level (m/s).
     *
     * @throws IllegalArgumentException outside −1 to 20 km
     */
    public double speedOfSound_mps(double height_m) {
        return speedOfSoundAt_mps(temperature_C(height_m));
    }

    /**
     * Pressure altitude: the height at which the standard atmosphere has this pressure (m),
     * whatever the day's air.
     *
     * @throws IllegalArgumentException for a pressure met only outside −1 to 20 km
     */
    public static double pressureAltitude_m(double pressure_hPa) {
        return STANDARD.height_m(pressure_hPa);
    }

    /** Density of dry air of this pressure and temperature (kg/m³). */
    public static double densityOf_kgpm3(double pressure_hPa, double temperature_C) {
        return pressure_hPa * 100 / (GAS_CONSTANT * (temperature_C + ZERO_CELSIUS_K));
    }

    /** Speed of sound in dry air of this temperature (m/s). */
    public static double speedOfSoundAt_mps(double temperature_C) {
        return Math.sqrt(HEAT_RATIO * GAS_CONSTANT * (temperature_C + ZERO_CELSIUS_K));
    }

    /**
     * Density altitude: the height at which the standard atmosphere has this density (m). Valid
     * below the tropopause.
     *
     * @throws IllegalArgumentException for a density met only outside −1 to 11 km
     */
    public static double densityAltitude_m(double density_kgpm3) {
        require(density_kgpm3 > 0, "density", density_kgpm3, "above 0 kg/m³");
        double ratio = density_kgpm3 / SEA_LEVEL_DENSITY_KGPM3;
        double height_m =
                SEA_LEVEL_TEMPERATURE_K / LAPSE_KPM * (1 - Math.pow(ratio, 1 / (EXPONENT - 1)));
        require(
                height_m >= LOWEST_M && height_m <= TROPOPAUSE_M,
                "density altitude",
                height_m,
                "-1000 to 11000 m");
        return height_m;
    }

    private double temperature_K(double height_m) {
        requireHeight(height_m);
        return SEA_LEVEL_TEMPERATURE_K
                + temperatureDeviation_C
                - LAPSE_KPM * Math.min(height_m, TROPOPAUSE_M);
    }

    private static void requireHeight(double height_m) {
        require(
                height_m >= LOWEST_M && height_m <= HIGHEST_M,
                "height",
                height_m,
                "-1000 to 20000 m");
    }

    private static void require(boolean holds, String name, double value, String range) {
        if (!holds) {
            throw new IllegalArgumentException(name + " " + value + " is outside " + range);
        }
    }
}
