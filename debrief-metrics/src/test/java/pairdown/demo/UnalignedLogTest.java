package pairdown.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pairdown.clock.ClockMethod;
import pairdown.clock.ClockResult;
import pairdown.clock.LoadedLog;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.demo.physics.Scenario;
import pairdown.demo.physics.Simulation;
import pairdown.demo.truth.Truth;
import pairdown.pair.Approach;
import pairdown.pair.PairDebrief;
import pairdown.track.Channel;
import pairdown.track.Track;

/** What is said, and what is left out, where a log's clock can't be had or its owner is wrong. */
class UnalignedLogTest {
    private static final Truth TRUTH = Simulation.run(Scenario.standard(3));
    private static final SimulatedAttempt MADE = SimulatedAttempt.of(TRUTH, 3);
    private static final double BLUE_EXIT_S = TRUTH.body("blue").exit_s().orElseThrow();

    private static Debrief debrief(List<LoadedLog> logs) throws Exception {
        return Debriefer.debrief(MADE.attempt(), logs, step -> {});
    }

    private static List<LoadedLog> with(String file, Track track) {
        List<LoadedLog> logs = new ArrayList<>();
        for (LoadedLog log : MADE.logs()) {
            boolean other = log.ref().file().equals(file);
            logs.add(other ? new LoadedLog(log.participant(), log.ref(), track) : log);
        }
        return logs;
    }

    private static LoadedLog log(String file) {
        return MADE.logs().stream()
                .filter(l -> l.ref().file().equals(file))
                .findFirst()
                .orElseThrow();
    }

    private static ClockResult clock(Debrief debrief, String file) {
        return debrief.clock().stream()
                .filter(c -> c.file().equals(file))
                .findFirst()
                .orElseThrow();
    }

    /** The same rows on another epoch, or on none. */
    private static Track timed(Track track, Optional<Duration> later) {
        Track.Builder rows = new Track.Builder();
        for (int i = 0; i < track.size(); i++) {
            rows.row(track.time_s(i));
            for (Channel c : track.channels()) {
                rows.set(c, track.value(c, i));
            }
        }
        return rows.build(
                later.map(d -> track.epoch().orElseThrow().plus(d)), track.datum(), track.report());
    }

    @Test
    void aLogWithoutTimeThatBeginsInFlightHasNoPairAndItIsSaid() throws Exception {
        Track whole = log("blue.csv").track();
        Track cut = whole.slice(whole.rowAtOrBefore(BLUE_EXIT_S + 20), whole.size());
        Debrief debrief = debrief(with("blue.csv", timed(cut, Optional.empty())));
        assertEquals(ClockMethod.NONE, clock(debrief, "blue.csv").method());
        String said = clock(debrief, "blue.csv").warnings().toString();
        assertTrue(said.contains("no absolute time"), said);
        assertTrue(debrief.pairs().stream().noneMatch(p -> p.flyer().equals("blue")));
        assertTrue(debrief.pairs().stream().anyMatch(p -> p.flyer().equals("amber")));
        assertTrue(
                debrief.notes().stream().anyMatch(n -> n.startsWith("blue: no log")),
                () -> debrief.notes().toString());
    }

    @Test
    void aLogWithoutHeightsHasNoPairAndItIsSaid() throws Exception {
        Track whole = log("blue.csv").track();
        Track.Builder rows = new Track.Builder();
        for (int i = 0; i < whole.size(); i++) {
            rows.row(whole.time_s(i));
            for (Channel c : List.of(Channel.LATITUDE, Channel.LONGITUDE)) {
                rows.set(c, whole.value(c, i));
            }
        }
        Track flat = rows.build(whole.epoch(), whole.datum(), whole.report());
        Debrief debrief = debrief(with("blue.csv", flat));
        assertTrue(debrief.pairs().stream().noneMatch(p -> p.flyer().equals("blue")));
        assertTrue(
                debrief.notes()
                        .contains(
                                "blue: its log has places without satellite heights, so no motion"
                                        + " is known"),
                () -> debrief.notes().toString());
    }

    @Test
    void aLogOfAnotherDaysFlightIsRefusedAndHasNoPair() throws Exception {
        Truth other = Simulation.run(Scenario.standard(8));
        Track flown =
                SimulatedAttempt.of(other, 8).logs().stream()
                        .filter(l -> l.ref().file().equals("blue.csv"))
                        .findFirst()
                        .orElseThrow()
                        .track();
        Debrief debrief = debrief(with("blue.csv", timed(flown, Optional.of(Duration.ofDays(3)))));
        assertEquals(ClockMethod.NONE, clock(debrief, "blue.csv").method());
        String said = clock(debrief, "blue.csv").warnings().toString();
        assertTrue(said.contains("another flight or another day"), said);
        assertTrue(debrief.pairs().stream().noneMatch(p -> p.flyer().equals("blue")));
    }

    @Test
    void loggersThatChangedHandsAreNoticed() throws Exception {
        List<LoadedLog> logs = new ArrayList<>();
        for (LoadedLog log : MADE.logs()) {
            String file = log.ref().file();
            Track track =
                    switch (file) {
                        case "blue.csv" -> log("ship.igc").track();
                        case "ship.igc" -> log("blue.csv").track();
                        default -> log.track();
                    };
            logs.add(new LoadedLog(log.participant(), log.ref(), track));
        }
        Debrief debrief = debrief(logs);
        for (String file : List.of("blue.csv", "ship.igc")) {
            String said = clock(debrief, file).warnings().toString();
            assertTrue(said.contains("swapped"), said);
        }
        assertFalse(clock(debrief, "amber.csv").warnings().toString().contains("swapped"));
    }

    @Test
    void aLeadsLogThatIsAJumpersIsNoticed() throws Exception {
        Debrief debrief = debrief(with("lead.nmea", log("blue.csv").track()));
        for (String file : List.of("lead.nmea", "ship.igc")) {
            String said = clock(debrief, file).warnings().toString();
            assertTrue(said.contains("swapped"), said);
        }
    }

    @Test
    void aFlyersLogThatIsTheShipsHasNoPairAndItIsSaid() throws Exception {
        Debrief debrief = debrief(with("blue.csv", log("ship.igc").track()));
        assertTrue(debrief.pairs().stream().noneMatch(p -> p.flyer().equals("blue")));
        assertTrue(
                debrief.notes().stream().anyMatch(n -> n.startsWith("blue: no flight")),
                () -> debrief.notes().toString());
    }

    /** Nothing but the flyers it would meet speaks against a clock that no ride tests. */
    @Test
    void aLeadOnGpsTimeIsDoubtedAndItsPairsAreNotJudged() throws Exception {
        Track late = timed(log("lead.nmea").track(), Optional.of(Duration.ofSeconds(18)));
        Debrief debrief = debrief(with("lead.nmea", late));
        ClockResult clock = clock(debrief, "lead.nmea");
        assertTrue(clock.warnings().toString().contains("GPS time"), clock::toString);
        assertTrue(clock.offsetSigma_s() >= 18);
        assertEquals(2, debrief.pairs().size());
        for (PairDebrief pair : debrief.pairs()) {
            Approach closest = pair.closest().orElseThrow();
            TruePair truth = PairScore.truth(MADE, pair.flyer());
            double off_m = closest.separation_m().value() - truth.separation_m(truth.closest_s());
            assertTrue(Math.abs(off_m) < 2 * closest.separation_m().sigma(), closest::toString);
            assertFalse(pair.matched().isKnown());
        }
    }

    @Test
    void aLeadOnLocalTimeHasNoPairsAndItIsSaidWhatItLooksLike() throws Exception {
        Track late = timed(log("lead.nmea").track(), Optional.of(Duration.ofHours(2)));
        Debrief debrief = debrief(with("lead.nmea", late));
        assertTrue(debrief.pairs().isEmpty());
        String said = clock(debrief, "lead.nmea").warnings().toString();
        assertTrue(said.contains("local time written as UTC (2 h 00 min ahead)"), said);
    }

    @Test
    void aLeadOnUtcIsNotDoubted() throws Exception {
        String said = clock(debrief(MADE.logs()), "lead.nmea").warnings().toString();
        assertFalse(said.contains("GPS time"), said);
        assertFalse(said.contains("swapped"), said);
    }
}
