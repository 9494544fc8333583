package pairdown.clock;

import java.util.List;

/**
 * How well two logs agree at each trial offset: the picture behind an alignment.
 *
 * @param points by rising offset
 */
public record OffsetCurve(List<Point> points) {
    public OffsetCurve {
        points = List.copyOf(points);
    }

    /**
     * One trial.
     *
     * @param offset_s added to the log's time
     * @param residual_mps root mean square velocity difference
     */
    public record Point(double offset_s, double residual_mps) {}
}
