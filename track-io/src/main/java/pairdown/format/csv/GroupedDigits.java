package pairdown.format.csv;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairdown.format.source.Numbers;

/** Numbers whose thousands are set apart, as spreadsheets write them: {@code 12,500.5}. */
final class GroupedDigits {
    private static final Pattern COMMAS = Pattern.compile("([-+]?\\d{1,3}(?:,\\d{3})+)(\\.\\d+)?");
    private static final Pattern POINTS = Pattern.compile("([-+]?\\d{1,3}(?:\\.\\d{3})+)(,\\d+)?");

    private GroupedDigits() {}

    /**
     * The number, or NaN where it is none or could be another: {@code 12,500} is grouped only where
     * commas part the cells, so that it can't be a decimal comma.
     */
    static double parse(String text, Dialect dialect) {
        boolean points = dialect.decimalMark() == ',';
        Matcher m = (points ? POINTS : COMMAS).matcher(text);
        if (!m.matches()) {
            return Double.NaN;
        }
        String whole = m.group(1).replaceAll("[.,]", "");
        String decimals = m.group(2) == null ? "" : m.group(2).replace(',', '.');
        boolean plain =
                !decimals.isEmpty()
                        || dialect.delimiter() == ','
                        || m.group(1).length() - whole.length() > 1;
        return plain ? Numbers.parse(whole + decimals) : Double.NaN;
    }
}
