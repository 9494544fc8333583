package pairdown.motion;

import java.util.Arrays;

/**
 * The next few fixes as witnesses of one: where the filter knows too little to tell an outlier,
 * those who come after it can.
 */
final class Followers {
    private static final int FOLLOWERS = 4;
    private static final double FOLLOW_S = 4;

    /** Slow errors of two fixes, their noise in sigmas, and how far velocity may have changed. */
    private static final double REACH_M = 5;

    private static final double REACH_SIGMAS = 3;
    private static final double REACH_MPS = 15;

    /** Steps whose middle velocity stands for one that was not measured yet. */
    private static final int STEPS = 7;

    private final Fixes fixes;

    Followers(Fixes fixes) {
        this.fixes = fixes;
    }

    /** Whether at least half of the next few fixes lie where a fix leads at a level velocity. */
    boolean agree(int i, double east_mps, double north_mps) {
        int asked = 0;
        int agreed = 0;
        for (int j = i + 1; j < fixes.size() && asked < FOLLOWERS; j++) {
            double dt = fixes.time_s[j] - fixes.time_s[i];
            if (dt > FOLLOW_S) {
                break;
            }
            double east = fixes.position_m[0][j] - fixes.position_m[0][i] - east_mps * dt;
            double north = fixes.position_m[1][j] - fixes.position_m[1][i] - north_mps * dt;
            asked++;
            double reach_m = REACH_M + REACH_SIGMAS * noise_m(i, j) + REACH_MPS * dt;
            agreed += Math.hypot(east, north) < reach_m ? 1 : 0;
        }
        return 2 * agreed >= asked;
    }

    private double noise_m(int i, int j) {
        double variance_m2 = 0;
        for (int axis = 0; axis < 2; axis++) {
            float[] axis_m2 = fixes.positionVariance_m2[axis];
            variance_m2 += (double) axis_m2[i] + axis_m2[j];
        }
        return Math.sqrt(variance_m2);
    }

    /** Whether they lie where the fix leads at the middle velocity of the next few steps. */
    boolean agree(int i) {
        return agree(i, middle_mps(0, i), middle_mps(1, i));
    }

    private double middle_mps(int axis, int i) {
        double[] steps = new double[STEPS];
        int n = 0;
        for (int j = i; j + 1 < fixes.size() && n < STEPS; j++) {
            double dt = fixes.time_s[j + 1] - fixes.time_s[j];
            double moved = fixes.position_m[axis][j + 1] - fixes.position_m[axis][j];
            if (fixes.time_s[j + 1] - fixes.time_s[i] > FOLLOW_S) {
                break;
            }
            if (dt > 0 && !Double.isNaN(moved)) {
                steps[n++] = moved / dt;
            }
        }
        Arrays.sort(steps, 0, n);
        return n == 0 ? 0 : (steps[(n - 1) / 2] + steps[n / 2]) / 2;
    }
}
