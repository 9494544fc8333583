package pairdown.pair;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.motion.AttitudeSource;
import pairdown.motion.Trajectory;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * One of a pair, as far as pair figures need it.
 *
 * @param trajectory of its reference point: the lead's centre of gravity, a flyer's logger
 * @param clockSigma_s one standard deviation of its clock's offset; for a trajectory of the
 *     smoother, which carries its own, that counts instead
 * @param calibratedAirspeed_mps where wind or a trusted airspeed is known
 * @param trueAirspeed_mps likewise
 * @param systems logged channels other than position and velocity
 * @param attitude at an instant, empty where it can't be known
 * @param exit_s when it left the exit aircraft, for a flyer, where found
 * @param opening_s when its canopy opened, for a flyer, where found
 */
public record PairMember(
        String id,
        Trajectory trajectory,
        DataGrade grade,
        double clockSigma_s,
        Optional<Series> calibratedAirspeed_mps,
        Optional<Series> trueAirspeed_mps,
        Map<Channel, Series> systems,
        AttitudeSource attitude,
        OptionalDouble exit_s,
        OptionalDouble opening_s) {
    public PairMember {
        systems = Map.copyOf(systems);
        if (!(clockSigma_s >= 0)) {
            throw new IllegalArgumentException("clockSigma_s is " + clockSigma_s + ", not >= 0");
        }
    }

    /** A member of which only the motion is known. */
    public static PairMember of(String id, Trajectory trajectory, DataGrade grade) {
        return new PairMember(
                id,
                trajectory,
                grade,
                0,
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                AttitudeSource.unknown(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    public PairMember withClockSigma(double sigma_s) {
        return new PairMember(
                id,
                trajectory,
                grade,
                sigma_s,
                calibratedAirspeed_mps,
                trueAirspeed_mps,
                systems,
                attitude,
                exit_s,
                opening_s);
    }

    public PairMember withFlight(OptionalDouble exit, OptionalDouble opening) {
        return new PairMember(
                id,
                trajectory,
                grade,
                clockSigma_s,
                calibratedAirspeed_mps,
                trueAirspeed_mps,
                systems,
                attitude,
                exit,
                opening);
    }

    public PairMember withAirspeeds(Optional<Series> calibrated_mps, Optional<Series> true_mps) {
        return new PairMember(
                id,
                trajectory,
                grade,
                clockSigma_s,
                calibrated_mps,
                true_mps,
                systems,
                attitude,
                exit_s,
                opening_s);
    }

    public PairMember withSystems(Map<Channel, Series> channels, AttitudeSource attitudes) {
        return new PairMember(
                id,
                trajectory,
                grade,
                clockSigma_s,
                calibratedAirspeed_mps,
                trueAirspeed_mps,
                channels,
                attitudes,
                exit_s,
                opening_s);
    }
}
