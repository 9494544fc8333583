package pairdown.words;

import java.util.Arrays;

/**
 * A line of text written over and over: what is drawn each frame is put together here without
 * leaving garbage behind. Not for more than one thread.
 */
public final class Line implements CharSequence {
    /** The sign typography sets before negative figures; as wide as a plus. */
    public static final char MINUS = '\u2212';

    private static final int FIRST_CAPACITY = 64;
    private static final long[] POWERS_OF_TEN = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};

    private char[] chars = new char[FIRST_CAPACITY];
    private int length;

    /** Empties the line. */
    public Line clear() {
        length = 0;
        return this;
    }

    public Line add(CharSequence text) {
        for (int i = 0; i < text.length(); i++) {
            add(text.charAt(i));
        }
        return this;
    }

    public Line add(char c) {
        if (length == chars.length) {
            chars = Arrays.copyOf(chars, 2 * length);
        }
        chars[length++] = c;
        return this;
    }

    public Line add(long value) {
        if (value < 0) {
            add(MINUS);
        }
        return digits(Math.abs(value), 1);
    }

    /** A count with leading zeros up to {@code width} digits. */
    public Line addPadded(long value, int width) {
        return digits(value, width);
    }

    /**
     * A number with a fixed count of decimals, half rounded away from zero; a value that rounds to
     * zero has no sign.
     *
     * @param decimals 0 to 6
     * @param point the decimal sign
     */
    public Line addFixed(double value, int decimals, char point) {
        long scale = POWERS_OF_TEN[decimals];
        long scaled = Math.abs(rounds(value, decimals));
        if (value < 0 && scaled != 0) {
            add(MINUS);
        }
        digits(scaled / scale, 1);
        if (decimals > 0) {
            add(point);
            digits(scaled % scale, decimals);
        }
        return this;
    }

    /** A value in units of its last decimal, half rounded away from zero. */
    static long rounds(double value, int decimals) {
        long size = Math.round(Math.abs(value) * POWERS_OF_TEN[decimals]);
        return value < 0 ? -size : size;
    }

    private Line digits(long value, int width) {
        int count = Math.max(width, countOf(value));
        int end = length + count;
        while (end > chars.length) {
            chars = Arrays.copyOf(chars, 2 * chars.length);
        }
        long rest = value;
        for (int i = end - 1; i >= length; i--) {
            chars[i] = (char) ('0' + rest % 10);
            rest /= 10;
        }
        length = end;
        return this;
    }

    private static int countOf(long value) {
        int count = 1;
        for (long rest = value / 10; rest > 0; rest /= 10) {
            count++;
        }
        return count;
    }

    @Override
    public int length() {
        return length;
    }

    @Override
    public char charAt(int index) {
        return chars[index];
    }

    @Override
    public CharSequence subSequence(int start, int end) {
        return new String(chars, start, end - start);
    }

    @Override
    public String toString() {
        return new String(chars, 0, length);
    }
}
