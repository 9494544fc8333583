package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import pairdown.attempt.AirspeedKind;
import pairdown.demo.truth.TrueAir;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.units.Unit;
import pairdown.vector.Vec3;

class AirTest {
    private static final String SEED = "20310514";
    private static final Geodetic FIELD = Geodetic.ofDegrees(-30.6215, 127.4372, 160);
    private static final Air STANDARD = air(AirPlan.USUAL);

    private static Air air(AirPlan plan) {
        return new Air(plan, FIELD, new Random(5));
    }

    private static double ofFeet(double ft) {
        return Unit.FOOT.toBase(ft);
    }

    @Test
    void theStandardAtmosphereIsThatOfTheTables() {
        // ISO 2533 / ICAO Doc 7488, closed form, rows as printed by the `fluids` library 1.0.22:
        // height (m), temperature (K), pressure (Pa), density (kg/m³).
        double[][] rows = {
            {0, 288.150, 101325.00, 1.225000},
            {1000, 281.650, 89874.56, 1.111643},
            {1500, 278.400, 84555.99, 1.058067},
            {3000, 268.650, 70108.53, 0.909122},
            {4000, 262.150, 61640.21, 0.819129},
            {5000, 255.650, 54019.89, 0.736116},
        };
        for (double[] row : rows) {
            // Written as floats in steps of 10 m: 0.1 Pa and 5e-6 kg/m³ cover both.
            assertEquals(row[1], STANDARD.temperature_C(row[0]) + 273.15, 1e-3);
            assertEquals(row[2], 100 * STANDARD.pressure_hPa(row[0]), 0.1);
            assertEquals(row[3], STANDARD.density_kgpm3(row[0]), 5e-6);
        }
    }

    @Test
    void betweenTheRowsOfItsTableTheAirIsTheFormulas() {
        TrueAir truth = air(AirPlan.USUAL.withWeather(1016, 4)).truth();
        Air table = air(AirPlan.USUAL.withWeather(1016, 4));
        for (double h_m = -50; h_m < 4500; h_m += 13.7) {
            assertEquals(truth.atmosphere().pressure_hPa(h_m), table.pressure_hPa(h_m), 1e-3);
            assertEquals(truth.atmosphere().density_kgpm3(h_m), table.density_kgpm3(h_m), 1e-6);
            assertEquals(truth.atmosphere().temperature_C(h_m), table.temperature_C(h_m), 1e-4);
        }
    }

    @Test
    void trueAirspeedIsTheTradesRatioToEquivalent() {
        // TAS/EAS = 1/√σ: 1.077 at 5,000 ft, 1.164 at 10,000 ft, 1.201 at 12,000 ft standard.
        double[][] rows = {{5000, 1.077}, {10000, 1.164}, {12000, 1.201}};
        for (double[] row : rows) {
            double sigma = STANDARD.density_kgpm3(ofFeet(row[0])) / 1.225;
            assertEquals(row[1], 1 / Math.sqrt(sigma), 6e-4);
        }
        // 20 °C warmer at the same pressure: 1.206.
        double cold_K = STANDARD.temperature_C(ofFeet(10000)) + 273.15;
        double sigma = STANDARD.density_kgpm3(ofFeet(10000)) / 1.225 * cold_K / (cold_K + 20);
        assertEquals(1.206, 1 / Math.sqrt(sigma), 6e-4);
    }

    @Test
    void aCalibratedTargetIsFlownFasterThroughThinAir() {
        // 85 mph calibrated at 12,000 ft standard: 88.638 kt true (compressible, `fluids`).
        double true_mps =
                STANDARD.true_mps(AirspeedKind.CALIBRATED, Unit.MILE_PER_HOUR.toBase(85), 3657.6);
        assertEquals(88.638, Unit.KNOT.fromBase(true_mps), 0.02);
        assertEquals(37.998, STANDARD.true_mps(AirspeedKind.TRUE, 37.998, 3657.6));
    }

    @Property(tries = 50, seed = SEED)
    void calibratedAndTrueAirspeedsComeBack(
            @ForAll @DoubleRange(min = 20, max = 80) double calibrated_mps,
            @ForAll @DoubleRange(min = 0, max = 4500) double height_m) {
        double true_mps = STANDARD.true_mps(AirspeedKind.CALIBRATED, calibrated_mps, height_m);
        assertEquals(calibrated_mps, STANDARD.calibrated_mps(true_mps, height_m), 1e-4);
    }

    @Test
    void theWindGrowsAndVeersUpToItsTop() {
        Air air = air(AirPlan.USUAL.withWind(240, 4, 12, 25));
        Vec3 low = air.meanWind_mps(air.field_m());
        // From 240° is toward 60°. The table's rows of 10 m round off the bend at the field.
        assertEquals(4, low.norm(), 0.005);
        assertEquals(60, Math.toDegrees(Route.course_rad(low)), 0.02);
        Vec3 middle = air.meanWind_mps(air.field_m() + AirPlan.TOP_M / 2);
        assertEquals(8, middle.norm(), 1e-3);
        assertEquals(72.5, Math.toDegrees(Route.course_rad(middle)), 0.02);
        for (double over_m : new double[] {0, 500, 2000}) {
            Vec3 high = air.meanWind_mps(air.field_m() + AirPlan.TOP_M + over_m);
            assertEquals(12, high.norm(), 0.02);
            assertEquals(85, Math.toDegrees(Route.course_rad(high)), 0.1);
        }
    }

    @Test
    void theGroundFallsAwayFromTheFieldsPlane() {
        // 10 km out a flat map is 7.8 m off; on the ellipsoid by the exact way through
        // earth-centred coordinates.
        LocalFrame frame = LocalFrame.at(FIELD);
        for (Vec3 at_m :
                new Vec3[] {
                    new Vec3(10_000, 0, 0), new Vec3(0, 10_000, 0), new Vec3(-4e3, 3e3, 900)
                }) {
            double exact_m = frame.toGeodetic(at_m).height_m() - FIELD.height_m();
            assertEquals(exact_m, STANDARD.aboveGround_m(at_m), 0.05);
        }
        assertEquals(7.8, STANDARD.aboveGround_m(new Vec3(10_000, 0, 0)), 0.06);
    }

    @Test
    void heightsAreAboveSeaLevelByTheGeoid() {
        assertEquals(160 - STANDARD.truth().undulation_m(), STANDARD.height_m(Vec3.ZERO), 1e-9);
        assertTrue(STANDARD.truth().undulation_m() < -15); // south of Australia: some −20 m
    }
}
