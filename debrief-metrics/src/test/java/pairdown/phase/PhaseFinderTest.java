package pairdown.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairdown.attempt.Role;
import pairdown.height.AlignedLog;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.LogReport;
import pairdown.track.Track;
import pairdown.units.Estimate;

class PhaseFinderTest {
    @ParameterizedTest
    @CsvSource({"1,true", "5,true", "10,true", "5,false", "10,false"})
    void exitAndOpeningAreFoundToAFractionOfASecond(double rate_Hz, boolean own) {
        for (int seed = 0; seed < 3; seed++) {
            SyntheticJump jump = new SyntheticJump(seed, 27 + 11 * seed, seed);
            AlignedLog blue = SyntheticJump.log("blue", Role.FLYER, jump.flyer, rate_Hz, own, seed);
            AlignedLog ship = SyntheticJump.log("ship", Role.JUMPSHIP, jump.ship, 5, true, 9);
            for (List<AlignedLog> logs : List.of(List.of(blue), List.of(ship, blue))) {
                Phases p = PhaseFinder.find(logs, PhaseSettings.DEFAULTS);
                assertEquals(jump.exit_s, p.exit_s("blue").orElseThrow(), 0.3);
                assertEquals(jump.pull_s, p.opening_s("blue").orElseThrow(), 1);
                double sigma_s = p.estimate("blue", EventKind.EXIT).orElseThrow().sigma();
                assertTrue(sigma_s > 0.04 && sigma_s < 0.5, () -> "sigma " + sigma_s);
            }
        }
    }

    /** Jumps whose noise of places looks like the beginning of a pull. */
    @ParameterizedTest
    @CsvSource({"1, 26.5, 1", "14, 46, 2", "22, 28, 1", "42, 28, 0"})
    void placesOfASecondApartTellAnOpeningWithinASecond(long seed, double speed_mps, int turn) {
        SyntheticJump jump = new SyntheticJump(seed, speed_mps, turn);
        AlignedLog blue = SyntheticJump.log("blue", Role.FLYER, jump.flyer, 1, false, seed + 50);
        Phases p = PhaseFinder.find(List.of(blue), PhaseSettings.DEFAULTS);
        Estimate opening = p.estimate("blue", EventKind.OPENING).orElseThrow();
        assertEquals(jump.pull_s, opening.value(), Math.min(1, 2 * opening.sigma()));
    }

    @Test
    void aJumpGoesAboardFlightCanopyGround() {
        SyntheticJump jump = new SyntheticJump(1, 40, 1);
        AlignedLog blue = SyntheticJump.log("blue", Role.FLYER, jump.flyer, 5, true, 2);
        Phases p = PhaseFinder.find(List.of(blue), PhaseSettings.DEFAULTS);
        assertEquals(
                List.of(Phase.ABOARD, Phase.FLIGHT, Phase.CANOPY, Phase.GROUND),
                p.of("blue").stream().map(PhaseSpan::phase).toList());
        assertEquals(Optional.of(Phase.FLIGHT), p.at("blue", jump.exit_s + 10));
        assertTrue(p.estimate("blue", EventKind.STABLE).isPresent());
    }

    @Test
    void anExitAircraftClimbsRunsInAndDescends() {
        SyntheticJump jump = new SyntheticJump(1, 40, 1);
        AlignedLog ship = SyntheticJump.log("ship", Role.JUMPSHIP, jump.ship, 5, true, 2);
        Phases p = PhaseFinder.find(List.of(ship), PhaseSettings.DEFAULTS);
        List<PhaseSpan> spans = p.of("ship");
        assertEquals(
                List.of(Phase.CLIMB, Phase.RUN_IN, Phase.DESCENT),
                spans.stream().map(PhaseSpan::phase).toList());
        assertEquals(223, spans.get(1).span().start_s(), 8);
        assertEquals(264, spans.get(2).span().start_s(), 8);
    }

    /** A dive at 18 m/s from 40 to 100 s, then home at 7 m/s. */
    private static List<PhaseSpan> diving(double until_s) {
        Track.Builder rows = new Track.Builder();
        double height_m = 4000;
        for (int i = 0; i < until_s * 5; i++) {
            double t_s = i / 5.0;
            double sink_mps = t_s < 40 ? 0 : t_s < 100 ? 18 : 7;
            height_m -= sink_mps / 5;
            rows.row(t_s)
                    .set(Channel.LATITUDE, -24.5 + 40 * t_s / 111_000)
                    .set(Channel.LONGITUDE, 15.5)
                    .set(Channel.HEIGHT, height_m)
                    .set(Channel.VELOCITY_NORTH, 40)
                    .set(Channel.VELOCITY_EAST, 0)
                    .set(Channel.VELOCITY_DOWN, sink_mps);
        }
        Track track =
                rows.build(
                        Optional.of(Instant.parse("2031-05-14T15:00:00Z")),
                        HeightDatum.ELLIPSOID,
                        LogReport.whole("a.csv", "csv"));
        return PhaseFinder.find(
                        List.of(SyntheticJump.aligned("lead", Role.LEAD, track)),
                        PhaseSettings.DEFAULTS)
                .of("lead");
    }

    @Test
    void aLogThatEndsInTheDiveShowsNoRecovery() {
        List<PhaseSpan> spans = diving(80);
        PhaseSpan last = spans.get(spans.size() - 1);
        assertEquals(Phase.DESCENT, last.phase());
        assertEquals(79.8, last.span().end_s(), 0.5);
    }

    @Test
    void theWayHomeBelongsToTheRecovery() {
        List<PhaseSpan> spans = diving(180);
        PhaseSpan descent =
                spans.stream().filter(s -> s.phase() == Phase.DESCENT).findFirst().orElseThrow();
        assertEquals(40, descent.span().start_s(), 2);
        assertEquals(100, descent.span().end_s(), 2);
        assertEquals(Phase.RECOVERY, spans.get(spans.size() - 1).phase());
    }

    @Test
    void oneWhoStaysAboardHasNoExit() {
        SyntheticJump jump = new SyntheticJump(1, 40, 1);
        AlignedLog blue = SyntheticJump.log("blue", Role.FLYER, jump.ship, 5, true, 2);
        Phases p = PhaseFinder.find(List.of(blue), PhaseSettings.DEFAULTS);
        assertTrue(p.exit_s("blue").isEmpty());
        assertTrue(p.opening_s("blue").isEmpty());
    }

    @Test
    void aLogThatEndsInFlightHasNoOpening() {
        SyntheticJump jump = new SyntheticJump(1, 40, 1);
        Track whole = SyntheticJump.log("blue", Role.FLYER, jump.flyer, 5, true, 2).track();
        Track cut = whole.slice(0, whole.rowAtOrBefore(jump.exit_s + 20));
        Phases p =
                PhaseFinder.find(
                        List.of(SyntheticJump.aligned("blue", Role.FLYER, cut)),
                        PhaseSettings.DEFAULTS);
        assertEquals(jump.exit_s, p.exit_s("blue").orElseThrow(), 0.3);
        assertTrue(p.opening_s("blue").isEmpty());
        assertTrue(p.estimate("blue", EventKind.LOG_END).isPresent());
    }

    /** Place and speed after the hole say when the fall began, less well than a whole log. */
    @ParameterizedTest
    @CsvSource({"2", "4", "6"})
    void aHoleAtTheDoorWidensTheSigmaOfTheExit(double hole_s) {
        SyntheticJump jump = new SyntheticJump(2, 45, 1);
        Track whole = SyntheticJump.log("blue", Role.FLYER, jump.flyer, 5, true, 2).track();
        Track.Builder b = new Track.Builder();
        for (int i = 0; i < whole.size(); i++) {
            double since_s = whole.time_s(i) - jump.exit_s;
            if (since_s < -1 || since_s > hole_s - 1) {
                b.row(whole.time_s(i));
                for (Channel c : whole.channels()) {
                    b.set(c, whole.value(c, i));
                }
            }
        }
        Estimate seen = exit(whole);
        Estimate exit = exit(b.build(whole.epoch(), HeightDatum.ELLIPSOID, whole.report()));
        assertTrue(exit.sigma() > 1.5 * seen.sigma(), () -> seen + " " + exit);
        assertEquals(jump.exit_s, exit.value(), 3 * exit.sigma());
        assertEquals(jump.exit_s, exit.value(), 0.5);
    }

    @Test
    void aLongHoleLeavesTheExitOpenOverMostOfIt() {
        SyntheticJump jump = new SyntheticJump(2, 45, 1);
        Track whole = SyntheticJump.log("blue", Role.FLYER, jump.flyer, 5, true, 2).track();
        Track.Builder b = new Track.Builder();
        for (int i = 0; i < whole.size(); i++) {
            double since_s = whole.time_s(i) - jump.exit_s;
            if (since_s < -20 || since_s > 5) {
                b.row(whole.time_s(i));
                for (Channel c : whole.channels()) {
                    b.set(c, whole.value(c, i));
                }
            }
        }
        Estimate exit = exit(b.build(whole.epoch(), HeightDatum.ELLIPSOID, whole.report()));
        assertTrue(exit.sigma() > 1, exit::toString);
        assertEquals(jump.exit_s, exit.value(), 3 * exit.sigma());
    }

    private static Estimate exit(Track track) {
        Phases p =
                PhaseFinder.find(
                        List.of(SyntheticJump.aligned("blue", Role.FLYER, track)),
                        PhaseSettings.DEFAULTS);
        return p.estimate("blue", EventKind.EXIT).orElseThrow();
    }

    @Test
    void logsWithLittleOrNothingInThemDoNoHarm() {
        LogReport report = LogReport.whole("x", "csv");
        Track one =
                new Track.Builder()
                        .row(0)
                        .set(Channel.LATITUDE, -21)
                        .set(Channel.LONGITUDE, 15)
                        .set(Channel.HEIGHT, 5)
                        .build(Optional.of(java.time.Instant.EPOCH), HeightDatum.ELLIPSOID, report);
        for (Role role : Role.values()) {
            Phases p =
                    PhaseFinder.find(
                            List.of(SyntheticJump.aligned("x", role, one)), PhaseSettings.DEFAULTS);
            assertTrue(p.exit_s("x").isEmpty());
        }
        assertTrue(PhaseFinder.find(List.of(), PhaseSettings.DEFAULTS).events().isEmpty());
    }
}
