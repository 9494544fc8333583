package pairdown.tail;

import java.util.Arrays;

/**
 * The likeliest course of a control's level and of the air's roughness over a descent: at any
 * instant the level may stay, drift to a neighbouring one or jump to any, and the air may turn
 * rough or calm. A jump must earn its cost, so that a gust does not make one; what rough air
 * explains as well is no loss. Whether power moved plays no part in how likely a jump is, so that
 * what preceded an episode is not built into it.
 *
 * <p>Source: A. J. Viterbi, IEEE Trans. Inf. Theory 13 (1967) 260, with a Kalman filter kept for
 * the best way to each level as in V. Pavlović, J. M. Rehg and J. MacCormick, NIPS 13 (2000) 981.
 */
final class LevelPath {
    /** Neighbouring levels differ by this factor: about as finely as any single one can be told. */
    private static final double FACTOR = 1.25;

    /** Levels reach from a tenth of the middle one to about four and a half times it. */
    private static final int BELOW = 10;

    private static final int LEVELS = 18;

    /** Gusts over those in calm air: calm, rough and very rough. */
    private static final double[] ROUGH = {1, 3, 7};

    /** The roughest air that is told from calm, gusts over those in calm air. */
    static final double ROUGHEST = ROUGH[ROUGH.length - 1];

    /** A level drifts to a neighbour about once in this long. */
    private static final double DRIFT_S = 2;

    /** Control that answers jumps to another level, or to a lost one, about once in this long … */
    private static final double JUMP_S = 10;

    private static final double LOSS_S = 15;

    /** … and lost control comes back after about this long. */
    private static final double LOST_S = 5;

    /** Of the levels a jump may reach so many can be told apart. */
    private static final double DISTINCT = 3;

    /** It comes back to about the descent's own level. */
    private static final double HOMES = 3;

    /** Air turns rougher about once in this long … */
    private static final double ROUGHER_S = 20;

    /** … and calmer again after about this long. */
    private static final double CALMER_S = 5;

    /** Log probability of what can't be; finite, so that sums stay numbers. */
    private static final double IMPOSSIBLE = -1e6;

    private final TurnModel model;
    private final TurnModel.Noise noise;
    private final double[] level = new double[LEVELS];
    private final double lostBelow;
    private final double clearAbove;
    private final double[][] levelCost;
    private final double[][] roughCost;

    private LevelPath(
            TurnModel model,
            TurnModel.Noise noise,
            double middle,
            double lostBelow,
            double clearAbove) {
        this.model = model;
        this.noise = noise;
        this.lostBelow = lostBelow;
        this.clearAbove = clearAbove;
        for (int k = 0; k < LEVELS; k++) {
            level[k] = middle * Math.pow(FACTOR, k - BELOW);
        }
        this.levelCost = levelCosts();
        this.roughCost = roughCosts();
    }

    /**
     * Levels laid out about a descent's own: those under the losing share of it are lost, from the
     * clearing share on control answers, and no course rests between the two.
     */
    static LevelPath of(
            TurnModel model, TurnModel.Noise noise, double own, TailSettings.Signs signs) {
        return new LevelPath(model, noise, own, signs.lostBelow() * own, signs.clearAbove() * own);
    }

    /**
     * The level over the step that ends at each place of the run, put into {@code path}, and the
     * gusts' size over that in calm air, put into {@code rough}.
     */
    void find(Masks.Run run, double[] path, double[] rough) {
        int n = run.length();
        int[][] came = new int[n][LEVELS * ROUGH.length];
        double[] score = new double[LEVELS * ROUGH.length];
        Front front = new Front(run.from());
        for (int i = 1; i < n; i++) {
            score = front.step(run.from() + i, score, came[i]);
        }
        int s = best(score, 0, score.length);
        for (int i = n - 1; i >= 0; i--) {
            path[run.from() + i] = level[s / ROUGH.length];
            rough[run.from() + i] = ROUGH[s % ROUGH.length];
            s = i > 0 ? came[i][s] : s;
        }
    }

    /** The filter of the best way to every level and roughness at one place. */
    private final class Front {
        private final int firstKept = firstKept() * ROUGH.length;
        private final TurnModel.State trial = new TurnModel.State();
        private TurnModel.State[] state = states();
        private TurnModel.State[] after = states();

        Front(int from) {
            for (TurnModel.State s : state) {
                model.begin(from, s, noise);
            }
        }

        /** To the next place; where each state was best reached from goes into {@code came}. */
        double[] step(int i, double[] score, int[] came) {
            int lost = best(score, 0, firstKept);
            int kept = best(score, firstKept, score.length);
            double[] next = new double[score.length];
            Arrays.fill(next, Double.NEGATIVE_INFINITY);
            for (int s = 0; s < next.length; s++) {
                int calm = s - s % ROUGH.length;
                for (int r = 0; r < ROUGH.length; r++) {
                    consider(i, calm + r, s, score, next, came);
                }
                consider(i, s - ROUGH.length, s, score, next, came);
                consider(i, s + ROUGH.length, s, score, next, came);
                consider(i, lost, s, score, next, came);
                consider(i, kept, s, score, next, came);
            }
            TurnModel.State[] spare = state;
            state = after;
            after = spare;
            return next;
        }

        /** Takes the way from one state to another if it is the best so far. */
        private void consider(int i, int from, int s, double[] score, double[] next, int[] came) {
            double cost = from < 0 || from >= next.length ? IMPOSSIBLE : cost(from, s);
            if (cost <= IMPOSSIBLE) {
                return;
            }
            double reached = score[from] + cost + reach(i, from, s);
            if (reached > next[s]) {
                next[s] = reached;
                came[s] = from;
                after[s].copy(trial);
            }
        }

        private double reach(int i, int from, int s) {
            return model.step(
                    state[from], i, level[s / ROUGH.length], noise, ROUGH[s % ROUGH.length], trial);
        }
    }

    private double cost(int from, int to) {
        int j = from / ROUGH.length;
        int k = to / ROUGH.length;
        // A failing tail shakes as likely as not, and stops when it holds again.
        double rough =
                level[j] < lostBelow == level[k] < lostBelow
                        ? roughCost[from % ROUGH.length][to % ROUGH.length]
                        : Math.log(1.0 / ROUGH.length);
        return levelCost[j][k] + rough;
    }

    private int firstKept() {
        int k = 0;
        while (k < LEVELS && level[k] < lostBelow) {
            k++;
        }
        return k;
    }

    /** Log probability of going from one level to another in a step. */
    private double[][] levelCosts() {
        double[][] cost = new double[LEVELS][LEVELS];
        for (int j = 0; j < LEVELS; j++) {
            boolean lost = level[j] < lostBelow;
            double leave_s = lost ? LOST_S : LOSS_S;
            for (int k = 0; k < LEVELS; k++) {
                boolean loses = level[k] < lostBelow;
                double every_s = lost == loses ? JUMP_S : leave_s;
                boolean home = lost && !loses && Math.abs(k - BELOW) <= 1;
                cost[j][k] = Math.log(model.step_s() / every_s / (home ? HOMES : DISTINCT));
                if (lost == loses && Math.abs(j - k) == 1) {
                    cost[j][k] = Math.log(model.step_s() / DRIFT_S / 2);
                }
                if (!loses && level[k] < clearAbove) {
                    cost[j][k] = IMPOSSIBLE;
                }
            }
            double go = model.step_s() * (1 / DRIFT_S + 1 / JUMP_S + 1 / leave_s);
            cost[j][j] = Math.log(1 - Math.min(0.9, go));
        }
        return cost;
    }

    private double[][] roughCosts() {
        double[][] cost = new double[ROUGH.length][ROUGH.length];
        for (int j = 0; j < ROUGH.length; j++) {
            double go = 0;
            for (int k = 0; k < ROUGH.length; k++) {
                double share = model.step_s() / (k > j ? ROUGHER_S : CALMER_S);
                cost[j][k] = Math.log(share);
                go += j == k ? 0 : share;
            }
            cost[j][j] = Math.log(1 - go);
        }
        return cost;
    }

    private static TurnModel.State[] states() {
        TurnModel.State[] s = new TurnModel.State[LEVELS * ROUGH.length];
        for (int k = 0; k < s.length; k++) {
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
