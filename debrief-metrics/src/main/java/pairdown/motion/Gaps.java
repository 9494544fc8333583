package pairdown.motion;

import java.util.ArrayList;
import java.util.List;
import pairdown.time.Span;

/** Holes in a row of instants. */
final class Gaps {
    private Gaps() {}

    static List<Span> between(double[] time_s, double limit_s) {
        List<Span> gaps = new ArrayList<>();
        for (int i = 1; i < time_s.length; i++) {
            if (time_s[i] - time_s[i - 1] > limit_s) {
                gaps.add(new Span(time_s[i - 1], time_s[i]));
            }
        }
        return List.copyOf(gaps);
    }
}
