package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import pairdown.motion.Attitude;
import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/** Paths over the ground and the turning of axes. */
class RouteTest {
    private static final String SEED = "20310514";

    @Property(tries = 60, seed = SEED)
    void aClimbEndsWhereAndAsItShould(
            @ForAll @DoubleRange(min = -4000, max = 4000) double east_m,
            @ForAll @DoubleRange(min = 2000, max = 5000) double north_m,
            @ForAll @DoubleRange(min = -3, max = 3) double course_rad,
            @ForAll @IntRange(min = 0, max = 6) int laps,
            @ForAll boolean right) {
        Vec3 end_m = new Vec3(east_m, north_m, 0);
        Route route = Route.climb(Vec3.ZERO, end_m, course_rad, 500, right ? 1 : -1, laps);
        assertEquals(0, route.at_m(route.length_m()).minus(end_m).norm(), 1e-6);
        assertEquals(0, route.at_m(0).norm(), 1e-9);
        double last_rad = route.course_rad(route.length_m());
        assertEquals(0, Route.wrapped(last_rad - course_rad), 1e-9);
        assertTrue(route.length_m() >= laps * 2 * Math.PI * 500);
        assertSmooth(route);
    }

    @Property(tries = 60, seed = SEED)
    void aDescentEndsWhereItShould(
            @ForAll @DoubleRange(min = -6000, max = 6000) double east_m,
            @ForAll @DoubleRange(min = -3, max = 3) double course_rad,
            @ForAll @IntRange(min = 0, max = 4) int laps) {
        Vec3 from_m = new Vec3(east_m, 5000, 0);
        Route route = Route.descent(from_m, course_rad, 300, Vec3.ZERO, 500, -1, laps);
        if (route.lastLeg_m() > 1) {
            assertEquals(0, route.at_m(route.length_m()).norm(), 1e-6);
        }
        assertEquals(0, Route.wrapped(route.course_rad(0) - course_rad), 1e-12);
        assertSmooth(route);
    }

    /** No jumps of place or course, and the course is the way it goes. */
    private static void assertSmooth(Route route) {
        double step_m = route.length_m() / 500;
        for (int i = 0; i < 500; i++) {
            Vec3 here_m = route.at_m(i * step_m);
            Vec3 next_m = route.at_m((i + 1) * step_m);
            double chord_m = next_m.minus(here_m).norm();
            assertTrue(chord_m <= step_m + 1e-6 && chord_m > 0.95 * step_m, chord_m + " m");
            double middle_rad = route.course_rad((i + 0.5) * step_m);
            double way_rad = Route.course_rad(next_m.minus(here_m));
            assertEquals(0, Route.wrapped(middle_rad - way_rad), 0.03);
        }
    }

    @Test
    void beyondItsEndsARouteGoesStraightOn() {
        Route route = Route.straight(new Vec3(10, 0, 0), Math.PI / 2, 100);
        assertEquals(0, route.at_m(150).minus(new Vec3(160, 0, 0)).norm(), 1e-9);
        assertEquals(0, route.at_m(-20).minus(new Vec3(-10, 0, 0)).norm(), 1e-9);
    }

    @Property(tries = 60, seed = SEED)
    void wrappingKeepsTheDirection(@ForAll @DoubleRange(min = -50, max = 50) double angle_rad) {
        double wrapped = Route.wrapped(angle_rad);
        assertTrue(wrapped >= -Math.PI && wrapped <= Math.PI);
        assertEquals(Math.sin(angle_rad), Math.sin(wrapped), 1e-9);
        assertEquals(Math.cos(angle_rad), Math.cos(wrapped), 1e-9);
    }

    @Property(tries = 60, seed = SEED)
    void bodyAxesAreARotation(
            @ForAll @DoubleRange(min = -7, max = 7) double heading_rad,
            @ForAll @DoubleRange(min = -1.4, max = 1.4) double pitch_rad,
            @ForAll @DoubleRange(min = -3, max = 3) double roll_rad) {
        Mat3 m = Attitudes.enuToBody(heading_rad, pitch_rad, roll_rad);
        Mat3 one = m.times(m.transpose());
        for (Vec3 axis : new Vec3[] {new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1)}) {
            assertEquals(0, one.times(axis).minus(axis).norm(), 1e-12);
        }
        // Ahead, right, above is left-handed against east, north, up: a mirror would show here.
        assertEquals(-1, m.row0().cross(m.row1()).dot(m.row2()), 1e-12);
        // The debrief's own rotation, written apart from this.
        Mat3 other =
                new Attitude(
                                Math.toDegrees(heading_rad),
                                Math.toDegrees(pitch_rad),
                                Math.toDegrees(roll_rad),
                                Attitude.Source.LOGGED)
                        .enuToBody();
        Vec3 any = new Vec3(3, -2, 5);
        assertEquals(0, m.times(any).minus(other.times(any)).norm(), 1e-9);
    }

    @Test
    void signsAreThoseOfTheTrade() {
        // Heading east, nose 10° up, right wing 20° down.
        Mat3 m = Attitudes.enuToBody(Math.PI / 2, Math.toRadians(10), Math.toRadians(20));
        assertTrue(m.row0().x() > 0.9 && m.row0().z() > 0, "nose to the east and up");
        assertTrue(m.row1().y() < -0.9 && m.row1().z() < 0, "right wing to the south and down");
        assertTrue(m.row2().z() > 0.9 && m.row2().y() < 0, "roof up, leaning south");
    }
}
