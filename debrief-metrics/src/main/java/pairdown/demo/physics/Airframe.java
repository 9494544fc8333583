package pairdown.demo.physics;

import org.hipparchus.util.FastMath;
import pairdown.atmosphere.Atmosphere;
import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * The lead as a body in the air: a point mass under lift, drag, side force and thrust, with
 * first-order rates. A made-up aeroplane of 27 m²; coefficients are common practice, no published
 * source.
 *
 * <p>Rates (rad, s), with x the dynamic pressure over that at the target point (653 Pa) and η the
 * tail's share of it: q̇ = 6·x·η·δe − 2·√x·q + d, ṙ = 6·x·η_r·δr − 2·√x·r + N_β·x·β + d; roll
 * settles within 0.17 s. Thrust acts along the flight path. Braking takes up to a tenth of the
 * lift.
 */
final class Airframe {
    /** Wing area (m²). */
    static final double WING_M2 = 27;

    /** Travel of elevator and rudder either way (rad). */
    static final double TRAVEL_RAD = FastMath.toRadians(25);

    /** Control power at the target's dynamic pressure (1/s²). */
    static final double POWER = 6;

    /** Damping of pitch and yaw rate there (1/s). */
    static final double DAMPING = 2;

    static final double REFERENCE_PA = 653;
    static final double ROLL_S = 0.17;

    /** Roll rate at full aileron (rad/s). */
    static final double ROLL_RADPS = 0.8;

    private static final double FIN = 2.5;
    private static final double INDUCED = 0.054;
    private static final double ROLL_KGM2 = 3450;
    private static final double PITCH_KGM2 = 4200;
    private static final double YAW_KGM2 = 6500;

    final double mass_kg;
    final Propeller propeller = new Propeller();
    final Tail tail;

    Vec3 place_m;
    Vec3 velocity_mps = Vec3.ZERO;
    double heading_rad;
    double pitch_rad;
    double roll_rad;
    double pitchRate_radps;
    double rollRate_radps;
    double yawRate_radps;

    Mat3 enuToBody = Mat3.IDENTITY;
    Vec3 airVelocity_mps = Vec3.ZERO;
    double airspeed_mps;
    double dynamicPressure_Pa;
    double incidence_rad;
    double slip_rad;

    /** Drag and braking along the path over weight, what a pilot feels in the straps. */
    double retarding;

    /** Acceleration less gravity in body axes, in g. */
    Vec3 load_g = new Vec3(0, 0, 1);

    Airframe(double mass_kg, Tail tail, Vec3 place_m, double heading_rad) {
        this.mass_kg = mass_kg;
        this.tail = tail;
        this.place_m = place_m;
        this.heading_rad = heading_rad;
    }

    /** Looks at the air it is in: to be called before {@link #step}. */
    void feel(Vec3 wind_mps, double density_kgpm3) {
        enuToBody = Attitudes.enuToBody(heading_rad, pitch_rad, roll_rad);
        airVelocity_mps = velocity_mps.minus(wind_mps);
        airspeed_mps = Math.max(0.5, airVelocity_mps.norm());
        dynamicPressure_Pa = 0.5 * density_kgpm3 * airspeed_mps * airspeed_mps;
        Vec3 body = enuToBody.times(airVelocity_mps);
        incidence_rad = FastMath.atan2(-body.z(), Math.max(1, body.x()));
        slip_rad = FastMath.asin(Math.max(-1, Math.min(1, body.y() / airspeed_mps)));
    }

    /** Drag area without lift (m²). */
    static double dragArea_m2(double flap) {
        return WING_M2 * (0.05 + 0.09 * flap);
    }

    /** Drag (N) at a lift. */
    static double drag_N(double flap, double lift_N, double dynamicPressure_Pa) {
        return dynamicPressure_Pa * dragArea_m2(flap)
                + INDUCED * lift_N * lift_N / (dynamicPressure_Pa * WING_M2);
    }

    double lift_N(double flap) {
        double most = 1.6 + 0.6 * flap;
        double coefficient = 0.25 + 0.6 * flap + 5 * incidence_rad;
        double braked = 1 - 0.1 * Math.max(0, Math.min(1.2, tail.coefficient()));
        return dynamicPressure_Pa * WING_M2 * Math.max(-0.6, Math.min(most, coefficient)) * braked;
    }

    /**
     * One step in flight.
     *
     * @param shake what turns the aircraft besides its controls: pitch, yaw and roll (rad/s²)
     */
    void step(Controls c, Push push, Shake shake, double density_kgpm3, double dt_s) {
        propeller.step(c.lever(), airspeed_mps, density_kgpm3, dt_s);
        tail.step(propeller.coefficient(dynamicPressure_Pa), dt_s);
        Vec3 felt = forces_N(c.flap()).plus(enuToBody.transposeTimes(push.force_N()));
        Vec3 along = airVelocity_mps.times(1 / airspeed_mps);
        retarding = -felt.dot(along) / (mass_kg * Atmosphere.GRAVITY_MPS2);
        Vec3 specific = felt.times(1 / mass_kg);
        load_g = enuToBody.times(specific).times(1 / Atmosphere.GRAVITY_MPS2);
        velocity_mps =
                velocity_mps.plus(
                        specific.plus(new Vec3(0, 0, -Atmosphere.GRAVITY_MPS2)).times(dt_s));
        place_m = place_m.plus(velocity_mps.times(dt_s));
        turn(c, push, shake, dt_s);
    }

    private Vec3 forces_N(double flap) {
        Vec3 along = airVelocity_mps.times(1 / airspeed_mps);
        Vec3 roof = enuToBody.row2();
        Vec3 up = roof.minus(along.times(roof.dot(along))).unit();
        Vec3 side = along.cross(up);
        double lift_N = lift_N(flap);
        double back_N =
                drag_N(flap, lift_N, Math.max(20, dynamicPressure_Pa)) - propeller.thrust_N();
        double side_N = -0.9 * dynamicPressure_Pa * WING_M2 * slip_rad;
        return up.times(lift_N).plus(along.times(-back_N)).plus(side.times(side_N));
    }

    private void turn(Controls c, Push push, Shake shake, double dt_s) {
        double x = dynamicPressure_Pa / REFERENCE_PA;
        double root = Math.sqrt(x);
        double pitching =
                POWER * x * tail.elevator() * c.elevator() * TRAVEL_RAD
                        - DAMPING * root * pitchRate_radps
                        + shake.pitch_radps2()
                        + trim_radps2(c.flap())
                        + push.pitch_Nm() / PITCH_KGM2;
        double yawing =
                POWER * x * tail.rudder() * c.rudder() * TRAVEL_RAD
                        - DAMPING * root * yawRate_radps
                        + FIN * x * tail.rudder() * slip_rad
                        + shake.yaw_radps2()
                        + push.yaw_Nm() / YAW_KGM2;
        double rolling =
                (ROLL_RADPS * root * c.aileron() - rollRate_radps) / ROLL_S
                        + shake.roll_radps2()
                        + push.roll_Nm() / ROLL_KGM2;
        pitchRate_radps += pitching * dt_s;
        yawRate_radps += yawing * dt_s;
        rollRate_radps += rolling * dt_s;
        double sinR = FastMath.sin(roll_rad);
        double cosR = FastMath.cos(roll_rad);
        double turning = (pitchRate_radps * sinR + yawRate_radps * cosR) / FastMath.cos(pitch_rad);
        roll_rad += (rollRate_radps + turning * FastMath.sin(pitch_rad)) * dt_s;
        pitch_rad += (pitchRate_radps * cosR - yawRate_radps * sinR) * dt_s;
        heading_rad += turning * dt_s;
    }

    /** Nose-down moment of flap and of the slowed wake, which the elevator must hold (rad/s²). */
    double trim_radps2(double flap) {
        double x = dynamicPressure_Pa / REFERENCE_PA;
        double braking = Math.max(0, Math.min(1.2, tail.coefficient()));
        return -x * (0.06 * flap + 0.28 * braking);
    }
}
