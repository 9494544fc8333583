package pairdown.tail;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pairdown.stats.Robust;
import pairdown.track.Channel;

/**
 * Joins two airspeeds: the logged one, which feels every gust but may be put off by reverse, and
 * that of motion and wind, which reverse does not touch but which knows the air only in the mean.
 * The logged one is taken, and where the power was in reverse its median departure from the other
 * is taken off, as far as the two sigmas say that reverse is to blame.
 */
final class LoggedAirspeed {
    /** The departure comes and goes with the power over about this long. */
    private static final double RAMP_S = 1;

    private LoggedAirspeed() {}

    /**
     * What to multiply the airspeed of motion and wind by; 1 where none was logged. Empty where
     * there are not both, or nothing tells reverse.
     *
     * @param calibrated_mps of motion and wind
     */
    static Optional<double[]> correction(
            TailInput input, Signals signals, double[] calibrated_mps, List<String> notes) {
        boolean tells = signals.has(Channel.POWER_LEVER) || signals.has(Channel.BLADE_ANGLE);
        if (input.motion().calibratedAirspeed_mps().isEmpty()
                || !signals.has(Channel.INDICATED_AIRSPEED)
                || !tells) {
            return Optional.empty();
        }
        double[] logged = signals.column(Channel.INDICATED_AIRSPEED);
        double[] inReverse = inReverse(signals, input.settings().fit());
        double[] off = new double[logged.length];
        for (int i = 0; i < off.length; i++) {
            boolean counts = inReverse[i] == 1 && logged[i] > input.settings().data().flying_mps();
            off[i] = counts ? calibrated_mps[i] / logged[i] - 1 : Double.NaN;
        }
        double departure = Robust.median(off).orElse(0);
        double blamed = blamed(logged, inReverse, input.settings().force()) * departure;
        double[] smooth = new LocalLine(RAMP_S, signals.grid().step_s()).value(inReverse);
        double[] factor = new double[logged.length];
        for (int i = 0; i < factor.length; i++) {
            double by = logged[i] * (1 + blamed * smooth[i]) / calibrated_mps[i];
            factor[i] = Double.isFinite(by) ? by : 1;
        }
        notes.add(
                String.format(
                        Locale.ROOT,
                        "airspeed is the logged one, for its gusts; in reverse, where it is not"
                                + " calibrated, times %.3f by motion and wind",
                        1 + blamed));
        return Optional.of(factor);
    }

    /** The share of a departure that is reverse's: by the variances of both airspeeds. */
    private static double blamed(double[] logged, double[] inReverse, TailSettings.Force force) {
        double[] speeds = logged.clone();
        for (int i = 0; i < speeds.length; i++) {
            speeds[i] = inReverse[i] == 1 ? speeds[i] : Double.NaN;
        }
        double typical_mps = Robust.median(speeds).orElse(Double.POSITIVE_INFINITY);
        double reverse = force.reverseErrorShare() * force.reverseErrorShare();
        double motion = Math.pow(force.motionSpeedSigma_mps() / typical_mps, 2);
        return reverse / (reverse + motion);
    }

    /** 1 where power is behind idle, else 0. */
    private static double[] inReverse(Signals signals, TailSettings.Fit fit) {
        boolean byLever = signals.has(Channel.POWER_LEVER);
        double[] channel = signals.column(byLever ? Channel.POWER_LEVER : Channel.BLADE_ANGLE);
        double from = byLever ? fit.reverseLever_pct() : fit.reverseBlade_deg();
        double[] mask = new double[channel.length];
        for (int i = 0; i < mask.length; i++) {
            mask[i] = channel[i] <= from ? 1 : 0;
        }
        return mask;
    }
}
