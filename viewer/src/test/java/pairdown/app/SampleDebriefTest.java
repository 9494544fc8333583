package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** The main job on the sample attempt, through the command line. */
class SampleDebriefTest {
    private static final Path SAMPLE = Sample.FOLDER;

    /** Words that no output may say of a flight. */
    private static final Pattern NEVER_SAID =
            Pattern.compile("\\b(safe|cleared|ready|proven|caused)\\b", Pattern.CASE_INSENSITIVE);

    @TempDir private static Path out;

    private static JsonNode debrief = new JsonMapper().nullNode();
    private static String report = "";

    @BeforeAll
    static void debriefTheSample() throws Exception {
        assertEquals(
                ExitStatus.DONE, Main.run("debrief", SAMPLE.toString(), "--out", out.toString()));
        debrief = new JsonMapper().readTree(out.resolve("debrief.json").toFile());
        report = Files.readString(out.resolve("report.html"));
    }

    @Test
    void everyFlyerIsJudgedAgainstTheLeadAndHasItsSeries() {
        assertEquals(2, debrief.path("pairs").size());
        for (JsonNode pair : debrief.path("pairs")) {
            assertTrue(Files.isRegularFile(out.resolve(pair.path("series").asText())));
            assertTrue(pair.path("closest").path("separationSigma_m").asDouble() > 0);
        }
    }

    @Test
    void whatCannotBeToldIsAbsentAndNotZero() {
        for (JsonNode pair : debrief.path("pairs")) {
            JsonNode matched = pair.path("matched");
            assertEquals(matched.has("refusals"), !matched.has("total_s"), matched::toString);
            boolean judged = !pair.path("gateHeld").path("verdict").asText().equals("no-data");
            assertEquals(judged, pair.path("gateHeld").has("held_s"), pair::toString);
        }
    }

    @Test
    void everyFigureOfTheReportStandsInTheResultFile() {
        var from = Pattern.compile("data-from=\"([^\"]+)\"").matcher(report);
        int figures = 0;
        while (from.find()) {
            figures++;
            assertFalse(debrief.at(from.group(1)).isMissingNode(), from.group(1));
        }
        assertTrue(figures > 10, "only " + figures + " figures");
    }

    @Test
    void noOutputSaysMoreThanALogCan() {
        assertFalse(NEVER_SAID.matcher(report).find());
        assertFalse(NEVER_SAID.matcher(debrief.toString()).find());
    }

    @Test
    void theReportReadsAsPlainEnglish() {
        assertFalse(report.contains("''"), "a doubled apostrophe");
        assertFalse(report.contains("{0}"), "a place left open");
    }
}
