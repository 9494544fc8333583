package pairdown.track;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import pairdown.time.Span;

/**
 * Holes in a log: longer than {@link #LEAST_S}, and in a log that is sparse throughout, longer than
 * {@link #STEPS} of its usual steps.
 */
public final class Gaps {
    /** Shorter holes are bridged by the motion itself (s). */
    public static final double LEAST_S = 2;

    /** A log of one fix every 4 s has no gap because one of them is late. */
    public static final double STEPS = 2.5;

    private Gaps() {}

    /**
     * The holes between rows with a position (between any rows in a log without), on its own clock.
     */
    public static List<Span> of(Track track) {
        return of(track, track::time_s);
    }

    /**
     * The same on another clock.
     *
     * @param time_s by row, never falling
     */
    public static List<Span> of(Track track, IntToDoubleFunction time_s) {
        double longest_s = Math.max(LEAST_S, STEPS * usualStep_s(track));
        List<Span> gaps = new ArrayList<>();
        int last = -1;
        for (int row = 0; row < track.size(); row++) {
            if (!counts(track, row)) {
                continue;
            }
            if (last >= 0 && track.time_s(row) - track.time_s(last) > longest_s) {
                gaps.add(new Span(time_s.applyAsDouble(last), time_s.applyAsDouble(row)));
            }
            last = row;
        }
        return gaps;
    }

    /** The median step between rows with a position (any rows, without); 0 for fewer than two. */
    public static double usualStep_s(Track track) {
        double[] steps = new double[track.size()];
        int n = 0;
        int last = -1;
        for (int row = 0; row < track.size(); row++) {
            if (counts(track, row)) {
                if (last >= 0 && track.time_s(row) > track.time_s(last)) {
                    steps[n++] = track.time_s(row) - track.time_s(last);
                }
                last = row;
            }
        }
        Arrays.sort(steps, 0, n);
        return n == 0 ? 0 : steps[n / 2];
    }

    private static boolean counts(Track track, int row) {
        return !track.hasPositions() || track.hasPosition(row);
    }
}
