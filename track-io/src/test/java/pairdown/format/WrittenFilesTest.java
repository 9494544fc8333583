package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pairdown.track.Channel;
import pairdown.track.EllipsoidHeight;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** Written files keep their format's rules and read back equal within its resolution. */
class WrittenFilesTest {

    @ParameterizedTest
    @CsvSource({
        "gpx, 1e-9, 3e-4, 1e-6",
        "kml, 1e-9, 6e-4, 1e-6",
        "geojson, 1e-9, 6e-4, 1e-6",
        "csv, 1e-9, 1e-4, 1e-6",
        "nmea, 1e-9, 6e-4, 1e-3",
        "igc, 1e-7, 1.01, 1e-3"
    })
    void whatIsWrittenReadsBackEqual(String format, double deg, double m, double s)
            throws Exception {
        for (String log :
                new String[] {
                    "nmea-rtk-10hz.nmea",
                    "igc-over-midnight.igc.gz",
                    "igc-extra-decimals-geoid.igc",
                    "gpx-ride.gpx"
                }) {
            Track track = TestLogs.read(TestLogs.reference(log));
            assertReadsBackEqual(track, format, deg, m, s);
        }
    }

    private static void assertReadsBackEqual(
            Track track, String format, double deg, double m, double s) throws Exception {
        Track back = TestLogs.read(TestLogs.written(track, format));
        String log = track.report().file() + " as " + format;
        assertEquals(format, back.report().format());
        assertEquals(track.size(), back.size(), log);
        assertEquals(0, back.report().skippedCount(), log);
        for (int row = 0; row < track.size(); row++) {
            assertEquals(time_s(track, row), time_s(back, row), s, log);
            assertEquals(
                    track.value(Channel.LATITUDE, row), back.value(Channel.LATITUDE, row), deg);
            double east = track.value(Channel.LONGITUDE, row) - back.value(Channel.LONGITUDE, row);
            assertEquals(0, Math.IEEEremainder(east, 360), deg, log);
            assertEquals(EllipsoidHeight.of(track, row), EllipsoidHeight.of(back, row), m, log);
        }
    }

    /** Each side of the world, no heights or some, below sea level, several flights, a new year. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "33.1234567 -117.7654321 3000",
                "-17.5 179.9995 900",
                "-24.5 15.5 -",
                "31.5 35.4 -390",
                "89.99995 -0.00001 4",
                "0 0.00001 1"
            })
    void oddLogsAreWrittenByThePublishedRulesAndReadBackEqual(String first) throws Exception {
        Track track = TestLogs.read(oddLog(first.split(" ")));
        assertTrue(track.size() > 9, first);
        XmlSchemas.requireGpx(TestLogs.written(track, "gpx"));
        XmlSchemas.requireKml(TestLogs.written(track, "kml"));
        assertEquals(track.size(), GeoJsonRules.require(TestLogs.written(track, "geojson")));
        assertEquals(track.size(), IgcGrammar.require(TestLogs.written(track, "igc")));
        for (String format : new String[] {"gpx", "kml", "geojson", "csv"}) {
            assertReadsBackEqual(track, format, 1e-9, 6e-4, 1e-6);
        }
        assertReadsBackEqual(track, "igc", 1e-7, 1.01, 1e-3);
    }

    /** Two flights of five fixes, the first over the new year, each third height missing. */
    private static String[] oddLog(String... first) {
        List<String> lines = new ArrayList<>(List.of("time,lat,lon,alt msl (m)"));
        for (int i = 0; i < 10; i++) {
            Instant t = Instant.parse("2031-12-31T23:59:58Z").plusSeconds(i < 5 ? i : 9000 + i);
            double lon = Double.parseDouble(first[1]) + i * 1.1e-4;
            String height =
                    first[2].equals("-") || i % 3 == 2
                            ? ""
                            : "" + (Double.parseDouble(first[2]) - i * 1.7);
            lines.add(
                    String.format(
                            Locale.ROOT,
                            "%s,%.7f,%.7f,%s",
                            t,
                            Double.parseDouble(first[0]) + i * 1e-6,
                            lon > 180 ? lon - 360 : lon,
                            height));
        }
        return lines.toArray(String[]::new);
    }

    private static double time_s(Track track, int row) {
        return track.epoch().orElseThrow().getEpochSecond() - 1.4e9 + track.time_s(row);
    }

    /** The rules are those of {@link XmlSchemas}, {@link GeoJsonRules} and {@link IgcGrammar}. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "nmea-rtk-10hz.nmea",
                "pair-a.nmea",
                "igc-bad-line.igc",
                "igc-spec-example.igc",
                "igc-over-midnight.igc.gz",
                "gpx-ride.gpx",
                "kml-track.kml"
            })
    void realLogsAreWrittenByThePublishedRules(String log) throws Exception {
        Track track = TestLogs.read(TestLogs.reference(log));
        XmlSchemas.requireGpx(TestLogs.written(track, "gpx"));
        XmlSchemas.requireKml(TestLogs.written(track, "kml"));
        int fixes = TestLogs.fixes(track);
        assertEquals(fixes, GeoJsonRules.require(TestLogs.written(track, "geojson")));
        assertEquals(fixes, IgcGrammar.require(TestLogs.written(track, "igc")));
    }

    /**
     * The two longitudes of the date line are one place, and the schema allows only one of them.
     */
    @Test
    void theDateLineIsWrittenAsMinus180InGpx() throws Exception {
        Track track = TestLogs.read("time,lat,lon", "2031-05-14T15:02:12Z,-16.8,180");
        String text = new String(TestLogs.written(track, "gpx"), StandardCharsets.UTF_8);
        assertTrue(text.contains("lon=\"-180\""));
    }

    @Test
    void everyChannelSurvivesCsvGpxKmlAndGeoJson() throws Exception {
        Track track =
                TestLogs.read(
                        "time,latitude_deg,longitude_deg,heightEllipsoid_m,velocityDown_mps,pitch_deg",
                        "2031-05-14T15:02:12Z,-24.5,15.5,3600,17.5,-21.5",
                        "2031-05-14T15:02:13Z,-24.6,15.6,3580,17.75,");
        for (String format : new String[] {"csv", "gpx", "kml", "geojson"}) {
            Track back = TestLogs.read(TestLogs.written(track, format));
            assertEquals(17.5, back.value(Channel.VELOCITY_DOWN, 0), format);
            assertEquals(-21.5, back.value(Channel.PITCH, 0), format);
            assertTrue(Double.isNaN(back.value(Channel.PITCH, 1)), format);
        }
    }

    @Test
    void aLogWithoutInstantsIsRefusedWhereTheFormatNeedsThem() throws Exception {
        Track track = TestLogs.read("elapsed (s),IAS (kt)", "0.0,74", "0.1,75");
        assertThrows(UnusableInputException.class, () -> TestLogs.written(track, "gpx"));
        Track back = TestLogs.read(TestLogs.written(track, "csv"));
        assertEquals(2, back.size());
        assertTrue(back.epoch().isEmpty());
    }
}
