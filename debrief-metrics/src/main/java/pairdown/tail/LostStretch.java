package pairdown.tail;

import java.util.Arrays;

/**
 * One stretch of lost control: when it began and ended, and how strong the case for it is, by the
 * likelihood of every instant it may have begun or ended at. A flat prior over those turns it into
 * a median and a sigma, which is wide where the pilot happened to hold the control still.
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

    private final ControlLevels levels;
    private final Masks.Run run;
    private final int reach;
    private final double before;
    private final double after;

    /**
     * @param reach places looked at beyond the stretch
     */
    LostStretch(ControlLevels levels, Masks.Run run, int reach) {
        this.levels = levels;
        this.run = run;
        this.reach = reach;
        double[] path = levels.path();
        double own = levels.own()[run.from()];
        before = known(path[Math.max(0, run.from() - 1)], own);
        after = known(path[Math.min(path.length - 1, run.to() + 1)], own);
    }

    private static double known(double level, double own) {
        return Double.isFinite(level) ? level : own;
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
        int least = run.from() - 1;
        while (least > Math.max(1, run.from() - reach) && !(levels.path()[least] < before)) {
            least--;
        }
        int first = Math.max(0, least - LEARN * reach);
        int last = Math.min(levels.path().length - 1, run.to() + reach / 2);
        double[] tried = course(first, last);
        double[] rough = levels.disturbances().rough();
        double[] shaken = rough.clone();
        Arrays.fill(tried, least, run.from(), levels.path()[run.from()]);
        Arrays.fill(shaken, least, run.to() + 1, LevelPath.ROUGHEST);
        double[] log = new double[run.to() - least];
        for (int k = 0; k < log.length; k++) {
            // A failing tail shakes: the roughness may have begun with it as well as where found.
            log[k] =
                    either(
                            levels.likelihood(first, last, tried, rough),
                            levels.likelihood(first, last, tried, shaken));
            tried[least + k] = before;
            shaken[least + k] = rough[least + k];
        }
        return edge(least, log);
    }

    Edge end() {
        double[] path = levels.path();
        int most = Math.min(path.length - 1, run.to() + reach);
        int first = Math.max(0, run.from() - LEARN * reach);
        int last = Math.min(path.length - 1, most + reach);
        double[] tried = course(first, last);
        Arrays.fill(tried, run.from() + 1, most + 1, after);
        double[] log = new double[most - run.from()];
        for (int k = 0; k < log.length; k++) {
            log[k] = levels.likelihood(first, last, tried, levels.disturbances().rough());
            int next = run.from() + 1 + k;
            tried[next] = path[Math.min(next, run.to())];
        }
        return edge(run.from() + 1, log);
    }

    private double[] course(int first, int last) {
        double[] course = levels.path().clone();
        for (int i = first; i <= last; i++) {
            course[i] = known(course[i], i < run.from() ? before : after);
        }
        return course;
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
     * descent's own level, with how rarely it is met counted against it.
     */
    double logOdds(double step_s, double clearAbove) {
        double own = levels.own()[run.from()];
        double gain = gain(own);
        for (double other : new double[] {before, after}) {
            gain = other >= clearAbove * own ? Math.min(gain, gain(other)) : gain;
        }
        return gain
                + Math.log(start().width() * step_s / EVERY_S)
                + Math.log(end().width() * step_s / LASTS_S)
                + Math.log(LEVEL_SHARE);
    }

    /** Against the level having been another, in air as rough as found or rougher. */
    private double gain(double other) {
        int first = Math.max(0, run.from() - LEARN * reach);
        int last = Math.min(levels.path().length - 1, run.to() + reach);
        double[] tried = course(first, last);
        double[] rough = levels.disturbances().rough().clone();
        double as = levels.likelihood(first, last, tried, rough);
        Arrays.fill(tried, run.from(), run.to() + 1, other);
        double calm = levels.likelihood(first, last, tried, rough);
        Arrays.fill(rough, run.from(), run.to() + 1, LevelPath.ROUGHEST);
        return as - Math.max(calm, levels.likelihood(first, last, tried, rough));
    }

    /** Log of the sum of two likelihoods. */
    private static double either(double a, double b) {
        return Math.max(a, b) + Math.log1p(Math.exp(-Math.abs(a - b)));
    }
}
