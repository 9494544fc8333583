package pairdown.atmosphere;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AtmosphereTest {
    private static final double FOOT_M = 0.3048;

    /**
     * ISO 2533 closed form, rows in agreement with fluids 1.0.22 ATMOSPHERE_1976; 1000 m and 11 km
     * also on the MathWorks atmosisa page, 11 km in US Standard Atmosphere 1976, base table.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 288.150, 101325.00, 1.225000, 340.2940",
        "500, 284.900, 95460.84, 1.167269, 338.3695",
        "1000, 281.650, 89874.56, 1.111643, 336.4340",
        "1500, 278.400, 84555.99, 1.058067, 334.4873",
        "2000, 275.150, 79495.20, 1.006490, 332.5292",
        "3000, 268.650, 70108.53, 0.909122, 328.5779",
        "4000, 262.150, 61640.21, 0.819129, 324.5786",
        "5000, 255.650, 54019.89, 0.736116, 320.5294",
        "11000, 216.650, 22632.04, 0.363918, 295.0695",
    })
    void standardAtmosphereAgreesWithThePublishedTable(
            double h_m, double t_K, double p_Pa, double rho, double a_mps) {
        Atmosphere air = Atmosphere.STANDARD;
        assertEquals(t_K, air.temperature_C(h_m) + 273.15, 1e-3);
        assertEquals(p_Pa, air.pressure_hPa(h_m) * 100, 0.05);
        assertEquals(rho, air.density_kgpm3(h_m), 2e-6);
        assertEquals(a_mps, air.speedOfSound_mps(h_m), 1e-3);
    }

    /**
     * US Standard Atmosphere 1976, base of the layer at 20 km: 216.65 K, 54.749 hPa (from memory).
     */
    @Test
    void twentyKilometresIsTheTopOfTheIsothermalLayer() {
        assertEquals(216.65, Atmosphere.STANDARD.temperature_C(20_000) + 273.15, 1e-9);
        assertEquals(54.749, Atmosphere.STANDARD.pressure_hPa(20_000), 1e-3);
    }

    /** Closed form, computed outside the project. */
    @ParameterizedTest
    @CsvSource({
        "95000, 540.337",
        "90000, 988.500",
        "85000, 1457.299",
        "70000, 3012.181",
        "50000, 5574.434",
    })
    void pressureAltitudeAgreesWithTheClosedForm(double p_Pa, double h_m) {
        assertEquals(h_m, Atmosphere.pressureAltitude_m(p_Pa / 100), 0.01);
    }

    @Test
    void highPressureAtSeaLevelIsPressureAltitudeBelowZero() {
        Atmosphere air = new Atmosphere(1018, 0);
        assertEquals(-39.46, Atmosphere.pressureAltitude_m(air.pressure_hPa(0)), 0.01);
    }

    /**
     * Exact dry density altitude of published training questions (rule of thumb answers 3720, 1744,
     * 9070 and 13051 ft), recomputed outside the project.
     */
    @ParameterizedTest
    @CsvSource({"1600, 13, 1738", "5470, 35, 8895", "12000, 0, 13020"})
    void densityAltitudeAgreesWithTrainingQuestions(double pa_ft, double oat_C, double da_ft) {
        double p_hPa = Atmosphere.STANDARD.pressure_hPa(pa_ft * FOOT_M);
        double rho = Atmosphere.densityOf_kgpm3(p_hPa, oat_C);
        assertEquals(da_ft, Atmosphere.densityAltitude_m(rho) / FOOT_M, 1);
    }

    @Test
    void sixDegreesWarmerAt3000FeetIsADensityAltitudeOf3702() {
        double rho = new Atmosphere(1013.25, 6).density_kgpm3(3000 * FOOT_M);
        double oat_C = Atmosphere.STANDARD.temperature_C(3000 * FOOT_M) + 6;
        double p_hPa = Atmosphere.STANDARD.pressure_hPa(3000 * FOOT_M);
        double da_ft =
                Atmosphere.densityAltitude_m(Atmosphere.densityOf_kgpm3(p_hPa, oat_C)) / FOOT_M;
        assertEquals(3702, da_ft, 1);
        // The day's column is warmer below as well, so its pressure at 3000 ft is higher.
        assertEquals(true, rho > Atmosphere.densityOf_kgpm3(p_hPa, oat_C));
    }

    @Property(tries = 200, seed = "20310514")
    void heightIsTheWayBackOfPressure(
            @ForAll @DoubleRange(min = -900, max = 19_900) double h_m,
            @ForAll @DoubleRange(min = 950, max = 1060) double qnh_hPa,
            @ForAll @DoubleRange(min = -40, max = 40) double deviation_C) {
        Atmosphere air = new Atmosphere(qnh_hPa, deviation_C);
        assertEquals(h_m, air.height_m(air.pressure_hPa(h_m)), 1e-6);
    }

    @Test
    void theColumnIsInHydrostaticBalance() {
        Atmosphere air = new Atmosphere(1021, 9);
        for (double h_m = 50; h_m < 19_000; h_m += 333) {
            double dp_Pa = (air.pressure_hPa(h_m + 1) - air.pressure_hPa(h_m - 1)) * 100;
            assertEquals(-air.density_kgpm3(h_m) * 9.80665 * 2, dp_Pa, 1e-4);
        }
    }

    @Test
    void nonsenseIsRefusedByNameAndRange() {
        var qnh = assertThrows(IllegalArgumentException.class, () -> new Atmosphere(29.92, 0));
        assertEquals("QNH 29.92 is outside 800 to 1100 hPa", qnh.getMessage());
        assertThrows(
                IllegalArgumentException.class, () -> Atmosphere.STANDARD.pressure_hPa(25_000));
        assertThrows(
                IllegalArgumentException.class, () -> Atmosphere.STANDARD.pressure_hPa(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Atmosphere.pressureAltitude_m(0));
    }
}
