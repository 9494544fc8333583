package pairdown.pair;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.BreakOff;
import pairdown.attempt.Target;
import pairdown.time.Span;

/** Works out a pair's height budget. */
final class HeightBudgets {
    /** The sink is averaged over this (s). */
    private static final double MEAN_S = 2;

    private final PairInput input;
    private final PairRows rows;
    private final double limit_m;

    private HeightBudgets(PairInput input, PairRows rows, double limit_m) {
        this.input = input;
        this.rows = rows;
        this.limit_m = limit_m;
    }

    /** Empty without a break-off height. */
    static Optional<HeightBudget> of(
            PairInput input,
            PairRows rows,
            List<MatchedWindow> windows,
            OptionalDouble gateIn_s,
            Optional<Approach> closest,
            OptionalDouble leaving_s) {
        Optional<BreakOff> breakOff = input.limits().breakOff();
        if (breakOff.isEmpty() || rows.size == 0) {
            return Optional.empty();
        }
        HeightBudgets b =
                new HeightBudgets(
                        input,
                        rows,
                        BreakOffHeight.ellipsoid_m(breakOff.get(), input.undulation_m()));
        OptionalDouble match_s = windows.stream().mapToDouble(w -> w.span().start_s()).findFirst();
        OptionalDouble closest_s =
                closest.map(c -> OptionalDouble.of(c.time_s())).orElse(OptionalDouble.empty());
        return Optional.of(
                new HeightBudget(
                        b.atExit_s(match_s),
                        b.left_s(gateIn_s),
                        b.left_s(match_s),
                        b.left_s(closest_s),
                        b.left_s(leaving_s),
                        b.sigma_s(match_s.isPresent() ? match_s : closest_s)));
    }

    private OptionalDouble left_s(OptionalDouble at_s) {
        if (at_s.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble sink_mps = sink_mps(at_s.getAsDouble());
        double height_m = height_m(at_s.getAsDouble());
        return sink_mps.isEmpty() || Double.isNaN(height_m)
                ? OptionalDouble.empty()
                : HeightBudget.secondsLeft_s(height_m - limit_m, sink_mps.getAsDouble());
    }

    /** At the exit nobody sinks yet: the plan's sink counts. */
    private OptionalDouble atExit_s(OptionalDouble match_s) {
        OptionalDouble sink_mps =
                input.target()
                        .map(Target::sink_mps)
                        .map(OptionalDouble::of)
                        .orElseGet(
                                () ->
                                        match_s.isPresent()
                                                ? sink_mps(match_s.getAsDouble())
                                                : OptionalDouble.empty());
        double height_m = height_m(rows.time_s[0]);
        return sink_mps.isEmpty() || Double.isNaN(height_m)
                ? OptionalDouble.empty()
                : HeightBudget.secondsLeft_s(height_m - limit_m, sink_mps.getAsDouble());
    }

    private OptionalDouble sink_mps(double t_s) {
        return RowStatistics.mean(
                rows, rows.flyerSink_mps, new Span(t_s - MEAN_S / 2, t_s + MEAN_S / 2));
    }

    private double height_m(double t_s) {
        int row = rows.rowAtOrBefore(t_s);
        return row < 0 ? Double.NaN : rows.flyerHeight_m[row];
    }

    private OptionalDouble sigma_s(OptionalDouble at_s) {
        if (at_s.isEmpty() || !input.flyer().trajectory().covers(at_s.getAsDouble())) {
            return OptionalDouble.empty();
        }
        double sigma_m = input.flyer().trajectory().at(at_s.getAsDouble()).positionSigma_m().z();
        OptionalDouble sink_mps = sink_mps(at_s.getAsDouble());
        return sink_mps.isPresent()
                ? HeightBudget.secondsLeft_s(sigma_m, sink_mps.getAsDouble())
                : OptionalDouble.empty();
    }
}
