package pairdown.time;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class IsoTimeTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2031-05-14T15:02:11Z|2031-05-14T15:02:11Z",
                "2031-05-14T15:02:11.350Z|2031-05-14T15:02:11.350Z",
                "2031-05-14 15:02:11,35|2031-05-14T15:02:11.350Z",
                "2031-05-14T15:02Z|2031-05-14T15:02:00Z",
                "20310514T150211Z|2031-05-14T15:02:11Z",
                "2031/05/14 15:02:11|2031-05-14T15:02:11Z",
                "2031-05-14T15:02:11+02:00|2031-05-14T13:02:11Z",
                "2031-05-14T15:02:11-0330|2031-05-14T18:32:11Z",
                "2031-05-14T15:02:11 UTC|2031-05-14T15:02:11Z",
                "2031-05-14|2031-05-14T00:00:00Z",
                "2032-02-29T00:00:00Z|2032-02-29T00:00:00Z",
                "2016-12-31T23:59:60Z|2017-01-01T00:00:00Z"
            })
    void theWaysLogsWriteATimeAreRead(String text, Instant expected) {
        assertEquals(expected, instant(IsoTime.utc_ns(text)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "15:02",
                "2031-13-01T00:00:00Z",
                "2031-02-29T00:00:00Z",
                "2031-05-14T25:00:00Z",
                "2031-05-14T15:60:00Z",
                "2031-05-14T15:02:11.Z",
                "2031-05-14T15:02:11Zx",
                "2031-05-14T15:02:11+99:00",
                "2031-05-14T15:02:1",
                "0000-00-00T00:00:00Z",
                "2031-05-14X15:02:11Z"
            })
    void whatIsNoTimeIsRefused(String text) {
        assertEquals(IsoTime.NONE, IsoTime.utc_ns(text));
    }

    @Property(tries = 1000)
    void whateverJavaWritesIsReadBack(
            @ForAll @LongRange(min = 0, max = 7_000_000_000L) long second,
            @ForAll @LongRange(min = 0, max = 999_999_999) long nano) {
        Instant written = Instant.ofEpochSecond(second, nano).truncatedTo(ChronoUnit.MICROS);
        assertEquals(written, instant(IsoTime.utc_ns(written.toString())));
    }

    private static Instant instant(long ns) {
        return Instant.ofEpochSecond(
                Math.floorDiv(ns, 1_000_000_000L), Math.floorMod(ns, 1_000_000_000L));
    }
}
