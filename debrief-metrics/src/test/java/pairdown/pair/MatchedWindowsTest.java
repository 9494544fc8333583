package pairdown.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairdown.pair.Scene.flyer;
import static pairdown.pair.Scene.input;

import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import pairdown.attempt.MatchedSettings;
import pairdown.pair.MatchedWindow.EndedBy;
import pairdown.vector.Vec3;

/** Windows of matched speed, by motions whose rates are known. */
class MatchedWindowsTest {
    /** North of the lead at a speed relative to it that ramps linearly. */
    private static DoubleFunction<Vec3> alongNorth(double at_m, double rate_mps, double change) {
        return t_s -> new Vec3(0, at_m + rate_mps * t_s + change * t_s * t_s / 2, 0);
    }

    @Test
    void aSteadyOffsetIsMatchedFromEndToEnd() {
        Matched matched = PairAnalysis.analyse(input(t_s -> new Vec3(0, -120, 0))).matched();
        assertEquals(Scene.DIVE_S, matched.total_s(), 1e-6);
        assertEquals(EndedBy.DATA, matched.windows().get(0).endedBy());
    }

    /** Enters at 1.5 m/s, leaves at 1.5 × 1.5 m/s, both interpolated between rows. */
    @Test
    void aWindowOpensAtTheToleranceAndEndsAtOneAndAHalfTimes() {
        // A lead so well known that its turn rate adds nothing to the tolerance.
        KnownMotion lead = Scene.diving(Scene.DIVE_S).sigmas(0.5, 1e-4);
        KnownMotion flyer = flyer(alongNorth(-100, -4, 0.2)).sigmas(0.5, 0.07);
        Matched matched = PairAnalysis.analyse(Scene.input(lead, flyer)).matched();
        assertEquals(1, matched.windows().size());
        MatchedWindow w = matched.windows().get(0);
        assertEquals((4 - 1.5) / 0.2, w.span().start_s(), 0.02);
        assertEquals((4 + 2.25) / 0.2, w.span().end_s(), 0.02);
        assertEquals(EndedBy.HORIZONTAL, w.endedBy());
        assertTrue(w.endedByDifference_mps().orElseThrow() > 2.24);
        // One sigma of 0.07 m/s is 0.35 s of this ramp at either end.
        assertEquals(0.7, w.shorter_s(), 0.1);
        assertEquals(0.7, w.longer_s(), 0.1);
    }

    @Test
    void sinkingAwayEndsAWindowByTheVerticalAndItsSignIsDown() {
        Matched matched =
                PairAnalysis.analyse(input(t_s -> new Vec3(0, -50, -0.5 * 0.1 * t_s * t_s)))
                        .matched();
        MatchedWindow w = matched.windows().get(0);
        assertEquals(EndedBy.VERTICAL, w.endedBy());
        assertEquals(-1.5, w.endedByDifference_mps().orElseThrow(), 0.05);
        assertEquals(15, w.duration_s(), 0.05);
        assertEquals(0.75, w.sinkDifference_mps(), 0.02);
    }

    @Test
    void theTurnRatesSigmaTimesTheRangeWidensTheLevelTolerance() {
        KnownMotion lead = Scene.diving(Scene.DIVE_S).sigmas(0.5, 0.05);
        KnownMotion flyer = flyer(alongNorth(-100, -4, 0.2)).sigmas(0.5, 0.07);
        MatchedWindow w = PairAnalysis.analyse(Scene.input(lead, flyer)).matched().windows().get(0);
        // √2 · 0.05 / 33 / 2 s at 132 m is 0.14 m/s, or 0.7 s of this ramp.
        assertEquals(12.5 - 0.7, w.span().start_s(), 0.05);
    }

    /** A hop in speed over the leave factor. */
    private static DoubleFunction<Vec3> hop(double from_s, double for_s, double by_mps) {
        return t_s -> {
            double in_s = Math.max(0, Math.min(for_s, t_s - from_s));
            return new Vec3(0, -60 + by_mps * in_s, 0);
        };
    }

    @Test
    void aShortExcursionIsBridgedAndCounted() {
        Matched matched = PairAnalysis.analyse(input(hop(20, 0.9, 2.6))).matched();
        assertEquals(1, matched.windows().size());
        assertEquals(1, matched.windows().get(0).bridged());
    }

    @Test
    void aLongExcursionEndsAWindow() {
        Matched matched = PairAnalysis.analyse(input(hop(20, 1.2, 4))).matched();
        assertEquals(2, matched.windows().size());
        assertEquals(20, matched.windows().get(0).span().end_s(), 0.3);
    }

    /** Rates of −10 + 1.2 t m/s: within 1.5 m/s for 2.5 s, within 1.8 m/s for the dwell of 3 s. */
    @Test
    void underTheDwellThereIsNoWindowAndHowFarOffItWasIsTold() {
        Matched matched =
                PairAnalysis.analyse(
                                input(
                                        t_s ->
                                                new Vec3(
                                                        0,
                                                        -100 - 10 * t_s + 0.6 * t_s * t_s,
                                                        -0.4 * t_s)))
                        .matched();
        assertTrue(matched.isKnown());
        assertEquals(0, matched.total_s());
        assertEquals(1.8, matched.bestLevelDifference_mps().orElseThrow(), 0.07);
        assertEquals(-0.4, matched.bestVerticalDifference_mps().orElseThrow(), 0.01);
    }

    @Test
    void whoNeverHoldsForTheDwellWithDataHasNoFigureForIt() {
        KnownMotion blinking = flyer(1, t_s -> new Vec3(0, -100 - 10 * t_s, 0));
        for (int t_s = 0; t_s < Scene.DIVE_S; t_s += 2) {
            blinking.without(t_s, t_s + 1.5);
        }
        Matched matched =
                PairAnalysis.analyse(Scene.input(Scene.diving(Scene.DIVE_S), blinking)).matched();
        assertTrue(matched.bestLevelDifference_mps().isEmpty());
    }

    @Test
    void aFlyerHoldingStationOnATurningLeadIsMatched() {
        double turn_radps = Math.toRadians(3);
        double radius_m = 33 / turn_radps;
        KnownMotion lead =
                KnownMotion.of(Scene.DIVE_S, 10, t_s -> onCircle(radius_m, turn_radps * t_s, t_s));
        KnownMotion flyer =
                KnownMotion.of(
                        Scene.DIVE_S, 10, t_s -> onCircle(radius_m + 100, turn_radps * t_s, t_s));
        Matched matched = PairAnalysis.analyse(Scene.input(lead, flyer)).matched();
        assertEquals(Scene.DIVE_S, matched.total_s(), 0.1);
    }

    private static Vec3 onCircle(double radius_m, double angle_rad, double t_s) {
        return new Vec3(
                radius_m * Math.cos(angle_rad), radius_m * Math.sin(angle_rad), 3000 - 17.8 * t_s);
    }

    @Test
    void aToleranceUnderThreeSigmaIsRefusedInWords() {
        PairInput in = input(t_s -> new Vec3(0, -50, 0));
        PairInput fine = Scene.with(in, in.wind(), in.slotArm(), new MatchedSettings(0.1, 1, 3));
        Matched matched = PairAnalysis.analyse(fine).matched();
        assertTrue(matched.windows().isEmpty());
        assertTrue(matched.refusals().get(0).contains("horizontal tolerance of 0.1 m/s"));
    }

    /** A clock known to 0.3 s moves a velocity by that times the acceleration. */
    @Test
    void whatALateClockDoesToADiveAwayRefusesNoTolerance() {
        KnownMotion leaving =
                flyer(t_s -> new Vec3(-50, 2 * Math.pow(Math.max(0, t_s - 10), 2), 0));
        PairInput in = Scene.input(Scene.diving(Scene.DIVE_S), leaving);
        Matched matched =
                PairAnalysis.analyse(Scene.withFlyer(in, in.flyer().withClockSigma(0.3))).matched();
        assertTrue(matched.isKnown(), () -> matched.refusals().toString());
        assertEquals(10.5, matched.total_s(), 0.5);
    }
}
