package pairdown.format.source;

import pairdown.time.IsoTime;

/**
 * Gives times of day their day, in a log that writes the date now and then or never.
 *
 * <p>A step back of more than half a day is midnight; a smaller one is a row out of order; a step
 * forward that lands just before midnight, right after one, is a row of the day before. Rows that
 * came before the first date are dated when it comes.
 */
public final class DayClock {
    private static final long HOUR_NS = 3_600_000_000_000L;
    private static final long DAY_NS = 24 * HOUR_NS;

    private boolean dated;
    private long day_ns;
    private long last_ns = Long.MIN_VALUE;
    private long beforeDate_ns = Long.MIN_VALUE;
    private int undatedRows;

    /** Whether a date was ever given. */
    public boolean isDated() {
        return dated;
    }

    /**
     * The instant of a row at a time of day, from 1970, or from the first midnight while undated.
     */
    public long at(long timeOfDay_ns, Rows rows) {
        long t_ns = near(timeOfDay_ns);
        if (beforeDate_ns > t_ns + DAY_NS - HOUR_NS && beforeDate_ns < t_ns + DAY_NS) {
            // Past midnight, and the date not yet: some receivers advance it seconds later.
            t_ns += DAY_NS;
        }
        day_ns = Math.floorDiv(t_ns, DAY_NS) * DAY_NS;
        last_ns = t_ns;
        if (!dated) {
            undatedRows = rows.size() + 1;
        }
        return t_ns;
    }

    /** The same without moving on: for records written beside the rows. */
    public long near(long timeOfDay_ns) {
        long t_ns = day_ns + timeOfDay_ns;
        if (last_ns == Long.MIN_VALUE) {
            return t_ns;
        }
        if (t_ns < last_ns - DAY_NS / 2) {
            return t_ns + DAY_NS;
        }
        if (t_ns > last_ns + DAY_NS - HOUR_NS && t_ns - DAY_NS >= 0) {
            return t_ns - DAY_NS;
        }
        return t_ns;
    }

    /**
     * A date in the log, of two digits each.
     *
     * @return false if there is no such day
     */
    public boolean date(String day, String month, String year, Rows rows) {
        return date(Integer.parseInt(day), Integer.parseInt(month), fullYear(year), rows);
    }

    private static int fullYear(String twoDigits) {
        int year = Integer.parseInt(twoDigits);
        return year < 80 ? 2000 + year : 1900 + year;
    }

    /**
     * A date in the log. It holds from the next row on; rows before the first date are counted from
     * it too.
     *
     * @return false if there is no such day
     */
    public boolean date(int day, int month, int year, Rows rows) {
        long given_ns = IsoTime.day_ns(year, month, day);
        if (given_ns == IsoTime.NONE) {
            return false;
        }
        if (!dated) {
            for (int row = 0; row < Math.min(undatedRows, rows.size()); row++) {
                rows.retime(row, rows.time_ns(row) - day_ns + given_ns);
            }
            dated = true;
        }
        day_ns = given_ns;
        beforeDate_ns = last_ns;
        last_ns = Long.MIN_VALUE;
        return true;
    }
}
