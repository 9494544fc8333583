package pairdown.attempt;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A log's clock pinned by hand: UTC = logged time + offset.
 *
 * @param offset_s for a log with absolute time, or what comes on top of a zero
 * @param zero the instant of the log's own zero, for a log without
 */
public record ClockMark(OptionalDouble offset_s, Optional<Instant> zero) {
    public static final ClockMark NONE = new ClockMark(OptionalDouble.empty(), Optional.empty());

    /** UTC at time 0 of a log without absolute time: its zero, later by an offset beside it. */
    public Optional<Instant> atZero() {
        return zero.map(z -> z.plusNanos(Math.round(offset_s.orElse(0) * 1e9)));
    }
}
