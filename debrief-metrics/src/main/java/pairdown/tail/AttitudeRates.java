package pairdown.tail;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * Body rates from the logged attitude, for recorders that keep no rates: q = θ̇·cos φ + ψ̇·cos
 * θ·sin φ and r = ψ̇·cos θ·cos φ − θ̇·sin φ, slopes from the sample before to the sample after.
 * Noisier than a logged rate, and blind to what comes and goes within two samples.
 *
 * <p>Source of the relations: B. Etkin and L. D. Reid, Dynamics of Flight, 3rd ed. (1996), chapter
 * 4 (from memory).
 */
final class AttitudeRates {
    private final DoubleUnaryOperator pitch_deg;
    private final DoubleUnaryOperator roll_deg;
    private final DoubleUnaryOperator heading_deg;

    private AttitudeRates(TailInput input) {
        pitch_deg = at(input, Channel.PITCH);
        roll_deg = at(input, Channel.ROLL);
        heading_deg = at(input, Channel.HEADING);
    }

    /** A channel by time; level flight to the north where it is not logged. */
    private static DoubleUnaryOperator at(TailInput input, Channel channel) {
        return input.system(channel).<DoubleUnaryOperator>map(s -> s::at).orElse(t_s -> 0);
    }

    /** The angle whose slope is most of a rate. */
    private static Optional<Channel> angle(Channel rate) {
        return switch (rate) {
            case PITCH_RATE -> Optional.of(Channel.PITCH);
            case YAW_RATE -> Optional.of(Channel.HEADING);
            default -> Optional.empty();
        };
    }

    /** A rate that was not logged (°/s); empty where the attitude it needs was not either. */
    static Optional<Series> of(Channel rate, TailInput input) {
        return angle(rate)
                .flatMap(input::system)
                .map(angle -> new AttitudeRates(input).along(angle, rate == Channel.PITCH_RATE));
    }

    private Series along(Series angle, boolean pitching) {
        double step_s = Signals.step_s(angle);
        double[] time_s = new double[angle.size()];
        float[] rate_dps = new float[angle.size()];
        for (int i = 0; i < time_s.length; i++) {
            time_s[i] = angle.time_s(i);
            rate_dps[i] = (float) rate_dps(time_s[i], step_s, pitching);
        }
        return Series.of(time_s, rate_dps, false);
    }

    private double rate_dps(double t_s, double step_s, boolean pitching) {
        double pitch = Math.toRadians(pitch_deg.applyAsDouble(t_s));
        double roll = Math.toRadians(roll_deg.applyAsDouble(t_s));
        double rise_dps = slope(pitch_deg, t_s, step_s);
        double turn_dps = slope(heading_deg, t_s, step_s) * Math.cos(pitch);
        return pitching
                ? rise_dps * Math.cos(roll) + turn_dps * Math.sin(roll)
                : turn_dps * Math.cos(roll) - rise_dps * Math.sin(roll);
    }

    private static double slope(DoubleUnaryOperator angle_deg, double t_s, double step_s) {
        double turned =
                angle_deg.applyAsDouble(t_s + step_s) - angle_deg.applyAsDouble(t_s - step_s);
        return Math.IEEEremainder(turned, 360) / (2 * step_s);
    }
}
