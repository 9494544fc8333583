package pairdown.pair;

import java.util.List;
import pairdown.time.Span;

/**
 * Stretches in which both machines were within tolerance of the target at once, for at least its
 * hold.
 */
public record OnTarget(List<Span> windows) {
    public OnTarget {
        windows = List.copyOf(windows);
    }

    public double total_s() {
        return windows.stream().mapToDouble(Span::duration_s).sum();
    }

    public double longest_s() {
        return windows.stream().mapToDouble(Span::duration_s).max().orElse(0);
    }
}
