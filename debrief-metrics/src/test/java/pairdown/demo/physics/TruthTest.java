package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.air.Airspeed;
import pairdown.atmosphere.Atmosphere;
import pairdown.attempt.Role;
import pairdown.demo.truth.TrueAir;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueMotion;
import pairdown.demo.truth.Truth;
import pairdown.track.Channel;
import pairdown.vector.Vec3;

/** What a simulation tells of one flight agrees with itself. */
class TruthTest {
    private static final double EARTH_M = 6_371_000;
    private static final Vec3 UP = new Vec3(0, 0, Atmosphere.GRAVITY_MPS2);

    static Stream<Scenario> scenarios() {
        return Stream.of(Flights.STANDARD, Flights.CROWD, Flights.TOUCH, Flights.PRACTICE);
    }

    private static double aboveGround_m(Vec3 p) {
        return p.z() + (p.x() * p.x() + p.y() * p.y()) / (2 * EARTH_M);
    }

    private static double[] rows(TrueBody body, Channel channel) {
        return Objects.requireNonNull(body.systems().get(channel));
    }

    /** Acceleration over two rows (m/s²). */
    private static Vec3 acceleration_mps2(TrueMotion m, int row) {
        return m.velocity_mps(row + 1).minus(m.velocity_mps(row - 1)).times(0.5 / m.step_s());
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void velocityIsTheSlopeOfPosition(Scenario scenario) {
        for (TrueBody body : Flights.of(scenario).bodies()) {
            TrueMotion m = body.motion();
            for (int i = 1; i < m.size() - 1; i++) {
                Vec3 slope = m.position_m(i + 1).minus(m.position_m(i - 1)).times(0.5 / m.step_s());
                // Steps leave half a step of acceleration between them; a push at the exit and
                // the ground come within one step.
                double change =
                        m.velocity_mps(i + 1).minus(m.velocity_mps(i)).norm()
                                + m.velocity_mps(i).minus(m.velocity_mps(i - 1)).norm();
                double off = slope.minus(m.velocity_mps(i)).norm();
                assertTrue(
                        off <= 0.51 * change + 0.002,
                        body.id() + " at " + m.time_s(i) + " s: " + off);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void nobodyIsUnderTheGround(Scenario scenario) {
        for (TrueBody body : Flights.of(scenario).bodies()) {
            TrueMotion m = body.motion();
            for (int i = 0; i < m.size(); i++) {
                // Wheels give by some centimetres, knees by a third of a metre.
                double above_m = aboveGround_m(m.position_m(i));
                assertTrue(above_m > -0.4, body.id() + " at " + m.time_s(i) + " s: " + above_m);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void allStandStillForAMinuteBeforeAndAfter(Scenario scenario) {
        for (TrueBody body : Flights.of(scenario).bodies()) {
            TrueMotion m = body.motion();
            for (int i = 0; i * m.step_s() < 60; i++) {
                int last = m.size() - 1 - i;
                assertEquals(0, m.velocity_mps(i).norm(), 1e-9, body.id() + " before");
                assertEquals(0, m.velocity_mps(last).norm(), 1e-9, body.id() + " after");
                assertEquals(0, aboveGround_m(m.position_m(last)), 0.01, body.id() + " after");
            }
        }
    }

    @Test
    void whatALoggerOnTheBodyFeelsIsTheMotionsAcceleration() {
        for (Scenario scenario : new Scenario[] {Flights.STANDARD, Flights.CROWD}) {
            for (TrueBody body : Flights.of(scenario).bodies()) {
                if (body.role().isJumper()) {
                    assertLoads(
                            body,
                            body.exit_s().orElseThrow() + 0.1,
                            body.opening_s().orElseThrow() + 10);
                }
            }
        }
        Truth practice = Flights.of(Flights.PRACTICE);
        TrueMotion lead = practice.body("lead").motion();
        int[] dive = Flights.steadyDive(practice);
        assertLoads(practice.body("lead"), lead.time_s(dive[0]), lead.time_s(dive[1]));
    }

    private static void assertLoads(TrueBody body, double from_s, double to_s) {
        TrueMotion m = body.motion();
        double squares = 0;
        int n = 0;
        for (int i = (int) (from_s / m.step_s()); i * m.step_s() < to_s; i++) {
            Vec3 load =
                    new Vec3(
                            rows(body, Channel.LONGITUDINAL_LOAD)[i],
                            rows(body, Channel.LATERAL_LOAD)[i],
                            rows(body, Channel.NORMAL_LOAD)[i]);
            double felt = acceleration_mps2(m, i).plus(UP).norm() / Atmosphere.GRAVITY_MPS2;
            squares += (load.norm() - felt) * (load.norm() - felt);
            n++;
        }
        assertTrue(n > 500);
        // A row's load is that of the step before or behind it: half a step apart.
        assertEquals(0, Math.sqrt(squares / n), 0.02, body.id());
    }

    @Test
    void airDataAreThoseOfTheAirAtTheBodysHeight() {
        Truth truth = Flights.of(Flights.STANDARD);
        TrueAir air = truth.air();
        for (String id : new String[] {"lead", "ship"}) {
            TrueBody body = truth.body(id);
            TrueMotion m = body.motion();
            for (int i = 0; i < m.size(); i += 500) {
                double msl_m =
                        truth.frame().toGeodetic(m.position_m(i)).height_m() - air.undulation_m();
                double p_hPa = air.atmosphere().pressure_hPa(msl_m);
                // The field's sphere against the ellipsoid: some centimetres.
                assertEquals(p_hPa, rows(body, Channel.STATIC_PRESSURE)[i], 0.05);
                double there_m = Atmosphere.pressureAltitude_m(p_hPa);
                assertEquals(there_m, rows(body, Channel.PRESSURE_ALTITUDE)[i], 0.5);
                double true_mps = rows(body, Channel.TRUE_AIRSPEED)[i];
                double calibrated_mps =
                        Airspeed.calibrated_mps(
                                true_mps, p_hPa, air.atmosphere().temperature_C(msl_m));
                assertEquals(calibrated_mps, rows(body, Channel.INDICATED_AIRSPEED)[i], 0.01);
            }
        }
    }

    @Test
    void inStillAirTheLeadsAirspeedIsItsMotionThroughTheWind() {
        Truth truth = Flights.of(Flights.PRACTICE);
        TrueBody lead = truth.body("lead");
        int[] dive = Flights.steadyDive(truth);
        for (int i = dive[0]; i < dive[1]; i++) {
            Vec3 p = lead.motion().position_m(i);
            double msl_m = truth.frame().toGeodetic(p).height_m() - truth.air().undulation_m();
            Vec3 through =
                    lead.motion().velocity_mps(i).minus(truth.air().meanWind_mps().apply(msl_m));
            // Half a step of acceleration lies between the two.
            assertEquals(through.norm(), rows(lead, Channel.TRUE_AIRSPEED)[i], 0.05);
        }
    }

    @Test
    void theLeadsRatesAddUpToItsAttitude() {
        Truth truth = Flights.of(Flights.STANDARD);
        TrueBody lead = truth.body("lead");
        double step_s = lead.motion().step_s();
        int window = (int) (5 / step_s);
        int end = Flights.steadyDive(truth)[1] - window;
        // From the climb on: on the wheels the heading is that of the ground.
        for (int i = (int) (200 / step_s); i < end; i += window) {
            double[] sum = new double[3];
            for (int k = i; k < i + window; k++) {
                double[] slopes = slopes_dps(lead, k + 1);
                for (int axis = 0; axis < 3; axis++) {
                    sum[axis] += slopes[axis] * step_s;
                }
            }
            double turned = change(lead, Channel.HEADING, i, i + window) - sum[0];
            // Rows hold every second step's rates, and buffet's white part moves them by about 1°/s
            // from step to step: 0.01 s·√250 of that is a sigma of 0.11°.
            assertEquals(0, turned - 360 * Math.rint(turned / 360), 0.35, "heading");
            assertEquals(0, change(lead, Channel.PITCH, i, i + window) - sum[1], 0.35, "pitch");
            assertEquals(0, change(lead, Channel.ROLL, i, i + window) - sum[2], 0.35, "roll");
        }
    }

    private static double change(TrueBody body, Channel channel, int from, int to) {
        return rows(body, channel)[to] - rows(body, channel)[from];
    }

    /** Slopes of heading, pitch and roll by the body's rates (°/s): the usual Euler equations. */
    private static double[] slopes_dps(TrueBody lead, int row) {
        double phi = Math.toRadians(rows(lead, Channel.ROLL)[row]);
        double theta = Math.toRadians(rows(lead, Channel.PITCH)[row]);
        double p = rows(lead, Channel.ROLL_RATE)[row];
        double q = rows(lead, Channel.PITCH_RATE)[row];
        double r = rows(lead, Channel.YAW_RATE)[row];
        double turning = (q * Math.sin(phi) + r * Math.cos(phi)) / Math.cos(theta);
        return new double[] {
            turning, q * Math.cos(phi) - r * Math.sin(phi), p + turning * Math.sin(theta)
        };
    }

    @Test
    void jumpersRideInTheShipUntilTheyLeave() {
        Truth truth = Flights.of(Flights.CROWD);
        TrueMotion ship = truth.body("ship").motion();
        for (TrueBody body : truth.bodies()) {
            if (!body.role().isJumper()) {
                continue;
            }
            double exit_s = body.exit_s().orElseThrow();
            for (double t = 120; t < exit_s - 0.1; t += 5) {
                Vec3 off_m = body.motion().positionAt_m(t).minus(ship.positionAt_m(t));
                assertTrue(off_m.norm() < 3, body.id() + " at " + t + ": " + off_m.norm() + " m");
                Vec3 off_mps = body.motion().velocityAt_mps(t).minus(ship.velocityAt_mps(t));
                assertTrue(off_mps.norm() < 0.5, body.id() + " at " + t + ": " + off_mps.norm());
            }
            // Ship velocity + 1 to 2 m/s sideways, and what 0.1 s of air does to it.
            Vec3 push =
                    body.motion()
                            .velocityAt_mps(exit_s + 0.1)
                            .minus(ship.velocityAt_mps(exit_s + 0.1));
            double sideways = push.levelNorm();
            assertTrue(sideways > 0.7 && sideways < 2.6, body.id() + ": " + sideways);
        }
    }

    @Test
    void everybodyIsThereWithItsRole() {
        Truth truth = Flights.of(Flights.STANDARD);
        assertEquals(
                List.of(Role.LEAD, Role.JUMPSHIP, Role.FLYER, Role.FLYER),
                truth.bodies().stream().map(TrueBody::role).toList());
        assertTrue(truth.body("lead").exit_s().isEmpty());
        assertTrue(truth.body("ship").opening_s().isEmpty());
    }
}
