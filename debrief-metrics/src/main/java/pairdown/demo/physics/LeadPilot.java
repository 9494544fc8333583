package pairdown.demo.physics;

import java.util.Random;
import org.hipparchus.util.FastMath;
import pairdown.atmosphere.Atmosphere;
import pairdown.vector.Vec3;

/**
 * The lead's hands and feet: airspeed by pitch, bank by aileron, rudder to turn without slip.
 *
 * <p>Airspeed V is held through the path angle γ (down positive): the path that would keep V is the
 * retarding force over weight felt in the straps, sin γ = f, to which 0.3/s·(V_t − V)/g is added.
 * That leaves no phugoid. As the tail loses its air the pilot moves the controls more for the same
 * response, up to the stops, having noticed it with a second's lag. All gains: common practice, no
 * published source.
 */
final class LeadPilot {
    private static final double AIRSPEED_PERS = 0.3;
    private static final double PATH_PERS = 0.9;
    private static final double RATE_PERS = 3;
    private static final double MOST_RATE_RADPS = 0.14;
    private static final double MOST_BANK_RAD = 0.52;
    private static final double MOST_ROLL_RADPS = 0.25;

    /** Unneeded movement of the hands, share of travel at full effectiveness. */
    private static final double RESTLESS = 0.022;

    private final Wander hand;
    private final Wander foot;
    private final Wander grip;
    private final Lag retarding = new Lag(0.5, 0);
    private final Lag pitchRate = new Lag(0.1, 0);
    private final Lag yawRate = new Lag(0.1, 0);
    private final Lag slip = new Lag(0.3, 0);
    private final Lag elevatorWorks = new Lag(1, 1);
    private final Lag rudderWorks = new Lag(1, 1);
    private final Lag trim = new Lag(1, 0);
    private final Lag elevator = new Lag(0.12, 0);
    private final Lag rudder = new Lag(0.12, 0);
    private final Lag aileron = new Lag(0.12, 0);
    private double held;

    LeadPilot(Random random) {
        hand = new Wander(random, 0.5);
        foot = new Wander(random, 0.7);
        grip = new Wander(random, 0.6);
    }

    /**
     * @param slowAir_mps velocity through the air less what gusts did in the last seconds
     */
    Controls fly(Airframe a, LeadAim aim, double lever, Vec3 slowAir_mps, double dt_s) {
        notice(a, aim, dt_s);
        double x = Math.max(0.3, a.dynamicPressure_Pa / Airframe.REFERENCE_PA);
        double e = elevator.step(limited(elevator(a, aim, slowAir_mps, x, dt_s)), dt_s);
        double r = rudder.step(limited(rudder(a, aim, x, dt_s)), dt_s);
        double l = aileron.step(limited(aileron(a, aim, x, dt_s)), dt_s);
        return new Controls(e, r, l, lever, aim.flap());
    }

    private void notice(Airframe a, LeadAim aim, double dt_s) {
        retarding.step(a.retarding, dt_s);
        pitchRate.step(a.pitchRate_radps, dt_s);
        yawRate.step(a.yawRate_radps, dt_s);
        slip.step(a.slip_rad, dt_s);
        elevatorWorks.step(a.tail.elevator(), dt_s);
        rudderWorks.step(a.tail.rudder(), dt_s);
        trim.step(a.trim_radps2(aim.flap()), dt_s);
    }

    private double elevator(Airframe a, LeadAim aim, Vec3 slowAir_mps, double x, double dt_s) {
        double v_mps = Math.max(15, slowAir_mps.norm());
        double path_rad = FastMath.asin(bounded(-slowAir_mps.z() / v_mps, -0.9, 0.9));
        double wanted_rad = path_rad(a, aim, v_mps);
        double rate =
                bounded(PATH_PERS * (path_rad - wanted_rad), -MOST_RATE_RADPS, MOST_RATE_RADPS);
        double stalling = bounded((0.24 - a.incidence_rad) * 2, -0.1, MOST_RATE_RADPS);
        double turning =
                Atmosphere.GRAVITY_MPS2
                        / v_mps
                        * FastMath.tan(a.roll_rad)
                        * FastMath.sin(a.roll_rad);
        double wanted = Math.min(rate, stalling) + turning;
        double needed =
                RATE_PERS * (wanted - pitchRate.value())
                        + Airframe.DAMPING * Math.sqrt(x) * wanted
                        - trim.value();
        double works = Math.max(0.1, elevatorWorks.value());
        return needed / (Airframe.POWER * x * works * Airframe.TRAVEL_RAD)
                + RESTLESS / works * hand.step(dt_s);
    }

    /** The path angle wanted (rad, down positive). */
    private double path_rad(Airframe a, LeadAim aim, double v_mps) {
        double sine =
                Double.isNaN(aim.flare())
                        ? retarding.value()
                                + AIRSPEED_PERS
                                        * (aim.airspeed_mps() - a.airspeed_mps)
                                        / Atmosphere.GRAVITY_MPS2
                        : aim.flare() / v_mps;
        return FastMath.asin(bounded(sine, -0.4, 0.62));
    }

    private double rudder(Airframe a, LeadAim aim, double x, double dt_s) {
        double wanted =
                Atmosphere.GRAVITY_MPS2
                        / Math.max(15, a.airspeed_mps)
                        * FastMath.sin(a.roll_rad)
                        * FastMath.cos(a.pitch_rad);
        double works = Math.max(0.1, rudderWorks.value());
        double needed =
                1.5 * (wanted - yawRate.value())
                        + Airframe.DAMPING * Math.sqrt(x) * wanted
                        + 2 * (slip.value() - aim.slip_rad());
        return needed / (Airframe.POWER * x * works * Airframe.TRAVEL_RAD)
                + 0.6 * RESTLESS / works * foot.step(dt_s);
    }

    private double aileron(Airframe a, LeadAim aim, double x, double dt_s) {
        double bank_rad =
                bounded(
                        FastMath.atan(a.airspeed_mps * aim.turn_radps() / Atmosphere.GRAVITY_MPS2),
                        -MOST_BANK_RAD,
                        MOST_BANK_RAD);
        double off_rad = bank_rad - a.roll_rad;
        held = bounded(held + 0.25 * off_rad * dt_s, -0.3, 0.3);
        double wanted = bounded(1.4 * off_rad, -MOST_ROLL_RADPS, MOST_ROLL_RADPS);
        return wanted / (Airframe.ROLL_RADPS * Math.sqrt(x))
                + held
                + 0.5 * RESTLESS * grip.step(dt_s);
    }

    private static double limited(double share) {
        return bounded(share, -1, 1);
    }

    static double bounded(double v, double least, double most) {
        return Math.max(least, Math.min(most, v));
    }
}
