package pairdown.format.source;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.function.Predicate;

/**
 * A stream's lines as ranges of a byte array, without an object a line: {@link #next} moves on,
 * {@link #bytes}, {@link #from} and {@link #to} say where the line lies until then. Ends of line
 * are LF, CR LF and CR.
 */
public final class ByteLines {
    private static final int CHUNK = 1 << 17;

    private final InputStream in;
    private final int longest;
    private byte[] buffer = new byte[CHUNK];
    private int filled;
    private int at;
    private int from;
    private int to;
    private long number;
    private boolean ended;
    private boolean whole;
    private boolean tooLong;
    private boolean skipLineFeed;

    public ByteLines(InputStream in, int longest) {
        this.in = in;
        this.longest = longest;
    }

    /** The lines of bytes in memory. */
    public static ByteLines of(byte[] bytes, int longest) {
        return new ByteLines(new ByteArrayInputStream(bytes), longest);
    }

    /** Whether a line from here on is such; the lines are those of bytes in memory. */
    public boolean anyMatch(Predicate<ByteLines> such) {
        try {
            while (next()) {
                if (such.test(this)) {
                    return true;
                }
            }
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException("memory can't fail", e);
        }
    }

    /** Moves to the next line; false at the end. */
    public boolean next() throws IOException {
        tooLong = false;
        from = at;
        int scan = at;
        while (true) {
            while (scan < filled) {
                byte b = buffer[scan];
                if (b == '\n' || b == '\r') {
                    if (skipLineFeed && b == '\n' && scan == from) {
                        skipLineFeed = false;
                        from = ++scan;
                        continue;
                    }
                    skipLineFeed = b == '\r';
                    to = tooLong ? from : scan;
                    at = scan + 1;
                    number++;
                    whole = true;
                    return true;
                }
                scan++;
            }
            if (ended) {
                return lastLine();
            }
            scan -= more();
        }
    }

    private boolean lastLine() {
        to = tooLong ? from : filled;
        at = filled;
        whole = false;
        if (from == filled && !tooLong) {
            return false;
        }
        number++;
        return true;
    }

    /** Reads on, moving the line begun to the front; returns how far it moved. */
    private int more() throws IOException {
        int moved = from;
        int kept = filled - from;
        if (kept > longest) {
            tooLong = true;
            moved = filled;
            kept = 0;
        }
        if (kept > 0 && moved > 0) {
            System.arraycopy(buffer, moved, buffer, 0, kept);
        }
        if (kept == buffer.length) {
            buffer = Arrays.copyOf(buffer, 2 * buffer.length);
        }
        from = 0;
        filled = kept;
        int n = in.read(buffer, filled, buffer.length - filled);
        if (n < 0) {
            ended = true;
        } else {
            filled += n;
        }
        return moved;
    }

    public byte[] bytes() {
        return buffer;
    }

    /** Where the line begins. */
    public int from() {
        return from;
    }

    /** Where it ends, its end-of-line left out. */
    public int to() {
        return to;
    }

    public int length() {
        return to - from;
    }

    /** The line's number, from 1. */
    public long number() {
        return number;
    }

    /** Whether the line ended with an end-of-line, rather than with the file. */
    public boolean isWhole() {
        return whole;
    }

    /** Whether the line was longer than allowed; its text is then left out. */
    public boolean isTooLong() {
        return tooLong;
    }

    /** The line as text: UTF-8, or where it is not, Latin-1. */
    public String text() {
        return Text.decode(buffer, from, to);
    }

    /** Whether the line has {@code ascii} at {@code offset} bytes from its begin. */
    public boolean hasAt(int offset, String ascii) {
        if (length() < offset + ascii.length()) {
            return false;
        }
        for (int i = 0; i < ascii.length(); i++) {
            if (buffer[from + offset + i] != ascii.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    /** Whether the line is empty or blank. */
    public boolean isBlank() {
        for (int i = from; i < to; i++) {
            if (buffer[i] > ' ' || buffer[i] < 0) {
                return false;
            }
        }
        return true;
    }

    /** The line's bytes as Latin-1, for reasons and patterns that are ASCII. */
    public String latin1() {
        return new String(buffer, from, to - from, StandardCharsets.ISO_8859_1);
    }
}
