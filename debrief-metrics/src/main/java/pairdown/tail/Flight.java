package pairdown.tail;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pairdown.stats.Robust;

/**
 * The flight on the grid, and which parts of it are of which kind.
 *
 * @param signals logged channels
 * @param air motion through the air
 * @param balance retarding force
 * @param pressureRatio dynamic pressure over the dive's median; 1 where no airspeed is known
 * @param airborne flying, or no airspeed says otherwise
 * @param descending inside a descent
 * @param thrust which way the propeller pushed
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
        Thrust thrust) {
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
        for (int i = 0; i < n; i++) {
            airborne[i] = air.flying(i, input.settings().data());
        }
        Thrust thrust = Thrust.of(input.settings().fit(), signals, balance, airborne, descending);
        return new Flight(
                signals,
                air,
                balance,
                ratio(air, thrust.reverseOr(descending)),
                airborne,
                descending,
                thrust);
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
            boolean[] reverse = thrust.reverse();
            for (int i = run.from(); i <= run.to(); i++) {
                from = reverse[i] ? Math.min(from, i) : from;
                to = reverse[i] ? i : to;
            }
            parts.add(from <= to && Masks.count(reverse, run) > 0 ? new Masks.Run(from, to) : run);
        }
        return parts;
    }

    boolean[] reverse() {
        return thrust.reverse();
    }

    List<String> notes() {
        return Stream.concat(air.notes().stream(), balance.notes().stream()).toList();
    }
}
