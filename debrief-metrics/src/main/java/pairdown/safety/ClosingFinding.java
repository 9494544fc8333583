package pairdown.safety;

import java.util.Comparator;
import java.util.Optional;
import pairdown.pair.ClosureExceedance;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;
import pairdown.safety.Finding.Outcome;

/** The closing limit of one pair as a finding. */
final class ClosingFinding {
    private static final String UNIT = "m/s";

    private ClosingFinding() {}

    /**
     * Exceeded where the pair has exceedances; within uncertainty where the closure passed the
     * limit by too little or too briefly to be one; clear where it never did. What is listed is
     * where it was furthest over, or came nearest.
     *
     * @param contact_mps the closing speed always allowed: the limit named where none can be judged
     */
    static Finding of(PairDebrief pair, double contact_mps, SafetySettings settings) {
        Optional<ClosureExceedance> worst =
                pair.closureExceedances().stream()
                        .max(Comparator.comparingDouble(ClosureExceedance::over_mps));
        PairSeries series = pair.series();
        int row = worst.map(e -> series.rowNear(e.worstTime_s())).orElseGet(() -> nearest(series));
        if (row < 0) {
            return new Verdict(Finding.CLOSURE, pair.flyer(), contact_mps, UNIT)
                    .with(pair.lead())
                    .cannotTell("no gap to a slot, or no closure rate, is known");
        }
        double limit_mps = series.value(Figure.CLOSING_LIMIT, row);
        double closure_mps = series.value(Figure.CLOSURE_RATE, row);
        Verdict verdict =
                new Verdict(Finding.CLOSURE, pair.flyer(), limit_mps, UNIT).with(pair.lead());
        Finding judged =
                verdict.judged(
                        series.time_s(row),
                        closure_mps,
                        series.value(Figure.CLOSURE_SIGMA, row),
                        closure_mps - limit_mps,
                        settings.sigmas());
        return as(judged, worst.isPresent(), mayHide(series, settings), verdict);
    }

    private static Finding as(Finding judged, boolean exceeded, boolean holes, Verdict verdict) {
        if (exceeded) {
            return with(judged, Outcome.EXCEEDED);
        }
        if (judged.outcome() == Outcome.EXCEEDED) {
            return with(judged, Outcome.WITHIN_UNCERTAINTY);
        }
        return judged.outcome() == Outcome.CLEAR && holes
                ? verdict.cannotTell("a gap in the data between exit and opening")
                : judged;
    }

    private static Finding with(Finding f, Outcome outcome) {
        return new Finding(
                f.rule(),
                f.participant(),
                f.other(),
                outcome,
                f.time_s(),
                f.value(),
                f.limit(),
                f.sigma(),
                f.unit(),
                f.reason());
    }

    /**
     * Whether a hole in the data is where it matters: from its edges on, the closure could have
     * passed the limit by its middle, changing as fast as the settings say.
     */
    private static boolean mayHide(PairSeries series, SafetySettings settings) {
        int since = 0;
        for (int i = 0; i <= series.size(); i++) {
            boolean hole = i < series.size() && Double.isNaN(series.value(Figure.SEPARATION, i));
            if (hole) {
                continue;
            }
            double change_mps = settings.closureChange_mps2() * (i - since) * series.step_s() / 2;
            if (i - since > 1
                    && (passes(series, since, change_mps) || passes(series, i, change_mps))) {
                return true;
            }
            since = i;
        }
        return false;
    }

    private static boolean passes(PairSeries series, int row, double change_mps) {
        return row < series.size()
                && series.value(Figure.CLOSURE_RATE, row) + change_mps
                        > series.value(Figure.CLOSING_LIMIT, row);
    }

    /** The row whose closure comes nearest to its limit, or is furthest over; −1 without any. */
    private static int nearest(PairSeries series) {
        int best = -1;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < series.size(); i++) {
            double over =
                    series.value(Figure.CLOSURE_RATE, i) - series.value(Figure.CLOSING_LIMIT, i);
            if (over > most) {
                most = over;
                best = i;
            }
        }
        return best;
    }
}
