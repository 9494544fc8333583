package pairdown.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.debrief.ResultFolder;

class SeasonFilesTest {
    @TempDir private Path folder;

    @BeforeEach
    void write() throws IOException {
        Season season =
                Season.of(
                        List.of(
                                SeasonSamples.dive(1, true, OptionalDouble.of(6.5), 0),
                                SeasonSamples.attempt(
                                        2,
                                        30,
                                        SeasonSamples.flyer("blue", 28.4, 2.1, "on-gate"),
                                        SeasonSamples.withoutSigma(
                                                SeasonSamples.flyer("amber", 55, 0, "short"))),
                                AttemptSummary.unusable("x", "day/x", "no files, \"none\"")),
                        SeasonPlan.of(Criteria.NONE));
        SeasonFiles.write(season, ResultFolder.at(folder));
    }

    private List<CSVRecord> table(String name) throws IOException {
        try (Reader in = Files.newBufferedReader(folder.resolve(name))) {
            return CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(in)
                    .getRecords();
        }
    }

    @Test
    void everyAttemptHasARowAlsoThoseWithoutAFlyerAndThoseOfNoUse() throws IOException {
        List<CSVRecord> rows = table("attempts.csv");
        assertEquals(3, rows.size());
        assertEquals("6.5", rows.get(0).get("timeToStabilise_s"));
        assertEquals("1", rows.get(0).get("descentHeld"));
        assertEquals("", rows.get(1).get("descentHeld"), "no descent");
        assertEquals("0", rows.get(2).get("usable"));
        assertEquals("no files, \"none\"", rows.get(2).get("reason"));
        assertEquals("", rows.get(2).get("closureExceedances"), "not known, not none");
    }

    @Test
    void everyFlyerHasARowAndWhatIsNotKnownIsEmpty() throws IOException {
        List<CSVRecord> rows = table("flyers.csv");
        assertEquals(2, rows.size());
        assertEquals("28.4", rows.get(0).get("medianGap_m"));
        assertEquals("on-gate", rows.get(0).get("verdict"));
        assertEquals("", rows.get(1).get("sigma_m"));
        assertEquals("", rows.get(1).get("aheadSd_m"));
    }

    /** The keys other programs rely on, spelt as agreed. */
    @Test
    void theFileHasTheAgreedKeys() throws IOException {
        JsonNode root = new JsonMapper().readTree(folder.resolve("season.json").toFile());
        assertEquals("pairdown-season", root.path("format").asText());
        assertEquals(1, root.path("version").asInt());
        JsonNode dive = root.at("/attempts/0");
        assertEquals("day/01", dive.path("folder").asText());
        assertEquals(true, dive.path("usable").asBoolean());
        assertEquals(true, dive.path("descentHeld").asBoolean());
        assertEquals(6.5, dive.path("timeToStabilise_s").asDouble());
        assertEquals(0, dive.path("episodes").asInt(-1));
        assertEquals(30, root.at("/attempts/1/gate_m").asDouble());
        JsonNode flyer = root.at("/attempts/1/flyers/0");
        assertEquals("blue", flyer.path("flyer").asText());
        assertEquals(27.4, flyer.path("leastGap_m").asDouble());
        assertEquals(28.4, flyer.path("medianGap_m").asDouble());
        assertEquals(2.1, flyer.path("sigma_m").asDouble());
        assertEquals(9, flyer.path("held_s").asDouble());
        assertEquals(12, flyer.path("matchedLongest_s").asDouble());
        assertEquals("on-gate", flyer.path("verdict").asText());
        assertFalse(root.at("/attempts/1").has("descentHeld"), "no descent, no verdict on one");
        assertFalse(root.at("/attempts/2").path("usable").asBoolean(true));
        assertEquals(1, root.at("/repeatability/successes").asInt());
        assertEquals(1, root.at("/repeatability/trials").asInt());
        assertEquals(0.2065, root.at("/repeatability/low").asDouble(), 1e-9);
        assertEquals(1, root.at("/repeatability/high").asDouble());
        assertEquals(2, root.at("/ladder/flyers").size());
        assertEquals(true, root.at("/envelope/machines").isArray());
    }

    @Test
    void whatTheMachinesShareAndLackStandsUnderTheAgreedKeys() {
        SteadySegment lead = SeasonSamples.segment("lead", "lead", "idle", 38, 7);
        SteadySegment slow = SeasonSamples.segment("lead", "lead", "idle", 34, 6);
        SteadySegment fast = SeasonSamples.segment("lead", "lead", "idle", 36, 10);
        SteadySegment one = SeasonSamples.segment("blue", "flyer", "as flown", 36, 7);
        SteadySegment two = SeasonSamples.segment("blue", "flyer", "as flown", 40, 7);
        SteadySegment three = SeasonSamples.segment("blue", "flyer", "as flown", 36, 12);
        Season season =
                Season.of(
                        List.of(SeasonSamples.flown(1, lead, slow, fast, one, two, three)),
                        SeasonPlan.of(Criteria.NONE));
        JsonNode envelope = SeasonJson.of(season).path("envelope");
        assertEquals("calibrated", envelope.path("airspeed").asText());
        assertEquals(true, envelope.path("overlapArea").asDouble() > 0);
        assertEquals(5285.6, envelope.at("/missingForce_N/value").asDouble(), 0.1);
        assertEquals(true, envelope.at("/missingForce_N/low").asDouble() < 5285);
        assertEquals("idle", envelope.at("/missingForce_N/configuration").asText());
        assertEquals(2, envelope.path("machines").size());
        assertEquals(3, envelope.at("/machines/0/hull").size());
    }
}
