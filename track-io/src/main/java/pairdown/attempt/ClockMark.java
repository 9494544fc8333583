package pairdown.attempt;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A log's clock pinned by hand: UTC = logged time + offset.
 *
 * @param offset_s for a log with absolute time
 * @param zero the instant of the log's own zero, for a log without
 */
public record ClockMark(OptionalDouble offset_s, Optional<Instant> zero) {
    public static final ClockMark NONE = new ClockMark(OptionalDouble.empty(), Optional.empty());
}
