package pairdown.format.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import pairdown.time.GpsTime;
import pairdown.time.LeapSeconds;

/** GPS time of the week in a column; the week typed, or in a column of its own. */
final class GpsColumn extends TimeColumn {
    /**
     * The second turn of the ten-bit week counter, on 6 April 2019; the next is in November 2038.
     */
    private static final int ERA_WEEKS = 2 * GpsTime.ROLLOVER_WEEKS;

    private static final int MOST_WEEKS = 10_000;

    private final int column;
    private final double unit_s;
    private final OptionalInt typedWeek;
    private final int weekColumn;
    private final byte decimalMark;

    private double last_s = Double.NaN;
    private int weeksPassed;
    private boolean tenBitsSeen;
    private boolean pastListSeen;

    private GpsColumn(
            int column, double unit_s, OptionalInt typedWeek, int weekColumn, byte decimalMark) {
        this.column = column;
        this.unit_s = unit_s;
        this.typedWeek = typedWeek;
        this.weekColumn = weekColumn;
        this.decimalMark = decimalMark;
    }

    /**
     * @param week in which the log begins
     */
    static GpsColumn ofTypedWeek(int column, int week, byte decimalMark) {
        return new GpsColumn(column, 1, OptionalInt.of(week), -1, decimalMark);
    }

    /**
     * @param unit_s what the column counts in
     */
    static GpsColumn withWeekColumn(int column, double unit_s, int weekColumn, byte decimalMark) {
        return new GpsColumn(column, unit_s, OptionalInt.empty(), weekColumn, decimalMark);
    }

    @Override
    long ns(Cells cells) {
        double seconds = number(cells, column, decimalMark) * unit_s;
        double week =
                typedWeek.isPresent()
                        ? typedWeek.getAsInt()
                        : number(cells, weekColumn, decimalMark);
        boolean isTime = seconds >= 0 && seconds <= 2 * GpsTime.WEEK_S;
        if (!isTime || !(week >= 0 && week < MOST_WEEKS)) {
            return refuse("no GPS time in " + quoted(cells, column));
        }
        if (typedWeek.isPresent()) {
            weeksPassed += last_s - seconds > GpsTime.WEEK_S / 2.0 ? 1 : 0;
            last_s = seconds;
        }
        return utc_ns(full((int) week) + weeksPassed, Math.round(seconds * 1e6) / 1e6);
    }

    private int full(int week) {
        boolean tenBits = week < GpsTime.ROLLOVER_WEEKS;
        tenBitsSeen |= tenBits;
        return week + (tenBits ? ERA_WEEKS : 0);
    }

    private long utc_ns(int week, double seconds) {
        var utc = GpsTime.of(week, seconds).toUtc();
        pastListSeen |= LeapSeconds.isPastList(utc);
        return utc.getEpochSecond() * SECOND_NS + utc.getNano();
    }

    @Override
    List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        if (tenBitsSeen) {
            warnings.add(
                    "GPS weeks below 1024 taken as counted from the week counter's turn of April"
                            + " 2019");
        }
        if (pastListSeen) {
            warnings.add(
                    "GPS time brought to UTC with the leap seconds known until "
                            + LeapSeconds.EXPIRES
                            + ": one announced since would shift it by a second");
        }
        return warnings;
    }

    @Override
    boolean isAbsolute() {
        return true;
    }
}
