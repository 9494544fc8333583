package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairdown.format.TestLogs.sentence;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import pairdown.track.Channel;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

class SentencesTest {
    /** Sentences and checksums as in gpsd's "NMEA Revealed". */
    @Test
    void publishedSentencesAreRead() throws Exception {
        Track track =
                TestLogs.read(
                        "$GNRMC,001031.00,A,4404.13993,N,12118.86023,W,0.146,,100117,,,A*7B",
                        "$GNGGA,001043.00,4404.14036,N,12118.85961,W,1,12,0.98,1113.0,M,-21.3,M,,*47");
        assertEquals(2, track.size());
        assertEquals(44 + 4.13993 / 60, track.value(Channel.LATITUDE, 0), 1e-12);
        assertEquals(-121 - 18.85961 / 60, track.value(Channel.LONGITUDE, 1), 1e-12);
        assertEquals(1113.0, track.value(Channel.HEIGHT, 1));
        assertEquals(12, track.end_s() - track.start_s());
        assertEquals(Instant.parse("2017-01-10T00:10:31Z"), track.epoch().orElseThrow());
    }

    /** Printed on the web with a checksum that does not fit (22 would). */
    @Test
    void aWrongChecksumIsSkipped() throws Exception {
        Track track =
                TestLogs.read(
                        "$GNRMC,001031.00,A,4404.13993,N,12118.86023,W,0.146,,100117,,,A*7B",
                        "$HEHDT,178.3,T*1E");
        assertEquals(1, track.report().skippedCount());
        assertTrue(track.report().skipped().get(0).reason().contains("checksum"));
    }

    @Test
    void sentencesOfOneEpochMakeOneRow() throws Exception {
        Track track =
                TestLogs.read(
                        sentence("GNGGA,101112.20,4404.1,N,12118.8,W,4,12,0.9,1113.0,M,-21.3,M,,"),
                        sentence("GNRMC,101112.20,A,4404.1,N,12118.8,W,20.0,84.4,100117,,,R"),
                        sentence("GNGST,101112.20,1.0,,,,0.3,0.4,0.7"),
                        sentence("GNVTG,054.7,T,034.4,M,005.5,N,010.2,K"),
                        sentence("GNGSA,A,3,04,05,,09,12,,,24,,,,,2.5,1.3,2.1"));
        assertEquals(1, track.size());
        assertEquals(20 * 1852 / 3600.0, track.value(Channel.GROUND_SPEED, 0), 1e-5);
        assertEquals(84.4, track.value(Channel.TRACK, 0), 1e-4);
        assertEquals(
                Math.sqrt((0.09 + 0.16) / 2), track.value(Channel.HORIZONTAL_ACCURACY, 0), 1e-6);
        assertEquals(0.7, track.value(Channel.VERTICAL_ACCURACY, 0), 1e-6);
        assertEquals(6, track.value(Channel.FIX_TYPE, 0));
    }

    @Test
    void theDateMayComeLateAndMidnightAddsADay() throws Exception {
        Track track =
                TestLogs.read(
                        sentence("GPGGA,235958,4404.1,N,12118.8,W,1,12,0.9,1113.0,M,-21.3,M,,"),
                        sentence("GPGGA,235959,4404.1,N,12118.8,W,1,12,0.9,1113.0,M,-21.3,M,,"),
                        sentence("GPGGA,000000,4404.1,N,12118.8,W,1,12,0.9,1113.0,M,-21.3,M,,"),
                        sentence("GPRMC,000001,A,4404.1,N,12118.8,W,20.0,84.4,150531,,,A"),
                        sentence("GPGGA,000002,4404.1,N,12118.8,W,1,12,0.9,1113.0,M,-21.3,M,,"));
        assertEquals(Instant.parse("2031-05-14T23:59:58Z"), track.epoch().orElseThrow());
        assertEquals(5, track.size());
        assertEquals(4, track.end_s());
    }

    @Test
    void zdaAlsoDates() throws Exception {
        Track track =
                TestLogs.read(
                        sentence("GPZDA,101112,14,05,2031,00,00"),
                        sentence("GPGGA,101112,4404.1,N,12118.8,W,1,12,0.9,1113.0,M,-21.3,M,,"));
        assertEquals(Instant.parse("2031-05-14T10:11:12Z"), track.epoch().orElseThrow());
    }

    @Test
    void withoutAnyDateThereIsNoAbsoluteTime() throws Exception {
        Track track =
                TestLogs.read(
                        sentence("GPGNS,101112,4404.1,N,12118.8,W,AN,12,0.9,1113.0,-21.3,,"),
                        sentence("GPGNS,101113,4404.1,N,12118.8,W,AN,12,0.9,1113.0,-21.3,,"));
        assertTrue(track.epoch().isEmpty());
        assertEquals(1, track.end_s() - track.start_s());
        assertEquals(-21.3, track.value(Channel.GEOID_SEPARATION, 0), 1e-5);
    }

    @Test
    void aLogThatNeverHadAFixIsRefused() {
        assertThrows(
                UnusableInputException.class,
                () -> TestLogs.read(sentence("GPRMC,101112,V,,,,,,,140531,,,N")));
    }
}
