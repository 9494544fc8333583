package pairdown.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import pairdown.units.Unit;

/** The lesson of each attempt in which flyers join is in its truth, whatever a debrief finds. */
class SampleLessonsTest {
    private static final List<String> BOTH = List.of("blue", "amber");

    private static JsonNode truth(String id) throws IOException {
        Path file = SampleComparison.SAMPLES.resolve(id).resolve("truth/truth.json");
        return new JsonMapper().readTree(file.toFile());
    }

    private static JsonNode among(JsonNode all, String key, String value) {
        for (JsonNode one : all) {
            if (one.path(key).asText().equals(value)) {
                return one;
            }
        }
        throw new IllegalArgumentException(value);
    }

    private static JsonNode pair(String id, String flyer) throws IOException {
        return among(truth(id).path("pairs"), "flyer", flyer);
    }

    private static JsonNode log(String id, String file) throws IOException {
        return among(truth(id).path("logs"), "file", file);
    }

    private static double length_s(JsonNode span) {
        Instant start = Instant.parse(span.path("start").asText());
        Instant end = Instant.parse(span.path("end").asText());
        return Duration.between(start, end).toMillis() / 1000.0;
    }

    private static double longest_s(String id, String flyer) throws IOException {
        double longest_s = 0;
        for (JsonNode window : pair(id, flyer).path("matched")) {
            longest_s = Math.max(longest_s, length_s(window));
        }
        return longest_s;
    }

    private static double leastGap_m(String id, String flyer) throws IOException {
        return pair(id, flyer).path("leastGap").path("gap_m").asDouble();
    }

    private static double over_mps(String id, String flyer) throws IOException {
        JsonNode worst = pair(id, flyer).path("worstClosure");
        return worst.path("closureRate_mps").asDouble() - worst.path("limit_mps").asDouble();
    }

    @Test
    void matchedForNineSecondsAtAHundredAndFiftyMetres() throws IOException {
        for (String flyer : BOTH) {
            assertEquals(9, longest_s("2031-05-12-01", flyer), 1, flyer);
            assertEquals(150, leastGap_m("2031-05-12-01", flyer), 15, flyer);
            assertTrue(over_mps("2031-05-12-01", flyer) < 0, flyer);
        }
    }

    @Test
    void oneClockOnTheWallAndOneOnGpsTime() throws IOException {
        // Offsets hold a drawn error and the receiver's latency besides.
        double wall_s = log("2031-05-12-02", "amber.csv").path("offset_s").asDouble();
        double gps_s = log("2031-05-12-02", "blue.gpx").path("offset_s").asDouble();
        assertEquals(-31_500, wall_s, 0.4);
        assertEquals(-18, gps_s, 0.4);
        for (String flyer : BOTH) {
            assertEquals(60, leastGap_m("2031-05-12-02", flyer), 3, flyer);
        }
    }

    @Test
    void tooFastThroughTheGateAndOut() throws IOException {
        assertEquals(2.5, over_mps("2031-05-13-01", "blue"), 0.4);
        assertTrue(leastGap_m("2031-05-13-01", "blue") < 0.8 * 30, "well inside the gate");
        assertEquals(0, longest_s("2031-05-13-01", "blue"), "never matched");
        assertTrue(over_mps("2031-05-13-01", "amber") < 0);
        assertTrue(longest_s("2031-05-13-01", "amber") > 10);
    }

    @Test
    void onTheGateWithARecorderSetByHandAndLaggingPressure() throws IOException {
        JsonNode recorder = log("2031-05-13-02", "lead-systems.csv");
        assertEquals(4.3, recorder.path("offset_s").asDouble());
        assertEquals(0.5, recorder.path("pressureLag_s").asDouble());
        for (String flyer : BOTH) {
            assertEquals(30, leastGap_m("2031-05-13-02", flyer), 2, flyer);
            assertTrue(longest_s("2031-05-13-02", flyer) > 10, flyer);
        }
    }

    @Test
    void fromAFastShipNeverClose() throws IOException {
        JsonNode closest = pair("2031-05-14-01", "blue").path("closest");
        assertEquals(22, closest.path("separation_m").asDouble(), 1.5);
        assertTrue(longest_s("2031-05-14-01", "blue") < 6);
    }

    @Test
    void fromASlowShipMatchedForFourteenSeconds() throws IOException {
        for (String flyer : BOTH) {
            assertTrue(longest_s("2031-05-14-02", flyer) >= 14, flyer);
            assertEquals(15, leastGap_m("2031-05-14-02", flyer), 3, flyer);
        }
    }

    @Test
    void anAntennaLostAtExitAndOneInShadow() throws IOException {
        JsonNode lost = log("2031-05-15-01", "blue.csv").path("lost").get(0);
        assertEquals(6, length_s(lost), 0.01);
        JsonNode shadow = log("2031-05-15-01", "amber.csv").path("inverted").get(0);
        assertEquals(30, length_s(shadow), 0.01);
        for (String flyer : BOTH) {
            assertEquals(8, leastGap_m("2031-05-15-01", flyer), 1.5, flyer);
        }
    }

    @Test
    void aHoverThatTouchesNothing() throws IOException {
        assertTrue(truth("2031-05-15-02").path("contacts").isEmpty());
        assertEquals(4, leastGap_m("2031-05-15-02", "blue"), 1.2);
        assertTrue(longest_s("2031-05-15-02", "blue") > 12);
    }

    @Test
    void aHandOnOneTipForSixSeconds() throws IOException {
        JsonNode contacts = truth("2031-05-16-01").path("contacts");
        assertEquals(1, contacts.size());
        assertEquals("left", contacts.get(0).path("slot").asText());
        assertEquals(6, length_s(contacts.get(0)), 0.1);
    }

    @Test
    void handsOnBothTipsAndFortyFeetTooLow() throws IOException {
        assertEquals(2, truth("2031-05-16-02").path("contacts").size());
        double left_m =
                pair("2031-05-16-02", "amber").path("leaving").path("heightMsl_m").asDouble();
        assertEquals(6460, Unit.FOOT.fromBase(left_m), 10);
        assertEquals("ellipsoid", log("2031-05-16-02", "amber.csv").path("datum").asText());
        double undulation_m = truth("2031-05-16-02").path("air").path("undulation_m").asDouble();
        assertEquals(100, 40 + Unit.FOOT.fromBase(-undulation_m), 5, "as it would be misread");
    }

    @Test
    void nobodyIsOverTheClosingLimitWhereThatIsNotTheLesson() throws IOException {
        for (DemoAttempt demo : DemoJoins.of(DemoSeason.SEED)) {
            for (JsonNode pair : truth(demo.id()).path("pairs")) {
                String flyer = pair.path("flyer").asText();
                if (!demo.id().equals("2031-05-13-01")) {
                    // Less than what counts as over: 0.3 m/s.
                    assertTrue(over_mps(demo.id(), flyer) < 0.3, demo.id() + " " + flyer);
                }
                assertTrue(truth(demo.id()).path("episodes").isEmpty(), demo.id());
            }
        }
    }

    @Test
    void everyLogIsAccountedFor() throws IOException {
        for (DemoAttempt demo : DemoJoins.of(DemoSeason.SEED)) {
            for (JsonNode log : truth(demo.id()).path("logs")) {
                Path file =
                        SampleComparison.SAMPLES
                                .resolve(demo.id())
                                .resolve(log.path("file").asText());
                assertTrue(Files.isRegularFile(file), file::toString);
            }
            assertEquals(demo.lesson(), truth(demo.id()).path("lesson").asText());
        }
    }
}
