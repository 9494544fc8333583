package pairdown.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.HashSet;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairdown.time.TimeAxis;
import pairdown.units.Estimate;

class FiguresTest {
    private static final Figures MILES = new Figures(Units.MILES, Locale.ENGLISH);
    private static final Figures METRIC = new Figures(Units.METRIC, Locale.ENGLISH);

    /** NIST SP 811 (2008) B.8: 1 mi/h = 0.447 04 m/s, 1 ft/min = 0.005 08 m/s. */
    @Test
    void theTargetPointReadsAsItIsSpoken() {
        assertEquals("85.0 mph", MILES.text(Measure.AIRSPEED, 85 * 0.44704));
        assertEquals("3500 ft/min", MILES.text(Measure.SINK, 3500 * 0.00508));
        assertEquals("17.8 m/s", METRIC.text(Measure.SINK, 17.78));
    }

    @Test
    void whatIsMissingIsNeverZero() {
        assertEquals("–", MILES.text(Measure.DISTANCE, Double.NaN));
        assertEquals("–", MILES.text(Measure.DISTANCE, OptionalDouble.empty()));
    }

    @Test
    void anEstimateCarriesItsSigma() {
        assertEquals("12.1 ± 0.9 m", METRIC.text(Measure.DISTANCE, new Estimate(12.1, 0.9)));
    }

    @Test
    void theDecimalSignFollowsTheLocale() {
        Figures german = new Figures(Units.METRIC, Locale.GERMANY);
        assertEquals("12,1 m", german.text(Measure.DISTANCE, 12.1));
    }

    @Test
    void oneInstantReadsAsTimeOfDay() {
        TimeAxis axis = new TimeAxis(Instant.parse("2031-05-14T23:59:59.250Z"));
        assertEquals("23:59:59.250", MILES.clock(axis, 0));
        assertEquals("00:00:00.750", MILES.clock(axis, 1.5));
        assertEquals("23:59:58.250", MILES.clock(axis, -1));
    }

    /** Rounded, not cut, and over midnight too. */
    @Test
    void anInstantHasAsManyDecimalsAsItsUncertaintyLeaves() {
        TimeAxis axis = new TimeAxis(Instant.parse("2031-05-14T23:59:59.250Z"));
        assertEquals("23:59:59.3", MILES.clock(axis, 0, 1));
        assertEquals("23:59:59", MILES.clock(axis, 0, 0));
        assertEquals("00:00:00", MILES.clock(axis, 0.3, 0));
        assertEquals("00:00:00.0", MILES.clock(axis, 0.7, 1));
    }

    @Test
    void onePressGoesRoundAllReadyMadeSets() {
        Set<Units> seen = new HashSet<>();
        Units units = Units.MILES;
        do {
            seen.add(units);
            units = units.next();
        } while (!units.equals(Units.MILES));
        assertEquals(Set.of(Units.MILES, Units.KNOTS, Units.METRIC), seen);
        assertEquals(Units.MILES, Units.MILES.withNextAirspeed().next());
    }

    @Test
    void everyKindOfUnitSwitchesAloneAndComesBack() {
        Units u = Units.METRIC;
        assertNotEquals(u.airspeed(), u.withNextAirspeed().airspeed());
        assertEquals(u, u.withOtherSink().withOtherSink());
        assertEquals(u, u.withOtherHeight().withOtherHeight());
        assertEquals(u, u.withOtherDistance().withOtherDistance());
        assertEquals(
                u, u.withNextAirspeed().withNextAirspeed().withNextAirspeed().withNextAirspeed());
    }

    @Property(tries = 300, seed = "20310514")
    void aNumberIsWithinHalfItsLastDecimal(
            @ForAll @DoubleRange(min = -99999, max = 99999) double value,
            @ForAll @IntRange(min = 0, max = 3) int decimals) {
        String text = new Line().addFixed(value, decimals, '.').toString().replace(Line.MINUS, '-');
        assertTrue(text.matches("-?\\d+" + (decimals > 0 ? "\\.\\d{" + decimals + "}" : "")), text);
        assertEquals(value, Double.parseDouble(text), 0.5 * Math.pow(10, -decimals) + 1e-9);
    }

    @Property(tries = 200, seed = "20310514")
    void shownAndBackIsTheSame(
            @ForAll Measure measure, @ForAll @DoubleRange(min = -500, max = 5000) double value) {
        assertEquals(
                value, MILES.fromShown(measure, MILES.shown(measure, value)), 1e-9 * 5000 + 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"0.26, +0.3", "0.04, 0.0", "-0.04, 0.0", "-0.06, -0.1", "0, 0.0"})
    void aDirectionIsSaidUnlessItRoundsToNothing(double closure_mps, String shown) {
        Figures figures = new Figures(Units.METRIC, Locale.ENGLISH);
        String text = figures.addSigned(new Line(), Measure.CLOSURE, closure_mps).toString();
        assertEquals(shown.replace('-', Line.MINUS), text);
    }
}
