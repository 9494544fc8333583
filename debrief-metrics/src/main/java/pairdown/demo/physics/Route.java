package pairdown.demo.physics;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;
import pairdown.vector.Vec3;

/** A path over the ground of straights and circles, by the distance along it. */
final class Route {
    /**
     * A straight or an arc.
     *
     * @param bend 1/radius, positive to the right
     * @param ahead direction at its start
     */
    private record Leg(
            double from_m,
            double length_m,
            Vec3 start_m,
            double course_rad,
            double bend,
            Vec3 ahead) {
        Vec3 at_m(double along_m) {
            if (bend == 0) {
                return start_m.plus(ahead.times(along_m));
            }
            Vec3 centre_m = start_m.plus(right(course_rad).times(1 / bend));
            return centre_m.minus(right(course_rad + bend * along_m).times(1 / bend));
        }
    }

    private final List<Leg> legs;

    private Route(List<Leg> legs) {
        this.legs = List.copyOf(legs);
    }

    /**
     * From a place onto a circle that is left, after some laps, through {@code end} on a course.
     */
    static Route climb(
            Vec3 from_m, Vec3 end_m, double course_rad, double radius_m, int turn, int laps) {
        Vec3 centre_m = end_m.plus(right(course_rad).times(turn * radius_m));
        double first_rad = tangent_rad(from_m, centre_m, radius_m, turn);
        double first_m = tangent_m(from_m, centre_m, radius_m);
        double arc_rad = positive(turn * (course_rad - first_rad)) + 2 * Math.PI * laps;
        Builder b = new Builder(from_m, first_rad);
        b.straight(first_m);
        b.turn(turn / radius_m, arc_rad * radius_m);
        return b.done();
    }

    /** From a place and course onto a circle that is left, after some laps, toward {@code to}. */
    static Route descent(
            Vec3 from_m,
            double course_rad,
            double straight_m,
            Vec3 to_m,
            double radius_m,
            int turn,
            int laps) {
        Builder b = new Builder(from_m, course_rad);
        b.straight(straight_m);
        Vec3 centre_m = b.place_m.plus(right(course_rad).times(turn * radius_m));
        double last_rad = tangent_rad(to_m, centre_m, radius_m, -turn) + Math.PI;
        double arc_rad = positive(turn * (last_rad - course_rad)) + 2 * Math.PI * laps;
        b.turn(turn / radius_m, arc_rad * radius_m);
        b.straight(tangent_m(to_m, centre_m, radius_m));
        return b.done();
    }

    /** A straight line. */
    static Route straight(Vec3 from_m, double course_rad, double length_m) {
        Builder b = new Builder(from_m, course_rad);
        b.straight(length_m);
        return b.done();
    }

    double length_m() {
        Leg last = legs.get(legs.size() - 1);
        return last.from_m + last.length_m;
    }

    /** Length of the last straight (m). */
    double lastLeg_m() {
        return legs.get(legs.size() - 1).length_m;
    }

    /** The place at a distance along (m); beyond the ends straight on. */
    Vec3 at_m(double along_m) {
        Leg leg = leg(along_m);
        double in_m = along_m - leg.from_m;
        double kept_m = Math.max(0, Math.min(leg.length_m, in_m));
        Vec3 place_m = leg.at_m(kept_m);
        if (in_m == kept_m) {
            return place_m;
        }
        return place_m.plus(ahead(leg.course_rad + leg.bend * kept_m).times(in_m - kept_m));
    }

    /** Course at a distance along, clockwise from north (rad), not wrapped. */
    double course_rad(double along_m) {
        Leg leg = leg(along_m);
        double in_m = Math.max(0, Math.min(leg.length_m, along_m - leg.from_m));
        return leg.course_rad + leg.bend * in_m;
    }

    private Leg leg(double along_m) {
        for (int i = legs.size() - 1; i > 0; i--) {
            if (along_m >= legs.get(i).from_m) {
                return legs.get(i);
            }
        }
        return legs.get(0);
    }

    /** Level direction of a course clockwise from north. */
    static Vec3 ahead(double course_rad) {
        return new Vec3(FastMath.sin(course_rad), FastMath.cos(course_rad), 0);
    }

    static Vec3 right(double course_rad) {
        return new Vec3(FastMath.cos(course_rad), -FastMath.sin(course_rad), 0);
    }

    /** Course of a level direction (rad, −π to π). */
    static double course_rad(Vec3 direction) {
        return FastMath.atan2(direction.x(), direction.y());
    }

    /** An angle brought to −π … π. */
    static double wrapped(double angle_rad) {
        return angle_rad - 2 * Math.PI * Math.floor((angle_rad + Math.PI) / (2 * Math.PI));
    }

    private static double positive(double angle_rad) {
        return angle_rad - 2 * Math.PI * Math.floor(angle_rad / (2 * Math.PI));
    }

    private static double tangent_rad(Vec3 from_m, Vec3 centre_m, double radius_m, int turn) {
        Vec3 to_m = centre_m.minus(from_m);
        double sine = Math.min(1, radius_m / Math.max(1, level_m(to_m)));
        return course_rad(to_m) - turn * FastMath.asin(sine);
    }

    private static double tangent_m(Vec3 from_m, Vec3 centre_m, double radius_m) {
        double d_m = level_m(centre_m.minus(from_m));
        return Math.sqrt(Math.max(0, d_m * d_m - radius_m * radius_m));
    }

    private static double level_m(Vec3 v) {
        return Math.sqrt(v.x() * v.x() + v.y() * v.y());
    }

    private static final class Builder {
        private final List<Leg> legs = new ArrayList<>();
        private Vec3 place_m;
        private double course_rad;
        private double along_m;

        Builder(Vec3 place_m, double course_rad) {
            this.place_m = place_m;
            this.course_rad = course_rad;
        }

        void straight(double length_m) {
            turn(0, length_m);
        }

        void turn(double bend, double length_m) {
            Leg leg = new Leg(along_m, length_m, place_m, course_rad, bend, ahead(course_rad));
            legs.add(leg);
            place_m = leg.at_m(length_m);
            course_rad += bend * length_m;
            along_m += length_m;
        }

        Route done() {
            return new Route(legs);
        }
    }
}
