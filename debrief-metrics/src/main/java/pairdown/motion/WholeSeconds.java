package pairdown.motion;

import java.util.Arrays;
import pairdown.stats.Robust;
import pairdown.track.Track;

/**
 * Logs that know no fraction of a second. A recorder that takes the fix at hand when its second
 * strikes cuts off up to a second; one whose receiver has its fixes on the second, as most have,
 * cuts off nothing. Which of the two wrote a log shows in its track: times cut by now this and now
 * that much make steps along it uneven.
 */
final class WholeSeconds {
    /** So many fixes to either side a speed is told from. */
    static final int REACH = 3;

    /** Slower than this steps tell nothing of times. */
    private static final double MOVING_MPS = 8;

    /** Fewer steps than this tell nothing. */
    private static final int LEAST_STEPS = 30;

    private WholeSeconds() {}

    static boolean only(Track track) {
        double first = track.time_s(0);
        for (int i = 1; i < track.size(); i++) {
            double since = track.time_s(i) - first;
            if (Math.abs(since - Math.rint(since)) > 1e-6) {
                return false;
            }
        }
        return true;
    }

    /**
     * One standard deviation (s) of how unevenly times were cut: at most that of a whole second's
     * uniform remainder, at most what the unevenness of steps along the track would be if nothing
     * else made it. Second differences of places along the way have √6 times the deviation of one
     * place; by their median, so that a few wild fixes or sharp turns do not count.
     *
     * @param position_m by axis and fix
     */
    static double jitter_s(double[] time_s, double[][] position_m) {
        double[] size_s = new double[time_s.length];
        int n = 0;
        for (int i = 1; i + 1 < time_s.length; i++) {
            boolean even = Math.abs(time_s[i + 1] - 2 * time_s[i] + time_s[i - 1]) < 1e-6;
            double east_mps = rate(time_s, position_m[0], i);
            double north_mps = rate(time_s, position_m[1], i);
            double speed_mps = Math.hypot(east_mps, north_mps);
            if (even && speed_mps > MOVING_MPS) {
                double along_m =
                        (bend(position_m[0], i) * east_mps + bend(position_m[1], i) * north_mps)
                                / speed_mps;
                size_s[n++] = Math.abs(along_m) / speed_mps;
            }
        }
        double uniform_s = Quantisation.sigma(1);
        if (n < LEAST_STEPS) {
            return uniform_s;
        }
        Arrays.sort(size_s, 0, n);
        return Math.min(uniform_s, size_s[n / 2] * Robust.MAD_TO_SIGMA / Math.sqrt(6));
    }

    private static double rate(double[] time_s, double[] x, int i) {
        return (x[i + 1] - x[i - 1]) / (time_s[i + 1] - time_s[i - 1]);
    }

    private static double bend(double[] x, int i) {
        return x[i + 1] - 2 * x[i] + x[i - 1];
    }
}
