package pairdown.tail;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import pairdown.stats.Robust;

/**
 * A control's level over every descent, as the likeliest of all courses it may have taken. In turn
 * the disturbances are fitted to a course, each descent's own level is read off it, and the course
 * is found again with levels either near that one or lost.
 *
 * @param model how the axis turns
 * @param disturbances what else turns it
 * @param flown where the tail is judged: a run a descent
 * @param standing places in steady reverse
 * @param path level at each place, a ratio to forward thrust; NaN outside the descents
 * @param counts how much of the record's log likelihood is its own: less than all where the rate
 *     was not logged, see {@link Signals#evidence}
 * @param own the level of the descent a place lies in: what a drop is judged against
 */
// Columns of the package's own working, never handed out: copies would cost more than they guard.
@SuppressWarnings("ArrayRecordComponent")
record ControlLevels(
        TurnModel model,
        Disturbances disturbances,
        List<Masks.Run> flown,
        boolean[] standing,
        double counts,
        double[] path,
        double[] own) {
    /** Looked at before and after a descent, so that its ends are no edges. */
    private static final double MARGIN_S = 5;

    /** A descent needs so much steady flight in reverse for a level of its own. */
    private static final double OWN_LEVEL_S = 4;

    private static final int ROUNDS = 3;

    private static final double LEAST_LEVEL = 0.05;

    /** Forward thrust is left before a descent: its level is 1, give or take this. */
    private static final double FIRST_SIGMA = 0.3;

    /** A level wanders by this in a second: as far as the air in the wake does. */
    private static final double WANDER = 0.1;

    /**
     * A control's level is another at another power: a move from idle to full reverse shifts it by
     * about this, the way between known to no more than that. Which way it goes plays no part.
     */
    private static final double BY_POWER = 0.55;

    /**
     * Finds the course.
     *
     * @param flown where the tail is judged: a run a descent
     * @param standing places in steady reverse, where a descent's own level is taken
     */
    static ControlLevels of(
            TurnModel bare,
            List<Masks.Run> flown,
            boolean[] standing,
            double counts,
            TailSettings.Signs signs,
            Grid grid) {
        List<Masks.Run> runs =
                flown.stream().map(r -> widened(r, grid.steps(MARGIN_S), grid.size())).toList();
        TurnModel model = bare;
        boolean[] counted = counted(standing, flown);
        double[] path = new double[model.size()];
        Arrays.fill(path, 1);
        double[] smooth = Signals.nothing(model.size());
        double[] sigma = Signals.nothing(model.size());
        double[] own = new double[runs.size()];
        Disturbances disturbances = Disturbances.unknown(model.size());
        for (int round = 0; round < ROUNDS; round++) {
            double[] change = change(path, model);
            LevelSmoother smoother = new LevelSmoother(bare, disturbances);
            double trim_dps2 = 0;
            for (Masks.Run run : runs) {
                trim_dps2 +=
                        smoother.smooth(run, 1, FIRST_SIGMA, change, smooth, sigma) / runs.size();
            }
            model = bare.withPowerTrim(trim_dps2);
            own = own(smooth, runs, standing, signs, grid);
            for (int k = 0; k < own.length; k++) {
                LevelPath.of(model, disturbances.usual(), own[k], signs)
                        .find(runs.get(k), path, disturbances.rough());
            }
            if (round + 1 < ROUNDS) {
                disturbances = disturbances.fitted(model, runs, path, counted);
            }
        }
        double[] kept = Signals.nothing(model.size());
        double[] level = Signals.nothing(model.size());
        for (int k = 0; k < own.length; k++) {
            Masks.Run run = runs.get(k);
            System.arraycopy(path, run.from(), kept, run.from(), run.length());
            Arrays.fill(level, run.from(), run.to() + 1, own[k]);
        }
        return new ControlLevels(model, disturbances, flown, standing, counts, kept, level);
    }

    private static Masks.Run widened(Masks.Run run, int by, int size) {
        return new Masks.Run(Math.max(0, run.from() - by), Math.min(size - 1, run.to() + by));
    }

    /** Steady reverse or, where there is none, all that is flown. */
    private static boolean[] counted(boolean[] standing, List<Masks.Run> flown) {
        boolean[] counted = standing.clone();
        for (Masks.Run run : flown) {
            if (Masks.count(standing, run) == 0) {
                Arrays.fill(counted, run.from(), run.to() + 1, true);
            }
        }
        return counted;
    }

    /** The level as it may have wandered about the course, and its sigma, put into columns. */
    void smooth(Masks.Run run, double[] ratio, double[] sigma) {
        new LevelSmoother(model, disturbances)
                .smooth(run, 1, FIRST_SIGMA, change(path, model), ratio, sigma);
        for (int i = run.from(); i <= run.to(); i++) {
            sigma[i] /= Math.sqrt(counts);
        }
    }

    /**
     * How the level may change: slowly at any time, when power moves, and as far as the likeliest
     * course does.
     */
    private static double[] change(double[] path, TurnModel model) {
        double[] change = new double[path.length];
        for (int i = 1; i < change.length; i++) {
            double jump = path[i] - path[i - 1];
            change[i] =
                    WANDER * WANDER * model.step_s()
                            + BY_POWER * BY_POWER * model.moved(i)
                            + (Double.isFinite(jump) ? jump * jump : 0);
        }
        return change;
    }

    /** Each descent's own level; where it was too short in steady reverse, that of all. */
    private static double[] own(
            double[] smooth,
            List<Masks.Run> runs,
            boolean[] standing,
            TailSettings.Signs signs,
            Grid grid) {
        Masks.Run all = new Masks.Run(0, smooth.length - 1);
        double common = level(smooth, standing, all, signs.lostBelow()).orElse(1);
        int least = grid.steps(OWN_LEVEL_S);
        return runs.stream()
                .mapToDouble(
                        run ->
                                Masks.count(standing, run) < least
                                        ? common
                                        : level(smooth, standing, run, signs.lostBelow())
                                                .orElse(common))
                .map(l -> Math.max(LEAST_LEVEL, l))
                .toArray();
    }

    /** Median over steady reverse, then again without what lies under the share of it. */
    private static OptionalDouble level(
            double[] smooth, boolean[] standing, Masks.Run run, double share) {
        double[] kept = Signals.nothing(run.length());
        for (int i = run.from(); i <= run.to(); i++) {
            kept[i - run.from()] = standing[i] ? smooth[i] : Double.NaN;
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
        for (Masks.Run run : flown) {
            boolean down = false;
            for (int i = run.from(); i <= run.to(); i++) {
                down = path[i] < (down ? signs.clearAbove() : signs.lostBelow()) * own[i];
                low[i] = down;
            }
        }
        return Masks.runs(low, least, 1);
    }

    /** The own level where it was met: in the descents with steady reverse. */
    double[] ownWhereMet() {
        double[] met = Signals.nothing(own.length);
        for (Masks.Run run : flown) {
            if (Masks.count(standing, run) > 0) {
                System.arraycopy(own, run.from(), met, run.from(), run.length());
            }
        }
        return met;
    }

    double likelihood(int from, int to, double[] tried, double[] rough) {
        return counts
                * model.likelihood(from, to, tried, new Disturbances(disturbances.usual(), rough));
    }
}
