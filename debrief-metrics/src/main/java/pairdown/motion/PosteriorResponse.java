package pairdown.motion;

import java.util.Arrays;

/**
 * How a smoothed trajectory's errors at any instant go with its position errors at a few chosen
 * instants: Cov(position or velocity at t, position at s | the whole log), an axis at a time.
 *
 * <p>For epochs k ≤ m, with P⁺ filtered, Λ̂ the adjoint after epoch, and L = (I − KH)Φ:
 *
 * <pre>
 * Cov(x_k, x_m) = P⁺_k (L_m … L_{k+1})ᵀ (I − Λ̂_m P⁺_m)
 * </pre>
 *
 * so one vector carried back from s and one carried forward give the whole column. Source: P. de
 * Jong and M. J. Mackinnon, "Covariances for smoothed estimates in state space models", Biometrika
 * 75 (1988) 601–602. The chosen instants are put in as epochs without measurement, so that between
 * epochs the covariance is the same fifth-degree polynomial as the mean. Further than eight time
 * constants of the bias from every instant it is zero to 0.1 % and taken as that.
 */
final class PosteriorResponse {
    private static final double REACH_TIME_CONSTANTS = 8;

    private final double[] time_s;
    private final int[] source;
    private final int instants;
    private final float[][] columns;

    private PosteriorResponse(double[] time_s, int[] source, int instants) {
        this.time_s = time_s;
        this.source = source;
        this.instants = instants;
        this.columns = new float[Fixes.AXES][3 * instants * time_s.length];
    }

    /**
     * @param instants_s rising, each within the trajectory
     */
    static PosteriorResponse of(SmoothedTrajectory trajectory, double[] instants_s) {
        Fixes fixes = trajectory.fixes();
        double reach_s = REACH_TIME_CONSTANTS * fixes.noise.biasTime_s();
        double from_s = instants_s[0] - reach_s;
        double to_s = instants_s[instants_s.length - 1] + reach_s;
        Epochs all = Epochs.with(fixes, instants_s);
        int first = all.firstFrom(from_s);
        int end = all.firstFrom(to_s);
        PosteriorResponse response =
                new PosteriorResponse(
                        Arrays.copyOfRange(all.time_s, first, end),
                        Arrays.copyOfRange(all.source, first, end),
                        instants_s.length);
        for (int axis = 0; axis < Fixes.AXES; axis++) {
            new ResponseSweep(trajectory, all, axis, instants_s)
                    .fill(response.columns[axis], first, end);
        }
        return response;
    }

    /** Epochs kept. */
    int size() {
        return source.length;
    }

    /**
     * Cov(position at {@code t_s}, position at instant j), or of the velocity there; 0 out of
     * reach.
     */
    double covariance(double t_s, int axis, int j, boolean ofVelocity) {
        int i = Arrays.binarySearch(time_s, t_s);
        i = i >= 0 ? i : -i - 2;
        if (i < 0 || i >= time_s.length || (i + 1 == time_s.length && t_s > time_s[i])) {
            return 0;
        }
        float[] c = columns[axis];
        int a = 3 * (i * instants + j);
        if (time_s[i] == t_s) {
            return ofVelocity ? c[a + 1] : c[a];
        }
        int b = a + 3 * instants;
        return Quintic.value(
                c[a],
                c[a + 1],
                c[a + 2],
                c[b],
                c[b + 1],
                c[b + 2],
                time_s[i + 1] - time_s[i],
                t_s - time_s[i],
                ofVelocity);
    }

    /** A log's epochs with others put between them. */
    static final class Epochs {
        final double[] time_s;

        /** Row of the log's fixes, −1 for an instant put in. */
        final int[] source;

        private Epochs(double[] time_s, int[] source) {
            this.time_s = time_s;
            this.source = source;
        }

        static Epochs with(Fixes fixes, double[] instants_s) {
            int n = fixes.size();
            double[] time_s = new double[n + instants_s.length];
            int[] source = new int[time_s.length];
            int i = 0;
            int j = 0;
            for (int k = 0; k < time_s.length; k++) {
                boolean fix = j == instants_s.length || (i < n && fixes.time_s[i] <= instants_s[j]);
                source[k] = fix ? i : -1;
                time_s[k] = fix ? fixes.time_s[i++] : instants_s[j++];
            }
            return new Epochs(time_s, source);
        }

        int firstFrom(double t_s) {
            int k = 0;
            while (k < time_s.length && time_s[k] < t_s) {
                k++;
            }
            return k;
        }
    }
}
