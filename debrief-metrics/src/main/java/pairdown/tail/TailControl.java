package pairdown.tail;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pairdown.track.Series;

/**
 * The lead's power and tail over an attempt.
 *
 * @param standingEffectiveness level over the dive's steady part, against the forward-thrust
 *     baseline
 * @param figures derived series by name: {@code effectiveness}, {@code effectivenessSigma}, {@code
 *     retardingCoefficient} (Tc′), {@code retardingForce_N} …
 * @param notes what these data can and cannot show, in words
 */
public record TailControl(
        String participant,
        OptionalDouble standingEffectiveness,
        List<Episode> episodes,
        List<PowerChange> powerChanges,
        Map<String, Series> figures,
        List<String> notes) {
    public TailControl {
        episodes = List.copyOf(episodes);
        powerChanges = List.copyOf(powerChanges);
        figures = Map.copyOf(figures);
        notes = List.copyOf(notes);
    }
}
