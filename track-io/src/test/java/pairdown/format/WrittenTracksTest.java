package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.jenetics.jpx.GPX;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.locationtech.jts.io.geojson.GeoJsonReader;
import pairdown.track.Channel;
import pairdown.track.EllipsoidHeight;
import pairdown.track.Track;

/**
 * Whatever the track, what is written of it keeps its format's published rules, holds the same
 * number of fixes for a reader of others, and reads back equal within the format's resolution.
 */
class WrittenTracksTest {
    private static final int TRIES = 150;

    /** A column may hold the height above the geoid, which is so far from the ellipsoid (EGM96). */
    private static final double MOST_UNDULATION_M = 107;

    /** Half of the last place written, twice where two numbers are added on reading. */
    private record Resolution(double time_s, double place_deg, double height_m, double value) {}

    private static final Map<String, Resolution> FORMATS =
            Map.of(
                    "gpx", new Resolution(1e-6, 6e-10, 1e-4, 5e-5),
                    "kml", new Resolution(1e-6, 6e-10, 5e-5, 5e-5),
                    "geojson", new Resolution(1e-6, 6e-10, 5e-5, 5e-5),
                    "csv", new Resolution(1e-6, 6e-10, 5e-5, 5e-5),
                    "nmea", new Resolution(6e-4, 1e-9, 1e-3, Double.NaN),
                    "igc", new Resolution(6e-4, 8.4e-8, 1, Double.NaN));

    /** Columns of heights and values are of single precision, the rounding of each number read. */
    private static double withRounding(double error, double value) {
        return Double.isNaN(value) ? error : error + 2 * Math.ulp((float) value);
    }

    @Property(tries = TRIES, seed = "3107")
    void everyFormatReadsBackEqual(@ForAll @LongRange(min = 0) long seed) throws Exception {
        Track track = MadeTracks.of(seed);
        for (Map.Entry<String, Resolution> format : FORMATS.entrySet()) {
            Track back = TestLogs.read(TestLogs.written(track, format.getKey()));
            assertEquals(format.getKey(), back.report().format());
            assertSame(track, back, format.getKey(), format.getValue());
        }
    }

    private static void assertSame(Track track, Track back, String format, Resolution r) {
        int[] rows = placed(track);
        int[] again = placed(back);
        assertEquals(rows.length, again.length, format + " " + back.report());
        double start_s =
                track.epoch().orElseThrow().getEpochSecond()
                        - back.epoch().orElseThrow().getEpochSecond();
        for (int i = 0; i < rows.length; i++) {
            int a = rows[i];
            int b = again[i];
            assertEquals(start_s + track.time_s(a), back.time_s(b), r.time_s(), format);
            assertNear(track, a, back, b, Channel.LATITUDE, r.place_deg(), format);
            double turn = back.value(Channel.LONGITUDE, b) - track.value(Channel.LONGITUDE, a);
            assertEquals(0, Math.IEEEremainder(turn, 360), r.place_deg(), format);
            double height_m = EllipsoidHeight.of(track, a);
            double error_m = withRounding(r.height_m(), Math.abs(height_m) + MOST_UNDULATION_M);
            assertEquals(height_m, EllipsoidHeight.of(back, b), error_m, format);
            if (!Double.isNaN(r.value())) {
                for (Channel channel :
                        List.of(Channel.PITCH, Channel.TRACK, Channel.HORIZONTAL_ACCURACY)) {
                    double error = withRounding(r.value(), track.value(channel, a));
                    assertNear(track, a, back, b, channel, error, format);
                }
            }
        }
    }

    private static void assertNear(
            Track a, int rowA, Track b, int rowB, Channel channel, double error, String format) {
        assertEquals(a.value(channel, rowA), b.value(channel, rowB), error, format);
    }

    private static int[] placed(Track track) {
        return IntStream.range(0, track.size()).filter(track::hasPosition).toArray();
    }

    /** jpx 3.1.0 in its strict mode is the other reader. */
    @Property(tries = TRIES, seed = "3108")
    void gpxIsValid(@ForAll @LongRange(min = 0) long seed) throws Exception {
        Track track = MadeTracks.of(seed);
        byte[] written = TestLogs.written(track, "gpx");
        XmlSchemas.requireGpx(written);
        long points =
                GPX.Reader.of(GPX.Reader.Mode.STRICT)
                        .read(new ByteArrayInputStream(written))
                        .tracks()
                        .flatMap(t -> t.segments())
                        .mapToLong(segment -> segment.points().count())
                        .sum();
        assertEquals(TestLogs.fixes(track), points);
    }

    @Property(tries = TRIES, seed = "3109")
    void kmlIsValid(@ForAll @LongRange(min = 0) long seed) throws Exception {
        XmlSchemas.requireKml(TestLogs.written(MadeTracks.of(seed), "kml"));
    }

    /** JTS 1.20.0 is the other reader. */
    @Property(tries = TRIES, seed = "3110")
    void geoJsonIsValid(@ForAll @LongRange(min = 0) long seed) throws Exception {
        Track track = MadeTracks.of(seed);
        byte[] written = TestLogs.written(track, "geojson");
        assertEquals(TestLogs.fixes(track), GeoJsonRules.require(written));
        String text = new String(written, StandardCharsets.UTF_8);
        assertEquals(TestLogs.fixes(track), new GeoJsonReader().read(text).getNumPoints());
    }

    @Property(tries = TRIES, seed = "3111")
    void igcKeepsItsGrammar(@ForAll @LongRange(min = 0) long seed) throws Exception {
        Track track = MadeTracks.of(seed);
        assertEquals(TestLogs.fixes(track), IgcGrammar.require(TestLogs.written(track, "igc")));
    }

    /** RFC 4180 as Commons CSV 1.14.1 reads it; numbers as the JDK does. */
    @Property(tries = TRIES, seed = "3112")
    void csvIsATable(@ForAll @LongRange(min = 0) long seed) throws Exception {
        Track track = MadeTracks.of(seed);
        String text = new String(TestLogs.written(track, "csv"), StandardCharsets.UTF_8);
        List<CSVRecord> records =
                CSVFormat.RFC4180.builder().setHeader().get().parse(new StringReader(text)).stream()
                        .toList();
        assertEquals(track.size(), records.size());
        for (int row = 0; row < records.size(); row++) {
            assertEquals(1 + track.channels().size(), records.get(row).size());
            for (Channel channel : List.of(Channel.LATITUDE, Channel.GROUND_SPEED)) {
                String cell = track.has(channel) ? records.get(row).get(channel.key()) : "";
                double read = cell.isEmpty() ? Double.NaN : Double.parseDouble(cell);
                assertEquals(track.value(channel, row), read, 6e-5);
            }
        }
    }
}
