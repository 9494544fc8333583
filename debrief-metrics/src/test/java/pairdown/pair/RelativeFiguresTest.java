package pairdown.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairdown.attempt.ClosureSettings;
import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/** Formulas against published figures and hand-computed ones. */
class RelativeFiguresTest {
    private static final double KNOT_MPS = 1852.0 / 3600;
    private static final double NM_M = 1852;

    private static Vec3 polar(double bearing_deg, double length) {
        double b_rad = Math.toRadians(bearing_deg);
        return new Vec3(Math.sin(b_rad) * length, Math.cos(b_rad) * length, 0);
    }

    /**
     * Inputs: the four accuracy scenarios of IMO resolution A.823(19); answers by exact vector
     * algebra. Own course, speed; target's range and bearing; relative course and speed; CPA; TCPA.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 10, 8, 0, 180, 20, 0, 24, 180, 10.000",
        "0, 10, 1, 0, 90, 10, 1, 0, 45, 14.142",
        "0, 5, 8, 45, 225, 20, 0, 24, 237.119, 16.840",
        "0, 25, 8, 45, 225, 20, 0, 24, 307.516, 17.830"
    })
    void radarTrackingScenariosHaveTheirPublishedClosestApproach(
            double ownCourse_deg,
            double own_kt,
            double range_NM,
            double bearing_deg,
            double relativeCourse_deg,
            double relative_kt,
            double cpa_NM,
            double tcpa_min,
            double targetCourse_deg,
            double target_kt) {
        Vec3 r = polar(bearing_deg, range_NM * NM_M);
        Vec3 v =
                polar(targetCourse_deg, target_kt * KNOT_MPS)
                        .minus(polar(ownCourse_deg, own_kt * KNOT_MPS));
        Vec3 published = polar(relativeCourse_deg, relative_kt * KNOT_MPS);
        // The table's target course and speed have three decimals.
        assertEquals(0, v.minus(published).norm(), 2e-3);
        double t_s = PredictedMiss.timeToClosest_s(r, published);
        assertEquals(tcpa_min, t_s / 60, 1e-3);
        assertEquals(cpa_NM, r.plus(published.times(t_s)).norm() / NM_M, 1e-3);
    }

    /** Swedish radar textbook, exercise 7:1: the input is theirs, the answer computed. */
    @Test
    void aTwoFixPlotGivesItsClosestApproach() {
        Vec3 first = polar(195, 5 * NM_M);
        Vec3 second = polar(200, 4 * NM_M);
        Vec3 v = second.minus(first).times(1.0 / 360);
        double t_s = PredictedMiss.timeToClosest_s(second, v);
        assertEquals(10.734, v.norm() / KNOT_MPS, 1e-3);
        assertEquals(20.43, t_s / 60, 5e-3);
        assertEquals(1.624, second.plus(v.times(t_s)).norm() / NM_M, 1e-3);
        assertEquals(356.05, bearing_deg(v), 5e-3);
        Vec3 target = v.plus(polar(180, 6 * KNOT_MPS));
        assertEquals(351.07, bearing_deg(target), 5e-3);
        assertEquals(4.766, target.norm() / KNOT_MPS, 1e-3);
    }

    private static double bearing_deg(Vec3 v) {
        return (Math.toDegrees(Math.atan2(v.x(), v.y())) + 360) % 360;
    }

    /** Worked with NumPy: range, range rate at 0 and 5 s, time and place of closest approach. */
    @Test
    void closureAndClosestApproachInThreeDimensions() {
        Vec3 p = new Vec3(-120, 40, 25);
        Vec3 v = new Vec3(12, -3.5, -2);
        assertEquals(128.937970, p.norm(), 1e-6);
        assertEquals(12.641738, closure(p, v), 1e-6);
        assertEquals(12.592644, closure(p.plus(v.times(5)), v), 1e-6);
        double t_s = PredictedMiss.timeToClosest_s(p, v);
        assertEquals(10.171607, t_s, 1e-6);
        Vec3 nearest = p.plus(v.times(t_s));
        assertEquals(6.729102, nearest.norm(), 1e-6);
        assertEquals(2.059282, nearest.x(), 1e-6);
        assertEquals(4.399376, nearest.y(), 1e-6);
        assertEquals(4.656786, nearest.z(), 1e-6);
        assertEquals(0, closure(nearest, v), 1e-9);
    }

    private static double closure(Vec3 r, Vec3 v) {
        return Closure.of(r, v, Mat3.IDENTITY, Mat3.IDENTITY).rate_mps();
    }

    /** Worked by hand from the formulas: common practice, no published source. */
    @Test
    void aFlyerBehindAndAboveClosesAndWillMissByThreeMetres() {
        Vec3 r = new Vec3(-12, 6, 3);
        Vec3 v = new Vec3(4, -1, -1);
        assertEquals(13.748, r.norm(), 5e-4);
        assertEquals(4.146, closure(r, v), 5e-4);
        PredictedMiss miss = PredictedMiss.of(r, v, 1, 0.1, PairSettings.DEFAULT).orElseThrow();
        assertEquals(3.167, miss.in_s(), 5e-4);
        assertEquals(2.915, miss.miss_m(), 5e-4);
    }

    @Test
    void nothingIsPredictedBeyondTheHorizonWhereHalfAnAccelerationIsTwelveMetres() {
        PredictedMiss miss =
                PredictedMiss.of(
                                new Vec3(500, 0, 0),
                                new Vec3(-10, 0, 0),
                                0,
                                0,
                                PairSettings.DEFAULT)
                        .orElseThrow();
        assertEquals(5, miss.in_s());
        assertEquals(450, miss.miss_m(), 1e-9);
        assertEquals(12.5, miss.sigma_m(), 1e-9);
    }

    @Test
    void twoThatHoldHaveNoMissToPredict() {
        assertTrue(
                PredictedMiss.of(
                                new Vec3(5, 0, 0),
                                new Vec3(0.2, 0.1, 0),
                                1,
                                0.1,
                                PairSettings.DEFAULT)
                        .isEmpty());
    }

    /** Common practice, no published source. */
    @ParameterizedTest
    @CsvSource({"14, 12", "16, 1", "90, 3", "225, 8", "344, 11", "346, 12", "0, 12", "359, 12"})
    void theClockHasItsNoseAtTwelve(double bearing_deg, int hour) {
        assertEquals(hour, Bearing.hourOf(bearing_deg));
    }

    @Test
    void aFlyerRightAndBelowIsSeenAtThreeOClockLow() {
        assertEquals("3 low", clock(new Vec3(0, 10, -5)));
        assertEquals("9 level", clock(new Vec3(0, -10, 1)));
        assertEquals("12 high", clock(new Vec3(10, 0, 2)));
    }

    private static String clock(Vec3 position_m) {
        Bearing b = Bearing.of(position_m, 135, true);
        return b.hour() + " " + b.level().key();
    }

    private static double offLine_m(Vec3 position_m, boolean rightSide) {
        return Bearing.of(position_m, 135, rightSide).offLine_m();
    }

    @Test
    void aheadOfTheBearingLineIsPositiveOnEitherSide() {
        Vec3 onLine = new Vec3(-10, -10, 0);
        assertEquals(0, offLine_m(onLine, false), 1e-9);
        assertEquals(Math.sqrt(0.5), offLine_m(new Vec3(-9, -10, 0), false), 1e-9);
        assertEquals(-Math.sqrt(0.5), offLine_m(new Vec3(-11, 10, 0), true), 1e-9);
    }

    /**
     * Table of limits by gap and braking: common practice, no published source; 0.05 as printed.
     */
    @ParameterizedTest
    @CsvSource({
        "0.3, 5, 1.2",
        "0.3, 50, 5.1",
        "0.3, 150, 9.1",
        "0.5, 5, 1.4",
        "0.5, 10, 2.4",
        "0.5, 20, 3.8",
        "0.5, 30, 4.8",
        "0.5, 50, 6.5",
        "0.5, 75, 8.1",
        "0.5, 100, 9.4",
        "0.5, 150, 11.7",
        "1.0, 5, 1.7",
        "1.0, 30, 6.6",
        "1.0, 150, 16.2"
    })
    void theClosingLimitIsTheBrakingParabola(double braking, double gap_m, double limit_mps) {
        ClosingLimit limit = new ClosingLimit(new ClosureSettings(braking, 1, 0.5, 2));
        assertEquals(limit_mps, limit.at(gap_m), 0.06);
    }

    /**
     * CNATRA P-1213 (draft), level rendezvous: at most 10 KIAS of closure within 1,000 ft. The
     * default comes down to that at 33 m, so it is looser than that text further out.
     */
    @Test
    void theDefaultClosingLimitIsTenKnotsAtThirtyThreeMetres() {
        ClosingLimit limit = new ClosingLimit(ClosureSettings.DEFAULT);
        assertEquals(10 * KNOT_MPS, limit.at(33.36), 2e-3);
        assertTrue(limit.at(1000 * 0.3048) > 10 * KNOT_MPS);
    }

    /**
     * CNATRA P-357, T-34C parade: on a 45° bearing line, 10 ft step-down, here 20 ft back: seen at
     * 5 o'clock low from the lead, on the line.
     */
    @Test
    void aParadePositionIsOnItsBearingLine() {
        double ft_m = 0.3048;
        Vec3 parade = new Vec3(-20 * ft_m, 20 * ft_m, -10 * ft_m);
        assertEquals(0, offLine_m(parade, true), 1e-12);
        assertEquals("5 low", clock(parade));
    }

    @Test
    void theClosingLimitNeverFallsUnderTheContactSpeed() {
        ClosingLimit limit = new ClosingLimit(ClosureSettings.DEFAULT);
        assertEquals(0.5, limit.at(0));
        assertEquals(0.5, limit.at(2));
        assertEquals(4.84, limit.at(30), 5e-3);
    }

    /** Braking from the limit after the reaction time leaves the contact speed at the margin. */
    @ParameterizedTest
    @CsvSource({"10", "30", "100", "400"})
    void fromTheLimitOneCanBrakeInTime(double gap_m) {
        ClosureSettings s = ClosureSettings.DEFAULT;
        double v_mps = new ClosingLimit(s).at(gap_m);
        double braking_m = gap_m - v_mps * s.reaction_s() - s.margin_m();
        double left2 = v_mps * v_mps - 2 * s.braking_mps2() * braking_m;
        assertEquals(s.contact_mps() * s.contact_mps(), left2, 1e-9);
    }

    /** 500, 1000, 3000 and 6000 ft at 17.78 m/s: common practice, no published source. */
    @ParameterizedTest
    @CsvSource({"152.4, 8.6", "304.8, 17.1", "914.4, 51.4", "1828.8, 102.9"})
    void heightIsSecondsOfSink(double above_m, double left_s) {
        assertEquals(left_s, HeightBudget.secondsLeft_s(above_m, 17.78).orElseThrow(), 0.06);
    }

    @Test
    void thereAreNoSecondsLeftWithoutSink() {
        assertTrue(HeightBudget.secondsLeft_s(500, -1).isEmpty());
    }

    /** Variance of a difference is the sum; the closure's sigma is that along the line. */
    @Test
    void closureSigmaIsThatAlongTheLineWhereNothingMovesAcrossIt() {
        Mat3 v = Mat3.diagonal(new Vec3(0.01, 0.02, 0.0625));
        Closure up = Closure.of(new Vec3(0, 0, 30), new Vec3(0, 0, -2), Mat3.IDENTITY, v);
        assertEquals(2, up.rate_mps(), 1e-12);
        assertEquals(0.25, up.sigma_mps(), 1e-12);
    }

    @Test
    void motionAcrossAShortLineMakesClosureUncertain() {
        Mat3 still = Mat3.diagonal(Vec3.ZERO);
        Closure c = Closure.of(new Vec3(10, 0, 0), new Vec3(0, 4, 0), Mat3.IDENTITY, still);
        assertEquals(0.4, c.sigma_mps(), 1e-12);
    }
}
