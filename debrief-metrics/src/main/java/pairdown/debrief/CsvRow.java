package pairdown.debrief;

import java.io.IOException;
import java.io.Writer;
import java.util.Locale;

/** Builds one row of a CSV file after another, without an object for each cell. */
final class CsvRow {
    private static final long[] POWERS = {
        1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000, 1_000_000_000
    };

    private final Writer out;
    private final StringBuilder row = new StringBuilder(256);
    private boolean first = true;

    CsvRow(Writer out) {
        this.out = out;
    }

    private void comma() {
        if (!first) {
            row.append(',');
        }
        first = false;
    }

    /** A cell of plain text without comma or quote. */
    void text(String text) {
        comma();
        row.append(text);
    }

    /**
     * A number with at most {@code decimals} places (up to 9), or an empty cell where it is not
     * finite.
     */
    void number(double value, int decimals) {
        comma();
        if (!Double.isFinite(value)) {
            return;
        }
        double scaled = value * POWERS[decimals];
        if (Math.abs(scaled) > 1e15) {
            row.append(String.format(Locale.ROOT, "%s", value));
            return;
        }
        long n = Math.round(scaled);
        if (n < 0) {
            row.append('-');
            n = -n;
        }
        row.append(n / POWERS[decimals]);
        long fraction = n % POWERS[decimals];
        if (fraction != 0) {
            row.append('.');
            for (int d = decimals - 1; d >= 0 && fraction != 0; d--) {
                row.append((char) ('0' + fraction / POWERS[d]));
                fraction %= POWERS[d];
            }
        }
    }

    /** 1 or 0, or an empty cell where it is not finite. */
    void flag(double value) {
        comma();
        if (Double.isFinite(value)) {
            row.append(value > 0.5 ? '1' : '0');
        }
    }

    void end() throws IOException {
        row.append('\n');
        out.append(row);
        row.setLength(0);
        first = true;
    }
}
