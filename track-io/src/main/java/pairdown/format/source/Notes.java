package pairdown.format.source;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pairdown.track.LogEvent;
import pairdown.track.LogReport;
import pairdown.track.Skipped;

/** Collects what a reader must say about a log: what was not used, and what to bear in mind. */
public final class Notes {
    private static final int MAX_EVENTS = 1000;
    private static final int MAX_WARNINGS = 50;

    /** An event whose instant is still in nanoseconds of the reader's own axis. */
    record RawEvent(long t_ns, String text) {}

    private final List<Skipped> examples = new ArrayList<>();
    private final Set<String> warnings = new LinkedHashSet<>();
    private final List<RawEvent> events = new ArrayList<>();
    private long skipped;

    /** A record not used, or a part of one. */
    public void skip(long line, String reason) {
        if (skipped++ < LogReport.MAX_EXAMPLES) {
            examples.add(new Skipped(line, reason));
        }
    }

    /** Whether a further reason would still be kept: spares making it. */
    public boolean wantsExamples() {
        return skipped < LogReport.MAX_EXAMPLES;
    }

    /** Counts a record not used whose reason nobody will see. */
    public void skipMore() {
        skipped++;
    }

    public long skippedCount() {
        return skipped;
    }

    /** The losses in brackets, the first with its reason; nothing where there are none. */
    String losses() {
        if (skipped == 0) {
            return "";
        }
        Skipped first = examples.get(0);
        String where = first.line() > 0 ? "line " + first.line() + ": " : "";
        return " (" + skipped + " skipped; " + where + first.reason() + ")";
    }

    /** What a reader of the results must know; said once however often it is noted. */
    public void warn(String text) {
        if (warnings.size() < MAX_WARNINGS) {
            warnings.add(text);
        }
    }

    /** Something the log marks, at nanoseconds of the same axis as its rows. */
    public void event(long t_ns, String text) {
        if (events.size() < MAX_EVENTS) {
            events.add(new RawEvent(t_ns, text));
        }
    }

    List<RawEvent> events() {
        return events;
    }

    LogReport report(String file, String format, List<LogEvent> onTrack) {
        return new LogReport(
                file, format, skipped, examples, List.copyOf(warnings), List.copyOf(onTrack));
    }
}
