package pairdown.format.source;

import java.time.Instant;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.LogEvent;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/**
 * The rows of a log as a reader finds them, in file order, and what is done to them in every format
 * once the file is read: stray dates mended or dropped, rows put in order of time, duplicates and
 * held positions dropped, all of it counted.
 *
 * <p>Times are nanoseconds from 1970 UTC, or from the log's own zero, so that no step is rounded.
 */
public final class Rows {
    private static final double NS_PER_S = 1e9;
    private static final long SECOND_NS = 1_000_000_000L;

    private final LogSource source;
    private final String format;
    private final Notes notes;
    private final Track.Builder columns = new Track.Builder();
    private long[] time_ns = new long[1024];
    private int[] line = new int[1024];
    private final BitSet aside = new BitSet();
    private final Longs trackStarts = new Longs();
    private boolean trackEnds;
    private int size;

    public Rows(LogSource source, String format, Notes notes) {
        this.source = source;
        this.format = format;
        this.notes = notes;
    }

    /** What follows is a track of its own, for formats that hold several. */
    public void beginTrack() {
        trackEnds = true;
    }

    /** Begins a row; values are then {@link #set} on it. */
    public void begin(long t_ns, long lineNumber) {
        if (size == time_ns.length) {
            time_ns = Arrays.copyOf(time_ns, size + (size >> 1));
            line = Arrays.copyOf(line, time_ns.length);
        }
        time_ns[size] = t_ns;
        line[size] = (int) Math.min(lineNumber, Integer.MAX_VALUE);
        if (trackEnds) {
            trackStarts.add(size);
            trackEnds = false;
        }
        size++;
        columns.row(0);
    }

    /**
     * Begins a row that a format writes beside its rows in time, so that it is not out of order
     * wherever it stands.
     */
    public void beginAside(long t_ns, long lineNumber) {
        begin(t_ns, lineNumber);
        aside.set(size - 1);
    }

    /** Sets a value of the row last begun, unless it is missing or absurd. */
    public void set(Channel channel, double value) {
        if (Double.isNaN(value)) {
            return;
        }
        if (Plausible.isAbsurd(channel, value, source.settings())) {
            notes.skip(line[size - 1], () -> Plausible.complaint(channel, value));
            return;
        }
        columns.set(channel, value);
    }

    /**
     * Sets the position of the row last begun, unless there is no such place or it is the 0, 0 that
     * receivers write for none.
     *
     * @return whether it was set
     */
    public boolean position(double latitude_deg, double longitude_deg) {
        Optional<String> complaint = Plausible.place(latitude_deg, longitude_deg);
        if (complaint.isPresent()) {
            notes.skip(line[size - 1], complaint::get);
            return false;
        }
        columns.set(Channel.LATITUDE, latitude_deg);
        columns.set(Channel.LONGITUDE, longitude_deg > 180 ? longitude_deg - 360 : longitude_deg);
        return true;
    }

    public int size() {
        return size;
    }

    public long time_ns(int row) {
        return time_ns[row];
    }

    /** Gives a row another time: for readers that learn the date late. */
    public void retime(int row, long t_ns) {
        time_ns[row] = t_ns;
    }

    public double get(Channel channel, int row) {
        return columns.get(channel, row);
    }

    int line(int row) {
        return line[row];
    }

    /** Takes a channel back from every row: for values that turn out to mean nothing. */
    public void clearAll(Channel channel) {
        for (int row = 0; row < size; row++) {
            columns.clear(channel, row);
        }
    }

    /** Turns the sign of a channel in every row. */
    public void negateAll(Channel channel) {
        for (int row = 0; row < size; row++) {
            double value = columns.get(channel, row);
            if (!Double.isNaN(value)) {
                columns.replace(channel, row, -value);
            }
        }
    }

    /** Takes a value back. */
    public void clear(Channel channel, int row) {
        columns.clear(channel, row);
    }

    /** Takes a place back, with its height. */
    public void clearPosition(int row) {
        columns.clear(Channel.LATITUDE, row);
        columns.clear(Channel.LONGITUDE, row);
        columns.clear(Channel.HEIGHT, row);
    }

    /**
     * The track.
     *
     * @param absolute whether times are instants, rather than from the log's own zero
     * @throws UnusableInputException if nothing is left
     */
    public Track finish(boolean absolute, HeightDatum datum) throws UnusableInputException {
        if (size == 0) {
            throw source.unusable(
                    "holds no usable record" + notes.losses(),
                    "check that the whole log was copied");
        }
        int[] order = absolute ? new StrayDates(this, notes, source).mended() : all();
        if (order.length == 0) {
            throw source.unusable("holds no record with a believable date", "look at its dates");
        }
        if (trackStarts.size() > 1) {
            order = new SideBySide(this, notes, trackStarts).kept(order);
        }
        order = inOrder(order);
        order = new Repeats(this, notes, source.settings()).dropped(order);
        long zero_ns = absolute ? Math.floorDiv(time_ns[order[0]], SECOND_NS) * SECOND_NS : 0;
        double[] time_s = new double[order.length];
        for (int i = 0; i < order.length; i++) {
            time_s[i] = (time_ns[order[i]] - zero_ns) / NS_PER_S;
        }
        List<LogEvent> events =
                notes.events().stream()
                        .map(e -> new LogEvent((e.t_ns() - zero_ns) / NS_PER_S, e.text()))
                        .toList();
        Track track =
                columns.build(
                        absolute
                                ? Optional.of(Instant.ofEpochSecond(zero_ns / SECOND_NS))
                                : Optional.empty(),
                        datum,
                        notes.report(source.name(), format, events),
                        order,
                        time_s);
        if (track.channels().isEmpty()) {
            throw source.unusable(
                    "holds times and no value beside them" + notes.losses(),
                    "check that the receiver had a fix");
        }
        return track;
    }

    private int[] all() {
        int[] order = new int[size];
        Arrays.setAll(order, i -> i);
        return order;
    }

    /** Sorts by time, equals in file order, and says how many rows were out of it. */
    private int[] inOrder(int[] order) {
        boolean sorted = true;
        for (int i = 1; i < order.length && sorted; i++) {
            sorted = time_ns[order[i - 1]] <= time_ns[order[i]];
        }
        if (sorted) {
            return order;
        }
        int late = outOfOrder(order);
        if (late > 0) {
            notes.warn(
                    late
                            + (late == 1 ? " row was" : " rows were")
                            + " out of order and put in order of time");
        }
        Integer[] boxed = Arrays.stream(order).boxed().toArray(Integer[]::new);
        Arrays.sort(boxed, (a, b) -> Long.compare(time_ns[a], time_ns[b]));
        return Arrays.stream(boxed).mapToInt(Integer::intValue).toArray();
    }

    /**
     * The fewest rows whose moving puts all in order, so that one row with a time to come does not
     * make all after it late: what the longest run of rows in order, found by its ends (Fredman,
     * "On computing the length of longest increasing subsequences", 1975), leaves over.
     */
    private int outOfOrder(int[] order) {
        long[] ends_ns = new long[order.length];
        int longest = 0;
        int rows = 0;
        for (int row : order) {
            if (aside.get(row)) {
                continue;
            }
            rows++;
            int from = 0;
            int to = longest;
            while (from < to) {
                int middle = (from + to) >>> 1;
                if (ends_ns[middle] <= time_ns[row]) {
                    from = middle + 1;
                } else {
                    to = middle;
                }
            }
            ends_ns[from] = time_ns[row];
            longest = Math.max(longest, from + 1);
        }
        return rows - longest;
    }
}
