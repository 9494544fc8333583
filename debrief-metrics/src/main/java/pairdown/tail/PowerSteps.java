package pairdown.tail;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pairdown.stats.Robust;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * Steps of the power channels, timed on the channel's own samples. A step is a move in one
 * direction of at least the settings' size within their time; it begins after the last sample
 * before the channel went quickly, and ends where the channel comes to rest. Of channels that show
 * one move, the lever names it, else the blade, else torque.
 */
final class PowerSteps {
    /** A move has not begun where the channel goes by less than this share of its quickest. */
    private static final double SLOW_SHARE = 0.15;

    /**
     * It moves on while it changes by more than this share of the least step in the step's time.
     */
    private static final double MOVING_SHARE = 0.3;

    /**
     * A hand moves the lever from idle to a stop in about a second and a half (common practice).
     */
    private static final double HAND_PERS = 65;

    private final TailInput input;
    private final TailSettings.Power settings;

    PowerSteps(TailInput input) {
        this.input = input;
        this.settings = input.settings().power();
    }

    /** All changes in order of time. */
    List<PowerChange> find(Signals signals, ForceBalance balance, List<String> notes) {
        List<PowerChange> changes = new ArrayList<>();
        add(changes, Channel.POWER_LEVER, PowerSource.POWER_LEVER, settings.step_pct());
        input.system(Channel.BLADE_ANGLE)
                .ifPresent(
                        s ->
                                add(
                                        changes,
                                        Channel.BLADE_ANGLE,
                                        PowerSource.BLADE_ANGLE,
                                        settings.bladeShare() * range(s)));
        boolean direct = signals.has(Channel.POWER_LEVER) || signals.has(Channel.BLADE_ANGLE);
        if (!direct) {
            fromForce(changes, signals.grid(), balance, notes);
        }
        changes.sort(Comparator.comparingDouble(PowerChange::time_s));
        return List.copyOf(changes);
    }

    private void add(List<PowerChange> changes, Channel channel, PowerSource source, double least) {
        Optional<Series> series = input.system(channel);
        if (series.isEmpty() || !(least > 0)) {
            return;
        }
        for (PowerChange c : steps(series.get(), source, least)) {
            boolean known =
                    changes.stream()
                            .anyMatch(
                                    o ->
                                            o.channel() != source
                                                    && o.towardReverse() == c.towardReverse()
                                                    && Math.abs(o.time_s() - c.time_s())
                                                            <= settings.sameMove_s());
            if (!known) {
                changes.add(c);
            }
        }
    }

    private void fromForce(
            List<PowerChange> changes, Grid grid, ForceBalance balance, List<String> notes) {
        if (!balance.hasCoefficient()) {
            notes.add(
                    "neither power lever nor blade angle is logged and Tc′ is not known: moves of"
                            + " power can't be seen (torque alone does not tell their direction)");
            return;
        }
        notes.add(
                "neither power lever nor blade angle is logged: moves of power are read from Tc′,"
                        + " to about a second");
        Series series = grid.series(balance.coefficient());
        for (PowerChange c :
                steps(series, PowerSource.RETARDING_COEFFICIENT, settings.coefficientRise())) {
            changes.add(c);
        }
    }

    private static double range(Series series) {
        double[] values = new double[series.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = series.value(i);
        }
        return Robust.quantile(0.999, values).orElse(0) - Robust.quantile(0.001, values).orElse(0);
    }

    /** The steps of one channel: falling is towards reverse, but for Tc′. */
    private List<PowerChange> steps(Series s, PowerSource source, double least) {
        List<PowerChange> found = new ArrayList<>();
        int i = 0;
        while (i < s.size()) {
            int from = i;
            int to = ahead(s, from);
            double move = s.value(to) - s.value(from);
            if (!(Math.abs(move) >= least * 0.999)) {
                i++;
                continue;
            }
            int begin = begin(s, from, to, move);
            int end = end(s, to, move, least);
            boolean falls = move < 0;
            found.add(
                    new PowerChange(
                            source == PowerSource.POWER_LEVER
                                    ? moved_s(s, begin, end, move)
                                    : s.time_s(begin),
                            source,
                            s.value(begin),
                            s.value(end),
                            falls != (source == PowerSource.RETARDING_COEFFICIENT),
                            OptionalInt.empty()));
            i = Math.max(end, from + 1);
        }
        return found;
    }

    /** The place at most the step's time ahead with the greatest move from here. */
    private int ahead(Series s, int from) {
        int best = from;
        for (int k = from + 1; k < s.size(); k++) {
            // Of a slow log two neighbours make a step: a move may fall on both sides of a sample.
            if (k > from + 2 && s.time_s(k) - s.time_s(from) > settings.within_s() * 1.05) {
                break;
            }
            if (Math.abs(s.value(k) - s.value(from)) > Math.abs(s.value(best) - s.value(from))) {
                best = k;
            }
        }
        return best;
    }

    /**
     * The last sample before the move: back from where it was quickest to where it was still slow.
     * A smaller move shortly before, after which the channel rested, is not its beginning.
     */
    private static int begin(Series s, int from, int to, double move) {
        int quickest = from + 1;
        for (int k = from + 2; k <= to; k++) {
            quickest = rise(s, k, move) > rise(s, quickest, move) ? k : quickest;
        }
        int first = quickest;
        while (first > from + 1
                && rise(s, first - 1, move) > SLOW_SHARE * rise(s, quickest, move)) {
            first--;
        }
        return first - 1;
    }

    /**
     * When a hand began to move, between the last sample at rest and the next: it moves at an even
     * pace, so where the move goes on it began as long before the next sample as that is away from
     * rest. Of two steps neither need show the pace in full: a usual hand's is then the least. A
     * move that is over by the next sample began anywhere between; the middle is taken.
     */
    private static double moved_s(Series s, int rest, int end, double move) {
        int next = rest + 1;
        double pace = end > next + 1 ? 0 : HAND_PERS;
        for (int k = next; k <= end; k++) {
            pace = Math.max(pace, rise(s, k, move));
        }
        double gone = Math.abs(s.value(next) - s.value(rest));
        double latest_s = Math.max(s.time_s(rest), s.time_s(next) - gone / pace);
        return end == next ? (s.time_s(rest) + latest_s) / 2 : latest_s;
    }

    /** How quickly the channel went the move's way into a place. */
    private static double rise(Series s, int k, double move) {
        double dt_s = Math.max(1e-6, s.time_s(k) - s.time_s(k - 1));
        return (s.value(k) - s.value(k - 1)) * Math.signum(move) / dt_s;
    }

    /** Where the move, once begun, comes to rest. */
    private int end(Series s, int to, double move, double least) {
        int end = to;
        for (int k = to + 1; k < s.size(); k++) {
            double dt_s = s.time_s(k) - s.time_s(end);
            if (dt_s > settings.within_s() * 0.25 + 1e-9 && k > end + 1) {
                break;
            }
            double rate = (s.value(k) - s.value(end)) * Math.signum(move) / Math.max(dt_s, 1e-6);
            if (rate * settings.within_s() > MOVING_SHARE * least) {
                end = k;
            }
        }
        return end;
    }
}
