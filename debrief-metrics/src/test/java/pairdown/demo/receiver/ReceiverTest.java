package pairdown.demo.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pairdown.demo.receiver.GnssPlan.ClockPlan;
import pairdown.demo.truth.Truth;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.EllipsoidHeight;
import pairdown.track.Track;
import pairdown.vector.Vec3;

/** The errors of receivers, each against its plan; one cause at a time. */
class ReceiverTest {
    private static final Truth TRUTH = MadeTruth.of();
    private static final Wander NO_WANDER = new Wander(0, 0, 45);
    private static final GnssPlan BLUE =
            GnssPlan.of("blue", "blue.csv", "csv").sight(Sight.OPEN).clock(ClockPlan.TRUE);

    private static ReceiverErrors errors(
            Wander common, Wander own, double level_m, double level_mps, double vertical_mps) {
        return new ReceiverErrors(common, own, level_m, 2 * level_m, level_mps, vertical_mps, 0, 0);
    }

    private static Track log(GnssPlan plan, long seed) {
        return Logging.of(TRUTH, List.of(plan), Map.of(), seed).get(0).track();
    }

    private static Vec3 off_m(Track track, int row) {
        Vec3 at =
                TRUTH.frame()
                        .toEnu(
                                new Geodetic(
                                        track.value(Channel.LATITUDE, row),
                                        track.value(Channel.LONGITUDE, row),
                                        EllipsoidHeight.of(track, row)));
        return at.minus(TRUTH.body("blue").motion().positionAt_m(track.time_s(row)));
    }

    private static Vec3 off_mps(Track track, int row) {
        Vec3 atFix =
                new Vec3(
                        track.value(Channel.VELOCITY_EAST, row),
                        track.value(Channel.VELOCITY_NORTH, row),
                        -track.value(Channel.VELOCITY_DOWN, row));
        return LocalFrame.at(track.positionAsRead(row))
                .rotationTo(TRUTH.frame())
                .times(atFix)
                .minus(TRUTH.body("blue").motion().velocityAt_mps(track.time_s(row)));
    }

    @Test
    void whiteErrorsHaveTheirSizeAndForgetAtOnce() {
        Track t = log(BLUE.rate(10).errors(errors(NO_WANDER, NO_WANDER, 0.2, 0.1, 0.18)), 1);
        double level = 0;
        double vertical = 0;
        double next = 0;
        double[] speed = new double[2];
        int n = t.size() - 1;
        for (int i = 0; i < n; i++) {
            Vec3 p = off_m(t, i);
            Vec3 v = off_mps(t, i);
            level += (p.x() * p.x() + p.y() * p.y()) / 2;
            vertical += p.z() * p.z();
            next += p.dot(off_m(t, i + 1));
            speed[0] += (v.x() * v.x() + v.y() * v.y()) / 2;
            speed[1] += v.z() * v.z();
        }
        // 4,000 fixes: a standard deviation is known to 1.1 %, of two axes to 0.8 %.
        assertEquals(0.2, Math.sqrt(level / n), 0.2 * 0.03);
        assertEquals(0.4, Math.sqrt(vertical / n), 0.4 * 0.04);
        assertEquals(0.10, Math.sqrt(speed[0] / n), 0.1 * 0.03);
        assertEquals(0.18, Math.sqrt(speed[1] / n), 0.18 * 0.04);
        assertEquals(0, next / (2 * level + vertical), 3 / Math.sqrt(3.0 * n));
    }

    @Test
    void theConsumersVelocityIsThePublishedReceivers() {
        // 0.2 m/s per axis at 95 %: Navstar user equipment introduction, quoted second-hand.
        assertEquals(0.2, 1.96 * ReceiverErrors.CONSUMER.levelVelocity_mps(), 0.005);
    }

    @Test
    void slowErrorsHaveTheirSizeAndTheirTime() {
        // First-order Gauss–Markov: correlation exp(−t/τ). τ of 2 s so that 400 s hold many.
        Wander own = new Wander(0.8, 1.35, 2);
        double level = 0;
        double vertical = 0;
        double later = 0;
        int n = 0;
        for (long seed = 0; seed < 12; seed++) {
            Track t = log(BLUE.errors(errors(NO_WANDER, own, 0, 0, 0)), seed);
            for (int i = 0; i + 10 < t.size(); i++) {
                Vec3 p = off_m(t, i);
                Vec3 q = off_m(t, i + 10); // 2 s later
                level += (p.x() * p.x() + p.y() * p.y()) / 2;
                vertical += p.z() * p.z();
                later += p.x() * q.x() + p.y() * q.y();
                n++;
            }
        }
        // 12 × 400 s of 2 s: some 1,200 independent draws an axis.
        assertEquals(0.8, Math.sqrt(level / n), 0.05);
        assertEquals(1.35, Math.sqrt(vertical / n), 0.1);
        assertEquals(Math.exp(-1), later / (2 * level), 0.07);
    }

    @Test
    void theSharedErrorKeepsForAQuarterOfAnHour() {
        // The sky's error after its own time: correlation 1/e over many skies.
        double now = 0;
        double later = 0;
        Wander unit = new Wander(1, 1, 900);
        for (long seed = 0; seed < 900; seed++) {
            Sky sky = new Sky(0, 1000, 900, Draws.of(seed, "sky"));
            Vec3 a = sky.error_m(20, unit);
            Vec3 b = sky.error_m(920, unit);
            now += a.normSquared() / 3;
            later += a.dot(b) / 3;
        }
        // 2,700 draws: sigma of the variance 0.027, of the product 0.02.
        assertEquals(1, now / 900, 0.09);
        assertEquals(Math.exp(-1), later / 900, 0.07);
    }

    @Test
    void receiversOfOneModelAreEquallyLate() {
        GnssPlan usual = BLUE.clock(ClockPlan.USUAL);
        GnssPlan ship = GnssPlan.of("ship", "ship.csv", "csv");
        double most_s = 0;
        double least_s = 1;
        for (long seed = 0; seed < 200; seed++) {
            List<Recorded> logs =
                    Logging.of(
                            TRUTH,
                            List.of(
                                    usual.rate(1).model("a"),
                                    ship.rate(1).model("a"),
                                    ship.rate(1)),
                            Map.of(),
                            seed);
            InjectedFaults one = logs.get(0).faults();
            assertEquals(one.latency_s(), logs.get(1).faults().latency_s());
            assertEquals(one.velocityLag_s(), logs.get(1).faults().velocityLag_s());
            assertNotEquals(one.latency_s(), logs.get(2).faults().latency_s());
            most_s = Math.max(most_s, one.latency_s());
            least_s = Math.min(least_s, one.latency_s());
            assertTrue(one.velocityLag_s() >= 0.1 && one.velocityLag_s() <= 0.3);
        }
        // Even over 0 to 0.3 s.
        assertEquals(0, least_s, 0.01);
        assertEquals(0.3, most_s, 0.01);
    }

    @Test
    void clocksAreOffByTwoHundredthsAndTheLatency() {
        double squares = 0;
        int n = 400;
        for (long seed = 0; seed < n; seed++) {
            InjectedFaults f =
                    Logging.of(TRUTH, List.of(BLUE.rate(1).clock(ClockPlan.USUAL)), Map.of(), seed)
                            .get(0)
                            .faults();
            double error_s = f.offset_s().orElseThrow() + f.latency_s();
            squares += error_s * error_s;
        }
        assertEquals(0.02, Math.sqrt(squares / n), 3 * 0.02 / Math.sqrt(2.0 * n));
    }

    @Test
    void burstsComeAsOftenAsPlannedAndSpoilPositionsFourfold() {
        Sight bursting = new Sight(0, OptionalDouble.empty(), false, List.of(), List.of(), 30);
        int large = 0;
        int fixes = 0;
        for (long seed = 0; seed < 10; seed++) {
            Track t =
                    log(BLUE.sight(bursting).errors(errors(NO_WANDER, NO_WANDER, 0.2, 0, 0)), seed);
            for (int i = 0; i < t.size(); i++) {
                large += Math.abs(off_m(t, i).x()) > 3.5 * 0.2 ? 1 : 0;
                fixes++;
            }
        }
        // Two seconds in 33: 6 % of fixes in bursts, 38 % of those beyond 3.5 sigma of the rest.
        assertEquals(0.06 * 0.38, (double) large / fixes, 0.01);
    }

    @Test
    void aFixFoundAgainIsMetresOffAndComesBackOverEightSeconds() {
        Sight lost = new Sight(1, OptionalDouble.of(4), true, List.of(), List.of(), 1e9);
        for (long seed = 0; seed < 30; seed++) {
            Reception r =
                    new Reception(
                            lost,
                            OptionalDouble.of(100),
                            new Span(0, 200),
                            Draws.of(seed, "sight"));
            double end_s = r.lost().get(0).end_s();
            assertEquals(4, r.lost().get(0).duration_s(), 1e-9);
            double first_m = r.reacquireBias_m(end_s).norm();
            assertTrue(first_m >= 5 && first_m <= 15, first_m + " m");
            assertEquals(first_m * Math.exp(-1), r.reacquireBias_m(end_s + 8).norm(), 1e-9);
            assertEquals(0, r.reacquireBias_m(end_s - 0.1).norm());
            assertTrue(r.isLost(end_s - 2));
        }
    }
}
