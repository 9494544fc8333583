package pairdown.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairdown.time.Span;
import pairdown.time.TimeAxis;
import pairdown.words.Figures;
import pairdown.words.Units;

class ClockScaleTest {
    private static final Figures FIGURES = new Figures(Units.MILES, Locale.ENGLISH);

    /** A log's first fix is seldom at a whole second. */
    private static final TimeAxis AXIS = new TimeAxis(Instant.parse("2031-05-14T23:58:30.350Z"));

    private static ClockScale scale(double length_s, int width) {
        return new ClockScale(AXIS, FIGURES, new Span(0, length_s), width);
    }

    @ParameterizedTest
    @CsvSource({"150, 490", "150, 980", "400, 640", "12, 490"})
    void whatStandsAtAnInstantsPlaceIsItsTimeOfDay(double length_s, int width) {
        ClockScale scale = scale(length_s, width);
        int decimals = length_s < 20 ? 1 : 0;
        for (double t_s = 0.65; t_s < length_s; t_s += 10) {
            assertEquals(FIGURES.clock(AXIS, t_s, decimals), scale.said(scale.drawn(t_s)));
        }
    }

    /** Half a unit of the narrow one is half a minute, past midnight too. */
    @Test
    void roundPlacesAreRoundTimes() {
        ClockScale narrow = scale(150, 490);
        assertEquals("23:59:30", narrow.said(Math.ceil(narrow.drawn(0)) + 0.5));
        assertEquals("00:00:30", narrow.said(Math.ceil(narrow.drawn(0)) + 1.5));
        ClockScale wide = scale(150, 980);
        assertEquals("23:58:40", wide.said(10 * Math.ceil(wide.drawn(0) / 10)));
    }
}
