package pairdown.tail;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.AirspeedKind;
import pairdown.attempt.Target;
import pairdown.stats.Robust;
import pairdown.time.Span;

/** The row of the sequence table for every descent. */
final class Sequences {
    /** Power has settled this long after a step began: blade and torque lag together. */
    private static final double SETTLED_AFTER_S = 2.5;

    /** And Tc′ is then averaged over this long. */
    private static final double SETTLED_FOR_S = 2;

    /** The path must stay down this long for a push-over, so that a gust is none. */
    private static final double FOR_GOOD_S = 3;

    private final TailInput input;
    private final Flight flight;
    private final Grid grid;
    private final TailSettings.Review settings;

    Sequences(TailInput input, Flight flight) {
        this.input = input;
        this.flight = flight;
        this.grid = flight.signals().grid();
        this.settings = input.settings().review();
    }

    List<DescentSequence> of(List<PowerChange> changes, List<Episode> episodes) {
        return input.descents().stream().map(d -> row(d, changes, episodes)).toList();
    }

    private DescentSequence row(Span descent, List<PowerChange> changes, List<Episode> episodes) {
        OptionalDouble pushOver_s = pathPasses(descent, settings.pushOver_deg());
        OptionalDouble reverse_s = reverse(descent);
        OptionalDouble trigger_s =
                reverse_s.isPresent() ? reverse_s : pathPasses(descent, settings.trigger_deg());
        List<Masks.Run> held = held(descent);
        OptionalDouble longest_s =
                input.target().isEmpty() || !flight.air().hasPath()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(
                                held.stream()
                                        .mapToDouble(r -> (r.length() - 1) * grid.step_s())
                                        .max()
                                        .orElse(0));
        return new DescentSequence(
                descent,
                pushOver_s,
                at(flight.air().calibrated_mps(), pushOver_s),
                reverse_s,
                at(flight.air().calibrated_mps(), reverse_s),
                steps(descent, changes),
                stabilised(trigger_s, held),
                longest_s,
                longest_s.isPresent()
                        ? input.target().map(t -> longest_s.getAsDouble() >= t.hold_s())
                        : Optional.empty(),
                during(descent, episodes));
    }

    private OptionalDouble pathPasses(Span descent, double angle_deg) {
        double sine = Math.sin(Math.toRadians(angle_deg));
        boolean[] down = Masks.within(grid, List.of(descent));
        for (int i = 0; i < down.length; i++) {
            down[i] &= flight.air().sinePath()[i] >= sine;
        }
        return Masks.runs(down, grid.steps(FOR_GOOD_S), 1).stream()
                .mapToDouble(r -> grid.time_s(r.from()))
                .findFirst();
    }

    private OptionalDouble reverse(Span descent) {
        boolean[] in = Masks.within(grid, List.of(descent));
        boolean known = flight.thrust().isKnown();
        for (int i = 0; i < in.length; i++) {
            if (known && in[i] && flight.reverse()[i]) {
                return OptionalDouble.of(grid.time_s(i));
            }
        }
        return OptionalDouble.empty();
    }

    private List<DescentSequence.Step> steps(Span descent, List<PowerChange> changes) {
        List<DescentSequence.Step> steps = new ArrayList<>();
        for (PowerChange c : changes) {
            if (descent.contains(c.time_s())) {
                OptionalDouble at = OptionalDouble.of(c.time_s());
                steps.add(
                        new DescentSequence.Step(
                                c,
                                at(flight.air().calibrated_mps(), at),
                                at(flight.air().sink_mps(), at),
                                settled(c.time_s() + SETTLED_AFTER_S)));
            }
        }
        return steps;
    }

    private OptionalDouble settled(double from_s) {
        int from = grid.place(from_s);
        int to = grid.place(from_s + SETTLED_FOR_S);
        double[] values = new double[to - from + 1];
        System.arraycopy(flight.balance().coefficient(), from, values, 0, values.length);
        return Robust.median(values);
    }

    private OptionalDouble at(double[] column, OptionalDouble time_s) {
        if (time_s.isEmpty()) {
            return time_s;
        }
        double v = column[grid.place(time_s.getAsDouble())];
        return Double.isFinite(v) ? OptionalDouble.of(v) : OptionalDouble.empty();
    }

    /** Stretches within both tolerances, short excursions bridged. */
    private List<Masks.Run> held(Span descent) {
        boolean[] within = new boolean[grid.size()];
        if (input.target().isEmpty()) {
            return List.of();
        }
        Target target = input.target().get();
        boolean[] in = Masks.within(grid, List.of(descent));
        double[] airspeed =
                target.kind() == AirspeedKind.TRUE
                        ? flight.air().true_mps()
                        : flight.air().calibrated_mps();
        for (int i = 0; i < within.length; i++) {
            within[i] =
                    in[i]
                            && Math.abs(airspeed[i] - target.airspeed_mps())
                                    <= target.airspeedTolerance_mps()
                            && Math.abs(flight.air().sink_mps()[i] - target.sink_mps())
                                    <= target.sinkTolerance_mps();
        }
        return Masks.runs(within, 1, grid.steps(settings.bridge_s()));
    }

    private OptionalDouble stabilised(OptionalDouble trigger_s, List<Masks.Run> held) {
        if (trigger_s.isEmpty()) {
            return trigger_s;
        }
        double from_s = trigger_s.getAsDouble();
        return held.stream()
                .filter(r -> grid.time_s(r.to()) >= from_s + settings.settled_s())
                .filter(
                        r ->
                                grid.time_s(r.to()) - Math.max(from_s, grid.time_s(r.from()))
                                        >= settings.settled_s())
                .mapToDouble(r -> Math.max(0, grid.time_s(r.from()) - from_s))
                .findFirst();
    }

    private static List<Integer> during(Span descent, List<Episode> episodes) {
        List<Integer> during = new ArrayList<>();
        for (int k = 0; k < episodes.size(); k++) {
            if (descent.overlaps(episodes.get(k).span())) {
                during.add(k);
            }
        }
        return during;
    }
}
