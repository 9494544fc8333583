package pairdown.safety;

import java.util.List;
import java.util.Optional;
import pairdown.air.Wind;
import pairdown.attempt.Limits;
import pairdown.geodesy.LocalFrame;
import pairdown.pair.PairDebrief;
import pairdown.time.Span;
import pairdown.track.Series;

/**
 * What limits are held against.
 *
 * @param bodies everyone with a trajectory
 * @param pairs lead–flyer pairs as analysed
 * @param leadAirspeed_mps the lead's calibrated airspeed, where known
 * @param leadDescent the lead's descent, where found
 * @param frame the attempt's frame
 * @param undulation_m height of the geoid above the ellipsoid at the place
 */
public record LimitInput(
        Limits limits,
        List<Body> bodies,
        List<PairDebrief> pairs,
        Optional<Series> leadAirspeed_mps,
        Optional<Span> leadDescent,
        Wind wind,
        LocalFrame frame,
        double undulation_m) {
    public LimitInput {
        bodies = List.copyOf(bodies);
        pairs = List.copyOf(pairs);
    }

    Optional<Body> body(String id) {
        return bodies.stream().filter(b -> b.id().equals(id)).findFirst();
    }
}
