package pairdown.motion;

import java.util.List;
import pairdown.time.Span;

/**
 * A participant's motion over time, readable at any instant; immutable and safe to read from any
 * thread. The reference point is the participant's own: the lead's centre of gravity, a flyer's
 * logger.
 */
public interface Trajectory {
    /** Number of values {@link #read} fills. */
    int VALUES = 9;

    double start_s();

    double end_s();

    /** Whether {@code t_s} lies between start and end. */
    default boolean covers(double t_s) {
        return t_s >= start_s() && t_s <= end_s();
    }

    /**
     * The state at an instant.
     *
     * @throws IllegalArgumentException outside {@link #start_s} to {@link #end_s}
     */
    State at(double t_s);

    /**
     * The same without allocation, for drawing: east, north, up (m), their velocities (m/s) and
     * accelerations (m/s²) into {@code into[0..8]}.
     *
     * @throws IllegalArgumentException outside {@link #start_s} to {@link #end_s}
     */
    void read(double t_s, double[] into);

    /** Stretches without data, in order; a state inside is predicted. */
    List<Span> gaps();

    /** Whether {@code t_s} lies inside a gap. */
    default boolean inGap(double t_s) {
        for (Span gap : gaps()) {
            if (t_s > gap.start_s() && t_s < gap.end_s()) {
                return true;
            }
        }
        return false;
    }

    /** Instants of the fixes used, rising. */
    int fixCount();

    /** Instant of a fix (s). */
    double fixTime_s(int i);
}
