package pairdown.pair;

import java.util.Optional;
import pairdown.air.Wind;
import pairdown.motion.Attitude;
import pairdown.motion.AttitudeSource;
import pairdown.motion.Trajectory;
import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * The lead's axes at an instant: those a relative position is given in, and the level ones in which
 * matching is judged.
 *
 * <p>Level axes point along the lead's motion through the air; with no wind known along its logged
 * heading if it has one, else along its ground track. Their turn rate is the mean over some
 * seconds, so it is the difference of two directions over that time. Body axes turn with the logged
 * attitude.
 */
final class LeadAxes {
    /** Half the time over which body axes' own turning is measured: two rows of a 5 Hz log. */
    private static final double BODY_TURN_S = 0.25;

    /** Under this level speed a direction of motion means nothing (m/s). */
    private static final double LEAST_SPEED_MPS = 3;

    private final Axes kind;
    private final Trajectory lead;
    private final AttitudeSource attitude;
    private final Wind wind;
    private final PairSettings settings;

    LeadAxes(
            Axes kind, Trajectory lead, AttitudeSource attitude, Wind wind, PairSettings settings) {
        this.kind = kind;
        this.lead = lead;
        this.attitude = attitude;
        this.wind = wind;
        this.settings = settings;
    }

    /**
     * A set of axes and how it turns.
     *
     * @param fromEnu rotation from east-north-up to ahead, right, above
     * @param rate its derivative (1/s)
     * @param turnSigma_radps one standard deviation of the turn rate
     * @param sigma_rad one standard deviation per axis of the directions
     */
    record Turning(Mat3 fromEnu, Mat3 rate, double turnSigma_radps, double sigma_rad) {
        Vec3 position_m(Relative r) {
            return fromEnu.times(r.offset_m());
        }

        /** The offset's rate of change as seen in these axes. */
        Vec3 rate_mps(Relative r) {
            return fromEnu.times(r.velocity_mps()).plus(rate.times(r.offset_m()));
        }
    }

    Axes kind() {
        return kind;
    }

    /** The pair's axes; empty where the logged attitude has a hole or there is no direction. */
    Optional<Turning> at(Relative r) {
        return kind == Axes.BODY ? body(r.time_s()) : level(r);
    }

    private Optional<Turning> body(double t_s) {
        Optional<Mat3> now = logged(t_s).map(Attitude::enuToBody);
        Optional<Mat3> before = logged(t_s - BODY_TURN_S).map(Attitude::enuToBody);
        Optional<Mat3> after = logged(t_s + BODY_TURN_S).map(Attitude::enuToBody);
        if (now.isEmpty()) {
            return Optional.empty();
        }
        Mat3 rate =
                before.isPresent() && after.isPresent()
                        ? difference(after.get(), before.get(), 1 / (2 * BODY_TURN_S))
                        : Mat3.diagonal(Vec3.ZERO);
        return Optional.of(new Turning(now.get(), rate, 0, Math.toRadians(settings.logged_deg())));
    }

    private Optional<Attitude> logged(double t_s) {
        return attitude.at(t_s).filter(a -> a.source() == Attitude.Source.LOGGED);
    }

    private static Mat3 difference(Mat3 a, Mat3 b, double scale) {
        return Mat3.ofRows(
                a.row0().minus(b.row0()).times(scale),
                a.row1().minus(b.row1()).times(scale),
                a.row2().minus(b.row2()).times(scale));
    }

    /** Level axes turning with the lead's direction. */
    Optional<Turning> level(Relative r) {
        double half_s = settings.match().turn_s() / 2;
        double from_s = Math.max(lead.start_s(), r.time_s() - half_s);
        double to_s = Math.min(lead.end_s(), r.time_s() + half_s);
        double h_rad = direction_rad(r.time_s(), r);
        double turn_radps = 0;
        double turnSigma_radps = 0;
        double speed_mps = r.leadVelocity_mps().minus(windAt(r)).levelNorm();
        if (Double.isNaN(h_rad)) {
            return Optional.empty();
        }
        double sigma_mps = r.leadVelocitySigma_mps();
        if (to_s > from_s) {
            double change_rad = direction_rad(to_s, r) - direction_rad(from_s, r);
            double rate_radps = Math.IEEEremainder(change_rad, 2 * Math.PI) / (to_s - from_s);
            turn_radps = Double.isNaN(rate_radps) ? 0 : rate_radps;
            turnSigma_radps = Math.sqrt(2) * sigma_mps / speed_mps / (to_s - from_s);
        }
        double windSigma_mps = wind.isKnown() ? wind.sigma_mps(r.leadHeight_m()) : 0;
        double sigma_rad =
                Math.hypot(
                        Math.toRadians(settings.assumed_deg()),
                        Math.hypot(sigma_mps, windSigma_mps) / speed_mps);
        return Optional.of(turning(h_rad, turn_radps, turnSigma_radps, sigma_rad));
    }

    private static Turning turning(
            double h_rad, double turn_radps, double turnSigma_radps, double sigma_rad) {
        Vec3 ahead = new Vec3(Math.sin(h_rad), Math.cos(h_rad), 0);
        Vec3 right = new Vec3(Math.cos(h_rad), -Math.sin(h_rad), 0);
        Mat3 axes = Mat3.ofRows(ahead, right, new Vec3(0, 0, 1));
        Mat3 rate = Mat3.ofRows(right.times(turn_radps), ahead.times(-turn_radps), Vec3.ZERO);
        return new Turning(axes, rate, turnSigma_radps, sigma_rad);
    }

    private Vec3 windAt(Relative r) {
        return wind.at(r.leadHeight_m()).orElse(Vec3.ZERO);
    }

    /** Clockwise from north (rad); NaN where there is none. */
    private double direction_rad(double t_s, Relative r) {
        if (!wind.isKnown()) {
            Optional<Attitude> a = logged(t_s);
            if (a.isPresent()) {
                return Math.toRadians(a.get().heading_deg());
            }
        }
        double[] state = new double[Trajectory.VALUES];
        lead.read(t_s, state);
        Vec3 air_mps = r.toLead().times(new Vec3(state[3], state[4], state[5])).minus(windAt(r));
        return air_mps.levelNorm() < LEAST_SPEED_MPS
                ? Double.NaN
                : Math.atan2(air_mps.x(), air_mps.y());
    }
}
