package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueMotion;
import pairdown.demo.truth.Truth;
import pairdown.track.Channel;
import pairdown.vector.Vec3;

/** The exit aircraft: a helicopter at 60 kt, a twin at 105 kt. */
class ShipTest {
    private static final Scenario TWIN =
            Scenario.standard(4)
                    .withShip(ShipPlan.TWIN)
                    .withFlyers(FlyerPlan.hold("blue", Side.LEFT, 60));

    static Stream<Scenario> scenarios() {
        return Stream.of(Flights.STANDARD, TWIN);
    }

    private static double exit_s(Truth truth) {
        return truth.body("blue").exit_s().orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void jumpersLeaveAtThePlannedAirspeedAndHeight(Scenario scenario) {
        Truth truth = Flights.of(scenario);
        ShipPlan plan = scenario.ship().orElseThrow();
        TrueBody ship = truth.body("ship");
        double exit_s = exit_s(truth);
        double airspeed_mps =
                Objects.requireNonNull(ship.systems().get(Channel.TRUE_AIRSPEED))[
                        (int) (exit_s / 0.02)];
        assertEquals(plan.exitAirspeed_mps(), airspeed_mps, 1.5);
        Vec3 p = ship.motion().positionAt_m(exit_s);
        double msl_m = truth.frame().toGeodetic(p).height_m() - truth.air().undulation_m();
        // The lead comes to its mark within a second of sink; station is kept within some metres.
        assertEquals(plan.exitHeight_m(), msl_m, 40);
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void itIsFlownAsAnAircraftIs(Scenario scenario) {
        TrueMotion m = Flights.of(scenario).body("ship").motion();
        for (double t = 100; t < m.end_s() - 1; t += 0.5) {
            Vec3 v = m.velocityAt_mps(t);
            Vec3 a = m.velocityAt_mps(t + 0.5).minus(m.velocityAt_mps(t - 0.5));
            assertTrue(v.norm() < 80, t + " s: " + v.norm() + " m/s");
            // Turns of 600 m at 45 m/s pull 0.35 g to the side.
            assertTrue(a.norm() < 6, t + " s: " + a.norm() + " m/s²");
            assertTrue(Math.abs(v.z()) < 20, t + " s: " + v.z() + " m/s up");
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void theRunIsStraightAndLevelForHalfAMinuteBeforeTheExit(Scenario scenario) {
        Truth truth = Flights.of(scenario);
        TrueMotion m = truth.body("ship").motion();
        double exit_s = exit_s(truth);
        Vec3 before = m.velocityAt_mps(exit_s - 30);
        Vec3 at = m.velocityAt_mps(exit_s);
        double turned_deg =
                Math.toDegrees(Route.wrapped(Route.course_rad(at) - Route.course_rad(before)));
        assertEquals(0, turned_deg, 6);
        assertEquals(0, at.z(), 1.5);
        assertEquals(m.positionAt_m(exit_s - 30).z(), m.positionAt_m(exit_s).z(), 15, "level");
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void atTheExitTheLeadIsBelowOrBesideAndClear(Scenario scenario) {
        Truth truth = Flights.of(scenario);
        double exit_s = exit_s(truth);
        double apart_m =
                truth.body("ship")
                        .motion()
                        .positionAt_m(exit_s)
                        .minus(truth.body("lead").motion().positionAt_m(exit_s))
                        .norm();
        assertTrue(apart_m > 50 && apart_m < 400, apart_m + " m");
    }
}
