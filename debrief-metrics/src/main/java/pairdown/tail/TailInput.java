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
 * @param trajectory its motion: gives the sink where known
 * @param calibratedAirspeed_mps else the logged indicated airspeed is taken for it, and said
 * @param trueAirspeed_mps else made from the calibrated one and the air's density, and said
 * @param atmosphere the day's air; else the standard one, and said
 * @param mass_kg all-up
 * @param descents the aircraft's descents
 * @param target what the sequence table judges the holding by
 * @param idleDrag from other descents of the same aircraft, where this attempt has none at idle
 * @param settings thresholds
 */
public record TailInput(
        String participant,
        Map<Channel, Series> systems,
        Optional<Trajectory> trajectory,
        Optional<Series> calibratedAirspeed_mps,
        Optional<Series> trueAirspeed_mps,
        Optional<Atmosphere> atmosphere,
        OptionalDouble mass_kg,
        List<Span> descents,
        Optional<Target> target,
        Optional<IdleDrag> idleDrag,
        TailSettings settings) {
    public TailInput {
        systems = Map.copyOf(systems);
        descents = List.copyOf(descents);
    }

    /** An aircraft's logged channels and descents, with nothing else known. */
    public static TailInput of(
            String participant, Map<Channel, Series> systems, List<Span> descents) {
        return new TailInput(
                participant,
                systems,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                descents,
                Optional.empty(),
                Optional.empty(),
                TailSettings.DEFAULT);
    }

    /** With the aircraft's motion and what is known of its airspeed. */
    public TailInput withMotion(
            Optional<Trajectory> motion, Optional<Series> calibrated, Optional<Series> truly) {
        return new TailInput(
                participant,
                systems,
                motion,
                calibrated,
                truly,
                atmosphere,
                mass_kg,
                descents,
                target,
                idleDrag,
                settings);
    }

    /** With the day's air and the aircraft's mass. */
    public TailInput withAir(Optional<Atmosphere> air, OptionalDouble kg) {
        return new TailInput(
                participant,
                systems,
                trajectory,
                calibratedAirspeed_mps,
                trueAirspeed_mps,
                air,
                kg,
                descents,
                target,
                idleDrag,
                settings);
    }

    /** With the target that was to be held. */
    public TailInput withTarget(Optional<Target> wanted) {
        return new TailInput(
                participant,
                systems,
                trajectory,
                calibratedAirspeed_mps,
                trueAirspeed_mps,
                atmosphere,
                mass_kg,
                descents,
                wanted,
                idleDrag,
                settings);
    }

    /** With the idle drag found in other descents of the same aircraft. */
    public TailInput withIdleDrag(Optional<IdleDrag> known) {
        return new TailInput(
                participant,
                systems,
                trajectory,
                calibratedAirspeed_mps,
                trueAirspeed_mps,
                atmosphere,
                mass_kg,
                descents,
                target,
                known,
                settings);
    }

    /** With other thresholds. */
    public TailInput withSettings(TailSettings other) {
        return new TailInput(
                participant,
                systems,
                trajectory,
                calibratedAirspeed_mps,
                trueAirspeed_mps,
                atmosphere,
                mass_kg,
                descents,
                target,
                idleDrag,
                other);
    }

    Optional<Series> system(Channel channel) {
        return Optional.ofNullable(systems.get(channel)).filter(s -> s.size() > 1);
    }
}
