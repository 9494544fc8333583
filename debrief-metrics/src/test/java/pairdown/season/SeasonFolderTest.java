package pairdown.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.attempt.Target;
import pairdown.season.AttemptSummary.Dive;
import pairdown.season.AttemptSummary.FlyerSummary;
import pairdown.season.Envelope.Machine;
import pairdown.season.Ladder.Rung;
import pairdown.track.UnusableInputException;

/** A season of made-up attempts, read from their logs, with folders among them that are none. */
class SeasonFolderTest {
    private static final FlownAttempt WIDE = FlownAttempt.at(0, 30, 28);
    private static final FlownAttempt REPEAT = FlownAttempt.at(30, 30, 29);
    private static final FlownAttempt NEAR = FlownAttempt.at(1440, 15, 14);

    /** Flown too flat and too short: the team's target is not met. */
    private static final FlownAttempt FLAT = new FlownAttempt(1470, 15, 22, 15, 15);

    @TempDir private static Path folder;
    @TempDir private static Path user;
    private static Season season = SeasonSamples.NONE;

    @BeforeAll
    static void fly() throws Exception {
        WIDE.write(folder.resolve("day1/01"));
        REPEAT.write(folder.resolve("day1/02"));
        NEAR.write(folder.resolve("day2/03"));
        FLAT.write(folder.resolve("day2/04"));
        damage(FlownAttempt.at(60, 30, 28).write(folder.resolve("day1/damaged")));
        Files.createDirectories(folder.resolve("day2/empty"));
        Files.createDirectories(folder.resolve("day2/pictures"));
        Files.write(folder.resolve("day2/pictures/a.jpg"), new byte[] {(byte) 0xFF, (byte) 0xD8});
        Files.createDirectories(folder.resolve("day1/01/debrief"));
        season = SeasonFolder.at(folder, user).season(step -> {});
    }

    private static void damage(Path attempt) throws IOException {
        Path manifest = attempt.resolve("attempt.json");
        Files.writeString(manifest, Files.readString(manifest).substring(0, 90));
    }

    private static AttemptSummary attempt(String folder) {
        return season.attempts().stream()
                .filter(a -> a.folder().equals(folder))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsNoAttemptIsReportedAndTheRestIsComplete() {
        assertEquals(
                List.of("day1/01", "day1/02", "day2/03", "day2/04"),
                season.attempts().stream()
                        .filter(AttemptSummary::usable)
                        .map(AttemptSummary::folder)
                        .toList());
        assertEquals(
                List.of("day1/damaged", "day2/empty", "day2/pictures"),
                season.attempts().stream()
                        .filter(a -> !a.usable())
                        .map(AttemptSummary::folder)
                        .toList());
        assertTrue(attempt("day1/damaged").reason().orElseThrow().contains("attempt.json"));
        assertTrue(attempt("day2/empty").reason().orElseThrow().contains("no files"));
        assertTrue(attempt("day2/pictures").reason().orElseThrow().contains("no log"));
    }

    /** Others read a season on other machines. */
    @Test
    void reasonsNameFilesByTheirPlaceInTheSeason() {
        for (String name : List.of("day1/damaged", "day2/empty", "day2/pictures")) {
            String reason = attempt(name).reason().orElseThrow();
            assertTrue(reason.startsWith(name), reason);
            assertFalse(reason.contains(folder.toString()), reason);
        }
    }

    @Test
    void anAttemptsSummaryIsWhatWasFlown() {
        for (FlownAttempt flown : List.of(WIDE, REPEAT, NEAR, FLAT)) {
            AttemptSummary a =
                    List.of(
                                    attempt("day1/01"),
                                    attempt("day1/02"),
                                    attempt("day2/03"),
                                    attempt("day2/04"))
                            .get(List.of(WIDE, REPEAT, NEAR, FLAT).indexOf(flown));
            assertEquals(flown.gate_m(), a.gate_m().orElseThrow());
            FlyerSummary f = a.flyers().get(0);
            assertEquals("blue", f.flyer());
            // No noise, but the smoother's model and the median over the window's soft ends.
            assertEquals(flown.gap_m(), f.medianGap_m().orElseThrow(), 0.25);
            assertEquals(flown.gap_m(), f.leastGap_m().orElseThrow(), 0.25);
            // Rates are smoothed over up to a second.
            assertEquals(flown.matched_s(), f.matchedLongest_s().orElseThrow(), 1);
            double near_m = Math.max(1.2 * flown.gate_m(), flown.gate_m() + 2);
            assertEquals(flown.within_s(near_m), f.held_s().orElseThrow(), 0.5);
            assertEquals(0, f.overshoots().orElseThrow());
            assertEquals(flown.gap_m() <= near_m ? "on-gate" : "short", f.verdict().orElseThrow());
            assertEquals(-flown.gap_m(), f.spread().orElseThrow().ahead_m(), 0.5);
            assertEquals(-6, f.spread().orElseThrow().right_m(), 0.5);
            assertEquals(0, a.closureExceedances());
            assertTrue(a.episodes().isEmpty(), "no systems were logged");
        }
    }

    @Test
    void aDescentIsHeldAgainstItsTarget() {
        Dive dive = attempt("day1/01").dive().orElseThrow();
        assertTrue(dive.held());
        assertEquals(WIDE.stabilise_s(), dive.stabilise_s().orElseThrow(), 0.4);
        assertTrue(dive.peakElevator_pct().isEmpty(), "no elevator was logged");
        Dive flat = attempt("day2/04").dive().orElseThrow();
        assertFalse(flat.held());
        assertEquals(0, flat.longest_s());
        assertTrue(flat.stabilise_s().isEmpty());
        assertTrue(flat.watched_s() > 60, () -> flat.watched_s() + " s");
        Target target = attempt("day1/01").target().orElseThrow();
        assertEquals(FlownAttempt.SINK_MPS, target.sink_mps(), 1e-9);
    }

    @Test
    void theSeasonHasLadderRepeatabilityAndEnvelope() {
        List<Rung> rungs = season.ladder().flyers().get(0).rungs();
        assertEquals(4, rungs.size());
        assertEquals("no measurable change", rungs.get(1).against().orElseThrow());
        assertEquals("nearer", rungs.get(2).against().orElseThrow());
        assertEquals(3, season.repeatability().held().successes());
        assertEquals(4, season.repeatability().held().trials());
        assertEquals(1, season.repeatability().neverStabilised());
        Machine lead =
                season.envelope().machines().stream()
                        .filter(m -> m.role().equals("lead"))
                        .findFirst()
                        .orElseThrow();
        assertTrue(lead.segments().size() > 20);
        // The axes' tilt over the few kilometres flown is 0.05 m/s of the sink.
        assertTrue(
                lead.segments().stream()
                        .anyMatch(s -> Math.abs(s.sink_mps() - FlownAttempt.SINK_MPS) < 0.1));
        assertTrue(season.envelope().missingForce().isPresent());
    }

    @Test
    void aSecondReadIsTheSameAndDebriefsNothing() throws Exception {
        SeasonResults kept = SeasonFolder.at(folder, user).known();
        assertTrue(kept.complete(), () -> kept.notDebriefed().toString());
        assertEquals(season.madeFrom(), kept.season().madeFrom());
        assertEquals(season.attempts(), kept.season().attempts());
        assertEquals(SeasonJson.of(season), SeasonJson.of(kept.season()));
    }

    @Test
    void progressTellsEachAttemptOnce() throws Exception {
        ConcurrentLinkedQueue<String> said = new ConcurrentLinkedQueue<>();
        SeasonFolder.at(folder, user).season(said::add);
        assertEquals(7, said.size());
        assertTrue(said.stream().anyMatch(s -> s.startsWith("7 of 7: ")), said::toString);
    }

    @Test
    void aTeamsNumbersHoldForTheSeasonAndForEachAttemptAndAreDebriefedAnew(
            @TempDir Path team, @TempDir Path cache) throws Exception {
        WIDE.write(team.resolve("01"));
        Season usual = SeasonFolder.at(team, cache).season(step -> {});
        Files.writeString(
                team.resolve("season.json"),
                """
                {"settings": {"season": {"segment_s": 8}, "phases": {"descentSink_mps": 40}}}
                """);
        assertEquals(1, SeasonFolder.at(team, cache).known().notDebriefed().size());
        Season chosen = SeasonFolder.at(team, cache).season(step -> {});
        assertEquals(8, chosen.settings().segment_s());
        assertEquals(8, SeasonJson.of(chosen).at("/settings/segment_s").asDouble());
        assertTrue(usual.attempts().get(0).dive().isPresent());
        assertTrue(chosen.attempts().get(0).dive().isEmpty(), "nothing sinks that fast");
        assertEquals(
                List.of(
                        "season.segment_s is set to 8, usually 5",
                        "phases.descentSink_mps is set to 40, usually 4"),
                chosen.notes());
        Files.writeString(team.resolve("season.json"), "{\"settings\": {\"phases\": {\"x\": 1}}}");
        assertThrows(UnusableInputException.class, () -> SeasonFolder.at(team, cache));
    }

    @Test
    void criteriaAloneAskForNoNewDebrief(@TempDir Path team, @TempDir Path cache) throws Exception {
        WIDE.write(team.resolve("01"));
        SeasonFolder.at(team, cache).season(step -> {});
        Files.writeString(team.resolve("season.json"), "{\"criteria\": {\"onGateInARow\": 2}}");
        assertTrue(SeasonFolder.at(team, cache).known().complete());
    }

    @Test
    void aFolderThatIsNoneOrHoldsNoneIsRefused(@TempDir Path bare) {
        assertThrows(
                UnusableInputException.class, () -> SeasonFolder.at(bare.resolve("nowhere"), user));
        assertThrows(
                UnusableInputException.class, () -> SeasonFolder.at(bare, user).season(step -> {}));
    }
}
