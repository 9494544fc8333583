package pairdown.tail;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * One stretch of lost control, of one control or of two in the same wake: when it began and ended,
 * and how strong the case for it is, by the likelihood of every instant it may have begun or ended
 * at. A flat prior over those turns it into a median and a sigma, which is wide where the pilot
 * happened to hold the control still.
 *
 * <p>Source: the Bayesian change point of A. F. M. Smith, Biometrika 62 (1975) 407.
 */
final class LostStretch {
    /** Lost control is met about once in this long of a descent … */
    private static final double EVERY_S = 30;

    /** … and lasts about this long. */
    private static final double LASTS_S = 5;

    /** Of the levels it may fall to, about this share explains the record as well. */
    private static final double LEVEL_SHARE = 0.3;

    /**
     * Levels and disturbances are estimates themselves, fitted to the same record: a likelihood
     * that takes them as known is too sure. Counted at this weight, stated sigmas hold on simulated
     * flights.
     */
    private static final double WEIGHT = 0.4;

    /** The trim before a change is learnt over so many times the reach. */
    private static final int LEARN = 3;

    /** Air twice as rough as any that is told from calm: what a hard bump may be. */
    private static final double HARD_BUMPS = 2 * LevelPath.ROUGHEST;

    /** Levels a lost control may fall to, as shares of the descent's own. */
    private static final double[] LOST = {0.55, 0.45, 0.35, 0.28, 0.2};

    private final List<Axis> axes;
    private final Masks.Run run;
    private final int reach;

    private LostStretch(List<Axis> axes, Masks.Run run, int reach) {
        this.axes = axes;
        this.run = run;
        this.reach = reach;
    }

    /**
     * A stretch over which controls may have been lost, all at once as one wake covers them.
     *
     * @param controls those that say something, the one whose level is told first
     * @param run where
     * @param reach places looked at beyond it
     */
    static LostStretch of(
            List<ControlLevels> controls, Masks.Run run, int reach, TailSettings.Signs signs) {
        return new LostStretch(
                controls.stream().map(c -> new Axis(c, run, reach, signs)).toList(), run, reach);
    }

    /** One control, with the likeliest course that is lost over the run. */
    private static final class Axis {
        final ControlLevels levels;
        final double[] path;
        final double own;
        final double before;
        final double after;

        Axis(ControlLevels levels, Masks.Run run, int reach, TailSettings.Signs signs) {
            this.levels = levels;
            own = levels.own()[run.from()];
            double[] found = levels.path();
            before = answering(found, run.from() - 1, run.from() - reach, signs);
            after = answering(found, run.to() + 1, run.to() + reach, signs);
            path = found.clone();
            int first = Math.max(0, run.from() - LEARN * reach);
            int last = Math.min(path.length - 1, run.to() + reach);
            for (int i = 0; i < path.length; i++) {
                path[i] = known(path[i], i < run.from() ? before : after);
            }
            boolean lost = true;
            for (int i = run.from(); i <= run.to(); i++) {
                lost &= path[i] < signs.clearAbove() * own;
            }
            if (!lost) {
                lose(run, first, last);
            }
        }

        /** The nearest level at which the control answers, on the way to a limit; else the own. */
        private double answering(double[] found, int from, int to, TailSettings.Signs signs) {
            int step = to < from ? -1 : 1;
            for (int i = from; i != to && i >= 0 && i < found.length; i += step) {
                if (found[i] >= signs.clearAbove() * own) {
                    return found[i];
                }
            }
            return own;
        }

        private void lose(Masks.Run run, int first, int last) {
            double most = Double.NEGATIVE_INFINITY;
            double best = LOST[0];
            double[] tried = path.clone();
            for (double share : LOST) {
                Arrays.fill(tried, run.from(), run.to() + 1, share * own);
                double likely = likelihood(first, last, tried, levels.disturbances().rough());
                best = likely > most ? share : best;
                most = Math.max(most, likely);
            }
            Arrays.fill(path, run.from(), run.to() + 1, best * own);
        }

        private double likelihood(int first, int last, double[] tried, double[] rough) {
            return levels.likelihood(first, last, tried, rough);
        }
    }

    private static double known(double level, double other) {
        return Double.isFinite(level) ? level : other;
    }

    /** The first control's least level over the stretch. */
    double least() {
        return Arrays.stream(axes.get(0).path, run.from(), run.to() + 1).min().orElseThrow();
    }

    /**
     * Where the level changed, in places.
     *
     * @param place median of what the likelihood allows, fractional
     * @param sigma half of the width that holds 68 % of it
     * @param width how many places it could be
     */
    record Edge(double place, double sigma, double width) {}

    Edge start() {
        int least = earliest();
        double[] log = new double[run.to() - least];
        axes.forEach(a -> addStart(a, least, log));
        return edge(least, log);
    }

    /** How far back the start is looked for: to where the first control still answered. */
    private int earliest() {
        Axis told = axes.get(0);
        int least = run.from() - 1;
        while (least > Math.max(1, run.from() - reach) && !(told.path[least] < told.before)) {
            least--;
        }
        return least;
    }

    private void addStart(Axis a, int least, double[] log) {
        int first = Math.max(0, least - LEARN * reach);
        int last = Math.min(a.path.length - 1, run.to() + reach / 2);
        double[] tried = a.path.clone();
        double[] rough = a.levels.disturbances().rough();
        double[] shaken = rough.clone();
        Arrays.fill(tried, least, run.from(), a.path[run.from()]);
        Arrays.fill(shaken, least, run.to() + 1, LevelPath.ROUGHEST);
        for (int k = 0; k < log.length; k++) {
            // A failing tail shakes: the roughness may have begun with it as well as where found.
            log[k] +=
                    either(
                            a.likelihood(first, last, tried, rough),
                            a.likelihood(first, last, tried, shaken));
            tried[least + k] = a.before;
            shaken[least + k] = rough[least + k];
        }
    }

    Edge end() {
        int most = Math.min(axes.get(0).path.length - 1, run.to() + reach);
        double[] log = new double[most - run.from()];
        axes.forEach(a -> addEnd(a, most, log));
        return edge(run.from() + 1, log);
    }

    private void addEnd(Axis a, int most, double[] log) {
        int first = Math.max(0, run.from() - LEARN * reach);
        int last = Math.min(a.path.length - 1, most + reach);
        double[] tried = a.path.clone();
        Arrays.fill(tried, run.from() + 1, most + 1, a.after);
        for (int k = 0; k < log.length; k++) {
            log[k] += a.likelihood(first, last, tried, a.levels.disturbances().rough());
            int next = run.from() + 1 + k;
            tried[next] = a.path[Math.min(next, run.to())];
        }
    }

    private static Edge edge(int from, double[] log) {
        double top = Arrays.stream(log).max().orElse(0);
        double[] sum = new double[log.length];
        double w = 0;
        for (int k = 0; k < log.length; k++) {
            w += Math.exp(WEIGHT * (log[k] - top));
            sum[k] = w;
        }
        double half = (share(sum, 0.84) - share(sum, 0.16)) / 2;
        // A change inside a step is known to within the step.
        double inStep = Math.sqrt(1.0 / 12);
        return new Edge(from + share(sum, 0.5) - 1, Math.hypot(half, inStep), w);
    }

    /** Where a running sum passes a share of its last. */
    private static double share(double[] sum, double share) {
        double wanted = share * sum[sum.length - 1];
        int k = 0;
        while (sum[k] < wanted) {
            k++;
        }
        double before = k == 0 ? 0 : sum[k - 1];
        return k + (wanted - before) / (sum[k] - before) - 0.5;
    }

    /**
     * Log odds that control was lost here against its having stayed as before, as after or at the
     * descent's own level, in air as rough as found or as rough as is usual, with how rarely a loss
     * is met counted against it.
     */
    double logOdds(double step_s) {
        return logOdds(step_s, LevelPath.ROUGHEST);
    }

    /**
     * The same against air as rough as it ever gets: what is left of the case where a hard bump
     * must be believed before a loss is.
     */
    double logOddsAgainstHardBumps(double step_s) {
        return logOdds(step_s, LevelPath.ROUGHEST, HARD_BUMPS);
    }

    private double logOdds(double step_s, double... airs) {
        double gain = Double.POSITIVE_INFINITY;
        for (ToDoubleFunction<Axis> other :
                List.<ToDoubleFunction<Axis>>of(a -> a.own, a -> a.before, a -> a.after)) {
            gain = Math.min(gain, gain(other, airs));
        }
        return gain
                + Math.log(start().width() * step_s / EVERY_S)
                + Math.log(end().width() * step_s / LASTS_S)
                + Math.log(LEVEL_SHARE);
    }

    /** Of all axes: the others may add to what the first says, but not overrule it. */
    private double gain(ToDoubleFunction<Axis> other, double... airs) {
        double first = gain(axes.get(0), other.applyAsDouble(axes.get(0)), airs);
        double rest =
                axes.stream().skip(1).mapToDouble(a -> gain(a, other.applyAsDouble(a), airs)).sum();
        return first + (first > 0 ? rest : Math.min(0, rest));
    }

    /**
     * Of one axis against its level having been another.
     *
     * @param airs how rough the air may then have been all along, over calm, besides as found
     */
    private double gain(Axis a, double other, double... airs) {
        int first = Math.max(0, run.from() - LEARN * reach);
        int last = Math.min(a.path.length - 1, run.to() + reach);
        double[] tried = a.path.clone();
        double[] rough = a.levels.disturbances().rough().clone();
        double lost = a.likelihood(first, last, tried, rough);
        Arrays.fill(tried, run.from(), run.to() + 1, other);
        double kept = a.likelihood(first, last, tried, rough);
        for (double air : airs) {
            Arrays.fill(rough, run.from(), run.to() + 1, air);
            kept = Math.max(kept, a.likelihood(first, last, tried, rough));
        }
        return lost - kept;
    }

    /** Log of the sum of two likelihoods. */
    private static double either(double a, double b) {
        return Math.max(a, b) + Math.log1p(Math.exp(-Math.abs(a - b)));
    }
}
