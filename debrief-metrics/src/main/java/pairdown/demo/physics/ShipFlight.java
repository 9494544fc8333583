package pairdown.demo.physics;

import java.util.Random;
import pairdown.vector.Vec3;

/**
 * The exit aircraft's whole flight, laid out backwards from the exit: circles up to the start of
 * the run, the run at constant airspeed through the exit point, circles down to where it stood. It
 * keeps to that path but for a slow wander of some metres; its climbing speed is what brings it to
 * the run on time.
 */
final class ShipFlight {
    static final double STEP_S = Simulation.STEP_S;

    private static final double RADIUS_M = 600;
    private static final double RUN_S = 45;
    private static final double CLIMB_MPS = 44;
    private static final double DOWN_MPS = 50;
    private static final double SINK_MPS = 10.5;
    private static final double FINAL_M = 1500;
    private static final double SPEED_UP_S = 25;
    private static final double WANDER_MPS = 0.7;
    private static final double WANDER_PERS = 0.08;
    private static final int SMOOTHING = 75;

    private final Air air;
    private final Vec3 parked_m;
    private final double takeOff_s;
    private final Exit exit;
    private final double after_s;

    /**
     * Where and how the jumpers leave.
     *
     * @param place_m of the ship then
     * @param heading_rad of its nose
     * @param airspeed_mps true airspeed
     */
    record Exit(double time_s, Vec3 place_m, double heading_rad, double airspeed_mps) {}

    private ShipFlight(Air air, Vec3 parked_m, double takeOff_s, Exit exit, double after_s) {
        this.air = air;
        this.parked_m = parked_m;
        this.takeOff_s = takeOff_s;
        this.exit = exit;
        this.after_s = after_s;
    }

    /**
     * Its places, a row a step from time zero until it stands again.
     *
     * @param after_s it stays on the run this long after the exit
     */
    static Vec3[] fly(
            Air air, Vec3 parked_m, double takeOff_s, Exit exit, double after_s, Random random) {
        ShipFlight flight = new ShipFlight(air, parked_m, takeOff_s, exit, after_s);
        return wandering(smooth(flight.planned()), random);
    }

    private Vec3[] planned() {
        Vec3 run_mps = runVelocity_mps();
        double start_s = exit.time_s() - RUN_S;
        double end_s = exit.time_s() + after_s;
        Vec3 start_m = exit.place_m().minus(run_mps.times(RUN_S));
        Vec3 end_m = exit.place_m().plus(run_mps.times(after_s));
        double course_rad = Route.course_rad(run_mps);
        Climb climb = climb(start_m, course_rad, start_s);
        Down down = down(end_m, course_rad, end_s);
        int rows = (int) Math.ceil(down.endsAt_s / STEP_S) + 1;
        Vec3[] place_m = new Vec3[rows];
        for (int i = 0; i < rows; i++) {
            double t_s = i * STEP_S;
            if (t_s < start_s) {
                place_m[i] = climb.at_m(t_s);
            } else if (t_s <= end_s) {
                place_m[i] = exit.place_m().plus(run_mps.times(t_s - exit.time_s()));
            } else {
                place_m[i] = down.next_m(t_s);
            }
        }
        return place_m;
    }

    private Vec3 runVelocity_mps() {
        Vec3 wind_mps = air.meanWind_mps(air.height_m(exit.place_m()));
        return Route.ahead(exit.heading_rad()).times(exit.airspeed_mps()).plus(wind_mps);
    }

    /** Ground speed (m/s) on a course at a true airspeed and height. */
    private double ground_mps(double course_rad, double airspeed_mps, double aboveField_m) {
        Vec3 wind_mps = air.meanWind_mps(air.field_m() + aboveField_m);
        double with_mps = wind_mps.dot(Route.ahead(course_rad));
        double across_mps = wind_mps.dot(Route.right(course_rad));
        double into_mps =
                Math.sqrt(Math.max(25, airspeed_mps * airspeed_mps - across_mps * across_mps));
        return with_mps + into_mps;
    }

    private Climb climb(Vec3 start_m, double course_rad, double start_s) {
        Climb best = new Climb(start_m, course_rad, start_s, 0);
        for (int laps = 1; laps < 12; laps++) {
            Climb other = new Climb(start_m, course_rad, start_s, laps);
            if (Math.abs(other.airspeed_mps - CLIMB_MPS)
                    < Math.abs(best.airspeed_mps - CLIMB_MPS)) {
                best = other;
            }
        }
        best.tabulate();
        return best;
    }

    /** The way up, at the one airspeed that is on time. */
    private final class Climb {
        private final Route route;
        private final double start_s;
        private final double top_m;
        private final double airspeed_mps;
        private double[] along_m = new double[0];

        Climb(Vec3 start_m, double course_rad, double start_s, int laps) {
            this.route = Route.climb(parked_m, start_m, course_rad, RADIUS_M, 1, laps);
            this.start_s = start_s;
            this.top_m = exit.place_m().z();
            double low = 15;
            double high = 120;
            for (int i = 0; i < 40; i++) {
                double middle = (low + high) / 2;
                if (reach_m(middle) < route.length_m()) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            this.airspeed_mps = (low + high) / 2;
        }

        private double reach_m(double speed_mps) {
            double s_m = 0;
            for (double t_s = takeOff_s; t_s < start_s; t_s += 0.5) {
                s_m += speed_mps(t_s, s_m, speed_mps) * 0.5;
            }
            return s_m;
        }

        private double speed_mps(double t_s, double s_m, double climb_mps) {
            double rolling = Math.min(1, (t_s - takeOff_s) / SPEED_UP_S);
            double slowing = Math.max(0, Math.min(1, (t_s - start_s + SPEED_UP_S) / SPEED_UP_S));
            double air_mps = climb_mps + slowing * (exit.airspeed_mps() - climb_mps);
            return rolling * ground_mps(route.course_rad(s_m), air_mps, height_m(t_s));
        }

        void tabulate() {
            int rows = (int) Math.ceil(start_s / STEP_S) + 2;
            along_m = new double[rows];
            for (int i = 1; i < rows; i++) {
                double t_s = i * STEP_S;
                along_m[i] =
                        t_s < takeOff_s
                                ? 0
                                : along_m[i - 1]
                                        + speed_mps(t_s, along_m[i - 1], airspeed_mps) * STEP_S;
            }
            double scale = route.length_m() / along_m[(int) Math.rint(start_s / STEP_S)];
            for (int i = 0; i < rows; i++) {
                along_m[i] *= scale;
            }
        }

        private double height_m(double t_s) {
            double from_s = takeOff_s + SPEED_UP_S - 5;
            double to_s = start_s - 10;
            return top_m * eased((t_s - from_s) / (to_s - from_s));
        }

        Vec3 at_m(double t_s) {
            Vec3 place_m = route.at_m(along_m[(int) Math.rint(t_s / STEP_S)]);
            return new Vec3(place_m.x(), place_m.y(), height_m(t_s));
        }
    }

    /** From 0 to 1 with a constant slope but for a twentieth at either end. */
    private static double eased(double x) {
        double e = 0.05;
        double u = Math.max(0, Math.min(1, x));
        double slope = 1 / (1 - e);
        if (u < e) {
            return slope * u * u / (2 * e);
        }
        if (u > 1 - e) {
            return 1 - slope * (1 - u) * (1 - u) / (2 * e);
        }
        return slope * (u - e / 2);
    }

    private Down down(Vec3 end_m, double course_rad, double end_s) {
        Vec3 from_m = new Vec3(end_m.x(), end_m.y(), 0);
        double straight_m = 300;
        Route route = descent(from_m, course_rad, straight_m, 0);
        while (route.lastLeg_m() < FINAL_M) {
            straight_m += 400;
            route = descent(from_m, course_rad, straight_m, 0);
        }
        for (int laps = 1; route.length_m() / DOWN_MPS * SINK_MPS < end_m.z(); laps++) {
            route = descent(from_m, course_rad, straight_m, laps);
        }
        return new Down(route, end_m.z(), end_s);
    }

    private Route descent(Vec3 from_m, double course_rad, double straight_m, int laps) {
        return Route.descent(from_m, course_rad, straight_m, parked_m, RADIUS_M, 1, laps);
    }

    /** The way down, a step after the other. */
    private final class Down {
        private final Route route;
        private final double from_m;
        private final double endsAt_s;
        private double along_m;
        private double last_s;

        Down(Route route, double from_m, double start_s) {
            this.route = route;
            this.from_m = from_m;
            this.last_s = start_s;
            double t_s = start_s;
            double s_m = 0;
            while (s_m < route.length_m() - 0.05) {
                s_m += speed_mps(t_s - start_s, s_m) * STEP_S;
                t_s += STEP_S;
            }
            this.endsAt_s = t_s + 5;
            this.since_s = start_s;
        }

        private final double since_s;

        private double speed_mps(double in_s, double s_m) {
            double up = Math.min(1, in_s / SPEED_UP_S);
            double air_mps = exit.airspeed_mps() + up * (DOWN_MPS - exit.airspeed_mps());
            double left_m = Math.max(0, route.length_m() - s_m);
            double most_mps = Math.sqrt(2 * 1.1 * left_m) + 0.1;
            return Math.min(most_mps, ground_mps(route.course_rad(s_m), air_mps, height_m(s_m)));
        }

        private double height_m(double s_m) {
            double landing_m = route.length_m() - 300;
            return from_m * (1 - eased(s_m / landing_m));
        }

        Vec3 next_m(double t_s) {
            along_m =
                    Math.min(
                            route.length_m(),
                            along_m + speed_mps(t_s - since_s, along_m) * (t_s - last_s));
            last_s = t_s;
            Vec3 place_m = route.at_m(along_m);
            return new Vec3(place_m.x(), place_m.y(), height_m(along_m));
        }
    }

    /** Twice a moving average over three seconds: turns are rolled into, not entered at once. */
    private static Vec3[] smooth(Vec3[] rows) {
        return averaged(averaged(rows));
    }

    private static Vec3[] averaged(Vec3[] rows) {
        Vec3[] out = new Vec3[rows.length];
        int n = rows.length;
        Vec3 sum = Vec3.ZERO;
        for (int k = -SMOOTHING; k <= SMOOTHING; k++) {
            sum = sum.plus(rows[Math.max(0, Math.min(n - 1, k))]);
        }
        for (int i = 0; i < n; i++) {
            out[i] = sum.times(1.0 / (2 * SMOOTHING + 1));
            sum =
                    sum.plus(rows[Math.min(n - 1, i + SMOOTHING + 1)])
                            .minus(rows[Math.max(0, Math.min(n - 1, i - SMOOTHING))]);
        }
        return out;
    }

    /** A slow drift off the path and back, none near the ground. */
    private static Vec3[] wandering(Vec3[] rows, Random random) {
        Wander[] wish = {
            new Wander(random, 6), new Wander(random, 6), new Wander(random, 6),
        };
        double[] off_m = new double[3];
        double[] speed_mps = new double[3];
        for (int i = 0; i < rows.length; i++) {
            double low = Math.max(0, Math.min(1, (rows[i].z() - 20) / 300));
            double free = low * low * (3 - 2 * low);
            for (int axis = 0; axis < 3; axis++) {
                double pull =
                        0.12 * WANDER_MPS * wish[axis].step(STEP_S)
                                - 2 * WANDER_PERS * speed_mps[axis]
                                - WANDER_PERS * WANDER_PERS * off_m[axis];
                speed_mps[axis] += pull * STEP_S;
                off_m[axis] += speed_mps[axis] * STEP_S;
            }
            rows[i] = rows[i].plus(new Vec3(off_m[0], off_m[1], 0.4 * off_m[2]).times(free));
        }
        return rows;
    }
}
