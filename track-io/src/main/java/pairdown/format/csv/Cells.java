package pairdown.format.csv;

import java.nio.charset.StandardCharsets;
import pairdown.format.source.ByteLines;
import pairdown.format.source.Text;

/**
 * The cells of one line as ranges of its bytes. A quote opens a quoted cell only where a cell
 * begins, and never reaches beyond the line: a stray quote costs one record, not the rest of the
 * log. The object is used again for each line.
 */
final class Cells {
    private static final int MAX_CELLS = 512;

    private final byte delimiter;
    private final int[] from = new int[MAX_CELLS];
    private final int[] to = new int[MAX_CELLS];
    private byte[] bytes = {};
    private int size;
    private boolean inText;

    Cells(byte delimiter) {
        this.delimiter = delimiter;
    }

    /** Splits a line, as long as it stays in its buffer. */
    void split(ByteLines line) {
        split(line.bytes(), line.from(), line.to());
    }

    void split(byte[] source, int start, int end) {
        bytes = source;
        size = 0;
        inText = false;
        int at = start;
        while (size < MAX_CELLS) {
            boolean quoted = at < end && source[at] == '"';
            int stop = quoted ? quotedEnd(at, end) : -1;
            inText |= quoted && stop < 0;
            if (stop >= 0) {
                add(at + 1, stop);
                at = stop + 1;
                while (at < end && source[at] != delimiter) {
                    at++;
                }
            } else {
                int begin = at;
                while (at < end && source[at] != delimiter) {
                    at++;
                }
                add(begin, at);
            }
            if (at >= end) {
                return;
            }
            at++;
        }
    }

    /** Where a quoted cell's closing quote is, −1 if the line ends before. */
    private int quotedEnd(int open, int end) {
        for (int i = open + 1; i < end; i++) {
            if (bytes[i] == '"') {
                if (i + 1 < end && bytes[i + 1] == '"') {
                    i++;
                } else {
                    return i;
                }
            }
        }
        return -1;
    }

    private void add(int begin, int end) {
        int b = begin;
        int e = end;
        while (b < e && isBlank(bytes[b])) {
            b++;
        }
        while (e > b && isBlank(bytes[e - 1])) {
            e--;
        }
        from[size] = b;
        to[size++] = e;
    }

    private boolean isBlank(byte b) {
        return b == ' ' || (b == '\t' && delimiter != '\t');
    }

    int size() {
        return size;
    }

    /** Whether a cell is a text whose closing quote is not on this line. */
    boolean endInText() {
        return inText;
    }

    byte[] bytes() {
        return bytes;
    }

    int from(int cell) {
        return from[cell];
    }

    int to(int cell) {
        return to[cell];
    }

    int length(int cell) {
        return cell < size ? to[cell] - from[cell] : 0;
    }

    /** A cell's words, in whatever encoding they are. */
    String text(int cell) {
        return cell < size ? Text.decode(bytes, from[cell], to[cell]) : "";
    }

    /** A cell as a text whose characters are its bytes. */
    String ascii(int cell) {
        return cell < size
                ? new String(bytes, from[cell], to[cell] - from[cell], StandardCharsets.ISO_8859_1)
                : "";
    }
}
