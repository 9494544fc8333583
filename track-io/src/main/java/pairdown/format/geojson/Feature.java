package pairdown.format.geojson;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntPredicate;
import pairdown.format.source.Doubles;
import pairdown.format.source.Longs;
import pairdown.format.source.LossyList;
import pairdown.format.source.Notes;
import pairdown.format.source.Rows;
import pairdown.time.IsoTime;
import pairdown.track.Channel;

/** One feature's coordinates, times and further arrays, as they are found, and the rows of them. */
final class Feature {
    private static final double MOST_UNIX_S = 1e11;

    /** Counts from 1970 end in the year 2200, as dates do. */
    private static final double MOST_S = 7.26e9;

    private final Rows rows;
    private final Notes notes;
    private final Doubles coordinates = new Doubles();
    private final Longs lines = new Longs();
    private Longs times = new Longs();
    private boolean listed;
    private final Map<Channel, Doubles> arrays = new EnumMap<>(Channel.class);

    Feature(Rows rows, Notes notes) {
        this.rows = rows;
        this.notes = notes;
    }

    /** A position of so many of these numbers: longitude, latitude and, if there is one, height. */
    void position(double[] numbers, int given, long line) {
        for (int i = 0; i < 3; i++) {
            coordinates.add(i < given ? numbers[i] : Double.NaN);
        }
        lines.add(line);
    }

    /**
     * Times begin.
     *
     * @param list whether one for each position, rather than one of the whole feature, which a list
     *     outranks
     * @return whether they are wanted
     */
    boolean beginTimes(boolean list) {
        if (list && !listed) {
            times = new Longs();
            listed = true;
            return true;
        }
        return !list && times.size() == 0;
    }

    void time(String text) {
        times.add(IsoTime.utc_ns(text));
    }

    /** Seconds or milliseconds from 1970. */
    void time(double unix) {
        double t_s = Math.abs(unix) < MOST_UNIX_S ? unix : unix / 1000;
        times.add(t_s >= 0 && t_s < MOST_S ? Math.round(t_s * 1e6) * 1000 : IsoTime.NONE);
    }

    void noTime() {
        times.add(IsoTime.NONE);
    }

    Doubles array(Channel channel) {
        return arrays.computeIfAbsent(channel, c -> new Doubles());
    }

    void drop(Channel channel) {
        arrays.remove(channel);
    }

    /** The last position is none after all. */
    void spoilPosition() {
        if (positions() > 0) {
            coordinates.set(coordinates.size() - 3, Double.NaN);
        }
    }

    /** The last time is none after all. */
    void spoilTime() {
        if (times() > 0) {
            times.set(times() - 1, IsoTime.NONE);
        }
    }

    private int positions() {
        return lines.size();
    }

    private int times() {
        return times.size();
    }

    /** Makes rows of the first of each list with the first of the other, and so on. */
    void emit() {
        if (positions() > 0 && times() == 0) {
            notes.skip(lines.get(0), "a line or point without times");
            return;
        }
        int pairs = Math.min(positions(), times());
        if (positions() > 0 && positions() != times()) {
            LossyList whens = list(times(), i -> times.get(i) != IsoTime.NONE);
            LossyList places = list(positions(), this::isPlace);
            if (!whens.isWhole() || !places.isWhole()) {
                emit(places, whens);
                return;
            }
            notes.warn(
                    "a line has "
                            + positions()
                            + " coordinates and "
                            + times()
                            + " times: the first "
                            + pairs
                            + " of each were paired, the rest dropped; if one is missing in the middle,"
                            + " what follows is shifted");
        }
        notPaired(pairs, Math.max(positions(), times()) - pairs);
        rows.beginTrack();
        for (int i = 0; i < pairs; i++) {
            pair(i, i);
        }
    }

    /** Makes rows as far as what is lost allows, and counts the rest. */
    void emit(LossyList places, LossyList whens) {
        rows.beginTrack();
        LossyList.Paired paired = LossyList.pair(places, whens, this::pair);
        notPaired(
                paired.front(),
                Math.max(places.size(), whens.size()) - paired.front() - paired.tail());
    }

    /** A list in which every item that can't be read may have been several. */
    private static LossyList list(int size, IntPredicate readable) {
        LossyList list = new LossyList();
        for (int i = 0; i < size; i++) {
            if (readable.test(i)) {
                list.add();
            } else {
                list.lose();
                list.add();
                list.lose();
            }
        }
        return list;
    }

    private boolean isPlace(int i) {
        return !Double.isNaN(coordinates.get(3 * i)) && !Double.isNaN(coordinates.get(3 * i + 1));
    }

    /** Counts the items of the longer list that no item of the other stands beside. */
    private void notPaired(int first, int count) {
        String reason =
                positions() > times() ? "coordinate without a time" : "time without a coordinate";
        for (int i = 0; i < count; i++) {
            int at = Math.min(first + i, positions() - 1);
            notes.skip(at < 0 ? 0 : lines.get(at), reason);
        }
    }

    /** Makes a row of a position and a time, by their numbers. */
    private void pair(int position, int time) {
        double lon = coordinates.get(3 * position);
        double lat = coordinates.get(3 * position + 1);
        if (times.get(time) == IsoTime.NONE || !isPlace(position)) {
            notes.skip(lines.get(position), "unreadable time or coordinate");
            return;
        }
        rows.begin(times.get(time), lines.get(position));
        if (rows.position(lat, lon)) {
            rows.set(Channel.HEIGHT, coordinates.get(3 * position + 2));
            arrays.forEach(
                    (channel, values) -> {
                        if (values.size() == positions()) {
                            rows.set(channel, values.get(position));
                        }
                    });
        }
    }
}
