package pairdown.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pairdown.attempt.BreakOff;
import pairdown.attempt.ClosureSettings;
import pairdown.attempt.Limits;
import pairdown.attempt.Role;
import pairdown.motion.Trajectory;
import pairdown.pair.DataGrade;
import pairdown.pair.KnownMotion;
import pairdown.pair.PairAnalysis;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairMember;
import pairdown.pair.Scene;
import pairdown.safety.Finding.Outcome;
import pairdown.time.Span;
import pairdown.track.Series;
import pairdown.vector.Vec3;

class LimitCheckTest {
    private static final double END_S = 60;

    private static Limits limits(
            Optional<BreakOff> breakOff, OptionalDouble airspeed, OptionalDouble separation) {
        return new Limits(breakOff, airspeed, ClosureSettings.DEFAULT, separation);
    }

    private static Limits separationOnly() {
        return limits(Optional.empty(), OptionalDouble.empty(), OptionalDouble.of(30));
    }

    private static Body flyer(String id, Trajectory trajectory) {
        return new Body(
                id,
                Role.FLYER,
                trajectory,
                0,
                OptionalDouble.of(0),
                OptionalDouble.of(trajectory.end_s()));
    }

    private static KnownMotion at(Vec3 offset_m) {
        return KnownMotion.straight(END_S, Scene.TOP_M.plus(offset_m), Scene.DIVE_MPS);
    }

    private static List<Finding> check(Limits limits, List<Body> bodies, List<PairDebrief> pairs) {
        return LimitCheck.check(
                new LimitInput(
                        limits,
                        bodies,
                        pairs,
                        Optional.empty(),
                        Optional.empty(),
                        Scene.CALM,
                        Scene.FRAME,
                        0));
    }

    private static Finding only(List<Finding> findings, String rule) {
        List<Finding> found = findings.stream().filter(f -> f.rule().equals(rule)).toList();
        assertEquals(1, found.size(), findings.toString());
        return found.get(0);
    }

    private static Outcome separation(double apart_m) {
        Body a = flyer("amber", at(Vec3.ZERO));
        Body b = flyer("blue", at(new Vec3(apart_m, 0, 0)));
        return only(check(separationOnly(), List.of(a, b), List.of()), "minimumSeparation")
                .outcome();
    }

    /** Sigma of the separation is 0.5 m a body: 0.71 m, so 1.4 m decides. */
    @Test
    void aSeparationIsExceededClearOrWithinUncertainty() {
        assertEquals(Outcome.EXCEEDED, separation(28));
        assertEquals(Outcome.WITHIN_UNCERTAINTY, separation(29));
        assertEquals(Outcome.WITHIN_UNCERTAINTY, separation(31));
        assertEquals(Outcome.CLEAR, separation(32));
    }

    @Test
    void theLeastSeparationOfACrossingIsFoundWithItsInstant() {
        Body a = flyer("amber", at(Vec3.ZERO));
        Body b =
                flyer(
                        "blue",
                        KnownMotion.straight(
                                END_S,
                                Scene.TOP_M.plus(new Vec3(-700, 12, 0)),
                                Scene.DIVE_MPS.plus(new Vec3(20, 0, 0))));
        Finding f = only(check(separationOnly(), List.of(a, b), List.of()), "minimumSeparation");
        assertEquals(35, f.time_s().orElseThrow(), 0.03);
        assertEquals(12, f.value().orElseThrow(), 0.05);
        assertEquals("blue", f.other().orElseThrow());
    }

    @Test
    void theFirstEightSecondsAfterTheLaterExitDoNotCount() {
        Body a = flyer("amber", at(Vec3.ZERO));
        Body b =
                flyer(
                        "blue",
                        KnownMotion.straight(
                                END_S, Scene.TOP_M, Scene.DIVE_MPS.plus(new Vec3(10, 0, 0))));
        Finding f = only(check(separationOnly(), List.of(a, b), List.of()), "minimumSeparation");
        assertEquals(8, f.time_s().orElseThrow(), 1e-6);
        assertEquals(Outcome.CLEAR, f.outcome());
    }

    @Test
    void aHoleInWhichTwoMayHaveBeenNearCannotBeTold() {
        Body a = flyer("amber", at(Vec3.ZERO).without(20, 26));
        Body b = flyer("blue", at(new Vec3(60, 0, 0)));
        Finding f = only(check(separationOnly(), List.of(a, b), List.of()), "minimumSeparation");
        assertEquals(Outcome.CANNOT_TELL, f.outcome());
        assertTrue(f.reason().orElseThrow().contains("gap"));
        assertTrue(f.value().isEmpty());
    }

    @Test
    void aHoleFarApartHidesNothing() {
        Body a = flyer("amber", at(Vec3.ZERO).without(20, 26));
        Body b = flyer("blue", at(new Vec3(900, 0, 0)));
        Finding f = only(check(separationOnly(), List.of(a, b), List.of()), "minimumSeparation");
        assertEquals(Outcome.CLEAR, f.outcome());
    }

    @Test
    void withoutAnOpeningNoSeparationIsJudged() {
        Body a = flyer("amber", at(Vec3.ZERO));
        Body b =
                new Body(
                        "blue",
                        Role.FLYER,
                        at(new Vec3(10, 0, 0)),
                        0,
                        OptionalDouble.of(0),
                        OptionalDouble.empty());
        Finding f = only(check(separationOnly(), List.of(a, b), List.of()), "minimumSeparation");
        assertEquals(Outcome.CANNOT_TELL, f.outcome());
    }

    @Test
    void leadAndFlyerAreNoSeparationToBeJudgedAndTwelveAreSixtySix() {
        List<Body> bodies = new ArrayList<>();
        bodies.add(
                new Body(
                        "lead",
                        Role.LEAD,
                        at(Vec3.ZERO),
                        0,
                        OptionalDouble.empty(),
                        OptionalDouble.empty()));
        for (int i = 0; i < 12; i++) {
            bodies.add(flyer("f" + i, at(new Vec3(10 * i, 50, 0))));
        }
        assertEquals(66, check(separationOnly(), bodies, List.of()).size());
    }

    private static Finding breakOff(double limit_m, BreakOff.Datum datum, double field_m) {
        KnownMotion lead = at(Vec3.ZERO);
        // Breaks off at 30 s, 2466 m, by 4 m/s² sideways.
        KnownMotion flyer =
                KnownMotion.of(
                        END_S,
                        10,
                        t_s ->
                                Scene.TOP_M
                                        .plus(Scene.DIVE_MPS.times(t_s))
                                        .plus(
                                                new Vec3(
                                                        -20
                                                                - 2
                                                                        * Math.pow(
                                                                                Math.max(
                                                                                        0,
                                                                                        t_s - 30),
                                                                                2),
                                                        0,
                                                        0)));
        PairDebrief pair = PairAnalysis.analyse(Scene.input(lead, flyer));
        Limits limits =
                limits(
                        Optional.of(new BreakOff(limit_m, datum, field_m)),
                        OptionalDouble.empty(),
                        OptionalDouble.empty());
        return only(check(limits, List.of(flyer("blue", flyer)), List.of(pair)), "breakOffHeight");
    }

    /**
     * Leaves at 2.25 m/s, 0.56 s after 30 s: 3000 − 17.8 × 30.56, and 8 cm for the earth's curve.
     */
    @Test
    void breakOffIsJudgedWhereTheFlyerLeavesItsLastMatch() {
        Finding f = breakOff(2470, BreakOff.Datum.ELLIPSOID, 0);
        assertEquals(30.57, f.time_s().orElseThrow(), 0.06);
        assertEquals(2456, f.value().orElseThrow(), 1.5);
        assertEquals(Outcome.EXCEEDED, f.outcome());
        assertEquals(Outcome.CLEAR, breakOff(2440, BreakOff.Datum.ELLIPSOID, 0).outcome());
        assertEquals(
                Outcome.WITHIN_UNCERTAINTY, breakOff(2456, BreakOff.Datum.ELLIPSOID, 0).outcome());
    }

    @Test
    void breakOffAboveTheFieldCountsFromTheField() {
        assertEquals(Outcome.EXCEEDED, breakOff(2100, BreakOff.Datum.AGL, 400).outcome());
        assertEquals(2056, breakOff(2100, BreakOff.Datum.AGL, 400).value().orElseThrow(), 1.5);
    }

    /** Matched to the end, {@code END_S} at 17.8 m/s below 3000 m. */
    private static Finding breakOffOfOneMatchedToTheEnd(double limit_m, OptionalDouble opening_s) {
        KnownMotion flyer = at(new Vec3(-20, 0, 0));
        PairDebrief pair = PairAnalysis.analyse(Scene.input(at(Vec3.ZERO), flyer));
        Limits limits =
                limits(
                        Optional.of(new BreakOff(limit_m, BreakOff.Datum.ELLIPSOID, 0)),
                        OptionalDouble.empty(),
                        OptionalDouble.empty());
        Body body = new Body("blue", Role.FLYER, flyer, 0, OptionalDouble.of(0), opening_s);
        return only(check(limits, List.of(body), List.of(pair)), "breakOffHeight");
    }

    private static final double HEIGHT_AT_END_M = 3000 - 17.8 * END_S;

    @Test
    void aMatchThatTheDataEndCannotBeTold() {
        Finding f = breakOffOfOneMatchedToTheEnd(HEIGHT_AT_END_M - 100, OptionalDouble.empty());
        assertEquals(Outcome.CANNOT_TELL, f.outcome());
        assertTrue(f.reason().orElseThrow().contains("data end"), f::toString);
    }

    /** Wherever it left, it was lower still. */
    @Test
    void aFlyerStillMatchedUnderItsLimitHasGoneThroughItThoughTheDataEnd() {
        Finding f = breakOffOfOneMatchedToTheEnd(HEIGHT_AT_END_M + 100, OptionalDouble.empty());
        assertEquals(Outcome.EXCEEDED, f.outcome());
        assertEquals(HEIGHT_AT_END_M, f.value().orElseThrow(), 10);
    }

    @Test
    void aFlyerThatOpensInItsMatchLeavesThere() {
        Finding f = breakOffOfOneMatchedToTheEnd(HEIGHT_AT_END_M - 100, OptionalDouble.of(END_S));
        assertEquals(Outcome.CLEAR, f.outcome());
        assertEquals(HEIGHT_AT_END_M, f.value().orElseThrow(), 10);
    }

    /** The logs go on to the end: it is the matching that positions alone don't tell. */
    @Test
    void withoutMatchesThatCanBeToldTheLeavingCannotEither() {
        KnownMotion flyer = at(new Vec3(-20, 0, 0));
        PairMember slow =
                PairMember.of("blue", flyer, new DataGrade(1, false, false))
                        .withFlight(OptionalDouble.of(0), OptionalDouble.of(END_S));
        PairDebrief pair =
                PairAnalysis.analyse(Scene.withFlyer(Scene.input(at(Vec3.ZERO), flyer), slow));
        Limits limits =
                limits(
                        Optional.of(new BreakOff(2000, BreakOff.Datum.MSL, 0)),
                        OptionalDouble.empty(),
                        OptionalDouble.empty());
        Finding f =
                only(check(limits, List.of(flyer("blue", flyer)), List.of(pair)), "breakOffHeight");
        assertEquals(Outcome.CANNOT_TELL, f.outcome());
        assertTrue(f.reason().orElseThrow().contains("matched"), f::toString);
    }

    private static Finding airspeed(double peak_mps, double for_s, double missingFrom_s) {
        List<Double> t = new ArrayList<>();
        List<Double> v = new ArrayList<>();
        for (int i = 0; i <= 600; i++) {
            double t_s = i / 10.0;
            if (t_s < missingFrom_s) {
                t.add(t_s);
                v.add(t_s >= 20 && t_s < 20 + for_s ? peak_mps : 45.0);
            }
        }
        float[] values = new float[v.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = v.get(i).floatValue();
        }
        Series series = Series.of(t.stream().mapToDouble(x -> x).toArray(), values, false);
        Body lead =
                new Body(
                        "lead",
                        Role.LEAD,
                        at(Vec3.ZERO),
                        0,
                        OptionalDouble.empty(),
                        OptionalDouble.empty());
        return only(
                LimitCheck.check(
                        new LimitInput(
                                limits(
                                        Optional.empty(),
                                        OptionalDouble.of(60),
                                        OptionalDouble.empty()),
                                List.of(lead),
                                List.of(),
                                Optional.of(series),
                                Optional.of(new Span(0, END_S)),
                                Scene.CALM,
                                Scene.FRAME,
                                0)),
                "maximumAirspeed");
    }

    @Test
    void theLeadsAirspeedIsJudgedByWhatItHeldForAWhile() {
        assertEquals(Outcome.EXCEEDED, airspeed(63, 2, 99).outcome());
        assertEquals(63, airspeed(63, 2, 99).value().orElseThrow(), 1e-4);
        assertEquals(Outcome.WITHIN_UNCERTAINTY, airspeed(60.5, 2, 99).outcome());
        assertEquals(Outcome.CLEAR, airspeed(63, 0.15, 99).outcome());
    }

    @Test
    void anAirspeedThatEndsBeforeTheDescentCannotBeToldUnlessAlreadyExceeded() {
        assertEquals(Outcome.CANNOT_TELL, airspeed(50, 2, 40).outcome());
        assertEquals(Outcome.EXCEEDED, airspeed(63, 2, 40).outcome());
    }

    @Test
    void aClosingLimitIsListedWhetherPassedOrNot() {
        Finding clear =
                only(
                        check(
                                Limits.NONE,
                                List.of(),
                                List.of(
                                        PairAnalysis.analyse(
                                                Scene.input(
                                                        at(Vec3.ZERO), at(new Vec3(-80, 0, 0)))))),
                        "closure");
        assertEquals(Outcome.CLEAR, clear.outcome());
        KnownMotion hot =
                KnownMotion.straight(
                        END_S,
                        Scene.TOP_M.plus(new Vec3(-306.2, 0.4, 0.9)),
                        Scene.DIVE_MPS.plus(new Vec3(6, 0, 0)));
        Finding exceeded =
                only(
                        check(
                                Limits.NONE,
                                List.of(),
                                List.of(PairAnalysis.analyse(Scene.input(at(Vec3.ZERO), hot)))),
                        "closure");
        assertEquals(Outcome.EXCEEDED, exceeded.outcome());
        assertEquals("lead", exceeded.other().orElseThrow());
    }

    @Test
    void aLogThatEndsBeforeTheOpeningLeavesALaterMeetingUntold() {
        Body flyer = flyer("amber", at(Vec3.ZERO));
        KnownMotion shipMotion =
                KnownMotion.straight(
                        30, Scene.TOP_M.plus(new Vec3(0, 100, 0)), Scene.DIVE_MPS.times(1.2));
        Body ship =
                new Body(
                        "ship",
                        Role.JUMPSHIP,
                        shipMotion,
                        0,
                        OptionalDouble.empty(),
                        OptionalDouble.empty());
        Finding f =
                only(check(separationOnly(), List.of(flyer, ship), List.of()), "minimumSeparation");
        assertEquals(Outcome.CANNOT_TELL, f.outcome());
        assertEquals(
                "the log of ship ends 30 s before the first opening; the least seen is 155 m",
                f.reason().orElseThrow());
    }

    /** Holds 60 m off, leaves, and 15 s later the lead comes back at 20 m/s. */
    private static PairDebrief leftAndMetAgain() {
        KnownMotion flyer =
                KnownMotion.of(
                        END_S,
                        10,
                        t_s ->
                                Scene.TOP_M
                                        .plus(Scene.DIVE_MPS.times(t_s))
                                        .plus(new Vec3(-60 - away_m(t_s), 0, 0)));
        return PairAnalysis.analyse(Scene.input(at(Vec3.ZERO), flyer));
    }

    private static double away_m(double t_s) {
        if (t_s < 20) {
            return 0;
        }
        return t_s < 35 ? 8 * (t_s - 20) : 120 - 9 * (t_s - 35);
    }

    @Test
    void aClosingLimitIsJudgedUntilTheBreakOffOnly() {
        PairDebrief pair = leftAndMetAgain();
        assertEquals(20.2, pair.breakOff_s().orElseThrow(), 0.5);
        assertTrue(pair.closureExceedances().isEmpty(), pair.closureExceedances()::toString);
        Finding f = only(check(Limits.NONE, List.of(), List.of(pair)), "closure");
        assertEquals(Outcome.CLEAR, f.outcome());
        assertTrue(f.time_s().orElseThrow() < pair.breakOff_s().orElseThrow(), f::toString);
    }

    /** Goes by too fast, never matched; a minute later the lead comes back faster still. */
    @Test
    void withNoMatchAClosingLimitIsJudgedUntilTheFlyerHasGoneBy() {
        Vec3 slot_m = new Vec3(-6.2, 0.4, 0.9);
        KnownMotion flyer =
                KnownMotion.of(
                        END_S,
                        10,
                        t_s ->
                                Scene.TOP_M
                                        .plus(Scene.DIVE_MPS.times(t_s))
                                        .plus(slot_m)
                                        .plus(new Vec3(0, gone_m(t_s), 0)));
        PairDebrief pair = PairAnalysis.analyse(Scene.input(at(Vec3.ZERO), flyer));
        assertEquals(0, pair.matched().total_s());
        Finding f = only(check(Limits.NONE, List.of(), List.of(pair)), "closure");
        assertEquals(Outcome.EXCEEDED, f.outcome());
        assertTrue(f.time_s().orElseThrow() < 20, f::toString);
        assertEquals(6.5, f.value().orElseThrow(), 0.6);
        assertTrue(pair.breakOff_s().isEmpty());
    }

    private static double gone_m(double t_s) {
        return t_s < 35 ? 7 * (t_s - 20) : 105 - 40 * (t_s - 35);
    }
}
