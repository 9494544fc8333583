package pairdown.air;

import pairdown.atmosphere.Atmosphere;

/**
 * Calibrated and true airspeed, compressible and subsonic. Symbols: qc impact pressure, p static
 * pressure, p₀ and a₀ pressure and speed of sound of the standard atmosphere at sea level, M Mach
 * number:
 *
 * <pre>
 * qc = p₀ ((1 + 0.2 (CAS/a₀)²)^3.5 − 1)     M = √(5 ((qc/p + 1)^(2/7) − 1))     TAS = M a(T)
 * </pre>
 *
 * Valid below Mach 1; rounding is the only error. Source: the isentropic relations for air with a
 * ratio of specific heats of 1.4, as in ISO 2533's companion airspeed definitions.
 */
public final class Airspeed {
    private static final double A0_MPS = Atmosphere.STANDARD.speedOfSound_mps(0);

    private Airspeed() {}

    /**
     * True airspeed (m/s).
     *
     * @param calibrated_mps calibrated airspeed
     * @param pressure_hPa static pressure
     * @param temperature_C air temperature
     */
    public static double true_mps(
            double calibrated_mps, double pressure_hPa, double temperature_C) {
        double qc_hPa = impact(calibrated_mps / A0_MPS) * Atmosphere.SEA_LEVEL_PRESSURE_HPA;
        return mach(qc_hPa / pressure_hPa) * Atmosphere.speedOfSoundAt_mps(temperature_C);
    }

    /**
     * Calibrated airspeed (m/s).
     *
     * @param true_mps true airspeed
     * @param pressure_hPa static pressure
     * @param temperature_C air temperature
     */
    public static double calibrated_mps(
            double true_mps, double pressure_hPa, double temperature_C) {
        double qc_hPa =
                impact(true_mps / Atmosphere.speedOfSoundAt_mps(temperature_C)) * pressure_hPa;
        return mach(qc_hPa / Atmosphere.SEA_LEVEL_PRESSURE_HPA) * A0_MPS;
    }

    /** Impact over static pressure at a Mach number. */
    private static double impact(double mach) {
        return Math.pow(1 + 0.2 * mach * mach, 3.5) - 1;
    }

    /** Mach number at impact over static pressure. */
    private static double mach(double ratio) {
        return Math.sqrt(5 * (Math.pow(ratio + 1, 2.0 / 7) - 1));
    }
}
