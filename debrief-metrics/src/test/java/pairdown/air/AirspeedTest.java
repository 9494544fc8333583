package pairdown.air;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairdown.atmosphere.Atmosphere;
import pairdown.units.Unit;

class AirspeedTest {
    /**
     * Compressible formula in closed form with ISO 2533 constants, evaluated outside this project
     * (a script in double precision); 0.02 kt.
     */
    @ParameterizedTest
    @CsvSource({
        "100, 10000, NaN, 116.218",
        "120, 5000, NaN, 129.168",
        "73.862, 12000, NaN, 88.638",
        "121.66, 12000, 10, 150.861",
        "200, 20000, NaN, 270.532",
        "110, 7000, 16, 125.31"
    })
    void trueAirspeedAgreesWithTheTable(
            double cas_kt, double pressureAltitude_ft, double oat_C, double tas_kt) {
        assertEquals(tas_kt, trueKnots(cas_kt, pressureAltitude_ft, oat_C), 0.02);
    }

    /** CRP-1 flight computer reading on a UK training site: 126 kt, to a knot. */
    @org.junit.jupiter.api.Test
    void theFlightComputersReadingIsMet() {
        assertEquals(126, trueKnots(110, 7000, 16), 1);
    }

    private static double trueKnots(double cas_kt, double pressureAltitude_ft, double oat_C) {
        double height_m = Unit.FOOT.toBase(pressureAltitude_ft);
        double t_C = Double.isNaN(oat_C) ? Atmosphere.STANDARD.temperature_C(height_m) : oat_C;
        return Unit.KNOT.fromBase(
                Airspeed.true_mps(
                        Unit.KNOT.toBase(cas_kt), Atmosphere.STANDARD.pressure_hPa(height_m), t_C));
    }

    @Property(seed = "20310514")
    void thereAndBackIsTheSame(
            @ForAll @DoubleRange(min = 5, max = 150) double cas,
            @ForAll @DoubleRange(min = -100, max = 9000) double height_m) {
        double p = Atmosphere.STANDARD.pressure_hPa(height_m);
        double t = Atmosphere.STANDARD.temperature_C(height_m);
        assertEquals(cas, Airspeed.calibrated_mps(Airspeed.true_mps(cas, p, t), p, t), 1e-8);
    }
}
