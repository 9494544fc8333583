package pairdown.demo.physics;

import java.util.List;
import java.util.Random;
import pairdown.atmosphere.Atmosphere;
import pairdown.demo.truth.TruePowerChange;
import pairdown.vector.Vec3;

/** The lead flying: body, pilot and guide, a step at a time. */
final class LeadFlight {
    static final double FULL_FLAP_DEG = 35;

    private static final double GEAR_PERS = 7;
    private static final double GROUND_PITCH_RAD = 0.03;

    private final Air air;
    private final GustProbe probe;
    private final Airframe body;
    private final Shake shake;
    private final LeadPilot pilot;
    private final LeverHand lever = new LeverHand();
    private final LeadGuide guide;
    private final double ground_rad;
    private Vec3 slowGust_mps = Vec3.ZERO;
    private Controls controls = Controls.NEUTRAL;
    private Push push = Push.NONE;

    LeadFlight(Scenario scenario, Air air, Vec3 parked_m, double takeOff_s, double course_rad) {
        this.air = air;
        this.probe = new GustProbe(air);
        this.guide = new LeadGuide(scenario, air, lever, parked_m, takeOff_s, course_rad);
        Random random = Streams.of(scenario.seed(), "lead");
        this.body =
                new Airframe(
                        scenario.lead().mass_kg(),
                        new Tail(random),
                        parked_m,
                        guide.firstCourse_rad());
        this.shake = new Shake(random);
        this.pilot = new LeadPilot(random);
        this.ground_rad = GROUND_PITCH_RAD;
        body.pitch_rad = ground_rad;
    }

    Airframe body() {
        return body;
    }

    LeadGuide guide() {
        return guide;
    }

    /** Airspeed along the nose, not less than none (m/s): what a pitot tube meets on the ground. */
    double pitot_mps() {
        return Math.max(0, body.enuToBody.times(body.airVelocity_mps).x());
    }

    /** Above mean sea level (m). */
    double height_m() {
        return air.height_m(body.place_m);
    }

    Controls controls() {
        return controls;
    }

    List<TruePowerChange> powerChanges() {
        return lever.changes();
    }

    /** What flyers do to it in the next step. */
    void push(Push by) {
        push = by;
    }

    void step(double time_s, double dt_s) {
        double height_m = air.height_m(body.place_m);
        Vec3 mean_mps = air.meanWind_mps(height_m);
        Vec3 gust_mps = probe.gust_mps(body.place_m, time_s);
        slowGust_mps = slowGust_mps.plus(gust_mps.minus(slowGust_mps).times(dt_s / 3));
        double density_kgpm3 = air.density_kgpm3(height_m);
        body.feel(mean_mps.plus(gust_mps), density_kgpm3);
        LeadAim aim = guide.aim(body, time_s, slowGust_mps, dt_s);
        double l = lever.step(dt_s);
        if (guide.isOnGround()) {
            roll(l, density_kgpm3, dt_s);
            return;
        }
        Vec3 slowAir_mps = body.velocity_mps.minus(mean_mps).minus(slowGust_mps);
        controls = pilot.fly(body, aim, l, slowAir_mps, dt_s);
        shake.step(body, guide.dive().shaking_dps(time_s), dt_s);
        body.step(controls, push, shake, density_kgpm3, dt_s);
        keepAboveGround();
    }

    private void keepAboveGround() {
        double under_m = air.aboveGround_m(body.place_m);
        if (under_m < 0) {
            body.place_m = body.place_m.minus(new Vec3(0, 0, under_m));
            body.velocity_mps =
                    new Vec3(
                            body.velocity_mps.x(),
                            body.velocity_mps.y(),
                            Math.max(0, body.velocity_mps.z()));
        }
    }

    /** On its wheels: accelerates, brakes or stands. */
    private void roll(double l, double density_kgpm3, double dt_s) {
        double speed_mps = Math.hypot(body.velocity_mps.x(), body.velocity_mps.y());
        double faster_mps2 =
                switch (guide.stage()) {
                    case ROLL -> 2.6;
                    case ROLLOUT, STOPPED -> -Math.min(2.2, speed_mps * 1.5 + 0.3);
                    default -> 0;
                };
        double next_mps = Math.max(0, speed_mps + faster_mps2 * dt_s);
        Vec3 ahead =
                speed_mps > 1
                        ? body.velocity_mps.times(1 / speed_mps)
                        : Route.ahead(body.heading_rad);
        double up_mps = up_mps(dt_s);
        double level = Math.hypot(ahead.x(), ahead.y());
        body.velocity_mps =
                new Vec3(ahead.x() * next_mps / level, ahead.y() * next_mps / level, up_mps);
        body.place_m = body.place_m.plus(body.velocity_mps.times(dt_s));
        body.propeller.step(l, body.airspeed_mps, density_kgpm3, dt_s);
        body.tail.step(0, dt_s);
        settle(dt_s);
        body.load_g = new Vec3(faster_mps2 / Atmosphere.GRAVITY_MPS2, 0, 1);
        controls = new Controls(0, 0, 0, l, controls.flap());
    }

    /** The wheels' springs: what is left of the sink at touchdown goes within half a second. */
    private double up_mps(double dt_s) {
        double deep_m = air.aboveGround_m(body.place_m);
        double v_mps = body.velocity_mps.z();
        if (Math.abs(deep_m) < 1e-3 && Math.abs(v_mps) < 1e-2) {
            return 0;
        }
        return v_mps + (-deep_m * GEAR_PERS * GEAR_PERS - 2 * GEAR_PERS * v_mps) * dt_s;
    }

    private void settle(double dt_s) {
        double share = Math.min(1, dt_s / 0.6);
        double pitch = (ground_rad - body.pitch_rad) * share;
        double roll = -body.roll_rad * share;
        body.pitch_rad += pitch;
        body.roll_rad += roll;
        body.pitchRate_radps = pitch / dt_s;
        body.rollRate_radps = roll / dt_s;
        body.yawRate_radps = 0;
    }
}
