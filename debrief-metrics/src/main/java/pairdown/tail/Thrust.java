package pairdown.tail;

import pairdown.stats.Robust;
import pairdown.track.Channel;

/**
 * Which way the propeller pushed, by the best that is known of it: the power lever, else the blade
 * angle, else Tc′, else only that an aircraft braked hard on its way down.
 *
 * @param forward airborne with forward thrust or idle: the baseline
 * @param reverse inside a descent with power behind idle or, where nothing tells, in its part with
 *     the most retarding force
 * @param power as it comes to act on the aircraft, 0 at idle and about 1 away from it in full
 *     reverse; 0 where nothing tells
 * @param isKnown whether anything tells reverse from the rest of a descent
 */
// Columns of the package's own working, never handed out: copies would cost more than they guard.
@SuppressWarnings("ArrayRecordComponent")
record Thrust(boolean[] forward, boolean[] reverse, double[] power, boolean isKnown) {
    /** Blades and wake follow the lever by about this (common practice, no published source). */
    private static final double POWER_LAG_S = 0.5;

    private static final double POWER_SMOOTHING_S = 0.4;
    private static final double FULL_LEVER_PCT = 100;

    /** From idle to full reverse blades turn by about this (common practice). */
    private static final double FULL_BLADE_DEG = 25;

    /** Full reverse is about this Tc′ at a target: by momentum theory the wake stops there. */
    private static final double FULL_COEFFICIENT = 1;

    /** Tc′ up to this is near enough to idle for the baseline. */
    private static final double IDLE_COEFFICIENT = 0.1;

    /** Tc′ from this on is reverse. */
    private static final double REVERSE_COEFFICIENT = 0.3;

    /** Retarding force over this share of a descent's greatest is its braked part. */
    private static final double BRAKED_SHARE = 0.7;

    /** The greatest is what was passed for a tenth of the descent, not a gust. */
    private static final double GREATEST = 0.9;

    static Thrust of(
            TailSettings.Fit fit,
            Signals signals,
            ForceBalance balance,
            boolean[] airborne,
            boolean[] descending) {
        if (signals.has(Channel.POWER_LEVER)) {
            double[] lever = signals.column(Channel.POWER_LEVER);
            return told(
                    signals, airborne, descending, lever, fit.reverseLever_pct(), FULL_LEVER_PCT);
        }
        if (signals.has(Channel.BLADE_ANGLE)) {
            double[] blade = signals.column(Channel.BLADE_ANGLE);
            return told(
                    signals, airborne, descending, blade, fit.reverseBlade_deg(), FULL_BLADE_DEG);
        }
        return balance.hasCoefficient()
                ? braking(signals, airborne, descending, balance.coefficient())
                : untold(airborne, descending, balance.share());
    }

    /** A channel that falls towards reverse. */
    private static Thrust told(
            Signals signals,
            boolean[] airborne,
            boolean[] descending,
            double[] channel,
            double reverseFrom,
            double full) {
        boolean[] forward = new boolean[channel.length];
        boolean[] reverse = new boolean[channel.length];
        for (int i = 0; i < channel.length; i++) {
            forward[i] = airborne[i] && channel[i] > reverseFrom;
            reverse[i] = descending[i] && channel[i] <= reverseFrom;
        }
        return new Thrust(forward, reverse, acting(signals.grid(), channel, full), true);
    }

    private static Thrust braking(
            Signals signals, boolean[] airborne, boolean[] descending, double[] coefficient) {
        boolean[] forward = new boolean[coefficient.length];
        boolean[] reverse = new boolean[coefficient.length];
        for (int i = 0; i < coefficient.length; i++) {
            forward[i] = airborne[i] && !descending[i] && !(coefficient[i] > IDLE_COEFFICIENT);
            reverse[i] = descending[i] && coefficient[i] > REVERSE_COEFFICIENT;
        }
        double[] acting = acting(signals.grid(), coefficient, FULL_COEFFICIENT);
        return new Thrust(forward, reverse, acting, true);
    }

    private static Thrust untold(boolean[] airborne, boolean[] descending, double[] share) {
        double[] down = share.clone();
        for (int i = 0; i < down.length; i++) {
            down[i] = descending[i] ? down[i] : Double.NaN;
        }
        double least = BRAKED_SHARE * Robust.quantile(GREATEST, down).orElse(Double.NaN);
        boolean[] forward = new boolean[share.length];
        boolean[] reverse = new boolean[share.length];
        for (int i = 0; i < share.length; i++) {
            forward[i] = airborne[i] && !descending[i];
            reverse[i] = descending[i] && !(share[i] < least);
        }
        return new Thrust(forward, reverse, new double[share.length], false);
    }

    /** Power as it comes to act on the aircraft: smoothed, and later than the channel. */
    private static double[] acting(Grid grid, double[] channel, double full) {
        double[] smooth = new LocalLine(POWER_SMOOTHING_S, grid.step_s()).value(channel);
        double[] power = new double[smooth.length];
        int late = grid.steps(POWER_LAG_S);
        for (int i = 0; i < power.length; i++) {
            double now = smooth[Math.max(0, i - late)] / full;
            power[i] = Double.isFinite(now) ? now : i == 0 ? 0 : power[i - 1];
        }
        return power;
    }

    /** Reverse, or where there was none all that is given. */
    boolean[] reverseOr(boolean[] descending) {
        return Masks.count(reverse) > 0 ? reverse : descending;
    }
}
