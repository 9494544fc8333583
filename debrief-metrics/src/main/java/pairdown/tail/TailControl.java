package pairdown.tail;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.track.Series;

/**
 * The lead's power and tail over an attempt.
 *
 * @param standingEffectiveness level over the dive's steady part, against the forward-thrust
 *     baseline
 * @param figures derived series by name: {@code effectiveness}, {@code effectivenessSigma}, {@code
 *     retardingCoefficient} (Tc′), {@code retardingForce_N} … Times are on the attempt's axis; NaN
 *     where a figure is not known
 * @param notes what these data can and cannot show, in words
 * @param tellsEpisodes whether an empty list of episodes means that none was seen, not that these
 *     data could not show one
 * @param review the pilot's tables and averages
 */
public record TailControl(
        String participant,
        OptionalDouble standingEffectiveness,
        List<Episode> episodes,
        List<PowerChange> powerChanges,
        Map<String, Series> figures,
        List<String> notes,
        boolean tellsEpisodes,
        TailReview review) {
    public TailControl {
        episodes = List.copyOf(episodes);
        powerChanges = List.copyOf(powerChanges);
        figures = Map.copyOf(figures);
        notes = List.copyOf(notes);
    }

    /** Without the pilot's tables. */
    public TailControl(
            String participant,
            OptionalDouble standingEffectiveness,
            List<Episode> episodes,
            List<PowerChange> powerChanges,
            Map<String, Series> figures,
            List<String> notes) {
        this(
                participant,
                standingEffectiveness,
                episodes,
                powerChanges,
                figures,
                notes,
                true,
                TailReview.NONE);
    }

    TailControl with(TailReview made) {
        return new TailControl(
                participant,
                standingEffectiveness,
                episodes,
                powerChanges,
                figures,
                notes,
                tellsEpisodes,
                made);
    }

    /** A figure by name; empty where these data do not give it. */
    public Optional<Series> figure(String name) {
        return Optional.ofNullable(figures.get(name));
    }
}
