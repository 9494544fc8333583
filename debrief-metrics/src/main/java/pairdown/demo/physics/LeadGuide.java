package pairdown.demo.physics;

import pairdown.attempt.AirspeedKind;
import pairdown.vector.Vec3;

/**
 * Takes the lead through its flight: stand, roll, climb in circles, level run, dive, recovery,
 * descent in circles, landing. Says at each moment what the pilot wants.
 */
final class LeadGuide {
    /** Where the lead's flight stands. */
    enum Stage {
        PARKED,
        ROLL,
        CLIMB,
        RUN,
        DIVE,
        RECOVERY,
        DESCENT,
        ROLLOUT,
        STOPPED
    }

    private static final double RADIUS_M = 500;

    /** The run begins this far before the field (m). */
    private static final double RUN_START_M = 3400;

    /** Ground speed while climbing, for laying out the circles. */
    private static final double CLIMB_GROUND_MPS = 41;

    private static final double CLIMB_MPS = 11.5;
    private static final double RUN_S = 45;
    private static final double FLAP_S = 10;
    private static final double FINAL_M = 1700;
    private static final double TOUCHDOWN_M = 420;

    private final Scenario scenario;
    private final Air air;
    private final LeverHand lever;
    private final SinkHand sinkHand;
    private final LeadDive dive;
    private final Vec3 parked_m;
    private final double takeOff_s;
    private final double top_m;

    private Stage stage = Stage.PARKED;
    private double since_s;
    private Route route;
    private double along_m;
    private double flap;
    private double rise_mps;

    LeadGuide(
            Scenario scenario,
            Air air,
            LeverHand lever,
            Vec3 parked_m,
            double takeOff_s,
            double course_rad) {
        this.scenario = scenario;
        this.air = air;
        this.lever = lever;
        this.sinkHand = new SinkHand(lever);
        this.dive = new LeadDive(scenario.lead(), air, lever, sinkHand);
        this.parked_m = parked_m;
        this.takeOff_s = takeOff_s;
        this.top_m =
                scenario.ship().map(ShipPlan::exitHeight_m).orElse(ShipPlan.USUAL_HEIGHT_M) + 350;
        Vec3 start_m = Route.ahead(course_rad).times(-RUN_START_M);
        this.route = up(parked_m, start_m, course_rad, top_m - air.field_m());
    }

    /** The way up that is just long enough, by laps and then by the size of the circle. */
    private static Route up(Vec3 from_m, Vec3 start_m, double course_rad, double climb_m) {
        double needed_m = climb_m / CLIMB_MPS * CLIMB_GROUND_MPS;
        int laps = 0;
        while (Route.climb(from_m, start_m, course_rad, RADIUS_M, -1, laps + 1).length_m()
                < needed_m) {
            laps++;
        }
        double radius_m = RADIUS_M;
        while (Route.climb(from_m, start_m, course_rad, radius_m, -1, laps).length_m() < needed_m) {
            radius_m += 10;
        }
        return Route.climb(from_m, start_m, course_rad, radius_m, -1, laps);
    }

    Stage stage() {
        return stage;
    }

    double since_s() {
        return since_s;
    }

    LeadDive dive() {
        return dive;
    }

    boolean isOnGround() {
        return stage == Stage.PARKED
                || stage == Stage.ROLL
                || stage == Stage.ROLLOUT
                || stage == Stage.STOPPED;
    }

    double firstCourse_rad() {
        return route.course_rad(0);
    }

    /** The dive ends: all flyers have left. */
    void recall(double time_s) {
        if (stage == Stage.DIVE) {
            recover(time_s);
        }
    }

    private void recover(double time_s) {
        enter(Stage.RECOVERY, time_s);
        dive.end(time_s);
        lever.move(time_s, 0);
    }

    private void enter(Stage next, double time_s) {
        stage = next;
        since_s = time_s;
    }

    LeadAim aim(Airframe a, double time_s, Vec3 slowWind_mps, double dt_s) {
        rise_mps = slowWind_mps.z();
        sinkHand.notice(a, dt_s);
        follow(a, dt_s);
        double density_kgpm3 = air.density_kgpm3(air.height_m(a.place_m));
        return switch (stage) {
            case PARKED, ROLL, ROLLOUT, STOPPED -> ground(a, time_s);
            case CLIMB -> climb(a, time_s, density_kgpm3);
            case RUN -> run(a, time_s, density_kgpm3);
            case DIVE -> dive(a, time_s, density_kgpm3);
            case RECOVERY -> recovery(a, time_s, dt_s);
            case DESCENT -> descent(a, time_s, density_kgpm3, dt_s);
        };
    }

    private void follow(Airframe a, double dt_s) {
        Vec3 ahead = Route.ahead(route.course_rad(along_m));
        double off_m = a.place_m.minus(route.at_m(along_m)).dot(ahead);
        along_m += Math.max(0, a.velocity_mps.dot(ahead) * dt_s + off_m * 0.5 * dt_s);
    }

    /** Turn rate toward a place so far ahead on the route. */
    private double turn_radps(Airframe a, double ahead_m, double perS, double most_radps) {
        Vec3 to_m = route.at_m(along_m + ahead_m).minus(a.place_m);
        double off_rad = Route.wrapped(Route.course_rad(to_m) - Route.course_rad(a.velocity_mps));
        return LeadPilot.bounded(perS * off_rad, -most_radps, most_radps);
    }

    private double calibrated_mps(Airframe a, double wanted_mps) {
        return air.true_mps(AirspeedKind.CALIBRATED, wanted_mps, air.height_m(a.place_m));
    }

    private LeadAim ground(Airframe a, double time_s) {
        if (stage == Stage.PARKED && time_s >= takeOff_s) {
            enter(Stage.ROLL, time_s);
            lever.move(time_s, 0.7);
        } else if (stage == Stage.ROLL && a.airspeed_mps > 33) {
            enter(Stage.CLIMB, time_s);
        } else if (stage == Stage.ROLLOUT && a.velocity_mps.norm() < 0.05) {
            enter(Stage.STOPPED, time_s);
        }
        return new LeadAim(36, 0, flap);
    }

    private LeadAim climb(Airframe a, double time_s, double density_kgpm3) {
        double speed_mps = calibrated_mps(a, 36);
        double up_mps = LeadPilot.bounded(0.1 * (top_m - air.height_m(a.place_m)), -2, CLIMB_MPS);
        if (time_s > since_s + 12) {
            sinkHand.hold(a, time_s, density_kgpm3, -up_mps, speed_mps, rise_mps, 0, 4, 0.8);
        }
        if (along_m >= route.length_m()) {
            enter(Stage.RUN, time_s);
            route =
                    Route.straight(
                            route.at_m(route.length_m()),
                            route.course_rad(route.length_m()),
                            40_000);
            along_m = 0;
        }
        double turn = time_s < since_s + 10 ? 0 : turn_radps(a, 220, 0.3, 0.11);
        return new LeadAim(speed_mps, turn, flap);
    }

    private LeadAim run(Airframe a, double time_s, double density_kgpm3) {
        LeadPlan plan = scenario.lead();
        double height_m = air.height_m(a.place_m);
        double speed_mps = air.true_mps(plan.kind(), plan.airspeed_mps(), height_m);
        double up_mps = LeadPilot.bounded(0.1 * (top_m - height_m), -3, 3);
        flap = LeadPilot.bounded((time_s - since_s - 8) / FLAP_S, 0, 1);
        sinkHand.hold(a, time_s, density_kgpm3, -up_mps, speed_mps, rise_mps, 0, 3, 0.5);
        if (time_s > since_s + RUN_S) {
            enter(Stage.DIVE, time_s);
        }
        return new LeadAim(speed_mps, turn_radps(a, 500, 0.2, 0.05), flap);
    }

    private LeadAim dive(Airframe a, double time_s, double density_kgpm3) {
        double speed_mps = dive.fly(a, time_s, since_s, density_kgpm3, rise_mps);
        if (air.aboveGround_m(a.place_m) < scenario.lead().recovery_m()) {
            recover(time_s);
        }
        return new LeadAim(
                speed_mps, turn_radps(a, 900, 0.2, 0.03), dive.slip_rad(time_s), flap, Double.NaN);
    }

    private LeadAim recovery(Airframe a, double time_s, double dt_s) {
        if (time_s > since_s + 3) {
            flap = Math.max(0, flap - dt_s / FLAP_S);
        }
        if (time_s > since_s + 16) {
            enter(Stage.DESCENT, time_s);
            route = home(a);
            along_m = 0;
        }
        return new LeadAim(calibrated_mps(a, 42), 0, flap);
    }

    /** A way down to the field that sinks at some 6.5 m/s. */
    private Route home(Airframe a) {
        double course_rad = Route.course_rad(a.velocity_mps);
        Vec3 from_m = new Vec3(a.place_m.x(), a.place_m.y(), 0);
        double height_m = air.aboveGround_m(a.place_m);
        double straight_m = 300;
        int laps = 0;
        Route best = descentOver(from_m, course_rad, straight_m, 0);
        while (best.lastLeg_m() < FINAL_M) {
            straight_m += 400;
            best = descentOver(from_m, course_rad, straight_m, 0);
        }
        while (best.length_m() / 49 * 8.6 < height_m) {
            best = descentOver(from_m, course_rad, straight_m, ++laps);
        }
        return best;
    }

    private Route descentOver(Vec3 from_m, double course_rad, double straight_m, int laps) {
        return Route.descent(from_m, course_rad, straight_m, parked_m, RADIUS_M, -1, laps);
    }

    private LeadAim descent(Airframe a, double time_s, double density_kgpm3, double dt_s) {
        double left_m = route.length_m() - TOUCHDOWN_M - along_m;
        double height_m = air.aboveGround_m(a.place_m);
        boolean last = left_m < FINAL_M - TOUCHDOWN_M;
        flap = Math.min(last ? 0.5 : 0, flap + dt_s / FLAP_S);
        double speed_mps = calibrated_mps(a, last ? 34 : 46);
        double ground_mps = Math.max(10, Math.hypot(a.velocity_mps.x(), a.velocity_mps.y()));
        double sink_mps = LeadPilot.bounded(ground_mps * height_m / Math.max(50, left_m), 0, 10);
        sinkHand.hold(a, time_s, density_kgpm3, sink_mps, speed_mps, rise_mps, 0, 3, 0.5);
        double flare = height_m < 12 ? Math.max(0.5, 0.35 * height_m) : Double.NaN;
        if (height_m <= 0.01) {
            enter(Stage.ROLLOUT, time_s);
            lever.move(time_s, 0);
        }
        double turn = height_m < 12 ? 0 : turn_radps(a, 220, 0.3, 0.11);
        return new LeadAim(speed_mps, turn, 0, flap, flare);
    }
}
