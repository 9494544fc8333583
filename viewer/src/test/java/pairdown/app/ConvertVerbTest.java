package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConvertVerbTest {
    @TempDir private Path folder = Path.of("");
    private Path log = Path.of("");

    @BeforeEach
    void writeALog() throws IOException {
        log =
                Files.writeString(
                        folder.resolve("blue.csv"),
                        """
                        time,latitude,longitude,altitude ellipsoid (m),speed (m/s),hacc (m)
                        2031-05-14T15:02:11.0Z,-24.50000123,15.50000456,3631.25,38.05,0.8
                        2031-05-14T15:02:11.2Z,-24.50007,15.5,3627.5,38.10,0.8
                        2031-05-14T15:02:11.4Z,-24.50014,15.5,3624.0,38.15,0.8
                        2031-05-14T15:02:31.4Z,-24.50714,15.5,3264.0,38.15,0.8
                        """);
    }

    private static JsonNode inspected(Path file) throws IOException {
        return new JsonMapper().readTree(Said.by("inspect", file, "--json").out()).get(0);
    }

    private List<String> left() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    /** Steps of each format: degrees, metres; IGC has whole metres. */
    @ParameterizedTest
    @CsvSource({
        "gpx, 1e-9, 0.001",
        "kml, 1e-9, 0.001",
        "geojson, 1e-9, 0.001",
        "csv, 1e-9, 0.001",
        "igc, 1e-7, 0.5"
    })
    void aConvertedLogIsTheSameLog(String format, double step_deg, double step_m)
            throws IOException {
        Path out = folder.resolve("copy." + format);
        Said said = Said.by("convert", log, "--to", format, "--out", out);
        assertEquals(ExitStatus.DONE, said.status(), said.err());
        JsonNode before = inspected(log);
        JsonNode after = inspected(out);
        assertEquals(format, after.get("format").asText());
        for (String same : List.of("fixes", "start", "end", "gaps", "flights")) {
            assertEquals(before.get(same), after.get(same), same);
        }
        JsonNode from = before.get("firstFix");
        JsonNode to = after.get("firstFix");
        for (String degrees : List.of("latitude_deg", "longitude_deg")) {
            assertEquals(from.get(degrees).asDouble(), to.get(degrees).asDouble(), step_deg);
        }
        assertEquals(from.get("height_m").asDouble(), to.get("height_m").asDouble(), step_m);
        assertEquals(0, after.get("skipped").get("count").asInt());
    }

    @Test
    void anUnknownFormatIsWrongUsage() {
        Said said = Said.by("convert", log, "--to", "docx", "--out", folder.resolve("a"));
        assertEquals(ExitStatus.USAGE, said.status());
        assertTrue(said.err().contains("gpx, kml, igc, csv, geojson"), said.err());
    }

    @Test
    void anInputThatIsNoLogLeavesNothingBehind() throws IOException {
        Path page = Files.writeString(folder.resolve("page.html"), "<html></html>");
        Path out = folder.resolve("page.gpx");
        Said said = Said.by("convert", page, "--to", "gpx", "--out", out);
        assertEquals(ExitStatus.INPUT, said.status());
        assertEquals(1, said.errLines().size(), said.err());
        assertEquals(List.of("blue.csv", "page.html"), left());
    }

    @Test
    void aLogWithoutPlacesOrInstantsGoesIntoCsvAlone() throws IOException {
        Path systems =
                Files.writeString(
                        folder.resolve("systems.csv"), "elapsed (s),IAS (kt)\n0.0,74\n0.1,75\n");
        Said refused = Said.by("convert", systems, "--to", "igc", "--out", folder.resolve("s.igc"));
        assertEquals(ExitStatus.INPUT, refused.status());
        assertTrue(refused.err().contains("write it as csv"), refused.err());
        Path out = folder.resolve("copy.csv");
        assertEquals(
                ExitStatus.DONE, Said.by("convert", systems, "--to", "csv", "--out", out).status());
        assertEquals(2, inspected(out).get("rows").asInt());
    }

    @Test
    void theLogItselfIsNeverWrittenOver() throws IOException {
        String before = Files.readString(log);
        Said said = Said.by("convert", log, "--to", "csv", "--out", log);
        assertEquals(ExitStatus.OUTPUT, said.status());
        assertEquals(before, Files.readString(log));
    }

    @Test
    void aPlaceThatCannotBeWrittenIsStatusFour() throws IOException {
        Path inTheWay = folder.resolve("blue.csv").resolve("copy.gpx");
        Said said = Said.by("convert", log, "--to", "gpx", "--out", inTheWay);
        assertEquals(ExitStatus.OUTPUT, said.status());
        assertEquals(1, said.errLines().size(), said.err());
        assertEquals(List.of("blue.csv"), left());
    }

    @Test
    void anEarlierCopyIsReplacedAndNothingLiesBeside() throws IOException {
        Path out = Files.writeString(folder.resolve("copy.kml"), "old");
        assertEquals(
                ExitStatus.DONE, Said.by("convert", log, "--to", "kml", "--out", out).status());
        assertFalse(Files.readString(out).contains("old"));
        assertEquals(List.of("blue.csv", "copy.kml"), left());
    }

    @Test
    void aColumnMapServesHereToo() throws IOException {
        Path odd =
                Files.writeString(
                        folder.resolve("odd.csv"), "T,A,B\n0,-24.5,15.5\n1,-24.5003,15.5\n");
        Path map =
                Files.writeString(
                        folder.resolve("odd.columns.json"),
                        """
                        {"time": {"column": "T", "as": "unix-seconds"},
                         "channels": {"latitude_deg": {"column": "A"},
                          "longitude_deg": {"column": "B"}}}
                        """);
        Path out = folder.resolve("odd.gpx");
        Said said = Said.by("convert", odd, "--columns", map, "--to", "gpx", "--out", out);
        assertEquals(ExitStatus.DONE, said.status(), said.err());
        assertEquals(2, inspected(out).get("fixes").asInt());
    }
}
