package pairdown.demo.receiver;

import java.util.Map;
import pairdown.attempt.LeverArm;
import pairdown.demo.truth.TrueBody;
import pairdown.motion.Attitude;
import pairdown.track.Channel;
import pairdown.vector.Vec3;

/**
 * Where a receiver's antenna truly was: the body's reference point and its lever arm turned by the
 * true attitude; level and along the motion over the ground where the truth has none.
 */
public final class BodyPoint {
    /** Half the step over which the arm's turning is differenced (s). */
    private static final double HALF_STEP_S = 0.05;

    private final TrueBody body;
    private final Vec3 arm_m;
    private final TrueReadings readings;

    public BodyPoint(TrueBody body, LeverArm arm) {
        this.body = body;
        this.arm_m = arm.vector_m();
        this.readings = new TrueReadings(body);
    }

    /** Position at a time (m, east-north-up). */
    public Vec3 position_m(double time_s) {
        return body.motion().positionAt_m(time_s).plus(offset_m(time_s));
    }

    /** Velocity at a time (m/s, east-north-up), the arm's turning included. */
    public Vec3 velocity_mps(double time_s) {
        Vec3 turning =
                offset_m(time_s + HALF_STEP_S)
                        .minus(offset_m(time_s - HALF_STEP_S))
                        .times(1 / (2 * HALF_STEP_S));
        return body.motion().velocityAt_mps(time_s).plus(turning);
    }

    private Vec3 offset_m(double time_s) {
        return arm_m.equals(Vec3.ZERO)
                ? Vec3.ZERO
                : attitude(time_s).enuToBody().transposeTimes(arm_m);
    }

    private Attitude attitude(double time_s) {
        Map<Channel, double[]> systems = body.systems();
        if (systems.containsKey(Channel.HEADING)
                && systems.containsKey(Channel.PITCH)
                && systems.containsKey(Channel.ROLL)) {
            return new Attitude(
                    readings.at(Channel.HEADING, time_s),
                    readings.at(Channel.PITCH, time_s),
                    readings.at(Channel.ROLL, time_s),
                    Attitude.Source.LOGGED);
        }
        Vec3 v = body.motion().velocityAt_mps(time_s);
        double track_deg = Math.toDegrees(StrictMath.atan2(v.x(), v.y()));
        return new Attitude(track_deg, 0, 0, Attitude.Source.GROUND_TRACK);
    }
}
