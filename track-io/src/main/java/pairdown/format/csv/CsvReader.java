package pairdown.format.csv;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import pairdown.format.source.ByteLines;
import pairdown.format.source.LogSource;
import pairdown.format.source.Notes;
import pairdown.format.source.Numbers;
import pairdown.format.source.Rows;
import pairdown.format.source.Text;
import pairdown.time.IsoTime;
import pairdown.track.Channel;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** Reads the rows of a CSV log whose layout is known. */
final class CsvReader {
    private static final Set<String> MISSING =
            Set.of("", "nan", "null", "none", "n/a", "na", "-", "--", "---", "nil");

    private final Layout layout;
    private final Notes notes = new Notes();
    private final Rows rows;
    private final Cells cells;
    private final byte decimalMark;
    private final ValueColumn[] columns;
    private final int latitude;
    private final int longitude;
    private final LastCell lastCell = new LastCell();
    private final TornRows torn;

    /** Whether the last record ends within a quoted text that goes on in the next line. */
    private boolean inText;

    CsvReader(LogSource source, Layout layout) {
        this.layout = layout;
        this.rows = new Rows(source, "csv", notes);
        this.cells = new Cells(layout.dialect().delimiter());
        this.torn = new TornRows(layout.width(), layout.dialect().decimalMark());
        this.decimalMark = layout.dialect().decimalMark();
        List<ValueColumn> values =
                layout.columns().stream()
                        .filter(c -> c.channel() != Channel.LATITUDE)
                        .filter(c -> c.channel() != Channel.LONGITUDE)
                        .toList();
        this.columns = values.toArray(ValueColumn[]::new);
        this.latitude = indexIn(layout.columns(), Channel.LATITUDE);
        this.longitude = indexIn(layout.columns(), Channel.LONGITUDE);
    }

    private static int indexIn(List<ValueColumn> columns, Channel channel) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).channel() == channel) {
                return i;
            }
        }
        return -1;
    }

    Track read(ByteLines lines) throws IOException, UnusableInputException {
        layout.warnings().forEach(notes::warn);
        while (lines.next()) {
            if (lines.number() >= layout.firstDataLine() && !lines.isBlank()) {
                line(lines);
            }
        }
        layout.time().warnings().forEach(notes::warn);
        if (layout.signOpen()) {
            VerticalSign.settle(rows, notes);
        }
        return rows.finish(layout.time().isAbsolute(), layout.datum());
    }

    private void line(ByteLines lines) {
        if (lines.isTooLong()) {
            notes.skip(lines.number(), "line too long for a record");
            return;
        }
        cells.split(lines);
        if (!lines.isWhole() && (cells.size() < layout.width() || lastCell.isCut(cells))) {
            notes.skip(lines.number(), "record cut short at the end of the file");
            return;
        }
        if (lines.hasAt(0, "#")) {
            return;
        }
        boolean alone = cells.size() == 1 && layout.width() > 2;
        long t_ns = alone ? IsoTime.NONE : layout.time().ns(cells);
        Optional<String> complaint =
                t_ns == IsoTime.NONE || cells.endInText()
                        ? Optional.empty()
                        : torn.complaint(cells);
        if (complaint.isPresent()) {
            notes.skip(lines.number(), complaint.get());
        } else if (t_ns != IsoTime.NONE) {
            rows.begin(t_ns, lines.number());
            values(lines.number());
            lastCell.remember(cells);
            inText = cells.endInText() && cells.size() >= layout.width();
        } else if (inText) {
            text(lines);
        } else if (alone) {
            notes.skip(lines.number(), () -> "no record: " + Text.quote(lines.text()));
        } else {
            notes.skip(lines.number(), layout.time()::complaint);
        }
    }

    /** A further line of a text in quotes, with which its record ends: nothing is lost by it. */
    private void text(ByteLines lines) {
        int quote = lines.text().indexOf('"');
        inText = quote < 0;
        if (quote >= 0 && !lines.text().substring(quote + 1).isBlank()) {
            notes.skip(lines.number(), () -> "no record: " + Text.quote(lines.text()));
        }
    }

    private void values(long line) {
        boolean placed = position(line);
        for (ValueColumn column : columns) {
            double value = cell(column, line);
            boolean ofPlace =
                    column.channel() == Channel.HEIGHT
                            || column.channel() == Channel.GEOID_SEPARATION;
            if (placed || !ofPlace || latitude < 0) {
                rows.set(column.channel(), value);
            }
        }
    }

    private boolean position(long line) {
        if (latitude < 0 || longitude < 0) {
            return false;
        }
        long lost = notes.skippedCount();
        double lat = degrees(latitude, layout.hemispheres().latitude(), line);
        double lon = degrees(longitude, layout.hemispheres().longitude(), line);
        if (Double.isNaN(lat) != Double.isNaN(lon) && notes.skippedCount() == lost) {
            notes.skip(
                    line,
                    () -> "half a position: no " + (Double.isNaN(lat) ? "latitude" : "longitude"));
        }
        if (Double.isNaN(lat) || Double.isNaN(lon)) {
            return false;
        }
        if (isNoFix()) {
            notes.skip(line, "no fix");
            return false;
        }
        return rows.position(lat, lon);
    }

    /** Whether a fix column says that there is none. */
    private boolean isNoFix() {
        for (ValueColumn column : columns) {
            if (column.channel() == Channel.FIX_TYPE && column.index() < cells.size()) {
                return fixType(cells.ascii(column.index())) == 0;
            }
        }
        return false;
    }

    private double degrees(int of, int letterColumn, long line) {
        ValueColumn column = layout.columns().get(of);
        double value = number(column);
        double degrees =
                Double.isNaN(value)
                        ? SpeltDegrees.parse(cells.text(column.index()))
                        : column.base(value);
        if (Double.isNaN(degrees)) {
            return complain(column, line);
        }
        if (letterColumn < 0) {
            return degrees;
        }
        double signed = Hemispheres.signed(degrees, cells.text(letterColumn));
        if (Double.isNaN(signed)) {
            notes.skip(
                    line,
                    () ->
                            column.name()
                                    + " on an unknown side: "
                                    + Text.quote(cells.text(letterColumn)));
        }
        return signed;
    }

    private double cell(ValueColumn column, long line) {
        double value = number(column);
        if (!Double.isNaN(value)) {
            return column.base(value);
        }
        if (column.channel() == Channel.FIX_TYPE) {
            return fixType(cells.ascii(column.index()));
        }
        if (cells.length(column.index()) == 0) {
            return Double.NaN;
        }
        double grouped = GroupedDigits.parse(cells.text(column.index()), layout.dialect());
        return Double.isNaN(grouped) ? complain(column, line) : column.base(grouped);
    }

    private double number(ValueColumn column) {
        int i = column.index();
        return i < cells.size()
                ? Numbers.parse(cells.bytes(), cells.from(i), cells.to(i), decimalMark)
                : Double.NaN;
    }

    private double complain(ValueColumn column, long line) {
        if (cells.length(column.index()) == 0) {
            return Double.NaN;
        }
        String text = cells.text(column.index());
        if (!MISSING.contains(text.toLowerCase(Locale.ROOT))) {
            notes.skip(line, () -> column.name() + " " + Text.quote(text) + " is no number");
        }
        return Double.NaN;
    }

    /** A fix type in digits or words, as {@link Channel#FIX_TYPE} counts them. */
    private static double fixType(String text) {
        String word = text.strip().toLowerCase(Locale.ROOT);
        return switch (word) {
            case "no fix", "nofix", "none", "no", "invalid", "v", "false", "0" -> 0;
            case "2d", "2d fix", "2d-fix" -> 2;
            case "3d", "3d fix", "3d-fix", "fix", "a", "valid", "true", "gps", "yes" -> 3;
            case "dgps", "differential", "3d dgps", "sbas" -> 4;
            case "rtk float", "float", "rtk-float" -> 5;
            case "rtk", "rtk fixed", "rtk-fixed", "fixed" -> 6;
            default -> Numbers.parse(word);
        };
    }

    /** Judges whether the last cell of a file without a last end-of-line is whole. */
    private static final class LastCell {
        private int length = -1;
        private int decimals = -1;

        void remember(Cells cells) {
            length = cells.length(cells.size() - 1);
            decimals = decimals(cells);
        }

        /** Shorter, or of fewer decimals, than the one before: cut, as far as anyone can tell. */
        boolean isCut(Cells cells) {
            int now = cells.length(cells.size() - 1);
            return length >= 0 && (decimals >= 0 ? decimals(cells) < decimals : now < length);
        }

        private static int decimals(Cells cells) {
            int last = cells.size() - 1;
            for (int i = cells.from(last); i < cells.to(last); i++) {
                if (cells.bytes()[i] == '.') {
                    return cells.to(last) - i;
                }
            }
            return -1;
        }
    }
}
