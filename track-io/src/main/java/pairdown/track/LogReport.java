package pairdown.track;

import java.util.List;

/**
 * How a log was read.
 *
 * @param file name as the attempt or the user gave it
 * @param format one of {@code gpx igc nmea kml geojson csv}
 * @param skippedCount all records not used, however many examples are kept
 * @param skipped the first of them (at most {@link #MAX_EXAMPLES}), in file order
 * @param warnings what a reader of the results must know: assumptions made, dates mended, rows
 *     re-ordered
 * @param events what the log itself marks
 */
public record LogReport(
        String file,
        String format,
        long skippedCount,
        List<Skipped> skipped,
        List<String> warnings,
        List<LogEvent> events) {
    /** The summary stays short when thousands of records are lost. */
    public static final int MAX_EXAMPLES = 20;

    public LogReport {
        skipped = List.copyOf(skipped);
        warnings = List.copyOf(warnings);
        events = List.copyOf(events);
    }
}
