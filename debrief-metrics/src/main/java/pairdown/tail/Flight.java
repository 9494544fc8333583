package pairdown.tail;

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
        boolean[] reverse) {
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
                ratio(air, descending),
                airborne,
                descending,
                forward,
                reverse);
    }

    private static double[] ratio(AirData air, boolean[] descending) {
        double[] q = air.dynamicPressure_Pa();
        double[] ratio = new double[q.length];
        if (!air.hasAirspeed()) {
            Arrays.fill(ratio, 1);
            return ratio;
        }
        double[] dive = q.clone();
        for (int i = 0; i < dive.length; i++) {
            dive[i] = descending[i] ? q[i] : Double.NaN;
        }
        double reference = Robust.median(dive).orElse(Robust.median(q).orElse(1));
        for (int i = 0; i < q.length; i++) {
            ratio[i] = q[i] / reference;
        }
        return ratio;
    }

    /** Whether anything tells reverse from the rest of a descent. */
    boolean knowsReverse() {
        return signals.has(Channel.POWER_LEVER) || balance.hasCoefficient();
    }

    List<String> notes() {
        return Stream.concat(air.notes().stream(), balance.notes().stream()).toList();
    }
}
