package pairdown.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.time.Span;

/**
 * Finds out all about one lead and one flyer: relative motion, closest approach, matched windows,
 * gate, target, touch evidence and closing limit, each with what its data can't tell.
 */
public final class PairAnalysis {
    private final PairInput input;
    private final PairSettings settings;
    private final Flight flight;
    private final DataLimits data;
    private final List<String> refusals = new ArrayList<>();

    private PairAnalysis(PairInput input, PairSettings settings) {
        this.input = input;
        this.settings = settings;
        this.flight = Flight.of(input);
        this.data = new DataLimits(input, settings.grades());
        refusals.addAll(flight.notes());
        refusals.addAll(data.words());
    }

    /** The pair, judged by the default settings. */
    public static PairDebrief analyse(PairInput input) {
        return analyse(input, PairSettings.DEFAULT);
    }

    /** The pair. Never fails on data: what can't be known is absent, with a line of refusals. */
    public static PairDebrief analyse(PairInput input, PairSettings settings) {
        return new PairAnalysis(input, settings).debrief();
    }

    private PairDebrief debrief() {
        RelativeMotion motion = RelativeMotion.of(input, settings);
        PairRows rows = PairRows.of(input, motion, flight.span(), settings);
        noteAxes(motion.axes());
        noteHoles(rows);
        MatchJudge judge = new MatchJudge(input, rows, data.dwell_s(), settings);
        Matched matched = matched(judge);
        refusals.addAll(matched.refusals());
        OptionalDouble breakOff_s = Leaving.breakOff_s(matched, rows, settings);
        double[] limit_mps = limits_mps(rows, Leaving.joinsUntil_s(matched, rows, settings));
        List<Touch> touch = touch(rows);
        Optional<RelativeMotion> anchored =
                TouchAnchors.anchored(input, motion, touch, settings, refusals);
        Optional<Approach> closest = ApproachFinder.closest(rows, motion);
        OptionalDouble gateIn_s = gateIn_s(rows);
        OptionalDouble leaving_s = Leaving.at_s(matched, closest);
        Optional<HeightBudget> budget =
                HeightBudgets.of(input, rows, matched.windows(), gateIn_s, closest, leaving_s);
        SeriesBuilder series =
                new SeriesBuilder(rows).airspeeds(input).limit(limit_mps).touch(touch);
        series.match(judge.rates(), matched.windows());
        anchored.ifPresent(series::anchored);
        return new PairDebrief(
                input.lead().id(),
                input.flyer().id(),
                input.slot(),
                input.slotArm(),
                motion.axes(),
                closest,
                ApproachFinder.leastGap(rows, motion),
                anchored.flatMap(a -> ApproachFinder.closest(rows, a)),
                matched,
                gate(rows, matched),
                onTarget(rows),
                touch,
                ExceedanceFinder.find(rows, limit_mps, settings),
                budget.map(HeightBudget::atFirstMatch_s).orElse(OptionalDouble.empty()),
                breakOff_s,
                refusals,
                series.build(),
                anchored.flatMap(a -> ApproachFinder.leastGap(rows, a)),
                budget,
                gateIn_s,
                leaving_s,
                motion.end_s() > motion.start_s() ? Optional.of(motion) : Optional.empty(),
                anchored);
    }

    private Matched matched(MatchJudge judge) {
        return data.allowsMatching()
                ? judge.judge()
                : MatchJudge.refused(List.of("positions alone are no measure of matched speeds"));
    }

    private void noteAxes(Axes axes) {
        String pair = input.lead().id() + "–" + input.flyer().id();
        switch (axes) {
            case BODY -> {}
            case AIR ->
                    refusals.add(
                            pair
                                    + ": no attitude is logged: axes and slot lie level along the"
                                    + " motion through the air, assumed good to "
                                    + (int) settings.assumed_deg()
                                    + " degrees");
            case GROUND ->
                    refusals.add(
                            pair
                                    + ": no wind is known: axes and slot lie level along the ground"
                                    + " track, which a cross-wind turns");
        }
        if (input.slotArm().isEmpty()) {
            refusals.add(pair + ": no slot is given: no gap, gate, closing limit or touch");
        }
    }

    private void noteHoles(PairRows rows) {
        int missing = 0;
        for (boolean measured : rows.measured) {
            missing += measured ? 0 : 1;
        }
        if (missing > 0) {
            refusals.add(
                    String.format(
                            Locale.ROOT,
                            "%s–%s: %.1f s between exit and opening have no fix of one of them; a"
                                    + " closer approach there would not show",
                            input.lead().id(),
                            input.flyer().id(),
                            missing * rows.step_s));
        }
    }

    /**
     * The closing limit by row; NaN where there is no gap or the data can't show it, and once the
     * flyer has left: after that nobody joins, and the lead may well fly back over the flyer.
     */
    private double[] limits_mps(PairRows rows, double until_s) {
        ClosingLimit limit = new ClosingLimit(input.limits().closure());
        double[] limit_mps = new double[rows.size];
        for (int i = 0; i < rows.size; i++) {
            boolean judged =
                    rows.time_s[i] <= until_s
                            && rows.gap_m[i] >= data.closingLimitFrom_m()
                            && approaches(rows, i);
            limit_mps[i] = judged ? limit.at(rows.gap_m[i]) : Double.NaN;
        }
        return limit_mps;
    }

    /**
     * Whether the flyer flies by its own means, or will be there before long: just after the exit
     * it has the ship's speed, which is no approach of its own.
     */
    private boolean approaches(PairRows rows, int i) {
        return rows.time_s[i] >= rows.start_s + settings.settled_s()
                || rows.gap_m[i] < settings.horizon_s() * rows.closure_mps[i];
    }

    private List<Touch> touch(PairRows rows) {
        return input.slotArm().isPresent()
                ? new TouchFinder(input, rows, settings.touch(), data.allowsTouch()).find()
                : List.of();
    }

    private OptionalDouble gateIn_s(PairRows rows) {
        return input.gate_m().isPresent()
                ? GateJudge.firstInside_s(input.gate_m().getAsDouble(), rows)
                : OptionalDouble.empty();
    }

    private Optional<GateHeld> gate(PairRows rows, Matched matched) {
        if (input.gate_m().isEmpty()) {
            return Optional.empty();
        }
        double gate_m = input.gate_m().getAsDouble();
        if (!matched.refusals().isEmpty() || !data.allowsGate(gate_m)) {
            return Optional.of(GateJudge.noData(gate_m));
        }
        Optional<Span> best = matched.longest().map(MatchedWindow::span);
        return Optional.of(GateJudge.judge(gate_m, rows, best, input.matched().horizontal_mps()));
    }

    private Optional<OnTarget> onTarget(PairRows rows) {
        return input.wind().isKnown()
                ? input.target().flatMap(t -> TargetFinder.find(input, t, rows))
                : Optional.empty();
    }
}
