package pairdown.demo.physics;

import java.util.Random;
import pairdown.atmosphere.Atmosphere;
import pairdown.vector.Vec3;

/** One flyer from the exit to standing on the ground again. */
final class FlyerFlight {
    private static final double SMALL_S = 1;
    private static final double OPEN_S = 4;
    private static final double OPEN_LIFT_M2 = 1.2;
    private static final double OPEN_DRAG_M2 = 0.34;

    /** Glide back toward the field after the break-off: level speed and sink. */
    private static final double HOME_MPS = 36;

    private static final double HOME_SINK_MPS = 15.5;
    private static final double RUN_OUT_MPS2 = 2.5;

    /** Quickness of the legs that take the landing up (1/s). */
    private static final double KNEES_PERS = 4;

    /** A turn of more than this goes outward, away from the lead and the other side. */
    private static final double HALF_BACK_RAD = 1.0;

    private static final double HOME_TURN_RADPS = 0.12;

    private final FlyerPlan plan;
    private final Air air;
    private final GustProbe probe;
    private final FlyerBody body;
    private final FlyerPilot pilot;
    private final Canopy canopy;
    private final Grip grip = new Grip();
    private final double exit_s;
    private final double open_s;
    private final double opening_m;
    private final Vec3 home_m;
    private double pulled_s = Double.NaN;
    private boolean landed;
    private Push push = Push.NONE;

    FlyerFlight(
            FlyerPlan plan,
            Air air,
            Vec3 place_m,
            Vec3 velocity_mps,
            Vec3 right,
            double exit_s,
            double opening_m,
            Vec3 home_m,
            Random random) {
        this.plan = plan;
        this.air = air;
        this.probe = new GustProbe(air);
        this.exit_s = exit_s;
        this.opening_m = opening_m;
        this.home_m = home_m;
        double sideways_mps = (1 + random.nextDouble()) * plan.side().sign();
        this.body =
                new FlyerBody(
                        plan.mass_kg(),
                        place_m,
                        velocity_mps.plus(right.times(sideways_mps)),
                        right);
        this.open_s = OPEN_S + 0.6 * random.nextGaussian();
        this.pilot = new FlyerPilot(plan, random);
        this.canopy = new Canopy(air, home_m, random);
    }

    FlyerPlan plan() {
        return plan;
    }

    FlyerBody body() {
        return body;
    }

    Grip grip() {
        return grip;
    }

    double exit_s() {
        return exit_s;
    }

    /** When the canopy begins to brake: an instant after the pull; NaN before the pull. */
    double opening_s() {
        return pulled_s + Canopy.SNATCH_S;
    }

    boolean isLanded() {
        return landed && body.velocity_mps.normSquared() < 1e-6;
    }

    /** Whether it is out of the lead's way for good. */
    boolean isGone() {
        return pilot.task() == FlyerPilot.Task.GONE || !Double.isNaN(pulled_s);
    }

    boolean isJoining() {
        return pilot.task() == FlyerPilot.Task.JOIN && isInSuit();
    }

    boolean isDone() {
        return pilot.isDone();
    }

    boolean isInSuit() {
        return Double.isNaN(pulled_s);
    }

    void breakOff(double time_s) {
        pilot.leave(time_s);
    }

    /** What a logger on its body feels: ahead, right, away from the belly (g). */
    Vec3 load_g() {
        Vec3 blow_g = new Vec3(-0.4, -0.6 * plan.side().sign(), 0.7).times(grip.blow_g());
        return landed ? standing_g() : body.load_g().plus(blow_g);
    }

    private Vec3 standing_g() {
        Vec3 level = new Vec3(body.felt_mps2.x(), body.felt_mps2.y(), 0);
        double up_mps2 = body.felt_mps2.z();
        return new Vec3(-level.norm(), 0, up_mps2).times(1 / Atmosphere.GRAVITY_MPS2);
    }

    /** What its hand does to the lead, in the lead's body axes. */
    Push push() {
        return push;
    }

    /**
     * One step.
     *
     * @param clear_mps to be added to where it wants to go, away from other flyers
     */
    void step(LeadView lead, Vec3 clear_mps, double time_s, double dt_s) {
        push = Push.NONE;
        if (landed) {
            stand(dt_s);
            return;
        }
        double height_m = air.height_m(body.place_m);
        Vec3 wind_mps =
                probe.wind_mps(body.place_m, time_s).plus(lead.wake().wind_mps(body.place_m));
        body.feel(wind_mps, air.density_kgpm3(height_m));
        double agl_m = air.aboveGround_m(body.place_m);
        if (Double.isNaN(pulled_s) && agl_m < opening_m) {
            pulled_s = time_s;
        }
        Vec3 hand_N = Vec3.ZERO;
        double roll_rad = 0;
        if (!Double.isNaN(pulled_s)) {
            canopy.step(body, time_s - pulled_s, agl_m, dt_s);
        } else {
            flySuit(lead, clear_mps, time_s, dt_s);
            hand_N = hand(lead, time_s, dt_s);
            roll_rad = rolled_rad(lead);
        }
        body.step(hand_N, roll_rad, dt_s);
        if (air.aboveGround_m(body.place_m) <= 0) {
            landed = true;
        }
    }

    private void flySuit(LeadView lead, Vec3 clear_mps, double time_s, double dt_s) {
        double in_s = time_s - exit_s;
        if (in_s < plan.tumble_s()) {
            body.take(0, FlyerBody.SMALL_DRAG_M2, 0, 4, dt_s);
            return;
        }
        double u = (in_s - plan.tumble_s() - SMALL_S) / open_s;
        double open = Math.max(0, Math.min(1, u));
        double[] pose = {
            FlyerBody.SMALL_LIFT_M2 + open * (OPEN_LIFT_M2 - FlyerBody.SMALL_LIFT_M2),
            FlyerBody.SMALL_DRAG_M2 + open * (OPEN_DRAG_M2 - FlyerBody.SMALL_DRAG_M2)
        };
        Vec3 wanted =
                pilot.task() == FlyerPilot.Task.GONE
                        ? home_mps2().plus(clear_mps.times(0.5))
                        : pilot.wanted_mps2(body, lead, grip, clear_mps, time_s, dt_s);
        body.pose(wanted, open, pose, dt_s);
    }

    /** A steady glide toward the field, turning gently. */
    private Vec3 home_mps2() {
        Vec3 air_mps = body.airVelocity_mps;
        double now_rad = Route.course_rad(air_mps);
        Vec3 to_m = home_m.minus(body.place_m);
        double off_rad = Route.wrapped(Route.course_rad(to_m) - now_rad);
        if (Math.abs(off_rad) > HALF_BACK_RAD) {
            off_rad = Math.PI * plan.side().sign();
        }
        double turn_radps = LeadPilot.bounded(0.3 * off_rad, -HOME_TURN_RADPS, HOME_TURN_RADPS);
        Vec3 ahead = Route.ahead(now_rad);
        Vec3 wanted_mps = ahead.times(HOME_MPS).plus(new Vec3(0, 0, -HOME_SINK_MPS));
        Vec3 right = new Vec3(ahead.y(), -ahead.x(), 0);
        Vec3 level = new Vec3(air_mps.x(), air_mps.y(), 0);
        return wanted_mps.minus(air_mps).times(0.5).plus(right.times(turn_radps * level.norm()));
    }

    private Vec3 hand(LeadView lead, double time_s, double dt_s) {
        Vec3 off_m = body.place_m.minus(lead.slot_m(plan.side()));
        Vec3 closing_mps = body.velocity_mps.minus(lead.slotVelocity_mps(plan.side()));
        Vec3 force_N = grip.force_N(off_m, closing_mps, pilot.gripsNow(), time_s, dt_s);
        if (grip.isHolding()) {
            Vec3 back_N = lead.body().enuToBody.times(force_N.times(-1));
            push = Push.at(plan.side().tip().vector_m(), back_N);
        }
        return force_N;
    }

    /** Uneven upwash near the tip turns the lift outward. */
    private double rolled_rad(LeadView lead) {
        Vec3 out = lead.level(0, plan.side().sign() * 0.7, 0);
        Vec3 inner = lead.wake().wind_mps(body.place_m.minus(out));
        Vec3 outer = lead.wake().wind_mps(body.place_m.plus(out));
        double uneven_mps = inner.z() - outer.z();
        return plan.side().sign() * LeadPilot.bounded(0.01 * uneven_mps, -0.05, 0.05);
    }

    /** Gives at the knees, runs out the landing and stands. */
    private void stand(double dt_s) {
        Vec3 v_mps = body.velocity_mps;
        double speed_mps = Math.hypot(v_mps.x(), v_mps.y());
        double kept = speed_mps < 0.05 ? 0 : Math.max(0, 1 - RUN_OUT_MPS2 * dt_s / speed_mps);
        double deep_m = air.aboveGround_m(body.place_m);
        double rise_mps2 = -deep_m * KNEES_PERS * KNEES_PERS - 2 * KNEES_PERS * v_mps.z();
        boolean still = Math.abs(deep_m) < 1e-3 && Math.abs(v_mps.z()) < 1e-2;
        double up_mps = still ? 0 : v_mps.z() + rise_mps2 * dt_s;
        body.velocity_mps = new Vec3(v_mps.x() * kept, v_mps.y() * kept, up_mps);
        body.place_m = body.place_m.plus(body.velocity_mps.times(dt_s));
        body.felt_mps2 =
                body.velocity_mps
                        .minus(v_mps)
                        .times(1 / dt_s)
                        .plus(new Vec3(0, 0, Atmosphere.GRAVITY_MPS2));
    }
}
