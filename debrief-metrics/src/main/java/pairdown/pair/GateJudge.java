package pairdown.pair;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.pair.GateHeld.Verdict;
import pairdown.time.Span;

/** Holds the gap to the slot against the planned gate. */
final class GateJudge {
    /** A gap up to this share of the gate, or this many metres more, counts as held. */
    private static final double NEAR_SHARE = 1.2;

    private static final double NEAR_M = 2;

    /** Inside the gate means up to this many sigmas outside it. */
    private static final double INSIDE_SIGMAS = 2;

    /** Under this share of the gate a flyer is well through it. */
    private static final double THROUGH_SHARE = 0.8;

    private final double gate_m;
    private final PairRows rows;

    private GateJudge(double gate_m, PairRows rows) {
        this.gate_m = gate_m;
        this.rows = rows;
    }

    /**
     * The gate as met.
     *
     * @param best the longest matched window
     * @param tolerance_mps the level matched tolerance: leaving the gate's inside faster than this
     *     after going well inside is an overshoot
     */
    static GateHeld judge(double gate_m, PairRows rows, Optional<Span> best, double tolerance_mps) {
        GateJudge judge = new GateJudge(gate_m, rows);
        if (Arrays.stream(rows.gap_m).allMatch(Double::isNaN)) {
            return noData(gate_m);
        }
        int overshoots = judge.overshoots(tolerance_mps);
        OptionalDouble median_m = judge.median(best, rows.gap_m);
        return new GateHeld(
                gate_m,
                median_m,
                judge.median(best, rows.gapSigma_m),
                judge.held_s(),
                best.map(judge::insideShare).orElse(OptionalDouble.empty()),
                overshoots,
                judge.verdict(median_m, overshoots));
    }

    /** A gate for which there are no figures: held and overshoots are 0 and mean nothing. */
    static GateHeld noData(double gate_m) {
        return new GateHeld(
                gate_m,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                OptionalDouble.empty(),
                0,
                Verdict.NO_DATA);
    }

    private double near_m() {
        return Math.max(NEAR_SHARE * gate_m, gate_m + NEAR_M);
    }

    private Verdict verdict(OptionalDouble median_m, int overshoots) {
        if (median_m.isEmpty() || median_m.getAsDouble() > near_m()) {
            return Verdict.SHORT;
        }
        return overshoots > 0 ? Verdict.THROUGH : Verdict.ON_GATE;
    }

    private double held_s() {
        return Stretches.total_s(Stretches.of(rows, inside(near_m())));
    }

    private double[] inside(double limit_m) {
        double[] margin = new double[rows.size];
        for (int i = 0; i < rows.size; i++) {
            margin[i] = limit_m - rows.gap_m[i];
        }
        return margin;
    }

    /** When the gap first came inside the gate; empty if it never did. */
    static OptionalDouble firstInside_s(double gate_m, PairRows rows) {
        return Stretches.of(rows, new GateJudge(gate_m, rows).inside(gate_m)).stream()
                .mapToDouble(Span::start_s)
                .findFirst();
    }

    /** Median over the best window of a column's known values; empty if there are none. */
    private OptionalDouble median(Optional<Span> best, double[] column) {
        return best.map(window -> RowStatistics.median(inside(window, column)))
                .orElse(OptionalDouble.empty());
    }

    private double[] inside(Span window, double[] column) {
        int from = rows.rowAtOrAfter(window.start_s());
        int to = rows.rowAtOrBefore(window.end_s());
        return from > to
                ? new double[0]
                : Arrays.stream(column, from, to + 1).filter(v -> !Double.isNaN(v)).toArray();
    }

    private OptionalDouble insideShare(Span window) {
        int known = 0;
        int inside = 0;
        for (int i = rows.rowAtOrAfter(window.start_s());
                i <= rows.rowAtOrBefore(window.end_s());
                i++) {
            if (!Double.isNaN(rows.gap_m[i])) {
                known++;
                inside += rows.gap_m[i] <= gate_m + INSIDE_SIGMAS * rows.gapSigma_m[i] ? 1 : 0;
            }
        }
        return known == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) inside / known);
    }

    private int overshoots(double tolerance_mps) {
        double through_m = THROUGH_SHARE * gate_m;
        int count = 0;
        boolean inside = false;
        for (int i = 0; i < rows.size; i++) {
            if (rows.gap_m[i] < through_m) {
                inside = true;
            } else if (inside && rows.gap_m[i] >= through_m) {
                count += rows.gapRate_mps[i] > tolerance_mps ? 1 : 0;
                inside = false;
            }
        }
        return count;
    }
}
