package pairdown.format.source;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * Bytes in which ASCII is ASCII. UTF-8 and the eight-bit encodings are so already (only words of
 * headers differ, which are decoded where they are read); UTF-16 is turned into UTF-8.
 */
final class Decoded {
    private static final int SAMPLE = 256;

    private Decoded() {}

    static InputStream asciiCompatible(BufferedInputStream in) throws IOException {
        in.mark(SAMPLE);
        byte[] head = in.readNBytes(SAMPLE);
        in.reset();
        if (head.length >= 3 && u(head, 0) == 0xef && u(head, 1) == 0xbb && u(head, 2) == 0xbf) {
            in.skipNBytes(3);
            return in;
        }
        if (head.length >= 2 && u(head, 0) == 0xff && u(head, 1) == 0xfe) {
            in.skipNBytes(2);
            return new FromUtf16(in, StandardCharsets.UTF_16LE);
        }
        if (head.length >= 2 && u(head, 0) == 0xfe && u(head, 1) == 0xff) {
            in.skipNBytes(2);
            return new FromUtf16(in, StandardCharsets.UTF_16BE);
        }
        if (looksWide(head, 1)) {
            return new FromUtf16(in, StandardCharsets.UTF_16LE);
        }
        if (looksWide(head, 0)) {
            return new FromUtf16(in, StandardCharsets.UTF_16BE);
        }
        return in;
    }

    private static int u(byte[] b, int i) {
        return b[i] & 0xff;
    }

    /** Whether every other byte, from {@code zeros} on, is zero and none of the others is. */
    private static boolean looksWide(byte[] head, int zeros) {
        if (head.length < 4) {
            return false;
        }
        for (int i = 0; i + 1 < head.length; i += 2) {
            if (head[i + zeros] != 0 || head[i + 1 - zeros] == 0) {
                return false;
            }
        }
        return true;
    }

    /** UTF-16 in, UTF-8 out. */
    private static final class FromUtf16 extends InputStream {
        private final Reader reader;
        private final char[] chars = new char[4096];
        private byte[] bytes = {};
        private int at;

        FromUtf16(InputStream in, Charset charset) {
            this.reader = new InputStreamReader(in, charset);
        }

        @Override
        public int read() throws IOException {
            return fill() ? bytes[at++] & 0xff : -1;
        }

        @Override
        public int read(byte[] to, int from, int length) throws IOException {
            if (length == 0) {
                return 0;
            }
            if (!fill()) {
                return -1;
            }
            int n = Math.min(length, bytes.length - at);
            System.arraycopy(bytes, at, to, from, n);
            at += n;
            return n;
        }

        private boolean fill() throws IOException {
            while (at == bytes.length) {
                int n = reader.read(chars, 0, chars.length - 1);
                if (n < 0) {
                    return false;
                }
                if (Character.isHighSurrogate(chars[n - 1])) {
                    n += Math.max(reader.read(chars, n, 1), 0);
                }
                bytes = new String(chars, 0, n).getBytes(StandardCharsets.UTF_8);
                at = 0;
            }
            return true;
        }

        @Override
        public void close() throws IOException {
            reader.close();
        }
    }
}
