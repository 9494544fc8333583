package pairdown.season;

import java.util.List;
import java.util.Optional;
import pairdown.attempt.AirspeedKind;
import pairdown.attempt.Target;

/**
 * Asks whether calibrated and true airspeed have been confused: at height they differ by a fifth,
 * and a target meant as one and typed as the other is never met.
 */
final class AirspeedQuestion {
    /** A lead that sinks this near to the target's sink was flying for the target (m/s). */
    private static final double SINK_NEAR_MPS = 1.5;

    /** Mean airspeed this near to the target's number is the target's number (m/s). */
    private static final double SAME_MPS = 1;

    /** And this far from it is another (m/s). */
    private static final double OTHER_MPS = 2;

    private static final int LEAST_SEGMENTS = 3;

    private AirspeedQuestion() {}

    /**
     * The question, if there is one: where attempts give one number as both kinds, or where the
     * lead's steady flight at the target's sink meets the target's number in the other kind.
     */
    static Optional<String> of(List<SteadySegment> lead, List<Target> targets) {
        if (targets.isEmpty()) {
            return Optional.empty();
        }
        Target latest = targets.get(targets.size() - 1);
        boolean mixed =
                targets.stream()
                        .anyMatch(
                                t ->
                                        t.kind() != latest.kind()
                                                && Math.abs(
                                                                t.airspeed_mps()
                                                                        - latest.airspeed_mps())
                                                        < SAME_MPS);
        return mixed
                ? Optional.of(
                        "attempts give the target's airspeed as calibrated and as true with the"
                                + " same number: which is meant?")
                : flown(lead, latest);
    }

    private static Optional<String> flown(List<SteadySegment> lead, Target target) {
        List<SteadySegment> atSink =
                lead.stream()
                        .filter(s -> Math.abs(s.sink_mps() - target.sink_mps()) < SINK_NEAR_MPS)
                        .toList();
        if (atSink.size() < LEAST_SEGMENTS) {
            return Optional.empty();
        }
        AirspeedKind other =
                target.kind() == AirspeedKind.TRUE ? AirspeedKind.CALIBRATED : AirspeedKind.TRUE;
        boolean fitsOther =
                off_mps(atSink, target, other) < SAME_MPS
                        && off_mps(atSink, target, target.kind()) > OTHER_MPS;
        return fitsOther
                ? Optional.of(
                        "at the target's sink the lead flew the target's number as "
                                + other.key()
                                + " airspeed: is the target's kind of airspeed the one meant?")
                : Optional.empty();
    }

    private static double off_mps(List<SteadySegment> segments, Target target, AirspeedKind kind) {
        double mean_mps =
                segments.stream().mapToDouble(s -> s.airspeed_mps(kind)).average().orElse(0);
        return Math.abs(mean_mps - target.airspeed_mps());
    }
}
