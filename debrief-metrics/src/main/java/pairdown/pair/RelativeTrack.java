package pairdown.pair;

import java.util.List;
import java.util.Optional;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.ReferencePoint;
import pairdown.motion.SmoothedTrajectory;
import pairdown.motion.Trajectory;

/** A flyer's motion relative to its lead, readable at any instant both have a trajectory. */
interface RelativeTrack {
    double start_s();

    double end_s();

    default boolean covers(double t_s) {
        return t_s >= start_s() && t_s <= end_s();
    }

    /**
     * The relative motion at an instant.
     *
     * @throws IllegalArgumentException outside {@link #start_s} to {@link #end_s}
     */
    Relative at(double t_s);

    /** The track of two members: the joint smoother's where both are smoothed logs. */
    static RelativeTrack of(PairMember lead, PairMember flyer, LocalFrame frame) {
        Optional<ReferencePoint> l = smoothed(lead.trajectory());
        Optional<ReferencePoint> f = smoothed(flyer.trajectory());
        return l.isPresent() && f.isPresent()
                ? JointTrack.of(l.get(), f.get(), List.of())
                : new TrajectoryDifference(lead, flyer, frame);
    }

    /** A trajectory as the joint smoother takes it, if it is one. */
    static Optional<ReferencePoint> smoothed(Trajectory trajectory) {
        if (trajectory instanceof ReferencePoint point) {
            return Optional.of(point);
        }
        return trajectory instanceof SmoothedTrajectory antenna
                ? Optional.of(ReferencePoint.antennaOf(antenna))
                : Optional.empty();
    }
}
