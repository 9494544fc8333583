package pairdown.format.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Finds the whole elements of one name in bytes that are no longer XML: what can still be read of a
 * file with rubbish in it. An element that begins before the last one ended drops the last.
 */
public final class XmlFragments {
    private static final int LONGEST = 1 << 16;

    private final InputStream in;
    private final byte[] open;
    private final byte[] close;
    private final byte[] buffer = new byte[1 << 14];
    private int at;
    private int filled;
    private byte[] element = new byte[1024];
    private int size;
    private long line = 1;
    private boolean afterReturn;
    private long firstLine;

    public XmlFragments(InputStream in, String name) {
        this.in = in;
        this.open = ("<" + name).getBytes(StandardCharsets.US_ASCII);
        this.close = ("</" + name + ">").getBytes(StandardCharsets.US_ASCII);
    }

    /** Moves to the next whole element; false at the end. */
    public boolean next() throws IOException {
        size = 0;
        boolean inside = false;
        for (int b = read(); b >= 0; b = read()) {
            line += b == '\r' || (b == '\n' && !afterReturn) ? 1 : 0;
            afterReturn = b == '\r';
            append((byte) b);
            if (endsWith(open)) {
                keepLast(open.length);
                inside = true;
                firstLine = line;
            } else if (inside && (endsWith(close) || isSelfClosed())) {
                return true;
            } else if (size > LONGEST) {
                inside = false;
                keepLast(open.length);
            } else if (!inside && size > open.length) {
                keepLast(open.length);
            }
        }
        return false;
    }

    private int read() throws IOException {
        if (at == filled) {
            filled = Math.max(0, in.read(buffer));
            at = 0;
        }
        return at < filled ? buffer[at++] & 0xff : -1;
    }

    private void append(byte b) {
        if (size == element.length) {
            element = Arrays.copyOf(element, 2 * size);
        }
        element[size++] = b;
    }

    private void keepLast(int count) {
        System.arraycopy(element, size - count, element, 0, count);
        size = count;
    }

    private boolean endsWith(byte[] mark) {
        return size >= mark.length
                && element[size - 1] == mark[mark.length - 1]
                && Arrays.equals(element, size - mark.length, size, mark, 0, mark.length);
    }

    /** Whether the first tag ends here, closing itself. */
    private boolean isSelfClosed() {
        if (element[size - 1] != '>' || element[size - 2] != '/') {
            return false;
        }
        for (int i = open.length; i < size - 2; i++) {
            if (element[i] == '<' || element[i] == '>') {
                return false;
            }
        }
        return true;
    }

    /** The element's bytes. */
    public byte[] bytes() {
        return Arrays.copyOf(element, size);
    }

    /** The line it begins on. */
    public long line() {
        return firstLine;
    }
}
