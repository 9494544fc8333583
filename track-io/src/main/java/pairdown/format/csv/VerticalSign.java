package pairdown.format.csv;

import pairdown.format.source.Notes;
import pairdown.format.source.Rows;
import pairdown.track.Channel;

/**
 * Which way a vertical speed counts that its heading leaves open: taken as up, as instruments do,
 * unless the heights say the opposite.
 */
final class VerticalSign {
    private static final double NS_PER_S = 1e9;

    /** Rates below it are noise (m/s), steps beyond it no rates (s). */
    private static final double LEAST_RATE_MPS = 1;

    private static final double LONGEST_STEP_S = 3;

    /** So many clear rows must agree, and outnumber the others so many times. */
    private static final int LEAST_ROWS = 20;

    private static final int TIMES = 3;

    private VerticalSign() {}

    /** Turns the sign of the velocity down where the heights contradict it. */
    static void settle(Rows rows, Notes notes) {
        int with = 0;
        int against = 0;
        int last = -1;
        for (int row = 0; row < rows.size(); row++) {
            double height_m = rows.get(Channel.HEIGHT, row);
            double down_mps = rows.get(Channel.VELOCITY_DOWN, row);
            if (Double.isNaN(height_m)) {
                continue;
            }
            if (last >= 0 && Math.abs(down_mps) > LEAST_RATE_MPS) {
                double dt_s = (rows.time_ns(row) - rows.time_ns(last)) / NS_PER_S;
                double rate_mps = (rows.get(Channel.HEIGHT, last) - height_m) / dt_s;
                if (dt_s > 0 && dt_s < LONGEST_STEP_S && Math.abs(rate_mps) > LEAST_RATE_MPS) {
                    with += rate_mps * down_mps > 0 ? 1 : 0;
                    against += rate_mps * down_mps < 0 ? 1 : 0;
                }
            }
            last = row;
        }
        if (against >= LEAST_ROWS && against > TIMES * with) {
            rows.negateAll(Channel.VELOCITY_DOWN);
            notes.warn("vertical speed counts down, as the heights show: taken as down positive");
        } else {
            notes.warn(
                    "vertical speed taken as up positive"
                            + (with > TIMES * against && with >= LEAST_ROWS
                                    ? ", as the heights show"
                                    : ""));
        }
    }
}
