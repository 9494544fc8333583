package pairdown.demo.physics;

import java.util.Random;
import org.hipparchus.util.FastMath;

/**
 * What turns the lead besides its controls: buffet near 4 Hz that shows in the rates without
 * turning the aircraft for long, slow unrest, and more of both while the tail is blanked.
 */
final class Shake {
    private static final double BUFFET_RADPS = 2 * Math.PI * 4;
    private static final double BUFFET_DAMPING = 0.25;

    /** The wake of the propeller passes the tail, not the wing: roll gets little of it. */
    private static final double ROLL_SHARE = 0.2;

    private final Buffet pitch;
    private final Buffet yaw;
    private final Buffet roll;
    private final Wander slowPitch;
    private final Wander slowYaw;
    private double pitch_radps2;
    private double yaw_radps2;
    private double roll_radps2;

    Shake(Random random) {
        pitch = new Buffet(random);
        yaw = new Buffet(random);
        roll = new Buffet(random);
        slowPitch = new Wander(random, 0.8);
        slowYaw = new Wander(random, 0.8);
    }

    /**
     * @param extra_dps root mean square of the slow rates that rough air makes
     */
    void step(Airframe a, double extra_dps, double dt_s) {
        double root = Math.sqrt(a.dynamicPressure_Pa / Airframe.REFERENCE_PA);
        double rms_radps = FastMath.toRadians(a.tail.buffet_dps()) * Math.min(1, root);
        double damping = Airframe.DAMPING * root;
        double slow_dps = 0.2 + (a.tail.isClosed() ? 3 : 0) + extra_dps;
        // A wander of 0.8 s against a damping of 2/s leaves this much of σ/damping as rate.
        double slow_radps2 = FastMath.toRadians(slow_dps) * damping * 1.27;
        pitch_radps2 =
                pitch.acceleration(rms_radps, damping, dt_s) + slow_radps2 * slowPitch.step(dt_s);
        yaw_radps2 = yaw.acceleration(rms_radps, damping, dt_s) + slow_radps2 * slowYaw.step(dt_s);
        roll_radps2 = roll.acceleration(ROLL_SHARE * rms_radps, 1 / Airframe.ROLL_S, dt_s);
    }

    double pitch_radps2() {
        return pitch_radps2;
    }

    double yaw_radps2() {
        return yaw_radps2;
    }

    double roll_radps2() {
        return roll_radps2;
    }

    /** White noise through a resonance: a rate and its slope. */
    private static final class Buffet {
        private final Random random;
        private double angle;
        private double rate;

        Buffet(Random random) {
            this.random = random;
        }

        /** The angular acceleration that makes a damped rate follow this buffet. */
        double acceleration(double rms_radps, double damping, double dt_s) {
            double w = BUFFET_RADPS;
            double white = Math.sqrt(4 * BUFFET_DAMPING * w / dt_s) * random.nextGaussian();
            double slope = white - 2 * BUFFET_DAMPING * w * rate - w * w * angle;
            rate += slope * dt_s;
            angle += rate * dt_s;
            return rms_radps * (slope + damping * rate);
        }
    }
}
