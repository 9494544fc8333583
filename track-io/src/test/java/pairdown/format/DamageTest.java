package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pairdown.track.Channel;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** What happens to logs happens here: cut, mixed with rubbish, doubled, shuffled, packed. */
class DamageTest {
    private static final String CSV =
            """
            time,latitude,longitude,altitude msl (m),speed (km/h)
            2031-05-14T15:02:11.0Z,-24.5000000,15.5000000,3600.0,137.0
            2031-05-14T15:02:11.2Z,-24.4999000,15.5001000,3596.5,137.1
            2031-05-14T15:02:11.4Z,-24.4998000,15.5002000,3593.0,137.2
            2031-05-14T15:02:11.6Z,-24.4997000,15.5003000,3589.5,137.3
            """;

    private static final String GEOJSON =
            """
            {"type":"Feature","properties":{"coordinateProperties":{"times":
            ["2031-05-14T15:02:11Z","2031-05-14T15:02:12Z","2031-05-14T15:02:13Z"]}},
            "geometry":{"type":"LineString","coordinates":
            [[15.5,-24.5,3600],[15.5004,-24.4996,3582],[15.5008,-24.4992,3565]]}}
            """;

    @SuppressWarnings("ArrayRecordComponent") // a name beside bytes, never compared
    private record Log(String name, byte[] bytes) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Stream<Log> smallLogs() {
        return Stream.of(
                new Log("csv", CSV.getBytes(StandardCharsets.UTF_8)),
                new Log("geojson", GEOJSON.getBytes(StandardCharsets.UTF_8)),
                reference("igc-spec-example.igc"),
                reference("igc-bad-line.igc"),
                reference("kml-track.kml"),
                reference("nmea-2hz-moving.nmea"),
                new Log("gpx", Arrays.copyOf(TestLogs.reference("gpx-ride.gpx"), 3000)));
    }

    private static Log reference(String name) {
        return new Log(name, TestLogs.reference(name));
    }

    @ParameterizedTest
    @MethodSource("smallLogs")
    void aLogCutAtAnyByteKeepsItsWholeRecordsInOrder(Log log) throws Exception {
        Track whole = TestLogs.read(log.bytes());
        int before = 0;
        for (int length = 0; length < log.bytes().length; length++) {
            try {
                Track cut = TestLogs.read(Arrays.copyOf(log.bytes(), length));
                int fixes = TestLogs.fixes(cut);
                assertTrue(fixes <= TestLogs.fixes(whole), "cut at " + length);
                assertTrue(fixes >= before - 1, "cut at " + length + " lost a record read before");
                before = Math.max(before, fixes);
            } catch (UnusableInputException e) {
                assertTrue(before <= 1, "cut at " + length + ": " + e.getMessage());
            }
        }
    }

    @Test
    void aCutCsvRecordIsNeverReadAsAnotherValue() throws Exception {
        byte[] bytes = CSV.getBytes(StandardCharsets.UTF_8);
        Track whole = TestLogs.read(bytes);
        int body = CSV.indexOf("2031");
        for (int length = body + 62; length < bytes.length; length++) {
            Track cut = TestLogs.read(Arrays.copyOf(bytes, length));
            for (int row = 0; row < cut.size(); row++) {
                assertEquals(
                        whole.value(Channel.GROUND_SPEED, row),
                        cut.value(Channel.GROUND_SPEED, row),
                        "cut at " + length);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("smallLogs")
    void otherLineEndsAndAByteOrderMarkChangeNothing(Log log) throws Exception {
        Track plain = TestLogs.read(log.bytes());
        String text = new String(log.bytes(), StandardCharsets.ISO_8859_1).replace("\r\n", "\n");
        for (String end : new String[] {"\n", "\r\n", "\r"}) {
            byte[] other = text.replace("\n", end).getBytes(StandardCharsets.ISO_8859_1);
            assertSame(plain, TestLogs.read(other));
            byte[] marked = new byte[other.length + 3];
            marked[0] = (byte) 0xef;
            marked[1] = (byte) 0xbb;
            marked[2] = (byte) 0xbf;
            System.arraycopy(other, 0, marked, 3, other.length);
            assertSame(plain, TestLogs.read(marked));
        }
    }

    @ParameterizedTest
    @MethodSource("smallLogs")
    void packingChangesNothing(Log log) throws Exception {
        Track plain = TestLogs.read(log.bytes());
        assertSame(plain, TestLogs.read(TestLogs.gzip(log.bytes())));
        assertSame(plain, TestLogs.read(TestLogs.zip(log.bytes(), "../../etc/evil name.csv")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE", "ISO-8859-1"})
    void otherEncodingsOfCsvAreRead(String charset) throws Exception {
        String text =
                CSV.replace("speed (km/h)", "speed (km/h),temp (°C)")
                        .replaceAll("(137.\\d)", "$1,12");
        Track track = TestLogs.read(text.getBytes(charset));
        assertEquals(4, TestLogs.fixes(track));
        assertTrue(track.has(Channel.OUTSIDE_AIR_TEMPERATURE));
    }

    private static void assertSame(Track a, Track b) {
        assertEquals(a.size(), b.size());
        assertEquals(a.channels(), b.channels());
        assertEquals(a.epoch(), b.epoch());
        for (int row = 0; row < a.size(); row++) {
            assertEquals(a.time_s(row), b.time_s(row));
            for (Channel channel : a.channels()) {
                assertEquals(a.value(channel, row), b.value(channel, row));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("smallLogs")
    void rubbishInTheMiddleNeverBreaksReading(Log log) {
        Random random = new Random(20310514);
        for (int trial = 0; trial < 40; trial++) {
            byte[] damaged = log.bytes().clone();
            int at = random.nextInt(damaged.length);
            byte[] rubbish = new byte[Math.min(200, damaged.length - at)];
            random.nextBytes(rubbish);
            System.arraycopy(rubbish, 0, damaged, at, rubbish.length);
            try {
                TestLogs.read(damaged);
            } catch (UnusableInputException e) {
                assertTrue(String.valueOf(e.getMessage()).startsWith("log"), e.getMessage());
            }
        }
    }

    @Test
    void pointsBehindRubbishInAGpxFileAreStillRead() throws Exception {
        byte[] bytes = TestLogs.reference("gpx-ride.gpx");
        byte[] damaged = bytes.clone();
        for (int i = 0; i < 300; i++) {
            damaged[100_000 + i] = (byte) (i * 37);
        }
        int fixes = TestLogs.fixes(TestLogs.read(damaged));
        assertTrue(fixes >= 845 && fixes < 850, fixes + " of 850");
    }

    @Test
    void aRowTwiceIsOneAndRowsOutOfOrderArePutInOrder() throws Exception {
        String[] lines = CSV.split("\n", -1);
        Track track = TestLogs.read(lines[0], lines[2], lines[1], lines[2], lines[3], lines[4]);
        assertEquals(4, track.size());
        assertEquals(1, track.report().skippedCount());
        assertTrue(track.report().warnings().toString().contains("1 row was out of order"));
    }

    @Test
    void aPositionHeldWhileTheLogMovesIsNotAFix() throws Exception {
        Track track =
                TestLogs.read(
                        "time,lat,lon,speed (m/s)",
                        "2031-05-14T15:02:11Z,-24.5000,15.5,38",
                        "2031-05-14T15:02:12Z,-24.5003,15.5,38",
                        "2031-05-14T15:02:13Z,-24.5003,15.5,38",
                        "2031-05-14T15:02:14Z,-24.5003,15.5,38",
                        "2031-05-14T15:02:15Z,-24.5015,15.5,38");
        assertEquals(3, TestLogs.fixes(track));
        assertEquals(2, track.report().skippedCount());
    }

    @Test
    void aReceiverAtRestMayRepeatItsPosition() throws Exception {
        Track track =
                TestLogs.read(
                        "time,lat,lon,speed (m/s)",
                        "2031-05-14T15:02:11Z,-24.5,15.5,0",
                        "2031-05-14T15:02:12Z,-24.5,15.5,0",
                        "2031-05-14T15:02:13Z,-24.5,15.5,0",
                        "2031-05-14T15:02:14Z,-24.5,15.5,0");
        assertEquals(4, TestLogs.fixes(track));
    }

    @Test
    void impossibleValuesAreCountedWithTheirLine() throws Exception {
        Track track =
                TestLogs.read(
                        "time,lat,lon,alt",
                        "2031-05-14T15:02:11Z,95.2,15.5,100",
                        "2031-05-14T15:02:12Z,0,0,100",
                        "2031-05-14T15:02:13Z,nan,15.5,100",
                        "2031-05-14T15:02:14Z,12.5,15.5,1e9",
                        "2031-05-14T15:02:15Z,12.5,15.5,100",
                        "no time,12.5,15.5,100");
        assertEquals(2, TestLogs.fixes(track));
        assertEquals(5, track.report().skippedCount());
        assertEquals(2, track.report().skipped().get(0).line());
        assertEquals("latitude 95.2 is outside ±90", track.report().skipped().get(0).reason());
    }

    /** A week counter that rolled over writes dates 7168 days in the past. */
    @Test
    void datesOfARolledOverWeekAreMendedByTheFilesOtherDates() throws Exception {
        Track track =
                TestLogs.read(
                        "time,lat,lon",
                        "2011-09-28T15:02:09Z,-24.5,15.5",
                        "2011-09-28T15:02:10Z,-24.5001,15.5",
                        "2031-05-14T15:02:11Z,-24.5002,15.5",
                        "2031-05-14T15:02:12Z,-24.5003,15.5",
                        "2031-05-14T15:02:13Z,-24.5004,15.5");
        assertEquals(5, track.size());
        assertEquals(4.0, track.end_s());
        assertTrue(track.report().warnings().toString().contains("1024 weeks"));
    }

    @Test
    void datesOfAColdStartAreDroppedAndCounted() throws Exception {
        Track track =
                TestLogs.read(
                        "time,lat,lon",
                        "1980-01-06T00:00:01Z,-24.5,15.5",
                        "2031-05-14T15:02:12Z,-24.5003,15.5",
                        "2031-05-14T15:02:13Z,-24.5004,15.5");
        assertEquals(2, track.size());
        assertEquals(1, track.report().skippedCount());
    }

    @Test
    void thousandsOfLossesStayAShortSummary() throws Exception {
        StringBuilder csv = new StringBuilder("time,lat,lon\n2031-05-14T15:02:12Z,1,2\n");
        csv.append("rubbish,1,2\n".repeat(5000));
        Track track = TestLogs.read(csv.toString().getBytes(StandardCharsets.UTF_8));
        assertEquals(5000, track.report().skippedCount());
        assertEquals(20, track.report().skipped().size());
    }

    @Test
    void anEmptyFileAndAWrongOneAreRefusedInOneLine() {
        for (String text :
                new String[] {"", "\n\n", "hello", "<html></html>", "{\"a\":1}", "a,b\n1,2\n"}) {
            UnusableInputException e =
                    assertThrows(
                            UnusableInputException.class,
                            () -> TestLogs.read(text.getBytes(StandardCharsets.UTF_8)),
                            text);
            String message = String.valueOf(e.getMessage());
            assertTrue(message.indexOf('\n') < 0 && message.contains("; "));
        }
    }

    @Test
    void oneFixIsALog() throws Exception {
        assertEquals(1, TestLogs.read("time,lat,lon", "2031-05-14T15:02:12Z,1,2").size());
    }

    @Test
    void anArchiveWithTwoLogsIsRefused() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (String name : new String[] {"a.csv", "b.csv"}) {
                zip.putNextEntry(new ZipEntry(name));
                zip.write(CSV.getBytes(StandardCharsets.UTF_8));
            }
        }
        UnusableInputException e =
                assertThrows(
                        UnusableInputException.class, () -> TestLogs.read(bytes.toByteArray()));
        assertTrue(String.valueOf(e.getMessage()).contains("several logs"));
    }

    /** What lies beside a log to be read by people is no second log. */
    @Test
    void aNoteBesideTheLogInAnArchiveIsNoLog() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (String name : new String[] {"README.txt", "logs/", "logs/a.csv"}) {
                zip.putNextEntry(new ZipEntry(name));
                zip.write((name.endsWith(".csv") ? CSV : "").getBytes(StandardCharsets.UTF_8));
            }
        }
        assertEquals(
                TestLogs.read(CSV.getBytes(StandardCharsets.UTF_8)).size(),
                TestLogs.read(bytes.toByteArray()).size());
    }

    @Test
    void anArchiveWithinAnArchiveIsToBeUnpackedOnce() {
        byte[] inner = TestLogs.gzip(CSV.getBytes(StandardCharsets.UTF_8));
        for (byte[] outer : List.of(TestLogs.gzip(inner), TestLogs.zip(inner, "a.csv.gz"))) {
            UnusableInputException e =
                    assertThrows(UnusableInputException.class, () -> TestLogs.read(outer));
            assertTrue(String.valueOf(e.getMessage()).contains("within an archive"));
        }
    }

    /** 200 MB of zeros in 200 kB: refused before it is unpacked whole. */
    @Test
    void aBombIsRefused() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
            gzip.write(CSV.getBytes(StandardCharsets.UTF_8));
            byte[] zeros = new byte[1 << 20];
            for (int i = 0; i < 200; i++) {
                gzip.write(zeros);
            }
        }
        UnusableInputException e =
                assertTimeoutPreemptively(
                        Duration.ofSeconds(20),
                        () ->
                                assertThrows(
                                        UnusableInputException.class,
                                        () -> TestLogs.read(bytes.toByteArray())));
        assertTrue(String.valueOf(e.getMessage()).contains("times its size"), e.getMessage());
    }

    /** The entities would be a billion letters; nothing outside may be fetched either. */
    @Test
    void entitiesAreNeitherExpandedNorFetched() {
        String bomb =
                """
                <?xml version="1.0"?>
                <!DOCTYPE gpx [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">
                <!ENTITY c SYSTEM "file:///etc/hostname">]>
                <gpx><trk><trkseg><trkpt lat="1" lon="2"><time>&c;</time><ele>&b;</ele></trkpt>
                </trkseg></trk></gpx>
                """;
        assertTimeoutPreemptively(
                Duration.ofSeconds(5),
                () ->
                        assertThrows(
                                UnusableInputException.class,
                                () -> TestLogs.read(bomb.getBytes(StandardCharsets.UTF_8))));
    }
}
