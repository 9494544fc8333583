package pairdown.tail;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pairdown.stats.Robust;
import pairdown.track.Channel;

/** Finds each sign of a blanked tail inside the descents, on its own. */
final class SignFinder {
    /** The band in which a pilot works and a tail answers: slower than this is trim … */
    private static final double SLOW_S = 0.6;

    /** … and quicker than this is noise and buffet. */
    private static final double QUICK_S = 0.08;

    /** Off the fitted response for so long, not in a single spike. */
    private static final double OFF_S = 0.2;

    private final Flight flight;
    private final Grid grid;
    private final TailSettings.Signs settings;
    private final double leastRate_Hz;

    SignFinder(Flight flight, TailSettings settings) {
        this.flight = flight;
        this.grid = flight.signals().grid();
        this.settings = settings.signs();
        this.leastRate_Hz = settings.data().leastRate_Hz();
    }

    /** Which signs these channels could show. */
    Set<Episode.Sign> sees(Optional<Effectiveness> judge) {
        Set<Episode.Sign> seen = EnumSet.noneOf(Episode.Sign.class);
        judge.ifPresent(e -> seen.add(Episode.Sign.LOST_EFFECTIVENESS));
        for (ControlAxis axis : ControlAxis.values()) {
            if (quick(axis.control()) && quick(axis.rate())) {
                seen.add(Episode.Sign.RAISED_ACTIVITY);
            }
            if (flight.signals().has(axis.rate())) {
                seen.add(Episode.Sign.EXCURSION);
            }
        }
        if (flight.signals().has(Channel.ELEVATOR)) {
            seen.add(Episode.Sign.ELEVATOR_NEAR_STOP);
        }
        if (quick(Channel.RUDDER)) {
            seen.add(Episode.Sign.RUDDER_REVERSALS);
        }
        return seen;
    }

    private boolean quick(Channel channel) {
        return flight.signals().rate_Hz(channel) >= leastRate_Hz;
    }

    /** All signs by their start. */
    List<SignSpan> find(Optional<Effectiveness> judge) {
        List<SignSpan> signs = new ArrayList<>();
        judge.ifPresent(
                axis -> {
                    axis.levels()
                            .lost(settings, grid.steps(settings.lostFor_s()))
                            .forEach(r -> add(signs, Episode.Sign.LOST_EFFECTIVENESS, r));
                    offResponse(axis).forEach(r -> add(signs, Episode.Sign.EXCURSION, r));
                });
        for (ControlAxis axis : ControlAxis.values()) {
            if (quick(axis.control()) && quick(axis.rate())) {
                activity(axis).forEach(r -> add(signs, Episode.Sign.RAISED_ACTIVITY, r));
            }
            fast(axis).forEach(r -> add(signs, Episode.Sign.EXCURSION, r));
        }
        nearStop().forEach(r -> add(signs, Episode.Sign.ELEVATOR_NEAR_STOP, r));
        if (quick(Channel.RUDDER)) {
            reversals().forEach(r -> add(signs, Episode.Sign.RUDDER_REVERSALS, r));
        }
        signs.sort(Comparator.comparingInt(SignSpan::from));
        return signs;
    }

    private static void add(List<SignSpan> signs, Episode.Sign sign, Masks.Run run) {
        signs.add(new SignSpan(sign, run.from(), run.to()));
    }

    /** Acceleration off what the control at its own level would give, in robust sigmas. */
    private List<Masks.Run> offResponse(Effectiveness axis) {
        double[] off = Signals.nothing(grid.size());
        for (int i = 0; i < off.length; i++) {
            off[i] = axis.left()[i] - axis.baseline() * axis.levels().own()[i] * axis.drive()[i];
        }
        double middle = Robust.median(off).orElse(0);
        double sigma = Robust.sigma(off).orElse(Double.POSITIVE_INFINITY);
        boolean[] far = new boolean[off.length];
        for (int i = 0; i < far.length; i++) {
            far[i] = Math.abs(off[i] - middle) > settings.residualSigmas() * sigma;
        }
        return Masks.runs(far, grid.steps(OFF_S), grid.steps(OFF_S));
    }

    private List<Masks.Run> fast(ControlAxis axis) {
        double[] rate = flight.signals().column(axis.rate());
        boolean[] fast = new boolean[rate.length];
        for (int i = 0; i < fast.length; i++) {
            fast[i] = flight.descending()[i] && Math.abs(rate[i]) > settings.rate_dps();
        }
        return Masks.runs(fast, 1, grid.steps(OFF_S));
    }

    private List<Masks.Run> nearStop() {
        double[] elevator = flight.signals().column(Channel.ELEVATOR);
        boolean[] near = new boolean[elevator.length];
        for (int i = 0; i < near.length; i++) {
            near[i] = flight.descending()[i] && Math.abs(elevator[i]) >= settings.nearStop_pct();
        }
        return Masks.runs(near, grid.steps(settings.nearStopFor_s()), grid.steps(OFF_S));
    }

    /** Control over response in the pilot's band, against the descents' own median. */
    private List<Masks.Run> activity(ControlAxis axis) {
        double[] control = spread(flight.signals().column(axis.control()));
        double[] response = spread(flight.signals().column(axis.rate()));
        double[] over = Signals.nothing(grid.size());
        for (int i = 0; i < over.length; i++) {
            if (flight.reverse()[i] && response[i] > 0) {
                over[i] = control[i] / response[i];
            }
        }
        Optional<Double> own = Robust.median(over).stream().boxed().findFirst();
        boolean[] raised = new boolean[over.length];
        for (int i = 0; i < raised.length && own.isPresent(); i++) {
            raised[i] = over[i] > settings.activity() * own.get();
        }
        return Masks.runs(raised, grid.steps(OFF_S), grid.steps(OFF_S));
    }

    private double[] spread(double[] column) {
        double[] slow = new LocalLine(SLOW_S, grid.step_s()).value(column);
        double[] quick = new LocalLine(QUICK_S, grid.step_s()).value(column);
        double[] square = new double[column.length];
        double[] one = new double[column.length];
        for (int i = 0; i < square.length; i++) {
            double band = quick[i] - slow[i];
            square[i] = band * band;
            one[i] = Double.isFinite(band) ? 1 : 0;
        }
        Forgetting window = new Forgetting(settings.activityWindow_s() / 2, grid.step_s());
        double[] sum = window.sum(square);
        double[] count = window.sum(one);
        for (int i = 0; i < sum.length; i++) {
            sum[i] = Math.sqrt(sum[i] / count[i]);
        }
        return sum;
    }

    /** Turns of the rudder after a swing of at least the setting, and where they come too often. */
    private List<Masks.Run> reversals() {
        double[] rudder = flight.signals().column(Channel.RUDDER);
        List<Integer> turns = new ArrayList<>();
        int extreme = 0;
        int direction = 0;
        for (int i = 1; i < rudder.length; i++) {
            double away = rudder[i] - rudder[extreme];
            if (!Double.isFinite(away)) {
                extreme = i;
                direction = 0;
            } else if (away * direction > 0) {
                extreme = i;
            } else if (Math.abs(away) >= settings.reversalSwing_pct()) {
                if (direction != 0 && flight.descending()[extreme]) {
                    turns.add(extreme);
                }
                direction = (int) Math.signum(away);
                extreme = i;
            }
        }
        int window = grid.steps(settings.reversalsFor_s());
        int least = (int) Math.ceil(settings.reversals_perS() * settings.reversalsFor_s());
        boolean[] often = new boolean[rudder.length];
        for (int k = 0; k + least - 1 < turns.size(); k++) {
            int last = turns.get(k + least - 1);
            for (int i = turns.get(k); last - turns.get(k) <= window && i <= last; i++) {
                often[i] = true;
            }
        }
        return Masks.runs(often);
    }
}
