package pairdown.clock;

import java.util.List;
import pairdown.time.Span;
import pairdown.units.Estimate;

/**
 * Two logs that moved with one vehicle, and what that says about their clocks.
 *
 * @param first index of a log in the order given to {@link CommonClock}
 * @param second index of the other
 * @param lag_s offset of the second minus offset of the first, to be added to the second's time to
 *     fall in with the first's
 * @param residual_mps root mean square velocity difference left
 * @param speed_mps mean speed of the vehicle over ground
 * @param spans where they rode together, on the attempt's axis
 */
public record SharedRide(
        int first,
        int second,
        Estimate lag_s,
        double residual_mps,
        double speed_mps,
        List<Span> spans) {
    public SharedRide {
        spans = List.copyOf(spans);
    }

    public double duration_s() {
        return spans.stream().mapToDouble(Span::duration_s).sum();
    }
}
