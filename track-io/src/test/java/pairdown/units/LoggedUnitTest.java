package pairdown.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LoggedUnitTest {
    /**
     * NIST SP 811 (2008) appendix B.8; 9.80665 m/s² is standard gravity. Temperatures by
     * definition.
     */
    @ParameterizedTest
    @CsvSource({
        "ft, 1000, 304.8",
        "kts, 1, 0.5144444444",
        "km/h, 36, 10",
        "mph, 1, 0.44704",
        "fpm, 1000, 5.08",
        "ft/s, 10, 3.048",
        "degF, 212, 100",
        "K, 273.15, 0",
        "inHg, 29.92126, 1013.25",
        "kPa, 101.325, 1013.25",
        "Pa, 101325, 1013.25",
        "m/s2, 9.80665, 1",
        "rad/s, 3.14159265359, 180",
        "ms, 1500, 1.5",
        "%, 20, 20"
    })
    void aLoggersUnitIsThePublishedOne(String spelling, double value, double base) {
        assertEquals(
                base,
                LoggedUnit.of(spelling).orElseThrow().toBase(value),
                1e-3 * 0.01 + 2e-5 * Math.abs(base));
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void everyUnitPeopleTypeIsKnownToHeaders(Unit unit) {
        if (unit.dimension() != Dimension.MASS) {
            LoggedUnit logged = LoggedUnit.of(unit.symbol()).orElseThrow();
            assertEquals(unit.toBase(7), logged.toBase(7), 1e-12);
            assertEquals(unit.dimension().name(), logged.measure().name());
        }
    }

    @ParameterizedTest
    @CsvSource({"furlong", "V", "bpm", "''"})
    void whatIsNoUnitIsNone(String spelling) {
        assertTrue(LoggedUnit.of(spelling).isEmpty());
    }
}
