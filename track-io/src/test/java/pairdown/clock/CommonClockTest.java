package pairdown.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairdown.attempt.ClockMark;
import pairdown.attempt.Role;
import pairdown.clock.SyntheticRide.Logger;
import pairdown.format.LogFiles;
import pairdown.height.AlignedLog;
import pairdown.height.HeightReconciler;
import pairdown.track.Channel;
import pairdown.track.Track;

class CommonClockTest {
    private static final SyntheticRide SHIP = SyntheticRide.ship(11, 420, s -> s > 80);
    private static final SyntheticRide BLUE = SHIP.passenger(0.4, 350, 400);
    private static final LoadedLog REFERENCE =
            SyntheticRide.loaded("ship", Role.JUMPSHIP, SHIP.log(Logger.csv(5, 0, 1).as("nmea")));

    @ParameterizedTest
    @CsvSource({"1,true", "5,true", "10,true", "1,false", "5,false", "10,false"})
    void aTurningClimbGivesTheOffsetAtAnyRate(double rate_Hz, boolean ownVelocity) {
        Logger how = Logger.csv(rate_Hz, -2.41, 5);
        ClockResult r = second(REFERENCE, blue(ownVelocity ? how : how.positionsOnly()));
        assertEquals(ClockMethod.SHARED_RIDE, r.method());
        assertEquals(-2.41, r.map().offset_s(), 0.03);
        assertTrue(r.offsetSigma_s() > 0.02 && r.offsetSigma_s() < 0.05, () -> r.toString());
        assertFalse(r.curve().orElseThrow().points().isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "-18,GPS time",
        "-7200,2 h 00 min ahead",
        "20700,5 h 45 min behind",
        "-86400,1 days"
    })
    void aKnownMistakeIsMendedAndNamed(double offset_s, String words) {
        ClockResult r = second(REFERENCE, blue(Logger.csv(5, offset_s, 5)));
        assertEquals(offset_s, r.map().offset_s(), 1e-9);
        assertTrue(r.warnings().toString().contains(words), () -> r.warnings().toString());
    }

    @Test
    void anOddOffsetOfManyMinutesIsFound() {
        ClockResult r = second(REFERENCE, blue(Logger.csv(5, 137.3, 5)));
        assertEquals(137.3, r.map().offset_s(), 0.03);
    }

    @Test
    void aSmallOffsetIsReportedButNotApplied() {
        ClockResult r = second(REFERENCE, blue(Logger.csv(5, 0.06, 5)));
        assertEquals(ClockMethod.GNSS_TIME, r.method());
        assertEquals(0, r.map().offset_s());
        assertEquals(0.06, r.measured().orElseThrow().value(), 0.03);
        assertTrue(r.offsetSigma_s() >= 0.05);
    }

    @Test
    void velocitiesThatLagPositionsAreNoticedAndDoNotShiftTheClock() {
        ClockResult r = second(REFERENCE, blue(Logger.csv(10, -2.41, 5)));
        double lag_s = SyntheticRide.velocityLag_s(5);
        assertEquals(-lag_s, r.latency_s().orElseThrow().value(), 0.03);
        assertEquals(-2.41, r.map().offset_s(), 0.03);
    }

    @ParameterizedTest
    @CsvSource({"1,0", "2,0", "3,0", "4,0", "5,0", "1,0.2", "2,0.2", "3,0.4", "4,0.4"})
    void aStraightClimbIsRefusedInWords(long seed, double gust_mps) {
        ClockResult r = straightClimb(seed, gust_mps);
        assertTrue(r.measured().isEmpty(), () -> r.toString());
        assertTrue(r.warnings().toString().contains("too straight"), () -> r.toString());
        assertEquals(0, r.map().offset_s());
    }

    @Test
    void gustsMayTellTheLagOfAStraightClimbAndThenItIsRight() {
        ClockResult r = straightClimb(4, 0.7);
        if (r.measured().isPresent()) {
            assertEquals(0, r.measured().get().value(), 3 * r.measured().get().sigma());
        } else {
            assertTrue(r.warnings().toString().contains("too straight"), () -> r.toString());
        }
        assertEquals(0, r.map().offset_s());
    }

    /** The take-off is logged by neither: all that is left is a line. */
    private static ClockResult straightClimb(long seed, double gust_mps) {
        SyntheticRide ship = SyntheticRide.ship(seed, 420, s -> false, gust_mps);
        Track one = ship.log(Logger.csv(5, 0, 100 + seed).as("nmea"));
        Track other = ship.passenger(0, 350, 400).log(Logger.csv(5, 0, 300 + seed));
        return second(
                SyntheticRide.loaded("ship", Role.JUMPSHIP, from(one, 100)),
                SyntheticRide.loaded("blue", Role.FLYER, from(other, 100)));
    }

    private static Track from(Track whole, double start_s) {
        return whole.slice(whole.rowAtOrBefore(start_s), whole.size());
    }

    @Test
    void theMajorityDecidesAmongFormatsThatMayBeWrong() {
        List<LoadedLog> logs =
                List.of(
                        load(
                                "red",
                                Role.FLYER,
                                SHIP.passenger(0, 352, 400),
                                Logger.csv(5, -3600, 3)),
                        load("blue", Role.FLYER, BLUE, Logger.csv(5, 0, 2)),
                        load(
                                "amber",
                                Role.FLYER,
                                SHIP.passenger(-1, 351, 400),
                                Logger.csv(2, 0, 4)));
        List<ClockResult> r = CommonClock.align(logs, ClockSettings.DEFAULTS).results();
        assertEquals(-3600, r.get(0).map().offset_s(), 0.1);
        assertEquals(0, r.get(1).map().offset_s(), 0.1);
    }

    @Test
    void aSatelliteFormatOutvotesTheMajority() {
        List<LoadedLog> logs =
                List.of(
                        load(
                                "red",
                                Role.FLYER,
                                SHIP.passenger(0, 352, 400),
                                Logger.csv(5, -3600, 3)),
                        load("blue", Role.FLYER, BLUE, Logger.csv(5, -3600, 2)),
                        REFERENCE);
        List<ClockResult> r = CommonClock.align(logs, ClockSettings.DEFAULTS).results();
        assertEquals(-3600, r.get(0).map().offset_s(), 0.1);
        assertEquals(-3600, r.get(1).map().offset_s(), 0.1);
        assertEquals(0, r.get(2).map().offset_s());
    }

    @Test
    void twoClocksThatDisagreeWithoutAThirdAreDoubted() {
        List<LoadedLog> logs =
                List.of(
                        load("red", Role.FLYER, SHIP.passenger(0, 352, 400), Logger.csv(5, -40, 3)),
                        load("blue", Role.FLYER, BLUE, Logger.csv(5, 0, 2)));
        ClockResult r = CommonClock.align(logs, ClockSettings.DEFAULTS).results().get(0);
        assertTrue(r.warnings().toString().contains("nothing tells which"), () -> r.toString());
    }

    @Test
    void aMarkByHandOutranksTheMeasurementAndIsChecked() {
        ClockMark mark = new ClockMark(OptionalDouble.of(-2), Optional.empty());
        LoadedLog blue =
                SyntheticRide.loaded("blue", Role.FLYER, BLUE.log(Logger.csv(5, -2.41, 5)), mark);
        ClockResult r = second(REFERENCE, blue);
        assertEquals(ClockMethod.MARK, r.method());
        assertEquals(-2, r.map().offset_s());
        assertEquals(-2.41, r.measured().orElseThrow().value(), 0.03);
        assertTrue(r.warnings().toString().contains("disagrees"), () -> r.toString());
    }

    @Test
    void anOffsetBesideAZeroIsAddedToIt() {
        ClockMark mark =
                new ClockMark(
                        OptionalDouble.of(3), Optional.of(SyntheticRide.START.plusSeconds(97)));
        Track log = BLUE.log(Logger.csv(5, 100, 5).relative());
        ClockResult r = second(REFERENCE, SyntheticRide.loaded("blue", Role.FLYER, log, mark));
        assertEquals(ClockMethod.MARK, r.method());
        assertEquals(Optional.of(SyntheticRide.START.plusSeconds(100)), r.zero());
        assertEquals(List.of(), r.warnings());
    }

    @Test
    void aMarkOfTheOtherKindIsSaidNotToBeUsed() {
        ClockMark zero = new ClockMark(OptionalDouble.empty(), Optional.of(SyntheticRide.START));
        Track dated = BLUE.log(Logger.csv(5, 0, 5));
        ClockResult r = second(REFERENCE, SyntheticRide.loaded("blue", Role.FLYER, dated, zero));
        assertTrue(r.warnings().toString().contains("a clock's zero is for"), r::toString);
        ClockMark offset = new ClockMark(OptionalDouble.of(-2), Optional.empty());
        Track own = BLUE.log(Logger.csv(5, 100, 5).relative());
        r = second(REFERENCE, SyntheticRide.loaded("blue", Role.FLYER, own, offset));
        assertTrue(r.warnings().toString().contains("needs a zero"), r::toString);
    }

    @Test
    void aLogOfItsOwnZeroWithPlacesIsTiedByItsRide() {
        LoadedLog blue = blue(Logger.csv(5, 100, 5).relative());
        ClockResult r = second(REFERENCE, blue);
        assertEquals(ClockMethod.SHARED_RIDE, r.method());
        Duration zero = Duration.between(SyntheticRide.START, r.zero().orElseThrow());
        assertEquals(100, zero.toMillis() / 1e3, 0.03);
    }

    @Test
    void aLogWithoutTimeAndRideHasNoClock() {
        SyntheticRide elsewhere = SyntheticRide.ship(77, 420, s -> s > 80);
        ClockResult r =
                second(
                        REFERENCE,
                        load("blue", Role.FLYER, elsewhere, Logger.csv(5, 0, 9).relative()));
        assertEquals(ClockMethod.NONE, r.method());
        assertFalse(r.warnings().isEmpty());
    }

    @Test
    void aLogOfAnotherDayIsRefused() {
        SyntheticRide elsewhere = SyntheticRide.ship(77, 420, s -> s > 80);
        ClockResult r =
                second(REFERENCE, load("blue", Role.FLYER, elsewhere, Logger.csv(5, 3 * 86400, 9)));
        assertEquals(ClockMethod.NONE, r.method());
        assertTrue(r.warnings().toString().contains("another day"), () -> r.toString());
    }

    @Test
    void aSatelliteLogThatRodeWithNobodyKeepsItsTime() {
        SyntheticRide elsewhere = SyntheticRide.ship(77, 420, s -> s > 80);
        ClockResult r = second(REFERENCE, load("lead", Role.LEAD, elsewhere, Logger.csv(5, 0, 9)));
        assertEquals(ClockMethod.GNSS_TIME, r.method());
        assertTrue(r.measured().isEmpty());
        assertEquals(
                Math.sqrt(2) * ClockSettings.DEFAULTS.latencySigma_s(), r.offsetSigma_s(), 1e-12);
    }

    @Test
    void whatAnUntestedClockWouldDoIsSaidOfALeadWhoseFormatDoesNotTellUtc() {
        SyntheticRide elsewhere = SyntheticRide.ship(77, 420, s -> s > 80);
        LoadedLog csv = load("lead", Role.LEAD, elsewhere, Logger.csv(5, 0, 9));
        LoadedLog nmea = load("lead", Role.LEAD, elsewhere, Logger.csv(5, 0, 9).as("nmea"));
        assertTrue(second(REFERENCE, csv).warnings().toString().contains("at their word"));
        assertFalse(second(REFERENCE, nmea).warnings().toString().contains("at their word"));
    }

    @Test
    void howLateReceiversAreIsSharedByThoseWhoRodeTogetherAndByNobodyElse() {
        SyntheticRide elsewhere = SyntheticRide.ship(77, 420, s -> s > 80);
        LoadedLog lead = load("lead", Role.LEAD, elsewhere, Logger.csv(5, 0, 9).as("nmea"));
        List<ClockResult> r =
                CommonClock.align(
                                List.of(lead, REFERENCE, blue(Logger.csv(5, -2.41, 5))),
                                ClockSettings.DEFAULTS)
                        .results();
        ClockDoubt blue = r.get(2).doubt();
        assertEquals(r.get(1).doubt().group(), blue.group());
        assertNotEquals(r.get(0).doubt().group(), blue.group());
        assertEquals(r.get(2).offsetSigma_s(), blue.own_s());
        assertEquals(0, r.get(0).doubt().own_s());
        double receiver_s = ClockSettings.DEFAULTS.latencySigma_s();
        assertEquals(receiver_s, r.get(0).doubt().outside_s());
        assertEquals(Math.hypot(blue.own_s(), receiver_s), blue.outside_s(), 1e-12);
        assertEquals(
                Math.hypot(blue.outside_s(), ClockSettings.DEFAULTS.commonLatency_s()),
                blue.absolute_s(),
                1e-12);
    }

    @Test
    void pressureThatRunsAheadOfEverythingElseIsAnotherFlights() {
        SyntheticRide lead = SyntheticRide.ship(8, 900, s -> s > 80);
        LoadedLog gnss = load("lead", Role.LEAD, lead, Logger.csv(5, 0, 1).as("nmea"));
        Track recorder = lead.recorder(8, 41.37, 30e-6, -3, true, 3);
        ClockResult r = second(gnss, SyntheticRide.second(gnss, recorder));
        assertEquals(ClockMethod.NONE, r.method(), r::toString);
        assertTrue(r.warnings().toString().contains("another flight"), r::toString);
    }

    @Test
    void aPressureLagDoesNotBecomeAClockError() {
        SyntheticRide lead = SyntheticRide.ship(8, 900, s -> s > 80);
        LoadedLog gnss = load("lead", Role.LEAD, lead, Logger.csv(5, 0, 1).as("nmea"));
        Track recorder = lead.recorder(8, 41.37, 30e-6, 0.5, true, 3);
        ClockResult r = second(gnss, SyntheticRide.second(gnss, recorder));
        assertEquals(ClockMethod.AIR_DATA_MATCH, r.method());
        double zero_s =
                Duration.between(SyntheticRide.START, r.zero().orElseThrow()).toNanos() * 1e-9;
        assertEquals(41.37, zero_s, 0.1);
        double end_s = 850;
        assertEquals(41.37 + end_s * (1 + 30e-6), zero_s + end_s * (1 + r.map().rate()), 0.1);
        assertTrue(r.warnings().toString().contains("pressure height lags"), () -> r.toString());
    }

    /** Circling in a wind, the track over ground turns now faster, now slower than the nose. */
    @Test
    void aWindDoesNotBecomeAClockErrorOfTheYawRate() {
        for (double wind_mps : new double[] {0, 12}) {
            SyntheticRide lead = SyntheticRide.circling(520, 330, wind_mps);
            LoadedLog gnss = load("lead", Role.LEAD, lead, Logger.csv(5, 0, 1).as("nmea"));
            Track recorder = lead.turnRecorder(10, 12.3, 3);
            ClockResult r = second(gnss, SyntheticRide.second(gnss, recorder));
            double zero_s =
                    Duration.between(SyntheticRide.START, r.zero().orElseThrow()).toNanos() * 1e-9;
            assertEquals(12.3, zero_s, 0.1, () -> "wind " + wind_mps + ": " + r);
            String lag = r.warnings().get(0);
            assertTrue(lag.startsWith("pressure height lags yaw rate by 0."), lag);
        }
    }

    /** On straight legs a wind that veers with height looks like a compass that is off. */
    @Test
    void aWindThatVeersDoesNotBecomeAClockErrorOfTheHeading() {
        SyntheticRide lead = SyntheticRide.circling(520, 330, 12, Math.toRadians(15) / 1000);
        LoadedLog gnss = load("lead", Role.LEAD, lead, Logger.csv(5, 0, 1).as("nmea"));
        ClockResult r = second(gnss, SyntheticRide.second(gnss, lead.headingRecorder(10, 12.3, 3)));
        assertTrue(r.zero().isPresent(), () -> r.warnings().toString());
        double zero_s =
                Duration.between(SyntheticRide.START, r.zero().orElseThrow()).toNanos() * 1e-9;
        assertEquals(12.3, zero_s, 0.06, () -> r.toString());
        assertTrue(r.warnings().get(0).contains("heading by 0."), r::toString);
    }

    @Test
    void aRecorderThatPointsWhereItsAircraftDidNotGoIsOfAnotherFlight() {
        SyntheticRide lead = SyntheticRide.ship(8, 900, s -> s > 80);
        LoadedLog gnss = load("lead", Role.LEAD, lead, Logger.csv(5, 0, 1).as("nmea"));
        Track recorder = lead.recorder(8, 41.37, 30e-6, 0.5, true, 120, 3);
        ClockResult r = second(gnss, SyntheticRide.second(gnss, recorder));
        assertEquals(ClockMethod.NONE, r.method(), r::toString);
        assertTrue(r.warnings().toString().contains("another flight"), r::toString);
    }

    @Test
    void pressureAloneLeavesItsLagInTheSigma() {
        SyntheticRide lead = SyntheticRide.ship(8, 900, s -> s > 80);
        LoadedLog gnss = load("lead", Role.LEAD, lead, Logger.csv(5, 0, 1).as("nmea"));
        ClockResult r =
                second(gnss, SyntheticRide.second(gnss, lead.recorder(8, 41.37, 0, 0.5, false, 3)));
        assertTrue(r.offsetSigma_s() >= 0.5, () -> r.toString());
        assertTrue(r.warnings().toString().contains("pressure height alone"), () -> r.toString());
    }

    @Test
    void anAttemptOfOneLogStartsAtItsFirstFix() {
        LoadedLog blue = blue(Logger.csv(5, 0, 2));
        ClockSolution s = CommonClock.align(List.of(blue), ClockSettings.DEFAULTS);
        double first_s = blue.track().time_s(0);
        assertEquals(first_s, -s.axis().seconds(SyntheticRide.START), 1e-6);
        assertTrue(s.results().get(0).warnings().isEmpty());
    }

    @Test
    void aJumpersLogThatRodeWithNobodyWhileOthersDidIsAskedAfter() {
        SyntheticRide other = SyntheticRide.ship(12, 560, s -> s > 80).passenger(0.4, 350, 420);
        LoadedLog amber = load("amber", Role.FLYER, other, Logger.csv(5, 0, 3));
        List<ClockResult> r =
                CommonClock.align(
                                List.of(REFERENCE, blue(Logger.csv(5, 0, 5)), amber),
                                ClockSettings.DEFAULTS)
                        .results();
        assertTrue(
                r.get(2).warnings().toString().contains("a log of another flight?"),
                r.get(2)::toString);
        assertTrue(r.get(1).warnings().isEmpty(), r.get(1)::toString);
    }

    @Test
    void twoLoggersThatChangedSidesAreNoticed() {
        SyntheticRide ship = SyntheticRide.ship(11, 560, s -> s > 80);
        SyntheticRide blue = ship.passenger(0.4, 350, 420);
        List<LoadedLog> logs =
                List.of(
                        load("ship", Role.JUMPSHIP, blue, Logger.csv(5, 0, 1).as("nmea")),
                        load("blue", Role.FLYER, ship, Logger.csv(5, 0, 2)));
        List<ClockResult> r = CommonClock.align(logs, ClockSettings.DEFAULTS).results();
        assertTrue(r.get(0).warnings().toString().contains("opens a canopy"), () -> r.toString());
        assertTrue(r.get(1).warnings().toString().contains("swapped"), () -> r.toString());
    }

    @Test
    void twoLogsOfOneParticipantThatPartAreNoticed() {
        SyntheticRide ship = SyntheticRide.ship(11, 560, s -> s > 80);
        LoadedLog stays = load("blue", Role.FLYER, ship, Logger.csv(5, 0, 1));
        SyntheticRide jumps = ship.passenger(0, 350, 420);
        ClockResult r = second(stays, SyntheticRide.second(stays, jumps.log(Logger.csv(5, 0, 2))));
        assertTrue(r.warnings().toString().contains("parts"), () -> r.toString());
    }

    @Test
    void gapsAndCutLogsDoNoHarm() {
        Track whole = BLUE.log(Logger.csv(5, -2.41, 5));
        Track.Builder holed = new Track.Builder();
        for (int i = 0; i < whole.size(); i++) {
            if (i % 400 > 60) {
                holed.row(whole.time_s(i));
                for (Channel c : whole.channels()) {
                    holed.set(c, whole.value(c, i));
                }
            }
        }
        Track track = holed.build(whole.epoch(), whole.datum(), whole.report());
        ClockResult r = second(REFERENCE, SyntheticRide.loaded("blue", Role.FLYER, track));
        assertEquals(-2.41, r.map().offset_s(), 0.05);
        for (int rows : new int[] {1, 2, 11, 200, 450}) {
            LoadedLog cut = SyntheticRide.loaded("blue", Role.FLYER, whole.slice(0, rows));
            ClockResult some = second(REFERENCE, cut);
            assertTrue(some.measured().isEmpty(), () -> rows + " rows: " + some);
        }
    }

    /** Two real receivers at rest, 3.3 km apart, over midnight: nothing rides, nothing is tied. */
    @Test
    void receiversAtRestAreLeftAlone() throws Exception {
        List<LoadedLog> logs = new ArrayList<>();
        for (String id : List.of("pair-a", "pair-b")) {
            Path file = Path.of(CommonClockTest.class.getResource(id + ".nmea").toURI());
            Track track = LogFiles.read(file, Optional.empty());
            logs.add(SyntheticRide.loaded(id, Role.FLYER, track));
        }
        ClockSolution s = CommonClock.align(logs, ClockSettings.DEFAULTS);
        assertTrue(s.rides().isEmpty());
        for (ClockResult r : s.results()) {
            assertEquals(ClockMethod.GNSS_TIME, r.method());
            assertTrue(r.measured().isEmpty());
        }
        List<AlignedLog> aligned = HeightReconciler.reconcile(logs, s);
        assertEquals(36.478, aligned.get(0).height().undulation_m(), 0.01);
        assertEquals(36.320, aligned.get(1).height().undulation_m(), 0.01);
    }

    private static ClockResult second(LoadedLog first, LoadedLog second) {
        return CommonClock.align(List.of(first, second), ClockSettings.DEFAULTS).results().get(1);
    }

    private static LoadedLog blue(Logger how) {
        return load("blue", Role.FLYER, BLUE, how);
    }

    private static LoadedLog load(String id, Role role, SyntheticRide ride, Logger how) {
        return SyntheticRide.loaded(id, role, ride.log(how));
    }
}
