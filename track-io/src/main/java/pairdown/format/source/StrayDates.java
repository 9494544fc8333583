package pairdown.format.source;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import pairdown.time.GpsTime;

/**
 * Dates that don't belong to the rest of a log: a receiver's cold start (1980), or a week counter
 * that has rolled over (1024 weeks in the past). The second kind is mended, the first dropped.
 */
final class StrayDates {
    private static final long DAY_NS = 86_400_000_000_000L;
    private static final long ROLLOVER_NS = GpsTime.ROLLOVER.toNanos();

    /** The first rollover: before it, few could log and none of these logs was. */
    private static final long FIRST_ROLLOVER_NS =
            Instant.parse("1999-08-21T23:59:47Z").getEpochSecond() * 1_000_000_000L;

    private final Rows rows;
    private final Notes notes;
    private final long stray_ns;

    StrayDates(Rows rows, Notes notes, LogSource source) {
        this.rows = rows;
        this.notes = notes;
        this.stray_ns = source.settings().strayDays() * DAY_NS;
    }

    /** The rows to keep, in file order, with the dates of the mended ones moved. */
    int[] mended() {
        long[] sorted = new long[rows.size()];
        Arrays.setAll(sorted, rows::time_ns);
        Arrays.sort(sorted);
        long last = sorted[sorted.length - 1];
        if (last - sorted[0] <= stray_ns) {
            warnIfAllBeforeRollover(last);
            int[] all = new int[rows.size()];
            Arrays.setAll(all, i -> i);
            return all;
        }
        return keepNear(reference(sorted, last));
    }

    private void warnIfAllBeforeRollover(long last) {
        if (last < FIRST_ROLLOVER_NS) {
            notes.warn(
                    "all dates lie before the first GPS week rollover of 1999: the receiver's date"
                            + " may be wrong");
        }
    }

    /** The time that most rows stand near, or the latest where the others are its past self. */
    private long reference(long[] sorted, long last) {
        long median = sorted[sorted.length / 2];
        long off = last - median;
        boolean rolledOver = off > DAY_NS && distanceFromRollover(off) <= 2 * DAY_NS;
        boolean cold = median < FIRST_ROLLOVER_NS && last > FIRST_ROLLOVER_NS;
        return rolledOver || cold ? last : median;
    }

    private static long distanceFromRollover(long difference) {
        return Math.abs(difference - Math.round(difference / (double) ROLLOVER_NS) * ROLLOVER_NS);
    }

    private int[] keepNear(long reference) {
        int[] kept = new int[rows.size()];
        int n = 0;
        int moved = 0;
        for (int row = 0; row < rows.size(); row++) {
            long off = reference - rows.time_ns(row);
            if (Math.abs(off) <= stray_ns) {
                kept[n++] = row;
            } else if (off > 0 && distanceFromRollover(off) <= 2 * DAY_NS) {
                long eras = Math.round(off / (double) ROLLOVER_NS);
                rows.retime(row, rows.time_ns(row) + eras * ROLLOVER_NS);
                kept[n++] = row;
                moved++;
            } else {
                notes.skip(
                        rows.line(row),
                        "date " + day(rows.time_ns(row)) + " is far from the rest of the log");
            }
        }
        if (moved > 0) {
            notes.warn(
                    moved
                            + (moved == 1 ? " date was" : " dates were")
                            + " 1024 weeks in the past (a receiver's week rollover) and moved"
                            + " forward");
        }
        return Arrays.copyOf(kept, n);
    }

    private static String day(long t_ns) {
        return Instant.ofEpochSecond(Math.floorDiv(t_ns, 1_000_000_000L))
                .atOffset(ZoneOffset.UTC)
                .toLocalDate()
                .toString();
    }
}
