package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The season verb through the command line. */
class SeasonVerbTest {
    private static final Path SAMPLE = Sample.FOLDER;

    @TempDir private Path folder;

    private void sample(String name) throws IOException {
        Path to = folder.resolve(name);
        Files.createDirectories(to);
        try (Stream<Path> files = Files.list(SAMPLE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, to.resolve(file.getFileName()));
            }
        }
    }

    @Test
    void aSeasonIsAPageAFileAndTables() throws Exception {
        sample("01");
        Files.createDirectories(folder.resolve("02"));
        assertEquals(ExitStatus.DONE, Main.run("season", folder.toString()));
        Path out = folder.resolve("season");
        for (String name :
                List.of(
                        "season.html",
                        "season.json",
                        "attempts.csv",
                        "flyers.csv",
                        "segments.csv")) {
            assertTrue(Files.size(out.resolve(name)) > 0, name);
        }
        JsonNode json = new JsonMapper().readTree(out.resolve("season.json").toFile());
        assertEquals("pairdown-season", json.path("format").asText());
        assertEquals(1, json.path("version").asInt());
        assertEquals("01", json.path("attempts").path(0).path("folder").asText());
        assertTrue(json.path("attempts").path(0).path("usable").asBoolean());
        assertFalse(json.path("attempts").path(1).path("usable").asBoolean(true));
        for (String key : List.of("repeatability", "ladder", "envelope")) {
            assertTrue(json.path(key).isObject(), key);
        }
        assertTrue(json.path("envelope").path("machines").isArray());
        assertEquals(ExitStatus.DONE, Main.run("season", folder.toString()));
        assertEquals(json, new JsonMapper().readTree(out.resolve("season.json").toFile()));
    }

    @Test
    void resultsAreMadeAgainOnlyWhereTheyWouldDiffer() throws Exception {
        sample("01");
        Path page = folder.resolve("season/season.html");
        Main.run("season", folder.toString());
        FileTime long_ago = FileTime.from(Instant.parse("2031-06-02T09:00:00Z"));
        for (String name :
                List.of(
                        "season.html",
                        "season.json",
                        "attempts.csv",
                        "flyers.csv",
                        "segments.csv")) {
            Files.setLastModifiedTime(page.resolveSibling(name), long_ago);
        }
        Main.run("season", folder.toString());
        assertEquals(long_ago, Files.getLastModifiedTime(page), "nothing changed");
        Main.run("season", folder.toString(), "--units", "metric");
        assertTrue(Files.readString(page).contains(" km/h"), "other units");
        Main.run("season", folder.toString());
        Files.delete(page);
        Main.run("season", folder.toString());
        assertTrue(Files.isRegularFile(page), "deleted");
        FileTime made = Files.getLastModifiedTime(page);
        Files.writeString(page, "overwritten by hand");
        Files.setLastModifiedTime(page, made);
        Main.run("season", folder.toString());
        assertTrue(Files.readString(page).contains("<svg "), "changed by hand");
        Files.writeString(folder.resolve("01/marks.json"), "{\"marks\": []}");
        Files.setLastModifiedTime(page, long_ago);
        Main.run("season", folder.toString());
        assertNotEquals(long_ago, Files.getLastModifiedTime(page), "a file of an attempt changed");
    }

    @Test
    void whereNothingCanBeUsedTheInputIsAtFault() throws Exception {
        assertEquals(ExitStatus.INPUT, Main.run("season", folder.resolve("nowhere").toString()));
        assertEquals(ExitStatus.INPUT, Main.run("season", folder.toString()));
        Files.createDirectories(folder.resolve("empty"));
        assertEquals(ExitStatus.INPUT, Main.run("season", folder.toString()));
    }

    @Test
    void theTeamsCriteriaAreNotOverwritten() throws Exception {
        Files.createDirectories(folder.resolve("empty"));
        Path criteria = folder.resolve("season.json");
        Files.writeString(criteria, "{\"criteria\": {\"episodes\": 0}}");
        assertEquals(
                ExitStatus.OUTPUT,
                Main.run("season", folder.toString(), "--out", folder.toString()));
        assertTrue(Files.readString(criteria).contains("criteria"));
    }

    @Test
    void anOutputThatCantBeWrittenIsSaid() throws Exception {
        Files.createDirectories(folder.resolve("empty"));
        Path taken = Files.writeString(folder.resolve("taken"), "a file");
        assertEquals(
                ExitStatus.OUTPUT,
                Main.run("season", folder.toString(), "--out", taken.toString()));
    }

    /**
     * Files stand where the cache's and the results' folders would: nobody can write there, not
     * even one to whom permissions do not apply.
     */
    @Test
    void aShareThatCantBeWrittenIsReadAndResultsGoElsewhere(@TempDir Path mine) throws Exception {
        sample("01");
        Files.writeString(folder.resolve(".pairdown"), "in the way");
        Files.writeString(folder.resolve("season"), "in the way");
        String home = System.getProperty("user.home");
        try {
            System.setProperty("user.home", mine.toString());
            Said refused = Said.by("season", folder);
            assertEquals(ExitStatus.OUTPUT, refused.status());
            assertEquals(1, refused.errLines().size(), refused.err());
            assertTrue(refused.err().contains("another place"), refused.err());
            Path out = mine.resolve("results");
            for (int i = 0; i < 2; i++) {
                Said done = Said.by("season", folder, "--out", out);
                assertEquals(ExitStatus.DONE, done.status(), done.err());
                assertTrue(Files.size(out.resolve("season.html")) > 0);
            }
        } finally {
            System.setProperty("user.home", home);
        }
        assertEquals(Set.of(".pairdown", "01", "season"), Set.copyOf(List.of(namesIn(folder))));
        assertEquals("in the way", Files.readString(folder.resolve(".pairdown")));
    }

    private static String[] namesIn(Path place) throws IOException {
        try (Stream<Path> files = Files.list(place)) {
            return files.map(f -> f.getFileName().toString()).toArray(String[]::new);
        }
    }

    /** Two people, one shared folder, the same moment. */
    @Test
    void twoAtOnceLeaveWholeResults() throws Exception {
        sample("01");
        sample("02");
        List<Integer> statuses =
                IntStream.range(0, 4)
                        .parallel()
                        .mapToObj(i -> Main.run("season", folder.toString()))
                        .toList();
        assertEquals(List.of(0, 0, 0, 0), statuses);
        Path out = folder.resolve("season");
        JsonNode json = new JsonMapper().readTree(out.resolve("season.json").toFile());
        assertEquals(2, json.path("attempts").size());
        assertTrue(Files.readString(out.resolve("season.html")).contains("</html>"));
        assertEquals(
                Set.of(
                        ".made-from",
                        "attempts.csv",
                        "flyers.csv",
                        "season.html",
                        "season.json",
                        "segments.csv"),
                Set.copyOf(List.of(namesIn(out))));
    }
}
