package pairdown.air;

import java.util.Map;
import java.util.Optional;
import pairdown.atmosphere.Atmosphere;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.Attitude;
import pairdown.motion.AttitudeSource;
import pairdown.motion.Trajectory;
import pairdown.track.Channel;
import pairdown.track.Series;
import pairdown.vector.Vec3;

/**
 * Attitude at any instant: logged where heading, pitch and roll are; else the nose along the motion
 * through the air, wings banked as a coordinated turn needs (tan φ = V·ψ̇/g), pitch along the path;
 * else, with no wind known, the same along the ground track.
 */
public final class AttitudeFinder implements AttitudeSource {
    /** Turn rate is taken over this long, so that it is the turn and not the noise. */
    private static final double TURN_TIME_S = 2;

    /** Slower than this a motion has no direction. */
    private static final double SLOWEST_MPS = 3;

    private final Trajectory trajectory;
    private final Map<Channel, Series> systems;
    private final Wind wind;
    private final LocalFrame frame;

    /**
     * @param trajectory of any point of the machine
     * @param systems logged channels on the attempt's axis
     */
    public AttitudeFinder(
            Trajectory trajectory, Map<Channel, Series> systems, Wind wind, LocalFrame frame) {
        this.trajectory = trajectory;
        this.systems = Map.copyOf(systems);
        this.wind = wind;
        this.frame = frame;
    }

    @Override
    public Optional<Attitude> at(double t_s) {
        double heading_deg = logged(Channel.HEADING, t_s);
        double pitch_deg = logged(Channel.PITCH, t_s);
        double roll_deg = logged(Channel.ROLL, t_s);
        if (!Double.isNaN(heading_deg) && !Double.isNaN(pitch_deg) && !Double.isNaN(roll_deg)) {
            return Optional.of(
                    new Attitude(heading_deg, pitch_deg, roll_deg, Attitude.Source.LOGGED));
        }
        Optional<Attitude> fromMotion = trajectory.covers(t_s) ? fromMotion(t_s) : Optional.empty();
        return Double.isNaN(heading_deg)
                ? fromMotion
                : Optional.of(withHeading(heading_deg, fromMotion));
    }

    /** A logged heading alone does not make an attitude logged: the rest is still assumed. */
    private static Attitude withHeading(double heading_deg, Optional<Attitude> fromMotion) {
        return new Attitude(
                heading_deg,
                fromMotion.map(Attitude::pitch_deg).orElse(0.0),
                fromMotion.map(Attitude::roll_deg).orElse(0.0),
                Attitude.Source.AIR_MOTION);
    }

    private double logged(Channel channel, double t_s) {
        Series series = systems.get(channel);
        return series == null ? Double.NaN : series.at(t_s);
    }

    private Optional<Attitude> fromMotion(double t_s) {
        Vec3 v = velocity(t_s);
        double level_mps = v.levelNorm();
        if (level_mps < SLOWEST_MPS) {
            return Optional.empty();
        }
        return Optional.of(
                new Attitude(
                        compass(v),
                        Math.toDegrees(Math.atan2(v.z(), level_mps)),
                        bank_deg(t_s, level_mps),
                        wind.isKnown()
                                ? Attitude.Source.AIR_MOTION
                                : Attitude.Source.GROUND_TRACK));
    }

    private double bank_deg(double t_s, double level_mps) {
        double a_s = Math.max(trajectory.start_s(), t_s - TURN_TIME_S / 2);
        double b_s = Math.min(trajectory.end_s(), t_s + TURN_TIME_S / 2);
        if (!(b_s > a_s)) {
            return 0;
        }
        double turn_deg = Math.IEEEremainder(compass(velocity(b_s)) - compass(velocity(a_s)), 360);
        double rate_radps = Math.toRadians(turn_deg) / (b_s - a_s);
        return Math.toDegrees(Math.atan(level_mps * rate_radps / Atmosphere.GRAVITY_MPS2));
    }

    /** Velocity through the air, or over the ground where no wind is known. */
    private Vec3 velocity(double t_s) {
        double[] values = new double[Trajectory.VALUES];
        trajectory.read(t_s, values);
        Vec3 ground = new Vec3(values[3], values[4], values[5]);
        return wind.at(Heights.ellipsoid_m(frame, values)).map(ground::minus).orElse(ground);
    }

    private static double compass(Vec3 v) {
        double deg = Math.toDegrees(Math.atan2(v.x(), v.y()));
        return deg < 0 ? deg + 360 : deg;
    }
}
