package pairdown.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pairdown.attempt.AttemptFolder;
import pairdown.clock.ClockMethod;
import pairdown.clock.ClockResult;
import pairdown.debrief.Debrief;
import pairdown.height.HeightResult;
import pairdown.pair.ClosureExceedance;
import pairdown.pair.GateHeld;
import pairdown.pair.MatchedWindow;
import pairdown.pair.PairDebrief;
import pairdown.pair.Touch;
import pairdown.safety.Finding;
import pairdown.time.Span;
import pairdown.track.HeightDatum;

/** Each attempt of the sample season shows its lesson, and what it shows is what was true. */
class SampleSeasonTest {
    /** What a person's reading of a lesson may be off by: half the gate's own tolerance (m). */
    private static final double ABOUT_M = 4;

    @BeforeAll
    static void debriefAllThatJoin() throws IOException {
        joins().parallelStream().forEach(SampleDebriefs::of);
    }

    private static List<String> joins() throws IOException {
        try (Stream<Path> folders = Files.list(SampleDebriefs.SEASON)) {
            return folders.filter(AttemptFolder::hasManifest)
                    .map(f -> f.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }

    private static Debrief debrief(String id) {
        return SampleDebriefs.of(id);
    }

    private static PairDebrief pair(String id, String flyer) {
        return debrief(id).pairs().stream()
                .filter(p -> p.flyer().equals(flyer))
                .findFirst()
                .orElseThrow();
    }

    private static double longest_s(String id, String flyer) {
        return pair(id, flyer).matched().longest().map(MatchedWindow::duration_s).orElse(0.0);
    }

    private static GateHeld gate(String id, String flyer) {
        return pair(id, flyer).gateHeld().orElseThrow();
    }

    private static ClockResult clock(String id, String file) {
        return debrief(id).clock().stream()
                .filter(c -> c.file().equals(file))
                .findFirst()
                .orElseThrow();
    }

    private static JsonNode truth(String id) {
        try {
            return new JsonMapper()
                    .readTree(SampleDebriefs.SEASON.resolve(id + "/truth/truth.json").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode faults(String id, String file) {
        for (JsonNode log : truth(id).path("logs")) {
            if (log.path("file").asText().equals(file)) {
                return log;
            }
        }
        throw new IllegalArgumentException(file);
    }

    private static double true_s(String id, JsonNode time) {
        return debrief(id).axis().seconds(Instant.parse(time.asText()));
    }

    @Test
    void tenAttemptsJoinAndEachIsDebriefed() throws IOException {
        assertEquals(10, joins().size(), joins()::toString);
        for (String id : joins()) {
            assertEquals(id, debrief(id).attempt().id());
            for (ClockResult clock : debrief(id).clock()) {
                assertTrue(clock.isUsable(), id + " " + clock.file());
            }
        }
    }

    @Test
    void speedsMatchAtAHundredAndFiftyMetres() {
        for (String flyer : List.of("blue", "amber")) {
            assertTrue(longest_s("2031-05-12-01", flyer) >= 7, flyer);
            MatchedWindow best = pair("2031-05-12-01", flyer).matched().longest().orElseThrow();
            assertTrue(best.separation_m() > 120, flyer);
        }
    }

    @Test
    void aWallClockWrittenAsUtcIsFoundByTheRide() {
        ClockResult clock = clock("2031-05-12-02", "amber.csv");
        assertEquals(-31_500, clock.map().offset_s(), 0.5);
        assertTrue(
                clock.warnings().stream().anyMatch(w -> w.contains("8 h 45 min")),
                clock.warnings()::toString);
    }

    @Test
    void gpsTimeWrittenAsUtcIsFoundByTheRide() {
        ClockResult clock = clock("2031-05-12-02", "blue.gpx");
        assertEquals(-18, clock.map().offset_s(), 0.5);
        assertTrue(
                clock.warnings().stream().anyMatch(w -> w.contains("GPS time")),
                clock.warnings()::toString);
    }

    @Test
    void theSeasonHoldsEveryOpenFormat() throws IOException {
        Set<String> formats =
                joins().stream()
                        .map(SampleDebriefs::of)
                        .flatMap(d -> d.quality().stream())
                        .map(q -> q.file().substring(q.file().lastIndexOf('.') + 1))
                        .collect(Collectors.toSet());
        assertEquals(Set.of("csv", "gpx", "igc", "kml", "nmea"), formats);
    }

    @Test
    void closingTooFastIsSeenThroughTheGateAndOut() {
        JsonNode worst = truth("2031-05-13-01").path("pairs").get(0).path("worstClosure");
        double over_mps =
                worst.path("closureRate_mps").asDouble() - worst.path("limit_mps").asDouble();
        assertEquals(2.5, over_mps, 0.5);
        double found_mps =
                pair("2031-05-13-01", "blue").closureExceedances().stream()
                        .filter(e -> e.separation_m() < 100)
                        .mapToDouble(ClosureExceedance::over_mps)
                        .max()
                        .orElse(0);
        assertEquals(over_mps, found_mps, 0.8);
        GateHeld gate = gate("2031-05-13-01", "blue");
        assertTrue(gate.overshoots() >= 1, gate::toString);
        assertFalse(gate.verdict() == GateHeld.Verdict.ON_GATE, gate::toString);
        assertEquals(GateHeld.Verdict.ON_GATE, gate("2031-05-13-01", "amber").verdict());
    }

    @Test
    void aRecorderSetByHandIsFoundAndItsPressureLagToldApart() {
        String id = "2031-05-13-02";
        ClockResult clock = clock(id, "lead-systems.csv");
        assertEquals(ClockMethod.AIR_DATA_MATCH, clock.method());
        // Both clocks are told by the lead's receiver, whose own latency nothing here can show.
        double expected_s =
                faults(id, "lead-systems.csv").path("offset_s").asDouble()
                        - faults(id, "lead.csv").path("offset_s").asDouble();
        assertEquals(4.3, faults(id, "lead-systems.csv").path("offset_s").asDouble());
        assertEquals(expected_s, clock.measured().orElseThrow().value(), 0.1);
        assertTrue(
                clock.warnings().stream().anyMatch(w -> w.contains("pressure height lags")),
                clock.warnings()::toString);
        for (String flyer : List.of("blue", "amber")) {
            assertEquals(GateHeld.Verdict.ON_GATE, gate(id, flyer).verdict(), flyer);
        }
    }

    @Test
    void aLateExitFromAFastShipNeverComesClose() {
        PairDebrief blue = pair("2031-05-14-01", "blue");
        assertEquals(22, blue.closest().orElseThrow().separation_m().value(), ABOUT_M);
        assertTrue(longest_s("2031-05-14-01", "blue") < 6);
    }

    @Test
    void aSlowShipGivesAMatchOfFourteenSeconds() {
        for (String flyer : List.of("blue", "amber")) {
            assertTrue(longest_s("2031-05-14-02", flyer) >= 14, flyer);
            assertEquals(GateHeld.Verdict.ON_GATE, gate("2031-05-14-02", flyer).verdict());
        }
    }

    @Test
    void aLostSkyStaysAHole() {
        String id = "2031-05-15-01";
        JsonNode lost = faults(id, "blue.csv").path("lost").get(0);
        Span hole = new Span(true_s(id, lost.path("start")), true_s(id, lost.path("end")));
        assertEquals(6, hole.duration_s(), 0.01);
        assertTrue(
                debrief(id).quality().stream()
                        .filter(q -> q.file().equals("blue.csv"))
                        .flatMap(q -> q.gaps().stream())
                        .anyMatch(g -> g.overlaps(hole) && g.duration_s() >= 5.5));
        assertTrue(
                debrief(id).safety().stream()
                        .anyMatch(
                                f ->
                                        f.participant().equals("blue")
                                                && f.outcome() == Finding.Outcome.CANNOT_TELL));
    }

    @Test
    void hoveringIsNoTouch() {
        List<Touch> touches = pair("2031-05-15-02", "blue").touch();
        assertTrue(
                touches.stream().allMatch(t -> t.grade() == Touch.Grade.POSSIBLE),
                touches::toString);
        assertTrue(longest_s("2031-05-15-02", "blue") > 10);
    }

    @Test
    void aHandOnTheTipIsALikelyTouch() {
        JsonNode contact = truth("2031-05-16-01").path("contacts").get(0);
        Span held =
                new Span(
                        true_s("2031-05-16-01", contact.path("start")),
                        true_s("2031-05-16-01", contact.path("end")));
        List<Touch> likely =
                pair("2031-05-16-01", "blue").touch().stream()
                        .filter(t -> t.grade() == Touch.Grade.LIKELY)
                        .toList();
        assertEquals(1, likely.size(), pair("2031-05-16-01", "blue").touch()::toString);
        assertTrue(likely.get(0).span().overlaps(held), likely::toString);
        // The lead feels it: aileron or rudder is held differently from then on.
        assertTrue(likely.get(0).evidence().contains(Touch.Evidence.TRIM), likely::toString);
    }

    @Test
    void fortyFeetBelowBreakOffInTheOtherDatum() {
        String id = "2031-05-16-02";
        Finding amber =
                debrief(id).safety().stream()
                        .filter(f -> f.rule().equals("breakOffHeight"))
                        .filter(f -> f.participant().equals("amber"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(Finding.Outcome.EXCEEDED, amber.outcome());
        assertEquals(amber.limit() - 12.2, amber.value().orElseThrow(), ABOUT_M);
        HeightResult heights =
                debrief(id).heights().stream()
                        .filter(h -> h.file().equals("amber.csv"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(HeightDatum.ELLIPSOID, heights.datumRead());
    }
}
