package pairdown.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.threeten.extra.scale.UtcRules;

class GpsTimeTest {
    /**
     * Row 1: IS-GPS-200. Row 2: US Naval Observatory page on the week rollover. Row 3: RTKLIB 2.4.3
     * output for 2 April 2005. Row 4: P. Hirose, NavList 2019-03-30. Rows 5 and 6: arithmetic with
     * 18 s. Row 7: gpsd "NMEA Revealed" gives the month; the second assumes no new leap second.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 1980-01-06T00:00:00Z",
        "1024, 0, 1999-08-21T23:59:47Z",
        "1316, 518400, 2005-04-01T23:59:47Z",
        "2048, 0, 2019-04-06T23:59:42Z",
        "2316, 561618, 2024-06-01T12:00:00Z",
        "2446, 259218, 2026-11-25T00:00:00Z",
        "3072, 0, 2038-11-20T23:59:42Z"
    })
    void weekAndSecondsAreThePublishedInstant(int week, double seconds, Instant utc) {
        assertEquals(utc, GpsTime.of(week, seconds).toUtc());
        assertEquals(GpsTime.of(week, seconds), GpsTime.at(utc));
    }

    @Property(tries = 500)
    void anInstantSurvivesTheWayThereAndBack(
            @ForAll @LongRange(min = 315_964_800L, max = 2_500_000_000L) long utcSecond) {
        Instant utc = Instant.ofEpochSecond(utcSecond, 250_000_000);
        assertEquals(utc, GpsTime.at(utc).toUtc());
    }

    @Test
    void theLeapSecondItselfHasItsOwnGpsReading() {
        Instant after = Instant.parse("2017-01-01T00:00:00Z");
        GpsTime g = GpsTime.at(after);
        GpsTime before = new GpsTime(g.week(), g.nanosOfWeek() - 2_000_000_000L);
        assertEquals(Instant.parse("2016-12-31T23:59:59Z"), before.toUtc());
    }

    /** ThreeTen-Extra 1.8.0, {@code UtcRules.system().getTaiOffset(day)}; GPS = TAI − 19 s. */
    @Test
    void everyYearAgreesWithAnIndependentLeapSecondTable() {
        for (int month = 0; month < 47 * 12; month++) {
            LocalDate day = LocalDate.of(1980, 2, 1).plusMonths(month);
            Instant noon = day.atTime(12, 0).toInstant(ZoneOffset.UTC);
            long mjd = day.getLong(java.time.temporal.JulianFields.MODIFIED_JULIAN_DAY);
            assertEquals(
                    UtcRules.system().getTaiOffset(mjd) - 19,
                    LeapSeconds.gpsMinusUtc_s(noon),
                    day.toString());
        }
    }

    /**
     * The list as IERS publishes it and IANA's tzdata 2025b packages it (public domain): NTP
     * seconds since 1900 and TAI − UTC from then on, and after {@code #@} when it expires.
     */
    @Test
    void everyLeapSecondIsTheListsAndSoIsItsExpiry() throws Exception {
        int steps = 0;
        for (String line : leapSecondsList()) {
            List<String> words = Pattern.compile("\\s+").splitAsStream(line.trim()).toList();
            if (line.startsWith("#@")) {
                LocalDate expires = ntp(words.get(1)).atZone(ZoneOffset.UTC).toLocalDate();
                assertEquals(expires, LeapSeconds.EXPIRES);
            } else if (!line.startsWith("#")
                    && ntp(words.get(0)).isAfter(GpsTime.of(0, 0).toUtc())) {
                long ahead_s = Long.parseLong(words.get(1)) - 19;
                assertEquals(ahead_s, LeapSeconds.gpsMinusUtc_s(ntp(words.get(0))), line);
                assertEquals(
                        ahead_s - 1,
                        LeapSeconds.gpsMinusUtc_s(ntp(words.get(0)).minusSeconds(1)),
                        line);
                steps++;
            }
        }
        assertEquals(18, steps);
    }

    private static List<String> leapSecondsList() throws Exception {
        Path file = Path.of(GpsTimeTest.class.getResource("leap-seconds.list").toURI());
        return Files.readAllLines(file);
    }

    private static Instant ntp(String seconds) {
        return Instant.parse("1900-01-01T00:00:00Z").plusSeconds(Long.parseLong(seconds));
    }

    @Test
    void beforeGpsTimeBeganThereIsNoReading() {
        assertThrows(
                IllegalArgumentException.class,
                () -> GpsTime.at(Instant.parse("1980-01-05T23:59:59Z")));
        assertThrows(IllegalArgumentException.class, () -> GpsTime.of(-1, 0));
    }
}
