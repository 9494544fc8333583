package pairdown.demo.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pairdown.attempt.LeverArm;
import pairdown.demo.receiver.GnssPlan.ClockPlan;
import pairdown.demo.receiver.GnssPlan.HeightPlan;
import pairdown.demo.truth.Truth;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.track.Channel;
import pairdown.track.EllipsoidHeight;
import pairdown.track.Track;
import pairdown.vector.Vec3;

class LoggingTest {
    private static final Truth TRUTH = MadeTruth.of();
    private static final GnssPlan BLUE = GnssPlan.of("blue", "blue.csv", "csv");
    private static final GnssPlan PERFECT =
            BLUE.errors(ReceiverErrors.NONE).sight(Sight.OPEN).clock(ClockPlan.TRUE);

    private static Recorded log(LogPlan plan, long seed) {
        return Logging.of(TRUTH, List.of(plan), Map.of(), seed).get(0);
    }

    /** Logged position in the truth's frame. */
    private static Vec3 position_m(Track track, int row) {
        return TRUTH.frame()
                .toEnu(
                        new Geodetic(
                                track.value(Channel.LATITUDE, row),
                                track.value(Channel.LONGITUDE, row),
                                EllipsoidHeight.of(track, row)));
    }

    private static Vec3 velocity_mps(Track track, int row) {
        Vec3 atFix =
                new Vec3(
                        track.value(Channel.VELOCITY_EAST, row),
                        track.value(Channel.VELOCITY_NORTH, row),
                        -track.value(Channel.VELOCITY_DOWN, row));
        return LocalFrame.at(track.positionAsRead(row)).rotationTo(TRUTH.frame()).times(atFix);
    }

    @Test
    void aPerfectReceiverTellsTheTruth() {
        Track track = log(PERFECT, 1).track();
        assertEquals(2001, track.size());
        for (int i = 0; i < track.size(); i += 50) {
            double t_s = track.time_s(i);
            Vec3 p = TRUTH.body("blue").motion().positionAt_m(t_s);
            Vec3 v = TRUTH.body("blue").motion().velocityAt_mps(t_s);
            assertTrue(position_m(track, i).minus(p).norm() < 2e-3);
            assertTrue(velocity_mps(track, i).minus(v).norm() < 1e-3);
        }
    }

    @Test
    void loggedTimePlusOffsetIsTrueTime() {
        for (double shift_s : new double[] {0, -18, 3600}) {
            Recorded r = log(PERFECT.clock(ClockPlan.USUAL.shifted(shift_s)), 7);
            double offset_s = r.faults().offset_s().orElseThrow();
            assertEquals(shift_s - r.faults().latency_s(), offset_s, 0.1);
            for (int i = 0; i < r.track().size(); i += 97) {
                Vec3 p = TRUTH.body("blue").motion().positionAt_m(r.track().time_s(i) + offset_s);
                assertTrue(position_m(r.track(), i).minus(p).norm() < 2e-3);
            }
        }
    }

    @Test
    void velocitiesLagBehindPositions() {
        ReceiverErrors late =
                new ReceiverErrors(
                        ReceiverErrors.NONE.common(),
                        ReceiverErrors.NONE.own(),
                        0,
                        0,
                        0,
                        0,
                        0.2,
                        0.2);
        Recorded r = log(PERFECT.errors(late), 3);
        assertEquals(0.2, r.faults().velocityLag_s(), 1e-12);
        for (int i = 10; i < r.track().size(); i += 97) {
            Vec3 v = TRUTH.body("blue").motion().velocityAt_mps(r.track().time_s(i) - 0.2);
            assertTrue(velocity_mps(r.track(), i).minus(v).norm() < 1e-3);
        }
    }

    @Test
    void statedAccuraciesAreRightInTheMeanSquare() {
        double level = 0;
        double vertical = 0;
        double speed = 0;
        double[] stated = new double[3];
        for (long seed = 0; seed < 40; seed++) {
            Recorded r =
                    log(
                            BLUE.rate(1)
                                    .clock(ClockPlan.TRUE)
                                    .errors(ReceiverErrors.CONSUMER.promptVelocity()),
                            seed);
            for (int i = 0; i < r.track().size(); i++) {
                double t_s = r.track().time_s(i);
                Vec3 dp =
                        position_m(r.track(), i)
                                .minus(TRUTH.body("blue").motion().positionAt_m(t_s));
                Vec3 dv =
                        velocity_mps(r.track(), i)
                                .minus(TRUTH.body("blue").motion().velocityAt_mps(t_s));
                level += dp.levelNorm() * dp.levelNorm() / 2;
                vertical += dp.z() * dp.z();
                speed += dv.normSquared() / 3;
                stated[0] += square(r.track().value(Channel.HORIZONTAL_ACCURACY, i));
                stated[1] += square(r.track().value(Channel.VERTICAL_ACCURACY, i));
                stated[2] += square(r.track().value(Channel.SPEED_ACCURACY, i));
            }
        }
        // Slow errors leave some tens of independent draws: a fifth either way is three sigma.
        assertEquals(1, Math.sqrt(level / stated[0]), 0.2);
        assertEquals(1, Math.sqrt(vertical / stated[1]), 0.2);
        assertEquals(1, Math.sqrt(speed / stated[2]), 0.03);
    }

    private static double square(double x) {
        return x * x;
    }

    @Test
    void receiversUnderOneSkyShareTheCommonErrorAndNoMore() {
        double shared = 0;
        double each = 0;
        int n = 0;
        GnssPlan a = BLUE.sight(Sight.OPEN).clock(ClockPlan.TRUE).rate(1);
        GnssPlan b =
                GnssPlan.of("blue", "second.csv", "csv")
                        .sight(Sight.OPEN)
                        .clock(ClockPlan.TRUE)
                        .rate(1);
        for (long seed = 0; seed < 60; seed++) {
            List<Recorded> logs = Logging.of(TRUTH, List.of(a, b), Map.of(), seed);
            for (int i = 0; i < logs.get(0).track().size(); i += 20) {
                Vec3 p = TRUTH.body("blue").motion().positionAt_m(logs.get(0).track().time_s(i));
                Vec3 da = position_m(logs.get(0).track(), i).minus(p);
                Vec3 db = position_m(logs.get(1).track(), i).minus(p);
                shared += da.dot(db);
                each += (da.normSquared() + db.normSquared()) / 2;
                n++;
            }
        }
        // Common: 2·1.0² + 1.8² of 2·(1.0² + 0.8² + 0.2²) + 1.8² + 1.35² + 0.35².
        double expected = (2 + 3.24) / (2 * (1 + 0.64 + 0.04) + 3.24 + 1.8225 + 0.1225);
        assertEquals(expected, shared / each, 0.15, "over " + n);
    }

    @Test
    void heightsAboveSeaLevelComeBackByTheLogsOwnSeparation() {
        Track track = log(PERFECT.heights(HeightPlan.MSL_AND_SEPARATION), 1).track();
        Vec3 p = TRUTH.body("blue").motion().positionAt_m(track.time_s(100));
        assertTrue(position_m(track, 100).minus(p).norm() < 2e-3);
        Recorded plain = log(PERFECT.heights(new HeightPlan(track.datum(), false, 1.5)), 1);
        double off_m = position_m(plain.track(), 100).minus(p).z();
        assertEquals(-1.5, off_m, 2e-3);
        assertEquals(-1.5, plain.faults().heightBias_m(), 1e-12);
    }

    @Test
    void aboutThreeInTenLoseTheSkyAtExit() {
        int lost = 0;
        for (long seed = 0; seed < 300; seed++) {
            Recorded r = log(BLUE.rate(1), seed);
            if (!r.faults().lost().isEmpty()) {
                lost++;
                double length_s = r.faults().lost().get(0).duration_s();
                assertTrue(length_s >= 2 && length_s <= 8);
                assertEquals(MadeTruth.EXIT_S, r.faults().lost().get(0).start_s(), 0.51);
                assertTrue(holds(r, r.faults().lost().get(0).start_s() + 1));
            }
        }
        assertEquals(90, lost, 24); // three sigma of a binomial
    }

    /** No fix at that true time. */
    private static boolean holds(Recorded r, double true_s) {
        double at_s = true_s - r.faults().offset_s().orElseThrow();
        int row = r.track().rowAtOrBefore(at_s);
        return r.track().time_s(row + 1) - r.track().time_s(row) > 1.5;
    }

    @Test
    void anAntennaInShadowLosesAFifthAndIsWorse() {
        double lost = 0;
        for (long seed = 0; seed < 40; seed++) {
            Recorded r = log(BLUE.sight(Sight.OPEN.invertedFrom(260, 360)), seed);
            lost += r.faults().lost().stream().mapToDouble(s -> s.duration_s()).sum();
        }
        assertEquals(0.2, lost / 40 / 100, 0.03);
        Track track = log(BLUE.sight(Sight.OPEN.invertedFrom(260, 360)), 5).track();
        double inside = track.value(Channel.HORIZONTAL_ACCURACY, track.rowAtOrBefore(300));
        double outside = track.value(Channel.HORIZONTAL_ACCURACY, track.rowAtOrBefore(100));
        assertTrue(inside > 1.5 * outside);
    }

    @Test
    void aFrozenFixIsToldAgain() {
        Track track = log(PERFECT.sight(Sight.OPEN.frozenFrom(100, 103)), 1).track();
        int row = track.rowAtOrBefore(101);
        assertEquals(track.value(Channel.LATITUDE, row), track.value(Channel.LATITUDE, row + 1));
        assertEquals(0.2, track.time_s(row + 1) - track.time_s(row), 1e-9);
    }

    @Test
    void theLeadsReceiverSitsAtItsAntenna() {
        GnssPlan plan = GnssPlan.of("lead", "lead.csv", "csv");
        GnssPlan exact = plan.errors(ReceiverErrors.NONE).sight(Sight.OPEN).clock(ClockPlan.TRUE);
        LeverArm arm = new LeverArm(1.1, 0, 1.2);
        Track track = Logging.of(TRUTH, List.of(exact), Map.of("lead", arm), 1).get(0).track();
        Vec3 cg = TRUTH.body("lead").motion().positionAt_m(0);
        Vec3 off = position_m(track, 0).minus(cg);
        // Heading 0, pitch 3°, roll 15° right: ahead is north, the roof leans east.
        double p = Math.toRadians(3);
        double r = Math.toRadians(15);
        assertEquals(1.2 * Math.sin(r), off.x(), 2e-3);
        assertEquals(1.1 * Math.cos(p) - 1.2 * Math.cos(r) * Math.sin(p), off.y(), 2e-3);
        assertEquals(1.1 * Math.sin(p) + 1.2 * Math.cos(r) * Math.cos(p), off.z(), 2e-3);
    }

    @Test
    void aRecorderHasItsOwnZeroAndRateAndItsPressureLags() {
        RecorderPlan plan = RecorderPlan.of("lead", "systems.csv").zero(11.35).pressureLag(0.5);
        Recorded r = log(plan, 1);
        assertTrue(r.track().epoch().isEmpty());
        assertEquals(Instant.parse("2031-05-14T15:00:11.350Z"), r.faults().zero().orElseThrow());
        double sum = 0;
        int n = 0;
        for (int i = 100; i < r.track().size(); i++) {
            double true_s = 11.35 + r.track().time_s(i) * (1 + 30e-6);
            sum += r.track().value(Channel.PRESSURE_ALTITUDE, i) - (400 + 5 * true_s);
            n++;
            double turned = r.track().value(Channel.HEADING, i) - 4 * true_s;
            assertEquals(0, turned - 360 * Math.rint(turned / 360), 3);
        }
        assertEquals(-0.5 * 5, sum / n, 0.1); // a ramp through a first-order lag
    }

    @Test
    void theSameSeedMakesTheSameLogWhateverElseIsLogged() {
        Track alone = log(BLUE, 11).track();
        List<LogPlan> more = List.of(GnssPlan.of("ship", "ship.igc", "igc"), BLUE);
        Track beside = Logging.of(TRUTH, more, Map.of(), 11).get(1).track();
        Track other = log(BLUE, 12).track();
        assertEquals(alone.size(), beside.size());
        for (int i = 0; i < alone.size(); i++) {
            assertEquals(alone.value(Channel.LATITUDE, i), beside.value(Channel.LATITUDE, i));
        }
        assertNotEquals(alone.value(Channel.LATITUDE, 5), other.value(Channel.LATITUDE, 5));
    }

    @Test
    void aTrulyAlignedLogKeepsItsNoise() {
        Recorded r = log(BLUE.clock(ClockPlan.GPS_TIME).trulyAligned(), 2);
        assertEquals(OptionalDouble.of(0), r.faults().offset_s());
        Vec3 off =
                position_m(r.track(), 10)
                        .minus(TRUTH.body("blue").motion().positionAt_m(r.track().time_s(10)));
        assertTrue(off.norm() > 0.05);
    }
}
