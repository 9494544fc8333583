package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.format.source.LogSource;
import pairdown.track.Track;

/**
 * XML and JSON that make a parser hold what it reads: without end, or with a new name every time.
 * The fix before it is kept, the rest is called damaged in one line, and memory stays where it was.
 */
class HostileTextTest {
    private static final long BYTES = 12L << 20;
    private static final long MOST_GROWTH_BYTES = 6L << 20;
    private static final String LONG = "x".repeat(4000);

    private static final String GPX =
            """
            <gpx version="1.1"><trk><trkseg><trkpt lat="-24.5" lon="15.5">
            <time>2031-05-14T15:02:11Z</time></trkpt>
            """;
    private static final String KML =
            """
            <kml><Document><Placemark><gx:Track><when>2031-05-14T15:02:11Z</when>
            <gx:coord>15.5 -24.5 900</gx:coord></gx:Track></Placemark>
            """;

    private static final String GEOJSON =
            """
            {"type":"FeatureCollection","features":[{"type":"Feature","geometry":
            {"type":"Point","coordinates":[15.5,-24.5]},"properties":{"time":"2031-05-14T15:02:11Z"}},
            """;

    private static final Map<String, LongFunction<String>> JSON_KINDS =
            Map.of(
                    "names", i -> (i > 0 ? ",\"name" : "{\"name") + i + "\":1",
                    "a name", i -> i > 0 ? LONG : "{\"",
                    "a text", i -> i > 0 ? LONG : "{\"type\":\"",
                    "a number", i -> i > 0 ? "1".repeat(4000) : "{\"time\":",
                    "arrays inside arrays", i -> i > 0 ? "[\n" : "{\"time\":",
                    "blanks", i -> " ".repeat(4000));

    private static final Map<String, LongFunction<String>> KINDS =
            Map.ofEntries(
                    Map.entry("elements", i -> "<element" + i + "/>\n"),
                    Map.entry("prefixes", i -> "<prefix" + i + ":e/>\n"),
                    Map.entry("attributes", i -> "<e attribute" + i + "='1'/>\n"),
                    Map.entry("attributes of one element", i -> (i > 0 ? " a" + i + "='1'" : "<e")),
                    Map.entry("entities", i -> (i > 0 ? "&entity" + i + ";" : "<e>")),
                    Map.entry("instructions", i -> "<?target" + i + " ?>\n"),
                    Map.entry("a name", i -> i > 0 ? LONG : "<"),
                    Map.entry("an attribute", i -> i > 0 ? LONG + " " : "<e a='"),
                    Map.entry("a text", i -> i > 0 ? LONG + " " : "<when>"),
                    Map.entry("a comment", i -> i > 0 ? LONG + " " : "<!-- "),
                    Map.entry("an instruction", i -> i > 0 ? LONG + " < " : "<?target "),
                    Map.entry("a raw text", i -> i > 0 ? LONG + " " : "<when><![CDATA["),
                    Map.entry("elements inside elements", i -> "<e>\n"),
                    Map.entry("blanks", i -> i > 0 ? " ".repeat(4000) : "<e "));

    private static Set<String> kinds() {
        return KINDS.keySet();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void gpxIsReadInBoundedMemory(String kind) throws Exception {
        assertBounded(GPX, kind, KINDS);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void kmlIsReadInBoundedMemory(String kind) throws Exception {
        assertBounded(KML, kind, KINDS);
    }

    private static Set<String> jsonKinds() {
        return JSON_KINDS.keySet();
    }

    @ParameterizedTest
    @MethodSource("jsonKinds")
    void geoJsonIsReadInBoundedMemory(String kind) throws Exception {
        assertBounded(GEOJSON, kind, JSON_KINDS);
    }

    private static void assertBounded(
            String begin, String kind, Map<String, LongFunction<String>> kinds) throws Exception {
        LongFunction<String> filler = Objects.requireNonNull(kinds.get(kind));
        List<Long> held = new ArrayList<>();
        held.add(LongLogTest.heldBytes());
        LogSource.Opener log =
                () ->
                        new EndlessLog(
                                begin,
                                filler,
                                "",
                                BYTES,
                                () -> held.add(LongLogTest.heldBytes()),
                                BYTES / 3,
                                BYTES);
        Track track = LogFiles.read(LogSource.of("hostile", log), Optional.empty());
        assertEquals(1, TestLogs.fixes(track));
        String warning = track.report().warnings().get(0);
        assertTrue(warning.contains("damaged at line"), warning);
        for (long bytes : held) {
            long growth = bytes - held.get(0);
            assertTrue(growth < MOST_GROWTH_BYTES, kind + ": grew by " + growth);
        }
    }
}
