package pairdown.demo.physics;

import java.util.Map;
import java.util.OptionalDouble;
import pairdown.attempt.Role;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueMotion;
import pairdown.track.Channel;
import pairdown.vector.Vec3;

/** The exit aircraft's rows, and what rides in it. */
final class ShipTrack {
    private static final double MASS_KG = 3000;
    private static final double HEADING_S = 1.5;
    private static final double TAXI_MPS = 12;

    private final ShipPlan plan;
    private final Vec3[] place_m;
    private final double[] heading_rad;

    ShipTrack(ShipPlan plan, Vec3[] place_m, Air air) {
        this.plan = plan;
        this.place_m = place_m;
        this.heading_rad = headings(air);
    }

    private double[] headings(Air air) {
        double[] out = new double[place_m.length];
        int first = 0;
        while (velocity_mps(first).norm() < 3) {
            first++;
        }
        double now_rad = Route.course_rad(velocity_mps(first));
        for (int i = 0; i < out.length; i++) {
            Vec3 over_mps = velocity_mps(i);
            double speed_mps = over_mps.norm();
            if (speed_mps > 2) {
                double flying = Math.min(1, Math.max(0, (speed_mps - TAXI_MPS) / TAXI_MPS));
                Vec3 wind_mps = air.meanWind_mps(air.height_m(place_m[i]));
                double wanted_rad = Route.course_rad(over_mps.minus(wind_mps.times(flying)));
                now_rad += Route.wrapped(wanted_rad - now_rad) * Simulation.STEP_S / HEADING_S;
            }
            out[i] = now_rad;
        }
        return out;
    }

    private int kept(int row) {
        return Math.max(0, Math.min(place_m.length - 1, row));
    }

    Vec3 place_m(int row) {
        return place_m[kept(row)];
    }

    Vec3 velocity_mps(int row) {
        return place_m(row + 1).minus(place_m(row - 1)).times(0.5 / Simulation.STEP_S);
    }

    Vec3 right(int row) {
        return Route.right(heading_rad[kept(row)]);
    }

    /** The place of a seat, given ahead, right and above of the ship's middle, laid level. */
    Vec3 seat_m(int row, Vec3 seat_m) {
        double heading = heading_rad[kept(row)];
        return place_m(row)
                .plus(Route.ahead(heading).times(seat_m.x()))
                .plus(Route.right(heading).times(seat_m.y()))
                .plus(new Vec3(0, 0, seat_m.z()));
    }

    boolean stands(int row) {
        return row >= place_m.length;
    }

    TrueBody body(Air air, int rows) {
        Vec3[] place = new Vec3[rows];
        Vec3[] velocity = new Vec3[rows];
        for (int i = 0; i < rows; i++) {
            place[i] = place_m(i);
            velocity[i] = velocity_mps(i);
        }
        return new TrueBody(
                plan.id(),
                Role.JUMPSHIP,
                new TrueMotion(0, Simulation.STEP_S, place, velocity),
                systems(air, place, velocity),
                MASS_KG,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private Map<Channel, double[]> systems(Air air, Vec3[] place, Vec3[] velocity) {
        Columns columns = new Columns();
        for (int i = 0; i < place.length; i++) {
            double height_m = air.height_m(place[i]);
            double heading = heading_rad[kept(i)];
            Vec3 through_mps = velocity[i].minus(air.meanWind_mps(height_m));
            boolean flying = velocity[i].norm() > TAXI_MPS;
            double nose_mps = Math.max(0, through_mps.dot(Route.ahead(heading)));
            columns.putAir(air, height_m, flying ? through_mps.norm() : nose_mps);
            columns.putHeading(heading);
        }
        return columns.toMap();
    }
}
