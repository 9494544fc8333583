package pairdown.format.csv;

import java.util.Optional;
import pairdown.format.source.Numbers;

/**
 * Tells by the number of its cells that bytes were lost from a row: two records have run together,
 * or a piece of one is left, and its values stand under the wrong names. A log whose rows differ in
 * width by its own manner is left alone.
 */
final class TornRows {
    /** So many whole rows in a row show that a log does not leave cells out (common practice). */
    private static final int WHOLE_BEFORE = 20;

    /** What happens so many times running is the log's manner. */
    private static final int MANNER = 3;

    /** As is what happens to one row in so many. */
    private static final int RARE = 50;

    private final int header;
    private final byte decimalMark;
    private int usual;
    private long rows;
    private long torn;
    private int whole;
    private int running;

    TornRows(int header, byte decimalMark) {
        this.header = header;
        this.decimalMark = decimalMark;
        this.usual = header;
    }

    /** What is wrong with a row; empty where nothing is. */
    Optional<String> complaint(Cells cells) {
        int size = cells.size();
        if (rows++ == 0) {
            usual = Math.max(header, size);
        }
        boolean tooLong = size > usual && hasNumberFrom(cells, usual);
        boolean tooShort = size < header && whole >= WHOLE_BEFORE;
        if ((tooLong || tooShort) && ++running < MANNER && torn * RARE <= rows) {
            torn++;
            return Optional.of(
                    (tooLong ? "records run together: " : "part of a record: ")
                            + size
                            + " cells, not "
                            + (tooLong ? usual : header));
        }
        usual = tooLong && running >= MANNER ? size : usual;
        whole = size >= header ? whole + 1 : 0;
        running = tooLong || tooShort ? running : 0;
        return Optional.empty();
    }

    /** Further cells of words are a remark with commas in it; of numbers, another record. */
    private boolean hasNumberFrom(Cells cells, int first) {
        boolean number = false;
        for (int i = first; i < cells.size(); i++) {
            boolean here =
                    !Double.isNaN(
                            Numbers.parse(cells.bytes(), cells.from(i), cells.to(i), decimalMark));
            if (!here && cells.length(i) > 0) {
                return false;
            }
            number |= here;
        }
        return number;
    }
}
