package pairdown.time;

import java.time.Duration;
import java.time.Instant;

/**
 * The axis an attempt is computed on: UTC as seconds from one instant. A double keeps better than a
 * nanosecond over a day.
 *
 * @param epoch the instant at 0 s
 */
public record TimeAxis(Instant epoch) {
    /** Seconds from the epoch to an instant. */
    public double seconds(Instant instant) {
        Duration d = Duration.between(epoch, instant);
        return d.getSeconds() + d.getNano() * 1e-9;
    }

    /** The instant at {@code t_s} seconds, to the nanosecond. */
    public Instant instant(double t_s) {
        double whole = Math.floor(t_s);
        return epoch.plusSeconds((long) whole).plusNanos(Math.round((t_s - whole) * 1e9));
    }
}
