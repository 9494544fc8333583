package pairdown.format.igc;

import pairdown.format.source.Longs;
import pairdown.format.source.Notes;
import pairdown.format.source.Rows;
import pairdown.track.Channel;

/**
 * Fixes marked V: either two-dimensional, a place without a height, or no fix at all, when
 * recorders write the last place again (IGC technical specification, B record, fix validity). Which
 * of the two shows by whether the place moves.
 */
final class FlatFixes {
    private final Rows rows;
    private final Notes notes;
    private final Longs placed = new Longs();
    private final Longs flat = new Longs();
    private final Longs flatLines = new Longs();

    FlatFixes(Rows rows, Notes notes) {
        this.rows = rows;
        this.notes = notes;
    }

    /** The row last begun has a place. */
    void placed(boolean isFlat, long line) {
        if (isFlat) {
            flat.add(placed.size());
            flatLines.add(line);
        }
        placed.add(rows.size() - 1);
    }

    /** Takes the places from fixes that only repeat their neighbour's. */
    void settle() {
        boolean[] held = new boolean[flat.size()];
        for (int i = 0; i < held.length; i++) {
            int at = (int) flat.get(i);
            held[i] = samePlace(at, at - 1) || samePlace(at, at + 1);
        }
        int kept = 0;
        for (int i = 0; i < held.length; i++) {
            if (held[i]) {
                int row = (int) placed.get((int) flat.get(i));
                rows.clearPosition(row);
                rows.clear(Channel.FIX_TYPE, row);
                notes.skip(flatLines.get(i), "no fix (V), the place of another fix is repeated");
            } else {
                kept++;
            }
        }
        if (kept > 0) {
            notes.warn(
                    kept
                            + (kept == 1 ? " fix is" : " fixes are")
                            + " two-dimensional (V): a place without a height");
        }
    }

    private boolean samePlace(int a, int b) {
        if (b < 0 || b >= placed.size()) {
            return false;
        }
        int rowA = (int) placed.get(a);
        int rowB = (int) placed.get(b);
        return rows.get(Channel.LATITUDE, rowA) == rows.get(Channel.LATITUDE, rowB)
                && rows.get(Channel.LONGITUDE, rowA) == rows.get(Channel.LONGITUDE, rowB);
    }
}
