package pairdown.theme;

/**
 * Contrast of two colours as the web content guidelines define it.
 *
 * <p>Source: WCAG 2.1, "relative luminance" and "contrast ratio" (W3C Recommendation, 2018).
 */
public final class Contrast {
    private Contrast() {}

    /**
     * The ratio, 1 to 21, whichever is the lighter; what shines through is not considered.
     *
     * @param a red, green, blue, opacity from the top byte down
     */
    public static double ratio(int a, int b) {
        double la = luminance(a) + 0.05;
        double lb = luminance(b) + 0.05;
        return Math.max(la, lb) / Math.min(la, lb);
    }

    /** Relative luminance, 0 for black to 1 for white. */
    public static double luminance(int rgba) {
        return 0.2126 * linear(rgba >>> 24)
                + 0.7152 * linear((rgba >>> 16) & 0xFF)
                + 0.0722 * linear((rgba >>> 8) & 0xFF);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
