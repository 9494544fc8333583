package pairdown.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.attempt.MatchedSettings;
import pairdown.pair.MatchedWindow.EndedBy;
import pairdown.time.Span;

/**
 * Finds the stretches in which level and vertical match rate both stay within tolerance.
 *
 * <p>A stretch opens once both have been within for the dwell, excursions and missing data up to
 * the bridge left aside, and begins where they came within. It ends where one first passed the
 * leave factor times its tolerance, once it stays over for the bridge time, or where the data end.
 * Edges are interpolated between rows. The lead's turn rate is known only to a sigma: that times
 * the level range is added to the level tolerance.
 */
final class MatchFinder {
    /** Instants nearer than this are one. */
    private static final double SAME_S = 1e-6;

    private final MatchRates rates;
    private final PairRows rows;
    private final MatchedSettings tolerance;
    private final double dwell_s;
    private final PairSettings.Match settings;

    /** How many sigmas the rates are taken larger (smaller if negative). */
    private final double sigmas;

    private final List<Stretch> found = new ArrayList<>();

    /** Where the stretch being looked at came within tolerance; NaN while there is none. */
    private double since_s = Double.NaN;

    /** Where the excursion being looked at began; NaN while within. */
    private double outSince_s = Double.NaN;

    private EndedBy outBy = EndedBy.DATA;
    private double outRate_mps;
    private boolean open;
    private int bridged;

    private MatchFinder(
            MatchRates rates,
            PairRows rows,
            MatchedSettings tolerance,
            double dwell_s,
            PairSettings.Match settings,
            double sigmas) {
        this.rates = rates;
        this.rows = rows;
        this.tolerance = tolerance;
        this.dwell_s = dwell_s;
        this.settings = settings;
        this.sigmas = sigmas;
    }

    /**
     * A stretch as found.
     *
     * @param endedBy_mps the rate in the first row beyond; NaN where the data ended it
     */
    record Stretch(Span span, EndedBy endedBy, double endedBy_mps, int bridged) {}

    static List<Stretch> find(
            MatchRates rates,
            PairRows rows,
            MatchedSettings tolerance,
            double dwell_s,
            PairSettings.Match settings,
            double sigmas) {
        MatchFinder finder = new MatchFinder(rates, rows, tolerance, dwell_s, settings, sigmas);
        for (int i = 0; i < rows.size; i++) {
            finder.step(i);
        }
        finder.finish();
        return finder.found;
    }

    private void step(int i) {
        double factor = open ? settings.leaveFactor() : 1;
        double level = excess(i, factor, EndedBy.HORIZONTAL);
        double vertical = excess(i, factor, EndedBy.VERTICAL);
        if (level <= 0 && vertical <= 0) {
            within(i, factor);
        } else if (!Double.isNaN(since_s)) {
            beyond(i, factor, level, vertical);
        }
    }

    /** How far a rate is over {@code factor} times its tolerance; NaN without data. */
    private double excess(int i, double factor, EndedBy which) {
        if (!isKnown(i)) {
            return Double.NaN;
        }
        return switch (which) {
            case HORIZONTAL ->
                    rates.level_mps[i]
                            + sigmas * (rows.levelSigma_mps[i] + rows.turnAllowance_mps[i])
                            - factor * tolerance.horizontal_mps()
                            - rows.turnAllowance_mps[i];
            case VERTICAL ->
                    Math.abs(rates.vertical_mps[i])
                            + sigmas * rows.verticalSigma_mps[i]
                            - factor * tolerance.vertical_mps();
            case DATA -> Double.NaN;
        };
    }

    /** Measured, and no rate known worse than its tolerance is wide. */
    private boolean isKnown(int i) {
        return rows.measured[i]
                && rows.levelSigma_mps[i] <= tolerance.horizontal_mps()
                && rows.verticalSigma_mps[i] <= tolerance.vertical_mps();
    }

    private void within(int i, double factor) {
        if (Double.isNaN(since_s)) {
            since_s = i == 0 ? rows.time_s[0] : entry_s(i, factor);
        } else if (!Double.isNaN(outSince_s)) {
            bridgeOrEnd(i);
        }
        outSince_s = Double.NaN;
        if (!open && rows.time_s[i] - since_s >= dwell_s - 1e-9) {
            open = true;
        }
    }

    private double entry_s(int i, double factor) {
        double level = excess(i - 1, factor, EndedBy.HORIZONTAL);
        double vertical = excess(i - 1, factor, EndedBy.VERTICAL);
        double t_s = Double.isNaN(level) ? rows.time_s[i] : rows.time_s[i - 1];
        if (level > 0) {
            double here = excess(i, factor, EndedBy.HORIZONTAL);
            t_s = Math.max(t_s, rows.crossing_s(i, level, here));
        }
        if (vertical > 0) {
            double here = excess(i, factor, EndedBy.VERTICAL);
            t_s = Math.max(t_s, rows.crossing_s(i, vertical, here));
        }
        return t_s;
    }

    private void bridgeOrEnd(int i) {
        if (rows.time_s[i] - outSince_s > settings.bridge_s() + rows.step_s) {
            end();
            since_s = rows.time_s[i];
        } else {
            bridged++;
        }
    }

    private void beyond(int i, double factor, double level, double vertical) {
        if (Double.isNaN(outSince_s)) {
            leave(i, factor, level, vertical);
        }
        if (rows.time_s[i] - outSince_s >= settings.bridge_s() - 1e-9) {
            end();
        }
    }

    /** Notes where and why the rates went beyond, should they stay there. */
    private void leave(int i, double factor, double level, double vertical) {
        if (Double.isNaN(level) || Double.isNaN(vertical)) {
            outSince_s = rows.time_s[i - 1];
            outBy = EndedBy.DATA;
            outRate_mps = Double.NaN;
            return;
        }
        double levelOut_s = out_s(i, factor, level, EndedBy.HORIZONTAL);
        double verticalOut_s = out_s(i, factor, vertical, EndedBy.VERTICAL);
        boolean levelFirst = levelOut_s <= verticalOut_s;
        outSince_s = Math.max(since_s, Math.min(levelOut_s, verticalOut_s));
        outBy = levelFirst ? EndedBy.HORIZONTAL : EndedBy.VERTICAL;
        outRate_mps = levelFirst ? rates.level_mps[i] : rates.vertical_mps[i];
    }

    private double out_s(int i, double factor, double excess, EndedBy which) {
        if (!(excess > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double before = excess(i - 1, factor, which);
        return before <= 0 ? rows.crossing_s(i, before, excess) : rows.time_s[i - 1];
    }

    private void end() {
        if (open && outSince_s > since_s) {
            found.add(new Stretch(new Span(since_s, outSince_s), outBy, outRate_mps, bridged));
        }
        open = false;
        since_s = Double.NaN;
        outSince_s = Double.NaN;
        bridged = 0;
    }

    /** An end of the rows is one of the data: nothing beyond is judged. */
    private void finish() {
        if (Double.isNaN(since_s)) {
            return;
        }
        if (Double.isNaN(outSince_s)) {
            outSince_s = rows.last_s();
            outBy = EndedBy.DATA;
            outRate_mps = Double.NaN;
        }
        end();
    }

    /** The stretches of another run that share time with a span, as one duration. */
    static double overlapping_s(List<Stretch> stretches, Span span) {
        return stretches.stream()
                .map(Stretch::span)
                .filter(s -> s.overlaps(span))
                .mapToDouble(Span::duration_s)
                .sum();
    }

    static double total_s(List<Stretch> stretches) {
        return stretches.stream().mapToDouble(s -> s.span().duration_s()).sum();
    }

    /** How long the holes in the data are that a stretch ends or begins at, all together. */
    static double unseen_s(List<Stretch> stretches, PairRows rows) {
        double unseen_s = 0;
        int last = -1;
        for (int i = 0; i < rows.size; i++) {
            if (!rows.measured[i]) {
                continue;
            }
            if (last >= 0
                    && i > last + 1
                    && adjoins(stretches, rows.time_s[last], rows.time_s[i])) {
                unseen_s += rows.time_s[i] - rows.time_s[last];
            }
            last = i;
        }
        return unseen_s;
    }

    private static boolean adjoins(List<Stretch> stretches, double from_s, double to_s) {
        return stretches.stream()
                .map(Stretch::span)
                .anyMatch(
                        s ->
                                Math.abs(s.end_s() - from_s) < SAME_S
                                        || Math.abs(s.start_s() - to_s) < SAME_S);
    }

    /** The largest rates over a stretch: level, and vertical with its sign, up positive. */
    record Nearest(double level_mps, double vertical_mps) {}

    /**
     * How near a pair came to a match: its largest rates over the stretch as long as the dwell in
     * which the larger of the two, as a multiple of its tolerance, is least. Empty where nothing
     * was measured for so long. A moment would say little: two that fly past each other have the
     * same speed for an instant.
     */
    static Optional<Nearest> nearest(
            MatchRates rates, PairRows rows, MatchedSettings tolerance, double dwell_s) {
        int steps = (int) Math.ceil(dwell_s / rows.step_s - 1e-9);
        Optional<Nearest> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int from = 0; from + steps < rows.size; from++) {
            Nearest here = largest(rates, from, from + steps);
            double worse =
                    Math.max(
                            here.level_mps() / tolerance.horizontal_mps(),
                            Math.abs(here.vertical_mps()) / tolerance.vertical_mps());
            if (worse < least) {
                least = worse;
                best = Optional.of(here);
            }
        }
        return best;
    }

    /** NaN where one of the rows has none. */
    private static Nearest largest(MatchRates rates, int from, int to) {
        double level_mps = 0;
        double vertical_mps = 0;
        for (int i = from; i <= to; i++) {
            level_mps = Math.max(level_mps, rates.level_mps[i]);
            double v_mps = rates.vertical_mps[i];
            boolean more = Double.isNaN(v_mps) || Math.abs(v_mps) > Math.abs(vertical_mps);
            vertical_mps = more ? v_mps : vertical_mps;
        }
        return new Nearest(level_mps, vertical_mps);
    }
}
