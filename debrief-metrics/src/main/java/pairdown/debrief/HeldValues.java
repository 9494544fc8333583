package pairdown.debrief;

import java.util.Arrays;

/**
 * Tells when a channel is written more often than it is measured: many recorders repeat a value in
 * every row until the next one comes. Such a repeat is no measurement, and taken for one it makes a
 * move look as late and as sudden as its last row.
 */
final class HeldValues {
    /** So many changes tell how often a channel is measured. */
    private static final int ENOUGH = 20;

    /** Changes closer together than the rest are jitter up to this share of them. */
    private static final double JITTER_SHARE = 0.02;

    /** A channel measured more rarely is one that seldom changes. */
    private static final double LONGEST_S = 1.1;

    /** A value that stays for this many measurements' time was measured again. */
    private static final double AGAIN = 1.5;

    private HeldValues() {}

    /**
     * The places of a column that are measurements: all, where nothing says that values are held.
     *
     * @param time_s rising
     * @param value no NaN
     */
    static int[] measured(double[] time_s, float[] value) {
        int rows = rowsHeld(value);
        int[] kept = new int[value.length];
        int n = 0;
        double row_s =
                value.length < 2
                        ? Double.NaN
                        : (time_s[value.length - 1] - time_s[0]) / (value.length - 1);
        boolean isHeld = rows > 1 && rows * row_s <= LONGEST_S;
        for (int i = 0; i < value.length; i++) {
            boolean changed = i == 0 || value[i] != value[i - 1];
            boolean again = n > 0 && time_s[i] - time_s[kept[n - 1]] >= AGAIN * rows * row_s;
            if (!isHeld || changed || again) {
                kept[n++] = i;
            }
        }
        return Arrays.copyOf(kept, n);
    }

    /** How many rows pass at least from one change to the next; 1 where too few tell. */
    private static int rowsHeld(float[] value) {
        int[] apart = new int[value.length];
        int n = 0;
        int last = -1;
        for (int i = 1; i < value.length; i++) {
            if (value[i] != value[i - 1]) {
                apart[n] = i - last;
                n += last < 0 ? 0 : 1;
                last = i;
            }
        }
        if (n < ENOUGH) {
            return 1;
        }
        Arrays.sort(apart, 0, n);
        return apart[(int) (JITTER_SHARE * n)];
    }
}
