package pairdown.track;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import pairdown.time.Span;

/**
 * Holes that a receiver's own setting made. A receiver is told what it rides on, and gives no fix
 * while it moves faster up or down than that allows: on a diving body the wrong setting loses the
 * dive, whatever the sky. Such a log never shows more than its limit, and its holes begin as the
 * vertical speed comes up to it.
 *
 * <p>Limits of 15, 20 and 50 m/s: dynamic platform settings in a receiver maker's integration
 * manual (cars; pedestrians and wrists; portable use). 10 m/s: common practice, no published
 * source.
 */
public final class MotionLimits {
    private static final double[] LIMITS_MPS = {10, 15, 20, 50};

    /** How far a reading is off, and how far a receiver goes past its limit before it stops. */
    private static final double NEAR_MPS = 1.5;

    /** The change of speed is taken over this before a hole (s). */
    private static final double TREND_S = 3;

    /** A reading older than this says nothing about the hole's edge (s). */
    private static final double EDGE_S = 2;

    /** The fix that is missing first would have been beyond the limit, give or take half a step. */
    private static final double AHEAD_STEPS = 1.5;

    private final double[] time_s;
    private final double[] up_mps;
    private final double step_s;

    private MotionLimits(Velocities velocities) {
        this.step_s = velocities.medianStep_s();
        this.time_s = velocities.verticalTimes_s();
        this.up_mps = velocities.up_mps();
    }

    /**
     * A sentence for each limit that holes of a log speak of.
     *
     * @return empty for most logs
     */
    public static List<String> hints(Track track) {
        List<Span> gaps = Gaps.of(track);
        if (gaps.isEmpty() || !track.hasPositions()) {
            return List.of();
        }
        return new MotionLimits(Velocities.of(track)).hints(gaps);
    }

    private List<String> hints(List<Span> gaps) {
        double fastest_mps = Arrays.stream(up_mps).map(Math::abs).max().orElse(0);
        List<String> hints = new ArrayList<>();
        for (double limit_mps : LIMITS_MPS) {
            long count = gaps.stream().filter(g -> isMadeBy(limit_mps, g)).count();
            if (count > 0 && fastest_mps <= limit_mps + NEAR_MPS) {
                hints.add(sentence(count, limit_mps));
            }
        }
        return hints;
    }

    private static String sentence(long count, double limit_mps) {
        return String.format(
                Locale.ROOT,
                "%s as the vertical speed came up to %.0f m/s, and no fix shows more: the logger's"
                        + " motion setting, not the sky, may have lost what is missing",
                count == 1 ? "a gap begins" : count + " gaps begin",
                limit_mps);
    }

    private boolean isMadeBy(double limit_mps, Span gap) {
        int last = before(gap.start_s() + 1e-6);
        int next = last + 1;
        if (last < 1
                || time_s[last] < gap.start_s() - EDGE_S
                || (next < time_s.length && Math.abs(up_mps[next]) > limit_mps + NEAR_MPS)) {
            return false;
        }
        double speed_mps = Math.abs(up_mps[last]);
        OptionalDouble gain_mps2 = gain_mps2(last);
        if (gain_mps2.isEmpty() || gain_mps2.getAsDouble() <= 0) {
            return false;
        }
        double ahead_s = gap.start_s() - time_s[last] + AHEAD_STEPS * step_s;
        return speed_mps <= limit_mps + NEAR_MPS
                && speed_mps + gain_mps2.getAsDouble() * ahead_s >= limit_mps;
    }

    private int before(double t_s) {
        int at = Arrays.binarySearch(time_s, t_s);
        return at >= 0 ? at : -at - 2;
    }

    /** How fast the vertical speed grows at a reading; empty with nothing shortly before it. */
    private OptionalDouble gain_mps2(int last) {
        int first = last;
        while (first > 0 && time_s[last] - time_s[first - 1] <= TREND_S) {
            first--;
        }
        return first == last
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        (Math.abs(up_mps[last]) - Math.abs(up_mps[first]))
                                / (time_s[last] - time_s[first]));
    }
}
