package pairdown.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairdown.pair.Scene.flyer;
import static pairdown.pair.Scene.input;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pairdown.air.Wind;
import pairdown.pair.GateHeld.Verdict;
import pairdown.pair.MatchedWindow.EndedBy;
import pairdown.pair.PairSeries.Figure;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/** A lead diving straight north and flyers whose offset from it is known exactly. */
class PairAnalysisTest {
    @Test
    void aFlyerBehindRightAndAboveIsSeenThere() {
        PairDebrief pair = PairAnalysis.analyse(input(t_s -> new Vec3(12, -30, 5)));
        PairSeries s = pair.series();
        assertEquals(Axes.AIR, pair.axes());
        assertEquals(-30, s.value(Figure.AHEAD, 100), 1e-2);
        assertEquals(12, s.value(Figure.RIGHT, 100), 1e-2);
        assertEquals(5, s.value(Figure.ABOVE, 100), 1e-2);
        assertEquals(Math.sqrt(144 + 900 + 25), s.value(Figure.SEPARATION, 100), 1e-4);
        double gap_m = new Vec3(-30 - 0.4, 12 + 6.2, 5 - 0.9).norm();
        assertEquals(gap_m, s.value(Figure.GAP, 100), 1e-2);
    }

    @Test
    void closureIsPositiveWhileClosing() {
        PairDebrief pair = PairAnalysis.analyse(input(t_s -> new Vec3(0, -100 + 3 * t_s, 0)));
        assertEquals(3, pair.series().value(Figure.CLOSURE_RATE, 50), 1e-3);
        assertEquals(
                pair.series().value(Figure.AHEAD_RATE, 50),
                (pair.series().value(Figure.AHEAD, 51) - pair.series().value(Figure.AHEAD, 49))
                        / 0.2,
                1e-2);
    }

    @Test
    void theClosestApproachLiesBetweenRows() {
        PairDebrief pair = PairAnalysis.analyse(input(t_s -> new Vec3(8, -20 * (t_s - 17.033), 0)));
        Approach closest = pair.closest().orElseThrow();
        assertEquals(17.033, closest.time_s(), 1e-3);
        assertEquals(8, closest.separation_m().value(), 1e-4);
        assertEquals(0, closest.closureRate_mps().orElseThrow(), 0.01);
    }

    /**
     * Eight behind and six left is 143° left of the nose, 1.41 m behind the line 45° off the tail.
     */
    @Test
    void theClosestApproachSaysWhereTheFlyerIsSeenFromTheLead() {
        PairDebrief pair = PairAnalysis.analyse(input(t_s -> new Vec3(-6, -8, 2)));
        Bearing seen = pair.closest().orElseThrow().bearing().orElseThrow();
        assertEquals(360 - 143.13, seen.bearing_deg(), 0.1);
        assertEquals(7, seen.hour());
        assertEquals(Bearing.Level.HIGH, seen.level());
        assertEquals(-Math.sqrt(2), seen.offLine_m(), 0.02);
        assertTrue(
                PairAnalysis.analyse(input(t_s -> new Vec3(0.5, 0.5, 0)))
                        .closest()
                        .orElseThrow()
                        .bearing()
                        .isEmpty(),
                "under three sigma of range");
    }

    /** At row 50, 5 s, the two are 75 m apart along the way and pass 4 m apart 4.9 s later. */
    @Test
    void theSeriesSaysWhereTheTwoPassIfNothingChanges() {
        PairSeries s =
                PairAnalysis.analyse(input(t_s -> new Vec3(4, -75 + 15.3 * (t_s - 5), 0))).series();
        assertEquals(4, s.value(Figure.PREDICTED_MISS, 50), 1e-2);
        assertEquals(75 / 15.3, s.value(Figure.PREDICTED_MISS_IN, 50), 1e-2);
        double steady_m = s.value(Figure.SEPARATION_SIGMA, 50);
        double unforeseen_m = 0.5 * Math.pow(75 / 15.3, 2);
        assertTrue(s.value(Figure.PREDICTED_MISS_SIGMA, 50) > Math.hypot(steady_m, unforeseen_m));
        assertEquals(0, s.value(Figure.PREDICTED_MISS_IN, 150), "past it");
        PairSeries holding = PairAnalysis.analyse(input(t_s -> new Vec3(12, -30, 5))).series();
        assertTrue(Double.isNaN(holding.value(Figure.PREDICTED_MISS, 50)));
    }

    @Test
    void closureIsBlankUnderThreeSigmaOfRange() {
        KnownMotion lead = Scene.diving(Scene.DIVE_S).sigmas(1, 0.05);
        KnownMotion near = flyer(t_s -> new Vec3(4, 0, 0)).sigmas(1, 0.05);
        KnownMotion far = flyer(t_s -> new Vec3(5, 0, 0)).sigmas(1, 0.05);
        assertTrue(
                Double.isNaN(
                        PairAnalysis.analyse(Scene.input(lead, near))
                                .series()
                                .value(Figure.CLOSURE_RATE, 100)));
        assertFalse(
                Double.isNaN(
                        PairAnalysis.analyse(Scene.input(lead, far))
                                .series()
                                .value(Figure.CLOSURE_RATE, 100)));
    }

    @Test
    void aClockSigmaMovesABodyAlongItsVelocity() {
        PairInput in = input(t_s -> new Vec3(0, -50, 0));
        PairInput late = Scene.withFlyer(in, in.flyer().withClockSigma(0.1));
        double sigma_m = PairAnalysis.analyse(late).series().value(Figure.SEPARATION_SIGMA, 100);
        assertEquals(Math.hypot(3.3, Math.sqrt(0.5)), sigma_m, 1e-2);
    }

    @Test
    void aHoleOverASecondEndsAWindowAndEmptiesItsRows() {
        KnownMotion holed = flyer(t_s -> new Vec3(0, -50, 0)).without(20, 22);
        PairDebrief pair = PairAnalysis.analyse(Scene.input(Scene.diving(Scene.DIVE_S), holed));
        assertEquals(2, pair.matched().windows().size());
        assertEquals(Scene.DIVE_S - 2, pair.matched().total_s(), 1e-6);
        assertEquals(2, pair.matched().totalLonger_s(), 1e-6);
        assertEquals(20, pair.matched().windows().get(0).span().end_s(), 1e-6);
        assertEquals(EndedBy.DATA, pair.matched().windows().get(0).endedBy());
        assertTrue(Double.isNaN(pair.series().value(Figure.SEPARATION, 210)));
        assertFalse(Double.isNaN(pair.series().value(Figure.SEPARATION, 200)));
        assertFalse(Double.isNaN(pair.series().value(Figure.SEPARATION, 220)));
    }

    @Test
    void aHoleOfASecondIsNone() {
        KnownMotion holed = flyer(t_s -> new Vec3(0, -50, 0)).without(20, 21);
        PairDebrief pair = PairAnalysis.analyse(Scene.input(Scene.diving(Scene.DIVE_S), holed));
        assertFalse(Double.isNaN(pair.series().value(Figure.SEPARATION, 205)));
    }

    @Test
    void theRowsFollowTheFasterLog() {
        PairInput in =
                Scene.input(
                        Scene.diving(Scene.DIVE_S),
                        KnownMotion.of(Scene.DIVE_S, 25, t_s -> new Vec3(0, 33 * t_s, 3000)));
        PairMember fast =
                PairMember.of("blue", in.flyer().trajectory(), new DataGrade(25, true, true));
        PairDebrief pair = PairAnalysis.analyse(Scene.withFlyer(in, fast));
        assertEquals(0.04, pair.series().step_s(), 1e-12);
    }

    @Test
    void withoutASlotThereIsNoGap() {
        PairInput in = input(t_s -> new Vec3(0, -50, 0));
        PairDebrief pair =
                PairAnalysis.analyse(
                        Scene.withGate(
                                Scene.with(in, in.wind(), Optional.empty(), in.matched()), 30));
        assertTrue(pair.leastGap().isEmpty());
        assertTrue(pair.closest().orElseThrow().gap_m().isEmpty());
        assertEquals(Verdict.NO_DATA, pair.gateHeld().orElseThrow().verdict());
        assertTrue(Double.isNaN(pair.series().value(Figure.GAP, 10)));
        assertTrue(pair.refusals().stream().anyMatch(r -> r.contains("no slot")));
    }

    @Test
    void withoutWindTheAxesAreTheGroundTrackAndTheTargetIsNotJudged() {
        PairInput in = input(t_s -> new Vec3(0, -50, 0));
        PairDebrief pair =
                PairAnalysis.analyse(
                        Scene.with(in, Wind.none(List.of("no")), in.slotArm(), in.matched()));
        assertEquals(Axes.GROUND, pair.axes());
        assertTrue(pair.onTarget().isEmpty());
    }

    @Test
    void aCrosswindTurnsTheAxesOffTheTrackByTwentyFourDegrees() {
        Vec3 air_mps = Scene.DIVE_MPS;
        Wind wind = new Wind("typed", List.of(new Wind.Layer(0, 5000, 15, 0, 0.2)), List.of());
        Vec3 ground_mps = air_mps.plus(new Vec3(15, 0, 0));
        KnownMotion lead = KnownMotion.straight(Scene.DIVE_S, Scene.TOP_M, ground_mps);
        KnownMotion flyer =
                KnownMotion.straight(
                        Scene.DIVE_S, Scene.TOP_M.plus(new Vec3(0, -10, 0)), ground_mps);
        PairInput in = Scene.input(lead, flyer);
        PairSeries byAir =
                PairAnalysis.analyse(Scene.with(in, wind, in.slotArm(), in.matched())).series();
        PairSeries byTrack =
                PairAnalysis.analyse(
                                Scene.with(in, Wind.none(List.of()), in.slotArm(), in.matched()))
                        .series();
        assertEquals(0, byAir.value(Figure.RIGHT, 100), 0.05);
        // 10 m behind, seen along a track turned by atan(15/33) = 24.4°.
        assertEquals(10 * Math.sin(Math.atan(15.0 / 33)), byTrack.value(Figure.RIGHT, 100), 0.05);
    }

    @Test
    void aGateHeldIsOnGateAndOneFlownThroughIsThrough() {
        Vec3 slot_m = new Vec3(-6.2, 0.4, 0.9);
        PairInput held = Scene.withGate(input(t_s -> slot_m.plus(new Vec3(0, -29, 0))), 30);
        GateHeld on = PairAnalysis.analyse(held).gateHeld().orElseThrow();
        assertEquals(Verdict.ON_GATE, on.verdict());
        assertEquals(29, on.median_m().orElseThrow(), 0.01);
        PairSeries series = PairAnalysis.analyse(held).series();
        double middle_m = series.value(Figure.GAP_SIGMA, series.size() / 2);
        assertEquals(middle_m, on.medianSigma_m().orElseThrow(), 0.3 * middle_m);
        assertEquals(Scene.DIVE_S, on.held_s(), 1e-6);
        assertEquals(1, on.insideShare().orElseThrow());
        PairInput hot =
                Scene.withGate(
                        input(
                                t_s ->
                                        slot_m.plus(
                                                new Vec3(
                                                        0,
                                                        t_s < 20 ? -29 : -29 + 3 * (t_s - 20),
                                                        0))),
                        30);
        GateHeld through = PairAnalysis.analyse(hot).gateHeld().orElseThrow();
        assertEquals(1, through.overshoots());
        assertEquals(Verdict.THROUGH, through.verdict());
    }

    @Test
    void aGateNeverReachedIsShort() {
        PairInput in = Scene.withGate(input(t_s -> new Vec3(0, -80, 0)), 30);
        GateHeld gate = PairAnalysis.analyse(in).gateHeld().orElseThrow();
        assertEquals(Verdict.SHORT, gate.verdict());
        assertEquals(0, gate.held_s());
    }

    @Test
    void closingFasterThanTheLimitIsAnExceedance() {
        Vec3 slot_m = new Vec3(-6.2, 0.4, 0.9);
        PairDebrief pair =
                PairAnalysis.analyse(input(t_s -> slot_m.plus(new Vec3(0, -208 + 6 * t_s, 0))));
        assertEquals(1, pair.closureExceedances().size());
        ClosureExceedance e = pair.closureExceedances().get(0);
        // The limit falls to 5.7 m/s at 39.6 m: 28.1 s into a run of 6 m/s from 208 m.
        assertEquals((208 - 39.6) / 6, e.span().start_s(), 0.3);
        assertTrue(e.over_mps() > 2, e.toString());
        assertTrue(e.worst().sigma() > 0 && e.worst().sigma() < 0.5, e.toString());
    }

    /** For five seconds it has twelve metres a second of the ship's, then closes at two. */
    private static PairDebrief thrown(double from_m) {
        Vec3 slot_m = new Vec3(-6.2, 0.4, 0.9);
        return PairAnalysis.analyse(
                input(
                        t_s ->
                                slot_m.plus(
                                        new Vec3(
                                                0,
                                                -from_m
                                                        + 12 * Math.min(t_s, 5)
                                                        + 2 * Math.max(0, t_s - 5),
                                                0))));
    }

    @Test
    void theSpeedOfTheShipIsNoApproach() {
        assertEquals(List.of(), thrown(125).closureExceedances());
    }

    @Test
    void oneThrownAtTheLeadIsAnExceedanceAllTheSame() {
        assertEquals(1, thrown(70).closureExceedances().size());
    }

    @Test
    void breakingOffIsFoundAfterTheLastMatch() {
        PairDebrief pair =
                PairAnalysis.analyse(
                        input(
                                t_s ->
                                        new Vec3(
                                                0,
                                                -50 - (t_s < 20 ? 0 : (t_s - 20) * (t_s - 20)),
                                                0)));
        // 2 m/s²: over 3 m/s from 1.5 s on.
        assertEquals(21.5, pair.breakOff_s().orElseThrow(), 0.05);
        assertTrue(PairEvents.of(pair).stream().anyMatch(e -> e.text().contains("breaks off")));
    }

    @Test
    void oneFixASecondIsNeverGradedAbovePossibleAndSaysSo() {
        Vec3 slot_m = new Vec3(-6.2, 0.4, 0.9);
        KnownMotion slow = flyer(1, t_s -> slot_m);
        PairInput in = Scene.input(Scene.diving(Scene.DIVE_S), slow);
        PairMember grade =
                PairMember.of("blue", slow, new DataGrade(1, true, true))
                        .withFlight(OptionalDouble.of(0), OptionalDouble.of(Scene.DIVE_S));
        PairDebrief pair = PairAnalysis.analyse(Scene.withFlyer(in, grade));
        assertEquals(1, pair.touch().size());
        assertEquals(Touch.Grade.POSSIBLE, pair.touch().get(0).grade());
        assertEquals(List.of(Touch.Evidence.POSITION), pair.touch().get(0).evidence());
        assertTrue(pair.refusals().stream().anyMatch(r -> r.contains("touched cannot be told")));
    }

    @Test
    void positionsAloneOnceASecondAreNoMeasureOfMatching() {
        KnownMotion slow = flyer(1, t_s -> new Vec3(0, -40, 0));
        PairInput in = Scene.input(Scene.diving(Scene.DIVE_S), slow);
        PairMember grade =
                PairMember.of("blue", slow, new DataGrade(1, false, false))
                        .withFlight(OptionalDouble.of(0), OptionalDouble.of(Scene.DIVE_S));
        PairDebrief pair = PairAnalysis.analyse(Scene.withFlyer(in, grade));
        assertFalse(pair.matched().refusals().isEmpty());
        assertTrue(pair.touch().isEmpty());
        assertTrue(Double.isNaN(pair.series().value(Figure.CLOSING_LIMIT, 100)));
        assertTrue(pair.closest().isPresent());
    }

    @Test
    void aPersonsMarkMakesATouchMarked() {
        Vec3 slot_m = new Vec3(-6.2, 0.4, 0.9);
        PairInput in = input(t_s -> slot_m).withTouchMarks(List.of(new Span(10, 12)));
        List<Touch> touch = PairAnalysis.analyse(in).touch();
        assertEquals(1, touch.size());
        assertEquals(Touch.Grade.MARKED, touch.get(0).grade());
        assertTrue(touch.get(0).evidence().contains(Touch.Evidence.MARK));
    }

    @Test
    void logsThatShareNoTimeGiveNoFiguresAndSaySo() {
        KnownMotion lead = Scene.diving(Scene.DIVE_S);
        KnownMotion late = KnownMotion.of(100, 10, t_s -> new Vec3(0, 0, 3000)).without(-1, 60);
        PairDebrief pair = PairAnalysis.analyse(Scene.input(lead, late));
        assertTrue(pair.closest().isEmpty());
        assertEquals(0, pair.matched().total_s());
        assertTrue(pair.motion().isEmpty());
    }

    @Test
    void withoutAnOpeningTheFlightEndsWhereTheFlyerIsSlow() {
        KnownMotion landed =
                KnownMotion.of(
                        60,
                        10,
                        t_s ->
                                Scene.TOP_M
                                        .plus(Scene.DIVE_MPS.times(Math.min(t_s, 30)))
                                        .plus(new Vec3(-40, 0, -5 * Math.max(0, t_s - 30))));
        PairInput in = Scene.input(Scene.diving(60), landed);
        PairMember open = in.flyer().withFlight(OptionalDouble.of(0), OptionalDouble.empty());
        PairDebrief pair = PairAnalysis.analyse(Scene.withFlyer(in, open));
        PairSeries s = pair.series();
        assertEquals(30, s.time_s(s.size() - 1), 1.01);
        assertTrue(pair.refusals().stream().anyMatch(r -> r.contains("no opening")));
    }
}
