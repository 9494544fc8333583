package pairdown.air;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairdown.atmosphere.Atmosphere;
import pairdown.units.Unit;

/**
 * Figures that the trade works with, by hand from their definitions: common practice, no published
 * source. Densities are those of the standard atmosphere (ICAO Doc 7488).
 */
class TradeFiguresTest {
    private static final double TEN_THOUSAND_FT_M = Unit.FOOT.toBase(10_000);

    @Test
    void eightyFiveMilesAnHourWithThreeAndAHalfThousandFeetAMinuteIsTwentyEightDegreesDown() {
        double v_mps = Unit.MILE_PER_HOUR.toBase(85);
        double sink_mps = Unit.FOOT_PER_MINUTE.toBase(3500);
        assertEquals(37.998, v_mps, 5e-4);
        assertEquals(17.780, sink_mps, 5e-4);
        double path_rad = Math.asin(sink_mps / v_mps);
        assertEquals(27.90, Math.toDegrees(path_rad), 5e-3);
        assertEquals(1.889, 1 / Math.tan(path_rad), 5e-4);
    }

    /** At a pressure height of 10,000 ft, standard and 20 °C warmer. */
    @ParameterizedTest
    @CsvSource({"0, 1.1637, 10000", "20, 1.2063, 12270"})
    void trueOverCalibratedAirspeedIsTheRootOfTheDensities(
            double warmer_C, double ratio, double densityHeight_ft) {
        double pressure_hPa = Atmosphere.STANDARD.pressure_hPa(TEN_THOUSAND_FT_M);
        double temperature_C = Atmosphere.STANDARD.temperature_C(TEN_THOUSAND_FT_M) + warmer_C;
        double density_kgpm3 = Atmosphere.densityOf_kgpm3(pressure_hPa, temperature_C);
        assertEquals(ratio, Math.sqrt(Atmosphere.SEA_LEVEL_DENSITY_KGPM3 / density_kgpm3), 1e-4);
        assertEquals(
                densityHeight_ft,
                Unit.FOOT.fromBase(Atmosphere.densityAltitude_m(density_kgpm3)),
                5);
        // Compressibility is under half a percent at these speeds.
        double true_mps = Airspeed.true_mps(38, pressure_hPa, temperature_C);
        assertEquals(ratio, true_mps / 38, 0.005 * ratio);
    }

    @Test
    void densityAtTenThousandFeet() {
        assertEquals(0.9046, Atmosphere.STANDARD.density_kgpm3(TEN_THOUSAND_FT_M), 5e-5);
    }

    /** Calibrated 85 mph: true airspeed and path at two heights, sinking 3,500 ft/min. */
    @ParameterizedTest
    @CsvSource({"10000, 44.2, 23.7", "12000, 45.6, 22.9"})
    void eightyFiveCalibratedIsFasterAndFlatterAtHeight(
            double height_ft, double true_mps, double path_deg) {
        double height_m = Unit.FOOT.toBase(height_ft);
        double v_mps =
                Airspeed.true_mps(
                        Unit.MILE_PER_HOUR.toBase(85),
                        Atmosphere.STANDARD.pressure_hPa(height_m),
                        Atmosphere.STANDARD.temperature_C(height_m));
        assertEquals(true_mps, v_mps, 0.05);
        double sink_mps = Unit.FOOT_PER_MINUTE.toBase(3500);
        assertEquals(path_deg, Math.toDegrees(Math.asin(sink_mps / v_mps)), 0.05);
    }
}
