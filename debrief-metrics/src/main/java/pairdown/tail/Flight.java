package pairdown.tail;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pairdown.stats.Robust;
import pairdown.track.Channel;

/**
 * The flight on the grid, and which parts of it are of which kind.
 *
 * @param signals logged channels
 * @param air motion through the air
 * @param balance retarding force
 * @param pressureRatio dynamic pressure over the dive's median; 1 where no airspeed is known
 * @param airborne flying, or no airspeed says otherwise
 * @param descending inside a descent
 * @param forward airborne with forward thrust or idle: the baseline
 * @param reverse inside a descent with power behind idle or, where nothing tells, anywhere in one
 * @param power as it comes to act on the aircraft, by whatever channel tells it, 0 at idle and
 *     about 1 away from it in full reverse; 0 where none tells
 */
// Columns of the package's own working, never handed out: copies would cost more than they guard.
@SuppressWarnings("ArrayRecordComponent")
record Flight(
        Signals signals,
        AirData air,
        ForceBalance balance,
        double[] pressureRatio,
        boolean[] airborne,
        boolean[] descending,
        boolean[] forward,
        boolean[] reverse,
        double[] power) {
    /** Blades and wake follow the lever by about this (common practice, no published source). */
    private static final double POWER_LAG_S = 0.5;

    private static final double POWER_SMOOTHING_S = 0.4;

    private static final double FULL_LEVER_PCT = 100;

    /** Full reverse is about this Tc′ at a target (domain's momentum theory: the wake stops). */
    private static final double FULL_COEFFICIENT = 1;

    /** Tc′ up to this is near enough to idle for the baseline where the lever is not logged. */
    private static final double IDLE_COEFFICIENT = 0.1;

    /** Tc′ from this on is reverse where the lever is not logged. */
    private static final double REVERSE_COEFFICIENT = 0.3;

    static Optional<Flight> of(TailInput input) {
        return Signals.of(input).map(s -> of(input, s));
    }

    private static Flight of(TailInput input, Signals signals) {
        AirData air = AirData.of(input, signals);
        ForceBalance balance = ForceBalance.of(input, signals, air);
        Grid grid = signals.grid();
        int n = grid.size();
        boolean[] descending = Masks.within(grid, input.descents());
        boolean[] airborne = new boolean[n];
        boolean[] forward = new boolean[n];
        boolean[] reverse = new boolean[n];
        double[] lever = signals.column(Channel.POWER_LEVER);
        TailSettings.Fit fit = input.settings().fit();
        for (int i = 0; i < n; i++) {
            airborne[i] = air.flying(i, input.settings().data());
            double l = lever[i];
            double c = balance.coefficient()[i];
            if (signals.has(Channel.POWER_LEVER)) {
                forward[i] = airborne[i] && l > fit.reverseLever_pct();
                reverse[i] = descending[i] && l <= fit.reverseLever_pct();
            } else if (balance.hasCoefficient()) {
                forward[i] = airborne[i] && !descending[i] && !(c > IDLE_COEFFICIENT);
                reverse[i] = descending[i] && c > REVERSE_COEFFICIENT;
            } else {
                forward[i] = airborne[i] && !descending[i];
                reverse[i] = descending[i];
            }
        }
        return new Flight(
                signals,
                air,
                balance,
                ratio(air, Masks.count(reverse) > 0 ? reverse : descending),
                airborne,
                descending,
                forward,
                reverse,
                power(signals, balance));
    }

    /** Power as it comes to act on the aircraft: smoothed, and later than the lever. */
    private static double[] power(Signals signals, ForceBalance balance) {
        Grid grid = signals.grid();
        double[] share =
                new LocalLine(POWER_SMOOTHING_S, grid.step_s()).value(powerShare(signals, balance));
        double[] power = new double[share.length];
        int late = grid.steps(POWER_LAG_S);
        for (int i = 0; i < power.length; i++) {
            double now = share[Math.max(0, i - late)];
            power[i] = Double.isFinite(now) ? now : i == 0 ? 0 : power[i - 1];
        }
        return power;
    }

    /** Power by the best channel for it, 0 at idle and about −1 or 1 in full reverse. */
    private static double[] powerShare(Signals signals, ForceBalance balance) {
        double[] share = signals.column(Channel.POWER_LEVER).clone();
        double full = FULL_LEVER_PCT;
        if (!signals.has(Channel.POWER_LEVER) && signals.has(Channel.BLADE_ANGLE)) {
            share = signals.column(Channel.BLADE_ANGLE).clone();
            full =
                    (Robust.quantile(0.999, share).orElse(1)
                                    - Robust.quantile(0.001, share).orElse(0))
                            / 2;
        } else if (!signals.has(Channel.POWER_LEVER)) {
            share = balance.coefficient().clone();
            full = FULL_COEFFICIENT;
        }
        for (int i = 0; i < share.length; i++) {
            share[i] /= full;
        }
        return share;
    }

    private static double[] ratio(AirData air, boolean[] diving) {
        double[] q = air.dynamicPressure_Pa();
        double[] ratio = new double[q.length];
        if (!air.hasAirspeed()) {
            Arrays.fill(ratio, 1);
            return ratio;
        }
        double[] dive = q.clone();
        for (int i = 0; i < dive.length; i++) {
            dive[i] = diving[i] ? q[i] : Double.NaN;
        }
        double reference = Robust.median(dive).orElse(Robust.median(q).orElse(1));
        for (int i = 0; i < q.length; i++) {
            ratio[i] = q[i] / reference;
        }
        return ratio;
    }

    /**
     * Where the tail is judged: of each descent the part from its first to its last reverse, all of
     * it where there was none.
     */
    List<Masks.Run> reviewed() {
        List<Masks.Run> parts = new ArrayList<>();
        for (Masks.Run run : Masks.runs(descending)) {
            int from = run.to();
            int to = run.from();
            for (int i = run.from(); i <= run.to(); i++) {
                from = reverse[i] ? Math.min(from, i) : from;
                to = reverse[i] ? i : to;
            }
            parts.add(from <= to && Masks.count(reverse, run) > 0 ? new Masks.Run(from, to) : run);
        }
        return parts;
    }

    /** Whether anything tells reverse from the rest of a descent. */
    boolean knowsReverse() {
        return signals.has(Channel.POWER_LEVER) || balance.hasCoefficient();
    }

    List<String> notes() {
        return Stream.concat(air.notes().stream(), balance.notes().stream()).toList();
    }
}
