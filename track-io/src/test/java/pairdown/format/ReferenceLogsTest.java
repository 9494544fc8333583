package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

    /**
     * Valid epochs counted by a pattern over the text: distinct times of RMC A and GGA with a fix.
     */
    @ParameterizedTest
    @CsvSource({
        "nmea-rtk-10hz.nmea",
        "nmea-2hz-moving.nmea",
        "nmea-cold-start-1980.nmea",
        "pair-a.nmea"
    })
    void everyValidEpochIsAFix(String file) throws Exception {
        byte[] bytes = TestLogs.reference(file);
        Matcher valid =
                Pattern.compile(
                                "\\$..(?:RMC,([0-9.]+),A|GGA,([0-9.]+),[^,]+,[NS],[^,]+,[EW],[1-5])")
                        .matcher(new String(bytes, StandardCharsets.ISO_8859_1));
        Set<String> epochs = new TreeSet<>();
        while (valid.find()) {
            epochs.add(valid.group(1) == null ? valid.group(2) : valid.group(1));
        }
        assertEquals(epochs.size(), TestLogs.fixes(TestLogs.read(bytes)));
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
