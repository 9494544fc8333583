package pairdown.tail;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.atmosphere.Atmosphere;
import pairdown.attempt.Target;
import pairdown.motion.Trajectory;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * What the tail analysis looks at; any of it may be missing. Start from {@link #of} and add what
 * there is. Times are on the attempt's axis.
 *
 * @param participant id of the aircraft
 * @param systems its logged channels
 * @param descents the aircraft's descents
 * @param motion its motion through the air
 * @param aircraft what is known of it beyond its logs
 * @param target what the sequence table judges the holding by
 * @param settings thresholds
 */
public record TailInput(
        String participant,
        Map<Channel, Series> systems,
        List<Span> descents,
        Motion motion,
        Aircraft aircraft,
        Optional<Target> target,
        TailSettings settings) {
    public TailInput {
        systems = Map.copyOf(systems);
        descents = List.copyOf(descents);
    }

    /**
     * Motion through the air.
     *
     * @param trajectory gives the sink where known
     * @param calibratedAirspeed_mps else the logged indicated airspeed is taken for it, and said
     * @param trueAirspeed_mps else made from the calibrated one and the air's density, and said
     * @param atmosphere the day's air; else the standard one, and said
     */
    public record Motion(
            Optional<Trajectory> trajectory,
            Optional<Series> calibratedAirspeed_mps,
            Optional<Series> trueAirspeed_mps,
            Optional<Atmosphere> atmosphere) {
        public static final Motion UNKNOWN =
                new Motion(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * The aircraft itself.
     *
     * @param mass_kg all-up; else the settings' default, and said
     * @param idle what other descents of the same aircraft say about its drag at idle
     */
    public record Aircraft(OptionalDouble mass_kg, Optional<IdleEvidence> idle) {
        public static final Aircraft UNKNOWN =
                new Aircraft(OptionalDouble.empty(), Optional.empty());
    }

    /** An aircraft's logged channels and descents, with nothing else known. */
    public static TailInput of(
            String participant, Map<Channel, Series> systems, List<Span> descents) {
        return new TailInput(
                participant,
                systems,
                descents,
                Motion.UNKNOWN,
                Aircraft.UNKNOWN,
                Optional.empty(),
                TailSettings.DEFAULT);
    }

    public TailInput with(Motion known) {
        return new TailInput(participant, systems, descents, known, aircraft, target, settings);
    }

    public TailInput with(Aircraft known) {
        return new TailInput(participant, systems, descents, motion, known, target, settings);
    }

    /** With the target that was to be held. */
    public TailInput with(Optional<Target> wanted) {
        return new TailInput(participant, systems, descents, motion, aircraft, wanted, settings);
    }

    /** With other thresholds. */
    public TailInput with(TailSettings other) {
        return new TailInput(participant, systems, descents, motion, aircraft, target, other);
    }

    Optional<Series> system(Channel channel) {
        return Optional.ofNullable(systems.get(channel)).filter(s -> s.size() > 1);
    }
}
