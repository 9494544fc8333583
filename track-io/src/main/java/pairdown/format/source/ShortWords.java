package pairdown.format.source;

import java.io.CharConversionException;
import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/**
 * Letters of which no word is endless: a parser holds a name whole, however long it is. A word
 * counts from the first buffer that holds nothing else, so looking costs next to nothing.
 */
final class ShortWords extends FilterReader {
    private static final int LONGEST = 1 << 14;

    private int wordSoFar;

    ShortWords(Reader in) {
        super(in);
    }

    @Override
    public int read() throws IOException {
        char[] one = new char[1];
        return read(one, 0, 1) < 0 ? -1 : one[0];
    }

    /**
     * @throws CharConversionException at a word longer than any in a log, which is damage and no
     *     failure of the stream
     */
    @Override
    public int read(char[] to, int from, int length) throws IOException {
        int n = in.read(to, from, length);
        wordSoFar = isOneWord(to, from, n) ? wordSoFar + Math.max(n, 0) : 0;
        if (wordSoFar > LONGEST) {
            throw new CharConversionException("a word of more than " + LONGEST + " letters");
        }
        return n;
    }

    private static boolean isOneWord(char[] letters, int from, int count) {
        for (int i = from; i < from + count; i++) {
            char c = letters[i];
            if (c <= ' ' || c == '<' || c == '>' || c == '/' || c == '=' || c == '"' || c == '+') {
                return false;
            }
        }
        return true;
    }
}
