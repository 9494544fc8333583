package pairdown.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import pairdown.time.TimeAxis;
import pairdown.words.Figures;
import pairdown.words.Units;
import pairdown.words.Words;

class FactsTest {
    private static final Facts FACTS =
            new Facts(
                    new TimeAxis(Instant.parse("2031-05-14T15:00:00.250Z")),
                    Words.of(Locale.ENGLISH),
                    new Figures(Units.MILES, Locale.ENGLISH));

    /** ± 0.949 s reads as 0.9 and leaves a tenth its sense, ± 0.951 s reads as a second. */
    @Test
    void anInstantAndItsSigmaHaveTheSameDigits() {
        assertEquals("15:00:05.3", FACTS.clock(5, 0.949, "/t", "/s").shown());
        assertEquals("0.9 s", FACTS.clockSigma(0.949, "/s").text());
        assertEquals("15:00:05", FACTS.clock(5, 0.951, "/t", "/s").shown());
        assertEquals("1\u00a0s", FACTS.clockSigma(0.951, "/s").text());
    }

    @Test
    void aProbabilityIsNeverNothing() {
        assertEquals("under 0.01", FACTS.probability(0.0004, "/p").shown());
        assertEquals("0.01", FACTS.probability(0.0051, "/p").shown());
        assertEquals("0.13", FACTS.probability(0.1333, "/p").shown());
    }
}
