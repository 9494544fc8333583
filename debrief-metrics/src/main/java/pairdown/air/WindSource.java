package pairdown.air;

import java.util.List;
import java.util.Map;
import pairdown.attempt.Participant;
import pairdown.motion.Trajectory;
import pairdown.phase.PhaseSpan;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * A participant as a probe of the air.
 *
 * @param phases its own, in order of time
 * @param systems its logged channels on the attempt's axis
 */
public record WindSource(
        Participant participant,
        Trajectory trajectory,
        List<PhaseSpan> phases,
        Map<Channel, Series> systems) {
    public WindSource {
        phases = List.copyOf(phases);
        systems = Map.copyOf(systems);
    }
}
