package pairdown.debrief;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import pairdown.air.AirData;
import pairdown.air.AttitudeFinder;
import pairdown.air.DayAir;
import pairdown.air.Wind;
import pairdown.air.WindFinder;
import pairdown.air.WindSettings;
import pairdown.air.WindSource;
import pairdown.attempt.AirSettings;
import pairdown.attempt.LeverArm;
import pairdown.attempt.Role;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.AttitudeSource;
import pairdown.motion.ReferencePoint;
import pairdown.motion.SmoothedTrajectory;
import pairdown.motion.Trajectory;
import pairdown.phase.Phases;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * The day's air and everyone's motion in it.
 *
 * @param air pressure and temperature
 * @param wind by layer
 * @param members one for each participant, in order
 */
record InAir(DayAir air, Wind wind, List<Member> members) {

    /**
     * One participant in the air.
     *
     * @param systems its logged channels
     * @param motion of its reference point: the lead's centre of gravity, else the logger
     * @param airData its airspeeds; empty without motion
     */
    record Member(
            Smoothed smoothed,
            Map<Channel, Series> systems,
            Optional<Trajectory> motion,
            AttitudeSource attitudes,
            Optional<AirData> airData) {

        ParticipantDebrief debrief(Phases phases) {
            return new ParticipantDebrief(
                    smoothed.participant(),
                    motion,
                    systems,
                    airData.flatMap(AirData::trueAirspeed_mps),
                    airData.flatMap(AirData::calibratedAirspeed_mps),
                    phases.of(smoothed.participant().id()),
                    attitudes);
        }
    }

    static InAir of(
            List<Smoothed> smoothed,
            AirSettings typed,
            LocalFrame frame,
            Phases phases,
            WindSettings settings) {
        List<Map<Channel, Series>> systems =
                smoothed.stream().map(s -> SystemsChannels.of(s.logs())).toList();
        List<WindSource> sources =
                IntStream.range(0, smoothed.size())
                        .boxed()
                        .flatMap(i -> source(smoothed.get(i), systems.get(i), phases).stream())
                        .toList();
        DayAir air = DayAir.find(typed, frame, sources);
        Wind wind = WindFinder.find(sources, typed, air, frame, settings);
        List<Member> members =
                IntStream.range(0, smoothed.size())
                        .parallel()
                        .mapToObj(i -> member(smoothed.get(i), systems.get(i), air, wind, frame))
                        .toList();
        return new InAir(air, wind, members);
    }

    private static Optional<WindSource> source(
            Smoothed s, Map<Channel, Series> systems, Phases phases) {
        return s.trajectory()
                .map(
                        t ->
                                new WindSource(
                                        s.participant(),
                                        t,
                                        phases.of(s.participant().id()),
                                        systems));
    }

    private static Member member(
            Smoothed s, Map<Channel, Series> systems, DayAir air, Wind wind, LocalFrame frame) {
        if (s.trajectory().isEmpty()) {
            return new Member(
                    s, systems, Optional.empty(), AttitudeSource.unknown(), Optional.empty());
        }
        SmoothedTrajectory antenna = s.trajectory().get();
        AttitudeFinder attitudes = new AttitudeFinder(antenna, systems, wind, frame);
        Trajectory reference = reference(s, antenna, attitudes);
        return new Member(
                s,
                systems,
                Optional.of(reference),
                attitudes,
                Optional.of(AirData.of(reference, systems, wind, air, frame)));
    }

    private static Trajectory reference(
            Smoothed s, SmoothedTrajectory antenna, AttitudeSource attitudes) {
        Optional<LeverArm> arm = s.participant().antenna();
        return s.participant().role() == Role.LEAD && arm.isPresent()
                ? ReferencePoint.centreOfGravity(antenna, arm.get(), attitudes)
                : antenna;
    }
}
