package pairdown.track;

import java.util.List;

/**
 * How a log was read.
 *
 * @param file name as the attempt or the user gave it
 * @param format one of {@code gpx igc nmea kml geojson csv}
 * @param skippedCount all records not used, however many examples are kept
 * @param skipped the first of them (at most {@link #MAX_EXAMPLES}), in file order
 * @param losses all of them by kind, each with its first record, in file order
 * @param warnings what a reader of the results must know: assumptions made, dates mended, rows
 *     re-ordered
 * @param events what the log itself marks
 */
public record LogReport(
        String file,
        String format,
        long skippedCount,
        List<Skipped> skipped,
        List<Loss> losses,
        List<String> warnings,
        List<LogEvent> events) {
    /** The summary stays short when thousands of records are lost. */
    public static final int MAX_EXAMPLES = 20;

    /**
     * Records not used for reasons that differ in no word.
     *
     * @param first the first of them
     * @param count how many there are
     */
    public record Loss(Skipped first, long count) {}

    public LogReport {
        skipped = List.copyOf(skipped);
        losses = List.copyOf(losses);
        warnings = List.copyOf(warnings);
        events = List.copyOf(events);
    }

    /** The report of a log that lost nothing. */
    public static LogReport whole(String file, String format) {
        return new LogReport(file, format, 0, List.of(), List.of(), List.of(), List.of());
    }

    /** The same with other warnings. */
    public LogReport withWarnings(List<String> others) {
        return new LogReport(file, format, skippedCount, skipped, losses, others, events);
    }
}
