package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InspectVerbTest {
    private static final String SOUND =
            """
            time,latitude,longitude,altitude msl (m),speed (km/h)
            2031-05-14T15:02:11.0Z,-24.5000,15.5000,3600.0,137.0
            2031-05-14T15:02:11.5Z,-24.5002,15.5000,3591.0,137.1
            2031-05-14T15:02:12.0Z,-24.5004,15.5000,3582.0,137.2
            """;

    @TempDir private Path folder = Path.of("");

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static JsonNode json(Said said) throws IOException {
        return new JsonMapper().readTree(said.out());
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void programsGetOneArrayInTheOrderGiven() throws IOException {
        Path sound = file("blue.csv", SOUND);
        Path empty = file("empty.csv", "");
        Said said = Said.by("inspect", empty, sound, "--json");
        JsonNode array = json(said);
        assertEquals(ExitStatus.DONE, said.status());
        assertEquals(2, array.size());
        assertEquals(List.of("file", "usable", "reason"), names(array.get(0)));
        assertFalse(array.get(0).get("usable").asBoolean());
        assertEquals(
                List.of(
                        "file",
                        "usable",
                        "format",
                        "fixes",
                        "start",
                        "end",
                        "rate_Hz",
                        "absoluteTime",
                        "datum",
                        "geoidSeparation_m",
                        "channels",
                        "firstFix",
                        "flights",
                        "gaps",
                        "skipped",
                        "warnings"),
                names(array.get(1)));
    }

    /** The separation is a guard: GeoidTest checks the geoid against published values. */
    @Test
    void theFiguresAreThoseOfTheLog() throws IOException {
        JsonNode log = json(Said.by("inspect", "--json", file("blue.csv", SOUND))).get(0);
        assertEquals("csv", log.get("format").asText());
        assertEquals(3, log.get("fixes").asInt());
        assertEquals("2031-05-14T15:02:11.000Z", log.get("start").asText());
        assertEquals("2031-05-14T15:02:12.000Z", log.get("end").asText());
        assertEquals(2.0, log.get("rate_Hz").asDouble());
        assertEquals("msl", log.get("datum").asText());
        double separation_m = log.get("geoidSeparation_m").asDouble();
        assertEquals(31.8, separation_m, 0.1);
        JsonNode first = log.get("firstFix");
        assertEquals(-24.5, first.get("latitude_deg").asDouble());
        assertEquals(15.5, first.get("longitude_deg").asDouble());
        assertEquals(3600 + separation_m, first.get("height_m").asDouble(), 2e-3);
        assertEquals(3, log.get("flights").get(0).get("fixes").asInt());
        assertEquals(0, log.get("skipped").get("count").asInt());
    }

    @Test
    void gapsAndLossesAreListedWithWhenAndWhere() throws IOException {
        Path log =
                file(
                        "amber.csv",
                        SOUND
                                + "2031-05-14T15:02:13.0Z,95.2,15.5,3550,137\n"
                                + "2031-05-14T15:02:20.0Z,-24.5030,15.5,3430,137\n");
        JsonNode inspected = json(Said.by("inspect", log, "--json")).get(0);
        JsonNode gap = inspected.get("gaps").get(0);
        assertEquals("2031-05-14T15:02:12.000Z", gap.get("start").asText());
        assertEquals("2031-05-14T15:02:20.000Z", gap.get("end").asText());
        JsonNode skipped = inspected.get("skipped");
        assertEquals(1, skipped.get("count").asInt());
        assertEquals(5, skipped.get("examples").get(0).get("line").asInt());
        assertEquals(
                "latitude 95.2 is outside \u00b190",
                skipped.get("examples").get(0).get("reason").asText());
    }

    /** A terminal of any encoding passes it on unharmed. */
    @Test
    void whatProgramsGetIsPlainAscii() throws IOException {
        Path log = file("amber.csv", SOUND + "2031-05-14T15:02:13.0Z,95.2,15.5,3550,137\n");
        Said said = Said.by("inspect", log, "--json");
        assertTrue(StandardCharsets.US_ASCII.newEncoder().canEncode(said.out()), said.out());
    }

    @Test
    void aLogWithItsOwnZeroHasNoInstants() throws IOException {
        Path log = file("systems.csv", "elapsed (s),IAS (kt)\n0.0,74\n0.1,75\n0.2,75\n");
        JsonNode inspected = json(Said.by("inspect", log, "--json")).get(0);
        assertFalse(inspected.get("absoluteTime").asBoolean());
        assertFalse(inspected.has("start"));
        assertFalse(inspected.has("firstFix"));
        assertEquals(0, inspected.get("fixes").asInt());
        assertEquals(3, inspected.get("rows").asInt());
        assertEquals(0.2, inspected.get("flights").get(0).get("end_s").asDouble());
    }

    @Test
    void theStatusIsThreeOnlyWhereNoFileIsUsable() throws IOException {
        Path sound = file("blue.csv", SOUND);
        Path page = file("page.html", "<html></html>\n");
        assertEquals(ExitStatus.DONE, Said.by("inspect", page, sound).status());
        Said none = Said.by("inspect", page, folder, folder.resolve("missing.gpx"));
        assertEquals(ExitStatus.INPUT, none.status());
        assertEquals(3, none.errLines().size(), none.err());
        assertEquals("", none.out());
        Said empty = Said.by("inspect", page, "--json");
        assertEquals(ExitStatus.INPUT, empty.status());
        assertEquals(1, new JsonMapper().readTree(empty.out()).size());
    }

    @Test
    void wrongUsageIsStatusTwoAndOneLine() {
        for (Said said : List.of(Said.by("inspect"), Said.by("inspect", "--yaml", "a.csv"))) {
            assertEquals(ExitStatus.USAGE, said.status());
            assertEquals(1, said.errLines().size(), said.err());
            assertTrue(said.err().contains("--help"), said.err());
        }
    }

    @Test
    void aCoachCanReadWhatBecameOfADamagedLog() throws IOException {
        StringBuilder csv = new StringBuilder(SOUND);
        csv.append("2031-05-14T15:02:12.5Z,95.2,15.5000,3570,137\n");
        csv.append("2031-05-14T15:02:13.0Z,96.1,15.5000,3560,137\n");
        csv.append("rubbish\n");
        csv.append("2031-05-14T15:02:20.0Z,-24.5036,15.5000,3430,137\n");
        csv.append("2031-05-14T15:02:20.5Z,-24.5038,15.5");
        Path log = file("amber.csv", csv.toString());
        Said said = Said.by("inspect", log);
        assertEquals(
                log
                        + """

                          CSV log, 4 fixes, 2 a second
                          14 May 2031 15:02:11.000 to 15:02:20.000 UTC (9 s)
                          first fix: -24.500000, 15.500000, 3600.0 m above sea level (3631.8 m above the ellipsoid)
                          heights: above sea level; sea level is 31.8 m above the ellipsoid there
                          has position, height, ground speed
                          1 gap:
                            15:02:12.000 to 15:02:20.000 (8 s)
                          not used: 4 records or values
                            line 5: latitude 95.2 is outside ±90 (and 1 alike)
                            line 7: no record: 'rubbish'
                            line 9: record cut short at the end of the file
                        """
                                .replace("±", printable("±")),
                said.out());
    }

    private static String printable(String letter) {
        byte[] bytes = letter.getBytes(java.nio.charset.Charset.defaultCharset());
        return new String(bytes, java.nio.charset.Charset.defaultCharset());
    }

    @Test
    void severalFlightsAreListed() throws IOException {
        StringBuilder csv = new StringBuilder("time,lat,lon,alt msl\n");
        for (int load = 0; load < 2; load++) {
            for (int s = 0; s < 60; s++) {
                csv.append("2031-05-14T%02d:02:%02dZ,".formatted(14 + load, s));
                csv.append("%.4f,15.5,%d\n".formatted(-24.5 + 0.0003 * s, 3600 - 18 * s));
            }
        }
        Path log = file("blue.csv", csv.toString());
        Said said = Said.by("inspect", log);
        assertTrue(said.out().contains("2 flights in this file:"), said.out());
        assertTrue(said.out().contains("15:02:00.000 to 15:02:59.000, 60 fixes"), said.out());
    }

    @Test
    void aLogThatEndsOnAnotherDaySaysSo() throws IOException {
        Path log =
                file(
                        "ship.csv",
                        "time,lat,lon\n2031-05-14T23:59:59Z,1,2\n2031-05-15T00:00:01Z,1.0002,2\n");
        assertTrue(
                Said.by("inspect", log)
                        .out()
                        .contains(
                                "14 May 2031 23:59:59.000 to 15 May 2031 00:00:01.000 UTC (2 s)"));
    }

    @Test
    void thousandsOfLossesStayAFewLines() throws IOException {
        String late = "2031-05-14T15:02:13.0Z,95.2,15.5,3550,137\n";
        Path log = file("blue.csv", SOUND + "rubbish,1,2,3,4\n".repeat(5000) + late);
        String out = Said.by("inspect", log).out();
        assertTrue(out.lines().count() < 15, out);
        assertTrue(out.contains("not used: 5001"), out);
        assertTrue(out.contains("line 5: no time in 'rubbish' (and 4999 alike)"), out);
        assertTrue(out.contains("line 5005: latitude 95.2"), "the rarer kind is told too: " + out);
    }
}
