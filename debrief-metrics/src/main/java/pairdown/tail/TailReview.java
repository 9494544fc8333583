package pairdown.tail;

import java.util.List;
import java.util.Optional;
import pairdown.stats.Proportion;
import pairdown.time.Span;

/**
 * The pilot's review: what a table or a chart of power and tail is made from.
 *
 * @param idle what flight at idle in this log says about the aircraft's drag
 * @param dives where the tail is judged: of each descent the part from its first to its last
 *     reverse, all of it where there was none
 * @param sequences one row a descent
 * @param changeTable power changes by direction against an episode's start within the pairing time
 * @param stretchTable stretches of the descents with and without a move towards reverse before
 *     them, against an episode's start in them: the base rate
 * @param averages figures averaged about all power changes of one direction
 * @param curves what went into them, one a power change in the dives
 * @param lag of effectiveness behind the retarding coefficient, over all descents
 * @param precededLag from the preceding move towards reverse to the start, over the episodes
 * @param endedLag from the forward move to the end, over the episodes
 * @param forwardThenRestored of the episodes with a forward move since their start, how many ended
 *     within the pairing time of it: a count, never a rule
 * @param map effectiveness by retarding coefficient and airspeed; only cells with samples
 */
public record TailReview(
        Optional<IdleEvidence> idle,
        List<Span> dives,
        List<DescentSequence> sequences,
        Optional<PowerTable> changeTable,
        Optional<PowerTable> stretchTable,
        List<EventAverage> averages,
        List<PowerCurve> curves,
        Optional<LagEstimate> lag,
        Optional<LagSummary> precededLag,
        Optional<LagSummary> endedLag,
        Proportion forwardThenRestored,
        List<MapCell> map) {
    /** The lever leaves idle this long before it is in reverse. */
    private static final double ENTRY_S = 2;

    /** With nothing in it. */
    public static final TailReview NONE =
            new TailReview(
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    new Proportion(0, 0),
                    List.of());

    public TailReview {
        dives = List.copyOf(dives);
        sequences = List.copyOf(sequences);
        averages = List.copyOf(averages);
        curves = List.copyOf(curves);
        map = List.copyOf(map);
    }

    TailReview over(List<Span> judged) {
        return new TailReview(
                idle,
                judged,
                sequences,
                changeTable,
                stretchTable,
                averages,
                curves,
                lag,
                precededLag,
                endedLag,
                forwardThenRestored,
                map);
    }

    /** Whether an instant lies in a dive, or just before one, where power begins to move. */
    public boolean inDive(double t_s) {
        return dives.stream().anyMatch(d -> t_s >= d.start_s() - ENTRY_S && t_s <= d.end_s());
    }

    /**
     * Lags of several episodes together.
     *
     * @param episodes how many had one
     * @param median_s their median
     * @param least_s the least
     * @param greatest_s the greatest
     * @param quotable whether there are enough episodes to quote the median
     */
    public record LagSummary(
            int episodes, double median_s, double least_s, double greatest_s, boolean quotable) {}

    /**
     * A cell of the effectiveness map; samples are one a second.
     *
     * @param retardingCoefficient lower edge of the cell
     * @param airspeed_mps lower edge of the cell, calibrated airspeed
     * @param retardingCoefficientStep width of the cell
     * @param airspeedStep_mps width of the cell
     * @param effectiveness median of the samples
     * @param samples how many
     * @param inEpisode how many of them lay in an episode
     */
    public record MapCell(
            double retardingCoefficient,
            double airspeed_mps,
            double retardingCoefficientStep,
            double airspeedStep_mps,
            double effectiveness,
            int samples,
            int inEpisode) {}
}
