package pairdown.format.csv;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairdown.format.source.Numbers;

/** Degrees of arc as people write them: {@code 52.1N}, {@code W 1°12'30.5"}, {@code 52 07.5 N}. */
final class SpeltDegrees {
    private static final Pattern SPELT =
            Pattern.compile(
                    "([NSEWnsew-]?)\\s*(\\d{1,3}(?:[.,]\\d+)?)\\s*[\u00b0\u00bad:]?\\s*"
                            + "(?:(\\d{1,2}(?:[.,]\\d+)?)\\s*['\u2032m:]?\\s*)?"
                            + "(?:(\\d{1,2}(?:[.,]\\d+)?)\\s*(?:\"|\u2033|''|s)?\\s*)?([NSEWnsew]?)");

    private SpeltDegrees() {}

    /** Decimal degrees, south and west negative; NaN if the text is no such thing. */
    static double parse(String text) {
        Matcher m = SPELT.matcher(text.strip());
        if (!m.matches()) {
            return Double.NaN;
        }
        double minutes = part(m.group(3));
        double seconds = part(m.group(4));
        if (minutes >= 60 || seconds >= 60) {
            return Double.NaN;
        }
        double degrees = part(m.group(2)) + minutes / 60 + seconds / 3600;
        String signs = (m.group(1) + m.group(5)).toUpperCase(java.util.Locale.ROOT);
        return signs.contains("S") || signs.contains("W") || signs.contains("-")
                ? -degrees
                : degrees;
    }

    private static double part(@org.jspecify.annotations.Nullable String digits) {
        return digits == null ? 0 : Numbers.parse(digits.replace(',', '.'));
    }
}
