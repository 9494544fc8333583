package pairdown.time;

import java.time.Duration;
import java.time.Instant;

/**
 * GPS time: weeks since Sunday 6 January 1980, 0 h, and seconds within the week, without leap
 * seconds (IS-GPS-200).
 *
 * @param week counted in full, not modulo 1024
 * @param nanosOfWeek 0 up to a week
 */
public record GpsTime(int week, long nanosOfWeek) {
    /** Seconds in a week. */
    public static final long WEEK_S = 604_800;

    /** A ten-bit week counter starts anew after this many weeks. */
    public static final int ROLLOVER_WEEKS = 1024;

    /** {@link #ROLLOVER_WEEKS} as a duration: 7168 days. */
    public static final Duration ROLLOVER = Duration.ofSeconds(ROLLOVER_WEEKS * WEEK_S);

    private static final long NANOS = 1_000_000_000L;
    private static final long START = Instant.parse("1980-01-06T00:00:00Z").getEpochSecond();

    public GpsTime {
        if (week < 0 || nanosOfWeek < 0 || nanosOfWeek >= WEEK_S * NANOS) {
            throw new IllegalArgumentException(
                    "no GPS time: week " + week + ", " + nanosOfWeek + " ns into it");
        }
    }

    /** A week and its seconds, to the nanosecond; seconds past the end run into the next weeks. */
    public static GpsTime of(int week, double secondsOfWeek) {
        long nanos = Math.round(secondsOfWeek * NANOS);
        long weekNanos = WEEK_S * NANOS;
        return new GpsTime(
                Math.toIntExact(week + Math.floorDiv(nanos, weekNanos)),
                Math.floorMod(nanos, weekNanos));
    }

    /** The GPS reading at an instant of UTC. */
    public static GpsTime at(Instant utc) {
        long gpsSecond = utc.getEpochSecond() + LeapSeconds.gpsMinusUtc_s(utc) - START;
        if (gpsSecond < 0) {
            throw new IllegalArgumentException(utc + " is before GPS time began");
        }
        return new GpsTime(
                Math.toIntExact(gpsSecond / WEEK_S), gpsSecond % WEEK_S * NANOS + utc.getNano());
    }

    public double secondsOfWeek() {
        return nanosOfWeek / (double) NANOS;
    }

    /** The instant of UTC. Past the end of the leap-second list the last offset is assumed. */
    public Instant toUtc() {
        long gpsSecond = START + week * WEEK_S + nanosOfWeek / NANOS;
        return Instant.ofEpochSecond(
                gpsSecond - LeapSeconds.atGpsReading(gpsSecond), nanosOfWeek % NANOS);
    }
}
