package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.track.Channel;
import pairdown.track.EllipsoidHeight;
import pairdown.track.HeightDatum;
import pairdown.track.Track;
import pairdown.vector.Vec3;

/** Real logs against counts made without this project: see ORIGIN.md beside them. */
class ReferenceLogsTest {
    @ParameterizedTest
    @CsvSource({
        "nmea-rtk-10hz.nmea, nmea, 122, 2020-03-18T13:28:19.600Z, 2020-03-18T13:39:01.500Z, MSL",
        "nmea-2hz-moving.nmea, nmea, 14, 2009-12-09T14:33:06Z, 2009-12-09T15:25:08.500Z, MSL",
        "nmea-cold-start-1980.nmea, nmea, 4, 2008-08-23T08:14:36Z, 2008-08-23T08:14:39Z, MSL",
        "pair-a.nmea, nmea, 115, 2005-04-01T23:59:47Z, 2005-04-02T00:56:47Z, MSL",
        "pair-b.nmea, nmea, 115, 2005-04-01T23:59:47Z, 2005-04-02T00:56:47Z, MSL",
        "igc-spec-example.igc, igc, 9, 2001-07-16T16:02:40Z, 2001-07-16T22:02:48Z, ELLIPSOID",
        "igc-bad-line.igc, igc, 9, 2022-08-05T10:35:32Z, 2022-08-05T13:50:21Z, ELLIPSOID",
        "igc-extra-decimals-geoid.igc, igc, 583, 2020-09-04T16:27:53Z, 2020-09-04T16:37:35Z, MSL",
        "igc-glider-fxa-siu.igc.gz, igc, 9762, 2016-05-04T08:10:42Z, 2016-05-04T19:04:54Z, ELLIPSOID",
        "igc-over-midnight.igc.gz, igc, 6752, 2016-11-08T22:43:17Z, 2016-11-09T04:43:01Z, ELLIPSOID",
        "gpx-ride.gpx, gpx, 850, 2016-02-02T16:58:58Z, 2016-02-02T17:21:16Z, UNKNOWN",
        "kml-track.kml, kml, 7, 2010-05-28T02:02:09Z, 2010-05-28T02:02:56Z, MSL",
        "kml-track-coord-missing.kml, kml, 6, 2010-05-28T02:02:09Z, 2010-05-28T02:02:55Z, MSL"
    })
    void countSpanAndDatumAreTheKnownOnes(
            String file, String format, int fixes, Instant start, Instant end, HeightDatum datum)
            throws Exception {
        Track track = TestLogs.read(TestLogs.reference(file));
        assertEquals(format, track.report().format());
        assertEquals(fixes, TestLogs.fixes(track));
        assertEquals(start, track.axis().orElseThrow().instant(track.start_s()));
        assertEquals(end, track.axis().orElseThrow().instant(track.end_s()));
        assertEquals(datum, track.datum());
    }

    private static Stream<String> everyLog() throws Exception {
        Path folder =
                Path.of(
                        Objects.requireNonNull(ReferenceLogsTest.class.getResource("reference"))
                                .toURI());
        try (Stream<Path> files = Files.list(folder)) {
            List<String> logs =
                    files.map(file -> file.getFileName().toString())
                            .filter(name -> !name.endsWith(".md") && !name.endsWith(".xsd"))
                            .sorted()
                            .toList();
            assertEquals(13, logs.size());
            return logs.stream();
        }
    }

    /** Number, place and height of all fixes, by {@link PlainCounts}. */
    @ParameterizedTest
    @MethodSource("everyLog")
    void everyFixIsTheOneThatAPlainCountFinds(String file) throws Exception {
        byte[] bytes = TestLogs.reference(file);
        Track track = TestLogs.read(bytes);
        List<PlainCounts.Fix> read = new ArrayList<>();
        for (int row = 0; row < track.size(); row++) {
            if (track.hasPosition(row)) {
                read.add(
                        new PlainCounts.Fix(
                                track.value(Channel.LATITUDE, row),
                                track.value(Channel.LONGITUDE, row),
                                track.value(Channel.HEIGHT, row)));
            }
        }
        List<PlainCounts.Fix> counted = new ArrayList<>(PlainCounts.of(file, bytes));
        assertEquals(counted.size(), read.size());
        // By place and not by time: some logs are not in order of time.
        Comparator<PlainCounts.Fix> order =
                Comparator.<PlainCounts.Fix>comparingLong(f -> Math.round(f.latitude_deg() * 1e9))
                        .thenComparingLong(f -> Math.round(f.longitude_deg() * 1e9))
                        .thenComparing(PlainCounts.Fix::height_m);
        read.sort(order);
        counted.sort(order);
        for (int i = 0; i < counted.size(); i++) {
            assertEquals(counted.get(i).latitude_deg(), read.get(i).latitude_deg(), 1e-9);
            assertEquals(counted.get(i).longitude_deg(), read.get(i).longitude_deg(), 1e-9);
            assertEquals(counted.get(i).height_m(), read.get(i).height_m(), 1e-3);
        }
    }

    @Test
    void theSurveyReceiversHeightsSeparationAndFixTypesAreRead() throws Exception {
        Track track = TestLogs.read(TestLogs.reference("nmea-rtk-10hz.nmea"));
        int fixed = 0;
        double fastest_mps = 0;
        for (int row = 0; row < track.size(); row++) {
            assertEquals(-31.442, track.value(Channel.GEOID_SEPARATION, row), 1e-5);
            fixed += track.value(Channel.FIX_TYPE, row) == 6 ? 1 : 0;
            fastest_mps = Math.max(fastest_mps, track.value(Channel.GROUND_SPEED, row));
        }
        assertEquals(18, fixed);
        assertEquals(3.252 * 1852 / 3600, fastest_mps, 1e-5);
        assertEquals(278.161, track.value(Channel.HEIGHT, 0), 1e-4);
    }

    /** First line of the file worked by hand in the check values: 34.041 + 36.478 = 70.519 m. */
    @Test
    void ellipsoidHeightIsMslPlusTheReceiversOwnSeparation() throws Exception {
        Track track = TestLogs.read(TestLogs.reference("pair-a.nmea"));
        assertEquals(35.16087472, track.value(Channel.LATITUDE, 0), 1e-8);
        assertEquals(139.61382834, track.value(Channel.LONGITUDE, 0), 1e-8);
        assertEquals(70.519, EllipsoidHeight.of(track, 0), 1e-4);
    }

    /**
     * Truth from RTKLIB's carrier-phase baseline: east −953.336, north 3196.237, up −6.401 m; mean
     * errors of these single-point logs −0.089, 0.115, 0.140 m, formed by RTKLIB's own output.
     */
    @Test
    void twoRealReceiversStandWhereTheyStand() throws Exception {
        Track a = TestLogs.read(TestLogs.reference("pair-a.nmea"));
        Track b = TestLogs.read(TestLogs.reference("pair-b.nmea"));
        Vec3 sum = new Vec3(0, 0, 0);
        for (int row = 0; row < a.size(); row++) {
            assertEquals(a.time_s(row), b.time_s(row), 1e-9);
            sum = sum.plus(LocalFrame.at(place(b, row)).toEnu(place(a, row)));
        }
        Vec3 mean = sum.times(1.0 / a.size());
        assertEquals(-953.336 - 0.089, mean.x(), 0.005);
        assertEquals(3196.237 + 0.115, mean.y(), 0.005);
        assertEquals(-6.401 + 0.140, mean.z(), 0.005);
    }

    private static Geodetic place(Track track, int row) {
        return Geodetic.ofDegrees(
                track.value(Channel.LATITUDE, row),
                track.value(Channel.LONGITUDE, row),
                EllipsoidHeight.of(track, row));
    }

    /** The 301st B line, decoded by hand: further decimals of LAD and LOD included. */
    @Test
    void furtherDecimalsOfAnIgcPositionAreRead() throws Exception {
        Track track = TestLogs.read(TestLogs.reference("igc-extra-decimals-geoid.igc"));
        assertEquals(48.77291333, track.value(Channel.LATITUDE, 300), 5e-9);
        assertEquals(8.39813167, track.value(Channel.LONGITUDE, 300), 5e-9);
    }

    @Test
    void pressureAndSatelliteHeightsStayApart() throws Exception {
        Track track = TestLogs.read(TestLogs.reference("igc-glider-fxa-siu.igc.gz"));
        double sum = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int row = 0; row < track.size(); row++) {
            double difference =
                    track.value(Channel.HEIGHT, row) - track.value(Channel.PRESSURE_ALTITUDE, row);
            sum += difference;
            least = Math.min(least, difference);
            most = Math.max(most, difference);
        }
        assertEquals(107, least);
        assertEquals(189, most);
        assertEquals(144.4, sum / track.size(), 0.05);
    }

    @Test
    void aDamagedExtensionCostsOnlyItself() throws Exception {
        Track track = TestLogs.read(TestLogs.reference("igc-bad-line.igc"));
        assertEquals(1, track.report().skippedCount());
        assertTrue(track.report().skipped().get(0).reason().contains("ACZ"));
    }

    @Test
    void coldStartDatesLeaveNoTrace() throws Exception {
        Track track = TestLogs.read(TestLogs.reference("nmea-cold-start-1980.nmea"));
        assertEquals(2008, track.epoch().orElseThrow().toString().startsWith("2008") ? 2008 : 0);
        assertEquals(47.093, track.value(Channel.GEOID_SEPARATION, 0), 1e-4);
    }

    @Test
    void aMissingCoordinateIsNeverShiftedSilently() throws Exception {
        Track track = TestLogs.read(TestLogs.reference("kml-track-coord-missing.kml"));
        assertTrue(track.report().warnings().get(0).contains("7 times and 6 coordinates"));
        assertEquals(1, track.report().skippedCount());
    }

    @Test
    void pilotEventsAndTheTaskOfAnIgcLogAreKept() throws Exception {
        Track track = TestLogs.read(TestLogs.reference("igc-spec-example.igc"));
        assertEquals(
                2, track.report().events().stream().filter(e -> e.text().equals("PEV")).count());
        assertTrue(track.has(Channel.HEADING), "the K record's heading");
    }
}
