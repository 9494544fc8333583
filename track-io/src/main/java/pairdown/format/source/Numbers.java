package pairdown.format.source;

import java.nio.charset.StandardCharsets;

/**
 * Reads decimal numbers straight from bytes. Exactly {@link Double#parseDouble} for what both
 * accept: up to 15 digits and a power of ten up to 22 are two exact doubles and one rounding (W. D.
 * Clinger, "How to read floating point numbers accurately", PLDI 1990, section 1); anything longer
 * goes to the JDK.
 */
public final class Numbers {
    private static final double[] TENS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16,
        1e17, 1e18, 1e19, 1e20, 1e21, 1e22
    };
    private static final int EXACT_DIGITS = 15;

    private Numbers() {}

    /** The number in a text, NaN if it is none. */
    public static double parse(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
        return parse(bytes, 0, bytes.length, (byte) '.');
    }

    /**
     * The number in the bytes {@code from} to {@code to}, blanks around it ignored; NaN if they are
     * no finite number.
     */
    public static double parse(byte[] a, int from, int to, byte decimalMark) {
        int i = from;
        int end = to;
        while (i < end && a[i] >= 0 && a[i] <= ' ') {
            i++;
        }
        while (end > i && a[end - 1] >= 0 && a[end - 1] <= ' ') {
            end--;
        }
        int start = i;
        boolean negative = false;
        if (i < end && (a[i] == '-' || a[i] == '+')) {
            negative = a[i++] == '-';
        }
        long mantissa = 0;
        int digits = 0;
        int significant = 0;
        int scale = 0;
        boolean marked = false;
        for (; i < end; i++) {
            int d = a[i] - '0';
            if (d >= 0 && d <= 9) {
                mantissa = mantissa * 10 + d;
                digits++;
                if (significant > 0 || d != 0) {
                    significant++;
                }
                if (marked) {
                    scale++;
                }
            } else if (a[i] == decimalMark && !marked) {
                marked = true;
            } else {
                break;
            }
        }
        if (digits == 0) {
            return Double.NaN;
        }
        if (i < end || significant > EXACT_DIGITS || scale >= TENS.length) {
            return slow(a, start, end, decimalMark);
        }
        double value = mantissa / TENS[scale];
        return negative ? -value : value;
    }

    private static double slow(byte[] a, int from, int to, byte decimalMark) {
        for (int i = from; i < to; i++) {
            boolean allowed =
                    (a[i] >= '0' && a[i] <= '9')
                            || a[i] == decimalMark
                            || a[i] == '-'
                            || a[i] == '+'
                            || a[i] == 'e'
                            || a[i] == 'E';
            if (!allowed) {
                return Double.NaN;
            }
        }
        String text = new String(a, from, to - from, StandardCharsets.ISO_8859_1);
        try {
            double value = Double.parseDouble(text.replace((char) decimalMark, '.'));
            return Double.isInfinite(value) ? Double.NaN : value;
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** The unsigned integer in exactly {@code count} digits, or −1 if they are not all digits. */
    public static int digits(byte[] a, int from, int count) {
        int value = 0;
        for (int i = from; i < from + count; i++) {
            int d = a[i] - '0';
            if (d < 0 || d > 9) {
                return -1;
            }
            value = value * 10 + d;
        }
        return value;
    }
}
