package pairdown.pair;

import pairdown.time.Span;

/** A flyer's motion relative to its lead, readable at any instant both have a trajectory. */
public interface RelativeTrack {
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

    /** Whether known offsets correct the slow part at this instant. */
    default boolean anchored(double t_s) {
        return false;
    }

    /** The stretch both trajectories cover; only where they overlap. */
    default Span span() {
        return new Span(start_s(), end_s());
    }
}
