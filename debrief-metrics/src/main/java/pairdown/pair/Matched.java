package pairdown.pair;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * All matched windows of a pair.
 *
 * @param windows in order of time
 * @param totalShorter_s how much shorter the total would be with the differences one sigma larger
 * @param totalLonger_s how much longer with them one sigma smaller: windows that only then come to
 *     be count as well, and holes in the data that a window ends or begins at
 * @param bestLevelDifference_mps where none matched: the largest level rate over the stretch, as
 *     long as the dwell, in which the pair came nearest to a match
 * @param bestVerticalDifference_mps where none matched: the largest vertical rate there, flyer
 *     minus lead, up positive
 * @param refusals why the tolerances could not be judged on these data, in words; empty where they
 *     could
 */
public record Matched(
        List<MatchedWindow> windows,
        double totalShorter_s,
        double totalLonger_s,
        OptionalDouble bestLevelDifference_mps,
        OptionalDouble bestVerticalDifference_mps,
        List<String> refusals) {
    public Matched {
        windows = List.copyOf(windows);
        refusals = List.copyOf(refusals);
    }

    /** Whether these data can tell at all; where not, no window is no zero. */
    public boolean isKnown() {
        return refusals.isEmpty();
    }

    public double total_s() {
        return windows.stream().mapToDouble(MatchedWindow::duration_s).sum();
    }

    /** The longest window: the one that the gate is judged by. */
    public Optional<MatchedWindow> longest() {
        return windows.stream().max(Comparator.comparingDouble(MatchedWindow::duration_s));
    }
}
