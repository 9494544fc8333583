package pairdown.tail;

import java.util.Arrays;

/**
 * The likeliest course of a control's level over a descent: at any instant it may stay, drift to a
 * neighbouring level or jump to any. A jump must earn its cost, so that a gust does not make one.
 * What power did plays no part, so that what preceded an episode is not built into it.
 *
 * <p>Source: A. J. Viterbi, IEEE Trans. Inf. Theory 13 (1967) 260, with a Kalman filter kept for
 * the best way to each level as in V. Pavlović, J. M. Rehg and J. MacCormick, NIPS 13 (2000) 981.
 */
final class LevelPath {
    /** Neighbouring levels differ by this factor: about as finely as any single one can be told. */
    private static final double FACTOR = 1.2;

    /** Levels reach from a sixteenth of the middle one to about seven times it. */
    private static final int BELOW = 15;

    private static final int LEVELS = 26;

    /** A level drifts to a neighbour about once in this long. */
    private static final double DRIFT_S = 1;

    /** Control that answers jumps to another level, or to a lost one, about once in this long … */
    private static final double JUMP_S = 10;

    private static final double LOSS_S = 30;

    /** … and lost control comes back after about this long. */
    private static final double LOST_S = 5;

    /** Of the levels a jump may reach so many can be told apart. */
    private static final double DISTINCT = 5;

    private final TurnModel model;
    private final Disturbances disturbances;
    private final double[] level = new double[LEVELS];
    private final double lostBelow;
    private final double clearAbove;

    private LevelPath(
            TurnModel model,
            Disturbances disturbances,
            double middle,
            double lostBelow,
            double clearAbove) {
        this.model = model;
        this.disturbances = disturbances;
        this.lostBelow = lostBelow;
        this.clearAbove = clearAbove;
        for (int k = 0; k < LEVELS; k++) {
            level[k] = middle * Math.pow(FACTOR, k - BELOW);
        }
    }

    /** Any level, laid out about a middle one. */
    static LevelPath free(TurnModel model, Disturbances disturbances, double middle) {
        return new LevelPath(model, disturbances, middle, 0, 0);
    }

    /**
     * Levels laid out about a descent's own: those under the losing share of it are lost, from the
     * clearing share on control answers, and no course rests between the two.
     */
    static LevelPath of(
            TurnModel model, Disturbances disturbances, double own, TailSettings.Signs signs) {
        return new LevelPath(
                model, disturbances, own, signs.lostBelow() * own, signs.clearAbove() * own);
    }

    /** The level over the step that ends at each place of the run, put into {@code path}. */
    void find(Masks.Run run, double[] path) {
        int n = run.length();
        int[][] came = new int[n][LEVELS];
        double[] score = new double[LEVELS];
        Front front = new Front(run.from());
        for (int i = 1; i < n; i++) {
            score = front.step(run.from() + i, score, came[i]);
        }
        int k = best(score, 0, LEVELS);
        for (int i = n - 1; i > 0; i--) {
            path[run.from() + i] = level[k];
            k = came[i][k];
        }
        path[run.from()] = n > 1 ? path[run.from() + 1] : level[k];
    }

    /** The filter of the best way to every level at one place. */
    private final class Front {
        private final double[][] cost = costs();
        private final int firstKept = firstKept();
        private final TurnModel.State trial = new TurnModel.State();
        private TurnModel.State[] state = states();
        private TurnModel.State[] after = states();

        Front(int from) {
            for (TurnModel.State s : state) {
                model.begin(from, s, disturbances.usual());
            }
        }

        /** To the next place; the place each level was best reached from goes into {@code came}. */
        double[] step(int i, double[] score, int[] came) {
            int lost = best(score, 0, firstKept);
            int kept = best(score, firstKept, LEVELS);
            double[] next = new double[LEVELS];
            Arrays.fill(next, Double.NEGATIVE_INFINITY);
            for (int k = 0; k < LEVELS; k++) {
                for (int j : new int[] {k, k - 1, k + 1, lost, kept}) {
                    boolean open = j >= 0 && j < LEVELS && Double.isFinite(cost[j][k]);
                    double s = open ? score[j] + cost[j][k] + reach(i, j, k) : next[k];
                    if (s > next[k]) {
                        next[k] = s;
                        came[k] = j;
                        after[k].copy(trial);
                    }
                }
            }
            TurnModel.State[] spare = state;
            state = after;
            after = spare;
            return next;
        }

        private double reach(int i, int j, int k) {
            return model.step(
                    state[j], i, level[k], disturbances.usual(), disturbances.scale()[i], trial);
        }
    }

    private int firstKept() {
        int k = 0;
        while (k < LEVELS && level[k] < lostBelow) {
            k++;
        }
        return k;
    }

    /** Log probability of going from one level to another in a step. */
    private double[][] costs() {
        double[][] cost = new double[LEVELS][LEVELS];
        for (int j = 0; j < LEVELS; j++) {
            boolean lost = level[j] < lostBelow;
            double leave_s = lost ? LOST_S : LOSS_S;
            for (int k = 0; k < LEVELS; k++) {
                boolean loses = level[k] < lostBelow;
                double every_s = lost == loses ? JUMP_S : leave_s;
                cost[j][k] = Math.log(model.step_s() / every_s / DISTINCT);
                if (lost == loses && Math.abs(j - k) == 1) {
                    cost[j][k] = Math.log(model.step_s() / DRIFT_S / 2);
                }
                if (!loses && level[k] < clearAbove) {
                    cost[j][k] = Double.NEGATIVE_INFINITY;
                }
            }
            double go = model.step_s() * (1 / DRIFT_S + 1 / JUMP_S + 1 / leave_s);
            cost[j][j] = Math.log(1 - Math.min(0.9, go));
        }
        return cost;
    }

    private static TurnModel.State[] states() {
        TurnModel.State[] s = new TurnModel.State[LEVELS];
        for (int k = 0; k < LEVELS; k++) {
            s[k] = new TurnModel.State();
        }
        return s;
    }

    /** The place of the greatest score, −1 where there is no place. */
    private static int best(double[] score, int from, int to) {
        int best = from < to ? from : -1;
        for (int k = from; k < to; k++) {
            best = score[k] > score[best] ? k : best;
        }
        return best;
    }
}
