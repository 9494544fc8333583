package pairdown.tail;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import pairdown.stats.Robust;
import pairdown.time.Span;

/**
 * A control's level over every descent, as the likeliest of all courses it may have taken. In turn
 * the disturbances are fitted to a course, each descent's own level is read off it, and the course
 * is found again with levels either near that one or lost.
 *
 * @param model how the axis turns
 * @param disturbances what else turns it
 * @param path level at each place, a ratio to forward thrust; NaN outside the descents
 * @param own the level of the descent a place lies in: what a drop is judged against
 */
// Columns of the package's own working, never handed out: copies would cost more than they guard.
@SuppressWarnings("ArrayRecordComponent")
record ControlLevels(TurnModel model, Disturbances disturbances, double[] path, double[] own) {
    /** Looked at before and after a descent, so that its ends are no edges. */
    private static final double MARGIN_S = 5;

    /** A descent needs so much steady flight in reverse for a level of its own. */
    private static final double OWN_LEVEL_S = 4;

    /** About what is left of a tail behind a disc in reverse: where the first course starts. */
    private static final double FIRST_LEVEL = 0.4;

    private static final double LEAST_LEVEL = 0.05;

    private static final int ROUNDS = 3;

    /**
     * Finds the course.
     *
     * @param firstGuess level at each place where something is known of it
     * @param standing places in steady reverse, where a descent's own level is taken
     */
    static ControlLevels of(
            TurnModel model,
            double[] firstGuess,
            List<Span> descents,
            boolean[] standing,
            TailSettings.Signs signs,
            Grid grid) {
        List<Masks.Run> runs =
                descents.stream()
                        .map(
                                d ->
                                        new Masks.Run(
                                                grid.place(d.start_s() - MARGIN_S),
                                                grid.place(d.end_s() + MARGIN_S)))
                        .toList();
        double[] path = held(firstGuess);
        double[] own = new double[runs.size()];
        Disturbances disturbances = Disturbances.unknown(model.size());
        for (int round = 0; round < ROUNDS; round++) {
            disturbances = disturbances.fitted(model, runs, path, grid);
            own = own(path, runs, standing, signs, grid);
            for (int k = 0; k < own.length; k++) {
                LevelPath levels =
                        round == 0
                                ? LevelPath.free(model, disturbances, FIRST_LEVEL)
                                : LevelPath.of(model, disturbances, own[k], signs);
                levels.find(runs.get(k), path);
            }
        }
        double[] kept = Signals.nothing(model.size());
        double[] level = Signals.nothing(model.size());
        for (int k = 0; k < own.length; k++) {
            Masks.Run run = runs.get(k);
            System.arraycopy(path, run.from(), kept, run.from(), run.length());
            Arrays.fill(level, run.from(), run.to() + 1, own[k]);
        }
        return new ControlLevels(model, disturbances, kept, level);
    }

    /** Every value held until the next. */
    private static double[] held(double[] guess) {
        double[] held = new double[guess.length];
        double last = 1;
        for (int i = 0; i < held.length; i++) {
            last = Double.isFinite(guess[i]) ? Math.max(LEAST_LEVEL, guess[i]) : last;
            held[i] = last;
        }
        return held;
    }

    /** Each descent's own level; where it was too short in steady reverse, that of all. */
    private static double[] own(
            double[] path,
            List<Masks.Run> runs,
            boolean[] standing,
            TailSettings.Signs signs,
            Grid grid) {
        Masks.Run all = new Masks.Run(0, path.length - 1);
        double common = level(path, standing, all, signs.lostBelow()).orElse(1);
        int least = grid.steps(OWN_LEVEL_S);
        return runs.stream()
                .mapToDouble(
                        run ->
                                Masks.count(standing, run) < least
                                        ? common
                                        : level(path, standing, run, signs.lostBelow())
                                                .orElse(common))
                .toArray();
    }

    /** Median over steady reverse, then again without what lies under the share of it. */
    private static OptionalDouble level(
            double[] path, boolean[] standing, Masks.Run run, double share) {
        double[] kept = Signals.nothing(run.length());
        for (int i = run.from(); i <= run.to(); i++) {
            kept[i - run.from()] = standing[i] ? path[i] : Double.NaN;
        }
        OptionalDouble first = Robust.median(kept);
        if (first.isEmpty()) {
            return first;
        }
        for (int i = 0; i < kept.length; i++) {
            kept[i] = kept[i] >= share * first.getAsDouble() ? kept[i] : Double.NaN;
        }
        return Robust.median(kept);
    }

    /** Stretches below the share of the own level, until above the clearing share. */
    List<Masks.Run> lost(TailSettings.Signs signs, int least) {
        boolean[] low = new boolean[path.length];
        boolean down = false;
        for (int i = 0; i < low.length; i++) {
            down = path[i] < (down ? signs.clearAbove() : signs.lostBelow()) * own[i];
            low[i] = down;
        }
        return Masks.runs(low, least, 1);
    }

    double likelihood(int from, int to, double[] levels) {
        return model.likelihood(from, to, levels, disturbances);
    }
}
