package pairdown.format.source;

import java.util.Arrays;
import java.util.List;
import pairdown.geodesy.Wgs84;
import pairdown.track.Channel;

/**
 * Rows that say nothing new: the same row twice, and positions a receiver or logger held while it
 * had no new one.
 */
final class Repeats {
    private static final double NS_PER_S = 1e9;

    /** A greater share of held rows is no accident: rows come faster than fixes. */
    private static final double MANY = 0.4;

    /** What a receiver says of motion: repeated with the position, it is no news either. */
    private static final List<Channel> VELOCITY =
            List.of(
                    Channel.GROUND_SPEED,
                    Channel.TRACK,
                    Channel.VELOCITY_NORTH,
                    Channel.VELOCITY_EAST,
                    Channel.VELOCITY_DOWN);

    private final Rows rows;
    private final Notes notes;
    private final ReadSettings settings;

    Repeats(Rows rows, Notes notes, ReadSettings settings) {
        this.rows = rows;
        this.notes = notes;
        this.settings = settings;
    }

    /** The rows to keep of those given in order of time. */
    int[] dropped(int[] order) {
        int[] kept = withoutDuplicates(order);
        dropHeldPositions(kept);
        return kept;
    }

    private int[] withoutDuplicates(int[] order) {
        int[] kept = new int[order.length];
        int n = 0;
        int sameTimeFrom = 0;
        int alike = 0;
        for (int row : order) {
            if (n > 0 && rows.time_ns(kept[n - 1]) != rows.time_ns(row)) {
                sameTimeFrom = n;
            }
            boolean duplicate = false;
            for (int i = n - 1; i >= Math.max(sameTimeFrom, n - 8) && !duplicate; i--) {
                duplicate = same(kept[i], row);
            }
            if (duplicate) {
                notes.skip(rows.line(row), "duplicate of an earlier record");
            } else {
                alike += sameTimeFrom < n && hasPlace(row) && hasPlace(kept[n - 1]) ? 1 : 0;
                kept[n++] = row;
            }
        }
        if (alike > 0) {
            notes.warn(
                    alike
                            + (alike == 1 ? " fix has" : " fixes have")
                            + " the time of the fix before: the log's times are too coarse");
        }
        return n == order.length ? order : Arrays.copyOf(kept, n);
    }

    private boolean hasPlace(int row) {
        return !Double.isNaN(rows.get(Channel.LATITUDE, row));
    }

    private boolean same(int a, int b) {
        for (Channel channel : Channel.values()) {
            if (Double.compare(rows.get(channel, a), rows.get(channel, b)) != 0) {
                return false;
            }
        }
        return true;
    }

    /**
     * Takes the position from rows that repeat it to the last digit while the log moves: by its own
     * speed, or by the jump that ends the repeats when the log moved before them too. The first row
     * of such a run keeps its position: it was new there.
     */
    private void dropHeldPositions(int[] order) {
        int from = 0;
        int held = 0;
        double speedBefore_mps = 0;
        while (from < order.length) {
            int to = from + 1;
            while (to < order.length && samePlace(order[from], order[to])) {
                to++;
            }
            if (to - from > 1 && wasMoving(order, from, to, speedBefore_mps)) {
                for (int i = from + 1; i < to; i++) {
                    takeHeld(order[from], order[i]);
                }
                held += to - from - 1;
            }
            if (to < order.length) {
                speedBefore_mps = speed_mps(order[from], order[to]);
            }
            from = to;
        }
        if (held > MANY * order.length) {
            notes.warn(
                    "the log has more rows than fixes: "
                            + held
                            + " rows repeat the fix before them and are not counted as fixes");
        }
    }

    /** Takes what the receiver said from a row that only says it again. */
    private void takeHeld(int first, int again) {
        boolean all = true;
        for (Channel channel : VELOCITY) {
            all &= Double.compare(rows.get(channel, first), rows.get(channel, again)) == 0;
        }
        if (all) {
            VELOCITY.forEach(channel -> rows.clear(channel, again));
        }
        rows.clearPosition(again);
        notes.skip(
                rows.line(again), "position held since line " + rows.line(first) + " while moving");
    }

    private boolean samePlace(int a, int b) {
        double latitude = rows.get(Channel.LATITUDE, a);
        return latitude == rows.get(Channel.LATITUDE, b)
                && rows.get(Channel.LONGITUDE, a) == rows.get(Channel.LONGITUDE, b)
                && Double.compare(rows.get(Channel.HEIGHT, a), rows.get(Channel.HEIGHT, b)) == 0;
    }

    private boolean wasMoving(int[] order, int from, int to, double speedBefore_mps) {
        double speed_mps = Double.POSITIVE_INFINITY;
        for (int i = from; i < to; i++) {
            speed_mps = Math.min(speed_mps, loggedSpeed_mps(order[i]));
        }
        if (Double.isNaN(speed_mps)) {
            speed_mps =
                    to < order.length
                            ? Math.min(speedBefore_mps, speed_mps(order[from], order[to]))
                            : 0;
        }
        double lasted_s = (rows.time_ns(order[to - 1]) - rows.time_ns(order[from])) / NS_PER_S;
        return speed_mps > settings.heldSpeed_mps() && speed_mps * lasted_s > settings.heldStep_m();
    }

    private double loggedSpeed_mps(int row) {
        double ground_mps = rows.get(Channel.GROUND_SPEED, row);
        return Double.isNaN(ground_mps)
                ? Math.hypot(
                        rows.get(Channel.VELOCITY_NORTH, row), rows.get(Channel.VELOCITY_EAST, row))
                : ground_mps;
    }

    private double speed_mps(int a, int b) {
        double dt_s = (rows.time_ns(b) - rows.time_ns(a)) / NS_PER_S;
        double north_m =
                (rows.get(Channel.LATITUDE, b) - rows.get(Channel.LATITUDE, a))
                        * Wgs84.MEAN_DEGREE_M;
        double east_m =
                Math.IEEEremainder(
                                rows.get(Channel.LONGITUDE, b) - rows.get(Channel.LONGITUDE, a),
                                360)
                        * Wgs84.MEAN_DEGREE_M
                        * Math.cos(Math.toRadians(rows.get(Channel.LATITUDE, a)));
        return dt_s > 0 ? Math.hypot(north_m, east_m) / dt_s : 0;
    }
}
