package pairdown.height;

import pairdown.attempt.LogRef;
import pairdown.attempt.Participant;
import pairdown.clock.ClockResult;
import pairdown.geodesy.Geodetic;
import pairdown.time.TimeAxis;
import pairdown.track.Channel;
import pairdown.track.Track;

/**
 * A log on the attempt's common clock and above the ellipsoid: what the metrics start from. Rows
 * keep their order; nothing is resampled.
 */
public final class AlignedLog {
    private final Participant participant;
    private final LogRef ref;
    private final Track track;
    private final ClockResult clock;
    private final HeightResult height;
    private final double[] time_s;
    private final float[] ellipsoidHeight_m;

    /**
     * @param axis the attempt's time axis
     * @param ellipsoidHeight_m by row, NaN where the row has none, the measured bias taken off
     * @throws IllegalArgumentException if the clock is not usable or there is not one height a row
     */
    public AlignedLog(
            Participant participant,
            LogRef ref,
            Track track,
            TimeAxis axis,
            ClockResult clock,
            HeightResult height,
            float[] ellipsoidHeight_m) {
        if (!clock.isUsable()) {
            throw new IllegalArgumentException("the clock of " + clock.file() + " is not known");
        }
        if (ellipsoidHeight_m.length != track.size()) {
            throw new IllegalArgumentException(
                    ellipsoidHeight_m.length + " heights for " + track.size() + " rows");
        }
        this.participant = participant;
        this.ref = ref;
        this.track = track;
        this.clock = clock;
        this.height = height;
        this.ellipsoidHeight_m = ellipsoidHeight_m.clone();
        this.time_s = onAxis(track, axis, clock);
    }

    private static double[] onAxis(Track track, TimeAxis axis, ClockResult clock) {
        double start_s =
                track.epoch()
                        .map(axis::seconds)
                        .orElseGet(() -> axis.seconds(clock.zero().orElseThrow()));
        double[] t = new double[track.size()];
        for (int i = 0; i < t.length; i++) {
            double tLog_s = track.time_s(i);
            t[i] =
                    track.hasAbsoluteTime()
                            ? start_s + clock.map().toUtc_s(tLog_s)
                            : start_s + tLog_s * (1 + clock.map().rate());
        }
        return t;
    }

    public Participant participant() {
        return participant;
    }

    public LogRef ref() {
        return ref;
    }

    /** The log as read. */
    public Track track() {
        return track;
    }

    public ClockResult clock() {
        return clock;
    }

    public HeightResult height() {
        return height;
    }

    public int size() {
        return time_s.length;
    }

    /** Time of a row on the attempt's axis (s). */
    public double time_s(int row) {
        return time_s[row];
    }

    public double start_s() {
        return time_s[0];
    }

    public double end_s() {
        return time_s[time_s.length - 1];
    }

    /** Whether the row has latitude, longitude and height. */
    public boolean hasFix(int row) {
        return track.hasPosition(row) && !Float.isNaN(ellipsoidHeight_m[row]);
    }

    /** The row's place above the ellipsoid; only where {@link #hasFix}. */
    public Geodetic position(int row) {
        return new Geodetic(
                track.value(Channel.LATITUDE, row),
                track.value(Channel.LONGITUDE, row),
                ellipsoidHeight_m[row]);
    }

    public boolean has(Channel channel) {
        return track.has(channel);
    }

    /** The value of a channel in a row, NaN where it has none. */
    public double value(Channel channel, int row) {
        return track.value(channel, row);
    }
}
