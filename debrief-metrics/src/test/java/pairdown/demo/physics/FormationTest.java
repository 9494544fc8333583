package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.demo.receiver.BodyPoint;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueContact;
import pairdown.demo.truth.TrueMotion;
import pairdown.demo.truth.Truth;
import pairdown.track.Channel;
import pairdown.vector.Vec3;

/** Flyers on their way to the lead, beside it, at its tip and away, as flown. */
class FormationTest {
    static Stream<Scenario> scenarios() {
        return Stream.of(Flights.STANDARD, Flights.CROWD, Flights.TOUCH, Flights.THROUGH);
    }

    private static double[] rows(TrueBody body, Channel channel) {
        return Objects.requireNonNull(body.systems().get(channel));
    }

    private static List<TrueBody> jumpers(Truth truth) {
        return truth.bodies().stream().filter(b -> b.role().isJumper()).toList();
    }

    private static double least_m(TrueMotion a, TrueMotion b, double from_s, double to_s) {
        double least_m = Double.POSITIVE_INFINITY;
        for (double t = from_s; t < to_s; t += 0.1) {
            least_m = Math.min(least_m, a.positionAt_m(t).minus(b.positionAt_m(t)).norm());
        }
        return least_m;
    }

    /** How far a flyer is from its slot. */
    private static double gap_m(Truth truth, String flyer, Side side, double time_s) {
        BodyPoint slot = new BodyPoint(truth.body("lead"), side.slot());
        Vec3 at_m = truth.body(flyer).motion().positionAt_m(time_s);
        return at_m.minus(slot.position_m(time_s)).norm();
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void flyersKeepClearOfEachOther(Scenario scenario) {
        Truth truth = Flights.of(scenario);
        List<TrueBody> jumpers = jumpers(truth);
        for (int i = 0; i < jumpers.size(); i++) {
            for (int k = i + 1; k < jumpers.size(); k++) {
                TrueBody a = jumpers.get(i);
                TrueBody b = jumpers.get(k);
                // From when the later one has been out for four seconds until the first opens.
                double from_s = b.exit_s().orElseThrow() + 4;
                double to_s = Math.min(a.opening_s().orElseThrow(), b.opening_s().orElseThrow());
                double least_m = least_m(a.motion(), b.motion(), from_s, to_s);
                assertTrue(least_m > 8, a.id() + " and " + b.id() + ": " + least_m + " m");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void nobodyComesNearerToTheLeadThanItsTip(Scenario scenario) {
        Truth truth = Flights.of(scenario);
        for (TrueBody b : jumpers(truth)) {
            double least_m =
                    least_m(
                            b.motion(),
                            truth.body("lead").motion(),
                            b.exit_s().orElseThrow(),
                            b.opening_s().orElseThrow());
            assertTrue(least_m > Side.SPAN_M / 2 - 0.5, b.id() + ": " + least_m + " m");
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void nobodyComesBackToTheShip(Scenario scenario) {
        Truth truth = Flights.of(scenario);
        for (TrueBody b : jumpers(truth)) {
            double exit_s = b.exit_s().orElseThrow();
            double least_m =
                    least_m(
                            b.motion(),
                            truth.body("ship").motion(),
                            exit_s + 4,
                            b.opening_s().orElseThrow());
            assertTrue(least_m > 20, b.id() + ": " + least_m + " m");
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void theRideUpTurnsForFourMinutesAndMore(Scenario scenario) {
        // What clocks are told from: a straight climb would not do.
        Truth truth = Flights.of(scenario);
        double exit_s = jumpers(truth).get(0).exit_s().orElseThrow();
        for (String id : List.of("ship", "lead")) {
            TrueMotion m = truth.body(id).motion();
            double turning_s = 0;
            for (double t = 100; t < exit_s; t++) {
                Vec3 now = m.velocityAt_mps(t);
                Vec3 next = m.velocityAt_mps(t + 1);
                if (now.levelNorm() < 15 || next.levelNorm() < 15) {
                    continue;
                }
                double turned_rad = Route.wrapped(Route.course_rad(next) - Route.course_rad(now));
                turning_s += Math.toDegrees(Math.abs(turned_rad)) > 2 ? 1 : 0;
            }
            assertTrue(turning_s >= 240, id + ": " + turning_s + " s");
        }
    }

    @Test
    void aGateOfThirtyMetresIsReachedAndHeld() {
        Truth truth = Flights.of(Flights.STANDARD);
        for (Side side : Side.values()) {
            String flyer = side == Side.LEFT ? "blue" : "amber";
            double held_s = 0;
            double exit_s = truth.body(flyer).exit_s().orElseThrow();
            for (double t = exit_s + 8; t < exit_s + 110; t += 0.1) {
                held_s += Math.abs(gap_m(truth, flyer, side, t) - 30) < 4 ? 0.1 : 0;
            }
            assertTrue(held_s > 12, flyer + ": " + held_s + " s");
        }
    }

    @Test
    void aHandOnTheTipIsHeldForSixSeconds() {
        Truth truth = Flights.of(Flights.TOUCH);
        assertEquals(1, truth.contacts().size(), truth.contacts()::toString);
        TrueContact c = truth.contacts().get(0);
        assertEquals("blue", c.flyer());
        assertEquals("left", c.slot());
        assertEquals(6, c.end_s() - c.start_s(), 0.1);
        for (double t = c.start_s(); t < c.end_s(); t += 0.1) {
            double gap_m = gap_m(truth, "blue", Side.LEFT, t);
            assertTrue(gap_m < 1.2, gap_m + " m at " + (t - c.start_s()) + " s");
        }
    }

    @Test
    void theLeadAndTheFlyerFeelTheTouch() {
        Truth truth = Flights.of(Flights.TOUCH);
        double start_s = truth.contacts().get(0).start_s();
        TrueBody lead = truth.body("lead");
        double[] roll = rows(lead, Channel.ROLL_RATE);
        double step_s = lead.motion().step_s();
        int at = (int) Math.rint(start_s / step_s);
        // Before: the rate's root mean square over five seconds.
        double squares = 0;
        int before = (int) (5 / step_s);
        for (int i = at - before; i < at; i++) {
            squares += roll[i] * roll[i];
        }
        double rms_dps = Math.sqrt(squares / before);
        // Within 0.6 s the left wing is pulled down: roll to the left.
        double least_dps = 0;
        for (int i = at; i * step_s < start_s + 0.6; i++) {
            least_dps = Math.min(least_dps, roll[i] - roll[at]);
        }
        assertTrue(least_dps < -1.5, least_dps + "°/s");
        assertTrue(-least_dps > 3 * rms_dps, least_dps + " against " + rms_dps + "°/s");
        double jolt_g = jolt_g(truth.body("blue"), start_s);
        assertTrue(jolt_g > 0.3, jolt_g + " g");
    }

    /** Change of the load's size over two tenths of a second. */
    private static double jolt_g(TrueBody body, double time_s) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (double t = time_s - 0.1; t < time_s + 0.2; t += body.motion().step_s()) {
            int i = (int) Math.rint(t / body.motion().step_s());
            double x = rows(body, Channel.LONGITUDINAL_LOAD)[i];
            double y = rows(body, Channel.LATERAL_LOAD)[i];
            double z = rows(body, Channel.NORMAL_LOAD)[i];
            double size = Math.sqrt(x * x + y * y + z * z);
            least = Math.min(least, size);
            most = Math.max(most, size);
        }
        return most - least;
    }

    @Test
    void hoveringFourMetresOffTouchesNothing() {
        Truth truth = Flights.of(Flights.HOVER);
        assertEquals(List.of(), truth.contacts());
        double exit_s = truth.body("blue").exit_s().orElseThrow();
        double held_s = 0;
        double least_m = Double.POSITIVE_INFINITY;
        for (double t = exit_s; t < truth.body("blue").opening_s().orElseThrow(); t += 0.1) {
            double gap_m = gap_m(truth, "blue", Side.LEFT, t);
            least_m = Math.min(least_m, gap_m);
            held_s += Math.abs(gap_m - 4) < 1.5 ? 0.1 : 0;
        }
        assertTrue(held_s > 10, held_s + " s");
        assertTrue(least_m > 1.5, least_m + " m");
    }

    @Test
    void goingThroughClosesTooFastAtTheGateAndLeavesAhead() {
        Truth truth = Flights.of(Flights.THROUGH);
        double exit_s = truth.body("blue").exit_s().orElseThrow();
        double cross_s = exit_s + 8;
        while (gap_m(truth, "blue", Side.LEFT, cross_s) > 30) {
            cross_s += 0.1;
        }
        // The default limit at 30 m is 4.8 m/s; 2.5 over it was asked for.
        assertEquals(4.84 + 2.5, closure_mps(truth, cross_s), 0.8);
        double after_s = cross_s + 14;
        Vec3 off_m =
                truth.body("blue")
                        .motion()
                        .positionAt_m(after_s)
                        .minus(truth.body("lead").motion().positionAt_m(after_s));
        double heading_rad =
                Math.toRadians(rows(truth.body("lead"), Channel.HEADING)[(int) (after_s / 0.02)]);
        assertTrue(off_m.dot(Route.ahead(heading_rad)) > 10, off_m::toString);
    }

    private static double closure_mps(Truth truth, double time_s) {
        TrueMotion lead = truth.body("lead").motion();
        TrueMotion blue = truth.body("blue").motion();
        Vec3 r = blue.positionAt_m(time_s).minus(lead.positionAt_m(time_s));
        return -r.dot(blue.velocityAt_mps(time_s).minus(lead.velocityAt_mps(time_s))) / r.norm();
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void anOpeningIsWhereTheBrakingBegins(Scenario scenario) {
        for (TrueBody b : jumpers(Flights.of(scenario))) {
            double opening_s = b.opening_s().orElseThrow();
            double before_g = braking_g(b, opening_s - 0.1);
            for (double t = opening_s - 0.7; t < opening_s; t += 0.1) {
                assertEquals(before_g, braking_g(b, t), 0.15, b.id() + " at the pull");
            }
            double after_g = braking_g(b, opening_s + 1);
            assertTrue(after_g > before_g + 0.25, b.id() + ": " + before_g + ", " + after_g);
            double slow_mps = b.motion().velocityAt_mps(opening_s + 5).norm();
            assertTrue(slow_mps < 25, b.id() + ": " + slow_mps + " m/s");
        }
    }

    /** What its logger feels against the motion through the air. */
    private static double braking_g(TrueBody body, double time_s) {
        int row = (int) Math.rint(time_s / body.motion().step_s());
        return -rows(body, Channel.LONGITUDINAL_LOAD)[row];
    }

    @Test
    void openingsAreAtThePlannedHeight() {
        Truth truth = Flights.of(Flights.STANDARD);
        for (TrueBody b : jumpers(truth)) {
            double up_m = b.motion().positionAt_m(b.opening_s().orElseThrow()).z();
            // The pull is at the height, the braking 0.8 s of sink later.
            assertEquals(Flights.STANDARD.opening_m() - 13, up_m, 12, b.id());
        }
    }

    @Test
    void flyersLeaveAtTheLatestAtTheBreakOffHeight() {
        for (Scenario scenario : List.of(Flights.STANDARD, Flights.CROWD)) {
            Truth truth = Flights.of(scenario);
            for (TrueBody b : jumpers(truth)) {
                double t = b.exit_s().orElseThrow();
                while (b.motion().positionAt_m(t).z() > scenario.breakOff_m() - 200) {
                    t += 0.1;
                }
                double far_m =
                        b.motion()
                                .positionAt_m(t)
                                .minus(truth.body("lead").motion().positionAt_m(t))
                                .norm();
                assertTrue(far_m > 45, b.id() + ": " + far_m + " m");
            }
        }
    }

    @Test
    void theWayHomeIsAUsualGlide() {
        // Level 36, down 15.5 m/s: within federation guidance for suits, 40 to 70 mph down and 80
        // to 100 forward at most (Australian Parachute Federation, 2004).
        Truth truth = Flights.of(Flights.STANDARD);
        for (TrueBody b : jumpers(truth)) {
            double t = b.opening_s().orElseThrow() - 6;
            Vec3 p = b.motion().positionAt_m(t);
            double msl_m = truth.frame().toGeodetic(p).height_m() - truth.air().undulation_m();
            Vec3 through =
                    b.motion().velocityAt_mps(t).minus(truth.air().meanWind_mps().apply(msl_m));
            assertEquals(36, through.levelNorm(), 3, b.id());
            assertEquals(15.5, -through.z(), 2, b.id());
        }
    }
}
