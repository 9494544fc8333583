package pairdown.track;

import java.time.Instant;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import pairdown.geodesy.Geodetic;
import pairdown.time.TimeAxis;

/**
 * One log as immutable columns of primitives: rows in order of time, a value for each row and
 * channel, NaN where a row has none. Degrees of arc and times are kept in double precision, all
 * else in single (a height of 10 km to a millimetre): 56 bytes a fix with position, velocity and
 * three accuracies.
 *
 * <p>Times are seconds from {@link #epoch()} by the log's own clock, as read: no alignment has been
 * applied. A log without absolute time has its own zero instead of an epoch. Heights are as read,
 * from {@link #datum()}.
 */
public final class Track {
    private final Optional<Instant> epoch;
    private final HeightDatum datum;
    private final double[] time_s;
    private final Map<Channel, Column> columns;
    private final LogReport report;

    private Track(
            Optional<Instant> epoch,
            HeightDatum datum,
            double[] time_s,
            Map<Channel, Column> columns,
            LogReport report) {
        this.epoch = epoch;
        this.datum = datum;
        this.time_s = time_s;
        this.columns = columns;
        this.report = report;
    }

    /** Rows, with or without a position. */
    public int size() {
        return time_s.length;
    }

    /** The instant at time 0, or empty for a log with its own zero. */
    public Optional<Instant> epoch() {
        return epoch;
    }

    public boolean hasAbsoluteTime() {
        return epoch.isPresent();
    }

    /**
     * Time of a row by the log's own clock (s from the epoch or the log's own zero), never falling.
     */
    public double time_s(int row) {
        return time_s[row];
    }

    public double start_s() {
        return time_s[0];
    }

    public double end_s() {
        return time_s[time_s.length - 1];
    }

    /** The axis of this log's own clock, if it has absolute time. */
    public Optional<TimeAxis> axis() {
        return epoch.map(TimeAxis::new);
    }

    public Set<Channel> channels() {
        return columns.isEmpty() ? Set.of() : EnumSet.copyOf(columns.keySet());
    }

    public boolean has(Channel channel) {
        return columns.containsKey(channel);
    }

    /** The value in the unit of the channel's key; NaN where the row or the log has none. */
    public double value(Channel channel, int row) {
        Column column = columns.get(channel);
        return column == null ? Double.NaN : column.get(row);
    }

    /** Whether the row has latitude and longitude. */
    public boolean hasPosition(int row) {
        return !Double.isNaN(value(Channel.LATITUDE, row))
                && !Double.isNaN(value(Channel.LONGITUDE, row));
    }

    public boolean hasPositions() {
        return has(Channel.LATITUDE) && has(Channel.LONGITUDE);
    }

    /** Rows with a position. */
    public int fixes() {
        return fixes(0, size());
    }

    /** Rows with a position from one (inclusive) to another (exclusive). */
    public int fixes(int from, int to) {
        int fixes = 0;
        for (int row = from; hasPositions() && row < to; row++) {
            fixes += hasPosition(row) ? 1 : 0;
        }
        return fixes;
    }

    /** The first row with a position. */
    public OptionalInt firstFix() {
        return IntStream.range(0, size()).filter(this::hasPosition).findFirst();
    }

    /** The last row with a position. */
    public OptionalInt lastFix() {
        return IntStream.range(0, size())
                .map(i -> size() - 1 - i)
                .filter(this::hasPosition)
                .findFirst();
    }

    /**
     * The row's position with the height as read (from {@link #datum()}), or height 0 where it has
     * none.
     *
     * @throws IllegalArgumentException if the row has no position
     */
    public Geodetic positionAsRead(int row) {
        double height_m = value(Channel.HEIGHT, row);
        return new Geodetic(
                value(Channel.LATITUDE, row),
                value(Channel.LONGITUDE, row),
                Double.isNaN(height_m) ? 0 : height_m);
    }

    public HeightDatum datum() {
        return datum;
    }

    public LogReport report() {
        return report;
    }

    /** The last row at or before {@code t_s}, or −1 before the first. */
    public int rowAtOrBefore(double t_s) {
        int i = Arrays.binarySearch(time_s, t_s);
        if (i >= 0) {
            while (i + 1 < time_s.length && time_s[i + 1] == t_s) {
                i++;
            }
            return i;
        }
        return -i - 2;
    }

    /**
     * The rows from {@code from} (inclusive) to {@code to} (exclusive), sharing nothing with this.
     */
    public Track slice(int from, int to) {
        Map<Channel, Column> cut = new EnumMap<>(Channel.class);
        columns.forEach((channel, column) -> cut.put(channel, column.slice(from, to)));
        return new Track(epoch, datum, Arrays.copyOfRange(time_s, from, to), cut, report);
    }

    /** The same columns under another report. */
    public Track withReport(LogReport other) {
        return new Track(epoch, datum, time_s, columns, other);
    }

    /**
     * Collects rows in file order; {@link #build} sorts them by time, keeping the order of equals.
     */
    public static final class Builder {
        private static final int FIRST_CAPACITY = 1024;

        private final Map<Channel, Column> columns = new EnumMap<>(Channel.class);
        private double[] time_s = new double[FIRST_CAPACITY];
        private int size;
        private boolean sorted = true;

        /** Starts a row; values are then {@link #set} on it. */
        public Builder row(double t_s) {
            if (size == time_s.length) {
                time_s = Arrays.copyOf(time_s, size + (size >> 1));
            }
            sorted &= size == 0 || t_s >= time_s[size - 1];
            time_s[size++] = t_s;
            return this;
        }

        /** Sets a value of the row last started; NaN is the same as not setting it. */
        public Builder set(Channel channel, double value) {
            if (!Double.isNaN(value)) {
                columns.computeIfAbsent(channel, Column::new).set(size - 1, value);
            }
            return this;
        }

        /** A value set earlier, or NaN. */
        public double get(Channel channel, int row) {
            Column column = columns.get(channel);
            return column == null ? Double.NaN : column.get(row);
        }

        public double time_s(int row) {
            return time_s[row];
        }

        public int size() {
            return size;
        }

        /**
         * The track.
         *
         * @param epoch the instant at time 0, empty for a log with its own zero
         * @throws IllegalArgumentException if no row was added
         */
        public Track build(Optional<Instant> epoch, HeightDatum datum, LogReport report) {
            if (size == 0) {
                throw new IllegalArgumentException("a track needs at least one row");
            }
            int[] order = sorted ? new int[0] : orderByTime();
            Map<Channel, Column> done = new EnumMap<>(Channel.class);
            columns.forEach((channel, column) -> done.put(channel, column.finished(size, order)));
            double[] times = new double[size];
            for (int i = 0; i < size; i++) {
                times[i] = time_s[sorted ? i : order[i]];
            }
            return new Track(epoch, datum, times, done, report);
        }

        /**
         * The track of the rows {@code rows} alone, in that order, at the times given instead of
         * those they were added with: for a reader that mends dates and drops rows at the end.
         *
         * @param time_s never falling, one for each row
         * @throws IllegalArgumentException if there are no rows, or not one time for each
         */
        public Track build(
                Optional<Instant> epoch,
                HeightDatum datum,
                LogReport report,
                int[] rows,
                double[] time_s) {
            if (rows.length == 0 || rows.length != time_s.length) {
                throw new IllegalArgumentException(
                        rows.length + " rows, " + time_s.length + " times");
            }
            Map<Channel, Column> done = new EnumMap<>(Channel.class);
            columns.forEach((channel, column) -> done.put(channel, column.finished(rows)));
            done.values().removeIf(column -> !column.hasValue());
            return new Track(epoch, datum, time_s.clone(), done, report);
        }

        /** Sets a value of a row added earlier. */
        public void replace(Channel channel, int row, double value) {
            columns.computeIfAbsent(channel, Column::new).set(row, value);
        }

        /** Takes a value back: the row has none. */
        public void clear(Channel channel, int row) {
            Column column = columns.get(channel);
            if (column != null) {
                column.set(row, Double.NaN);
            }
        }

        private int[] orderByTime() {
            Integer[] order = new Integer[size];
            Arrays.setAll(order, i -> i);
            Arrays.sort(order, (a, b) -> Double.compare(time_s[a], time_s[b]));
            return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
        }
    }
}
