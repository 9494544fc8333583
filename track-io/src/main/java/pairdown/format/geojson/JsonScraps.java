package pairdown.format.geojson;

import java.io.IOException;
import java.io.PushbackReader;
import java.io.Reader;
import pairdown.format.source.Numbers;

/**
 * The names, texts, numbers and marks in a text that was JSON once. A quotation mark that stands
 * alone is told by what it would quote, so that it does not turn the rest inside out.
 */
final class JsonScraps {
    enum Kind {
        KEY,
        STRING,
        NUMBER,
        MARK,
        /** Anything else. */
        RUBBISH,
        END
    }

    private static final int LONGEST = 1 << 12;

    private final PushbackReader in;
    private final StringBuilder text = new StringBuilder();
    private double number;
    private char mark;
    private long line = 1;
    private boolean afterReturn;

    JsonScraps(Reader in) {
        this.in = new PushbackReader(in, 1);
    }

    void skip(long letters) throws IOException {
        for (long i = 0; i < letters && read() >= 0; i++) {}
    }

    String text() {
        return text.toString();
    }

    double number() {
        return number;
    }

    char mark() {
        return mark;
    }

    long line() {
        return line;
    }

    Kind next() throws IOException {
        int c = readSolid();
        if (c < 0) {
            return Kind.END;
        }
        if (c == '"') {
            return quoted();
        }
        if ("[]{},:".indexOf(c) >= 0) {
            mark = (char) c;
            return Kind.MARK;
        }
        text.setLength(0);
        for (; isWord(c); c = read()) {
            if (text.length() < LONGEST) {
                text.append((char) c);
            }
        }
        if (text.length() == 0) {
            return Kind.RUBBISH;
        }
        back(c);
        return word();
    }

    private static boolean isWord(int c) {
        return (c >= '0' && c <= '9')
                || (c >= 'a' && c <= 'z')
                || (c >= 'A' && c <= 'Z')
                || c == '-'
                || c == '+'
                || c == '.';
    }

    private Kind word() {
        boolean none = text.toString().equals("null");
        number = none ? Double.NaN : Numbers.parse(text.toString());
        return none || !Double.isNaN(number) ? Kind.NUMBER : Kind.RUBBISH;
    }

    private Kind quoted() throws IOException {
        text.setLength(0);
        boolean sound = true;
        for (int c = read(); c != '"'; c = read()) {
            if (c < ' ') {
                return Kind.RUBBISH;
            }
            if (c == '\\') {
                c = read();
            }
            sound &= text.length() < LONGEST && c != 0xfffd;
            if (text.length() < LONGEST) {
                text.append((char) c);
            }
        }
        if (isBetween()) {
            back('"');
            return Kind.RUBBISH;
        }
        int after = readSolid();
        if (after == ':') {
            return Kind.KEY;
        }
        back(after);
        return sound ? Kind.STRING : Kind.RUBBISH;
    }

    /** Whether the text is what stands between two quoted ones. */
    private boolean isBetween() {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) != ' ') {
                return ",:]}".indexOf(text.charAt(i)) >= 0;
            }
        }
        return false;
    }

    private int readSolid() throws IOException {
        int c = read();
        while (c == ' ' || c == '\n' || c == '\r' || c == '\t') {
            c = read();
        }
        return c;
    }

    private int read() throws IOException {
        int c = in.read();
        line += c == '\r' || (c == '\n' && !afterReturn) ? 1 : 0;
        afterReturn = c == '\r';
        return c;
    }

    private void back(int c) throws IOException {
        if (c >= 0) {
            in.unread(c);
            // Never an end of line that was counted before another letter.
            line -= c == '\n' || c == '\r' ? 1 : 0;
            afterReturn = false;
        }
    }
}
