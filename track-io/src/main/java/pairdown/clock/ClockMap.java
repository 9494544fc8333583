package pairdown.clock;

/**
 * A log's clock against UTC: {@code t_utc = t_log · (1 + rate) + offset}. A receiver's latency is
 * part of the offset.
 *
 * @param offset_s UTC minus logged time at logged time 0
 * @param rate relative rate error of the log's clock
 */
public record ClockMap(double offset_s, double rate) {
    public static final ClockMap IDENTITY = new ClockMap(0, 0);

    /** UTC of a logged time, both in seconds. */
    public double toUtc_s(double tLog_s) {
        return tLog_s * (1 + rate) + offset_s;
    }
}
