package pairdown.debrief;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import pairdown.attempt.Participant;
import pairdown.motion.AttitudeSource;
import pairdown.motion.Trajectory;
import pairdown.phase.Phase;
import pairdown.phase.PhaseSpan;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * One participant's motion and what its systems logged, on the attempt's axis.
 *
 * @param trajectory empty if none of its logs could be used
 * @param systems logged channels other than position and velocity
 * @param trueAirspeed_mps where wind or a trusted airspeed is known
 * @param calibratedAirspeed_mps likewise
 * @param phases in order of time
 * @param attitudes attitude at any instant
 */
public record ParticipantDebrief(
        Participant participant,
        Optional<Trajectory> trajectory,
        Map<Channel, Series> systems,
        Optional<Series> trueAirspeed_mps,
        Optional<Series> calibratedAirspeed_mps,
        List<PhaseSpan> phases,
        AttitudeSource attitudes) {
    public ParticipantDebrief {
        systems = Map.copyOf(systems);
        phases = List.copyOf(phases);
    }

    public String id() {
        return participant.id();
    }

    /** The phase at an instant, if any. */
    public Optional<Phase> phaseAt(double t_s) {
        return phases.stream()
                .filter(p -> p.span().contains(t_s))
                .map(PhaseSpan::phase)
                .findFirst();
    }
}
