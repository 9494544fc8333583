package pairdown.format.source;

/** Writes numbers as plain decimals: no exponent, a point, rounded half up, no needless zeros. */
public final class Decimal {
    private static final long[] TENS = {
        1, 10, 100, 1000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000, 1_000_000_000
    };

    private Decimal() {}

    /** At most {@code decimals} of them, trailing zeros left out. */
    public static String of(double value, int decimals) {
        StringBuilder out = new StringBuilder(16);
        fixed(out, value, decimals);
        if (decimals > 0) {
            int end = out.length();
            while (out.charAt(end - 1) == '0') {
                end--;
            }
            out.setLength(out.charAt(end - 1) == '.' ? end - 1 : end);
        }
        return out.toString();
    }

    /** Exactly {@code decimals} of them. */
    public static String fixed(double value, int decimals) {
        StringBuilder out = new StringBuilder(16);
        fixed(out, value, decimals);
        return out.toString();
    }

    private static void fixed(StringBuilder out, double value, int decimals) {
        if (!(Math.abs(value) < 9e9)) {
            throw new IllegalArgumentException("no plain decimal: " + value);
        }
        long scaled = Math.round(Math.abs(value) * TENS[decimals]);
        if (value < 0 && scaled != 0) {
            out.append('-');
        }
        out.append(scaled / TENS[decimals]);
        if (decimals > 0) {
            out.append('.');
            String rest = Long.toString(scaled % TENS[decimals]);
            out.append("0".repeat(decimals - rest.length())).append(rest);
        }
    }

    /**
     * A whole number in at least {@code width} characters, filled with zeros, a minus in place of
     * one.
     */
    public static String padded(long value, int width) {
        String digits = Long.toString(Math.abs(value));
        String fill = "0".repeat(Math.max(0, width - digits.length() - (value < 0 ? 1 : 0)));
        return (value < 0 ? "-" : "") + fill + digits;
    }
}
