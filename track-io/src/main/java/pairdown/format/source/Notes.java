package pairdown.format.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import pairdown.track.LogEvent;
import pairdown.track.LogReport;
import pairdown.track.LogReport.Loss;
import pairdown.track.Skipped;

/** Collects what a reader must say about a log: what was not used, and what to bear in mind. */
public final class Notes {
    private static final int MAX_EVENTS = 1000;

    /** Losses beyond these are counted without a reason: nobody reads so many. */
    private static final long MAX_REASONS = 10_000;

    private static final int MAX_KINDS = 20;
    private static final int MAX_WARNINGS = 50;

    /** An event whose instant is still in nanoseconds of the reader's own axis. */
    record RawEvent(long t_ns, String text) {}

    private final List<Skipped> examples = new ArrayList<>();
    private final Map<String, Loss> kinds = new LinkedHashMap<>();
    private final Set<String> warnings = new LinkedHashSet<>();
    private final List<RawEvent> events = new ArrayList<>();
    private long skipped;

    /** A record not used, or a part of one. */
    public void skip(long line, String reason) {
        skipped++;
        Skipped one = new Skipped(line, reason);
        if (examples.size() < LogReport.MAX_EXAMPLES) {
            examples.add(one);
        }
        String kind = kind(reason);
        if (kinds.containsKey(kind) || kinds.size() < MAX_KINDS) {
            kinds.merge(
                    kind, new Loss(one, 1), (a, b) -> new Loss(a.first(), a.count() + b.count()));
        }
    }

    /** A reason without its numbers and quotations, which make each its own. */
    private static String kind(String reason) {
        StringBuilder words = new StringBuilder(reason.length());
        boolean quoted = false;
        for (int i = 0; i < reason.length(); i++) {
            char c = reason.charAt(i);
            quoted ^= c == '\'';
            if (!quoted && Character.isLetter(c)) {
                words.append(c);
            }
        }
        return words.toString();
    }

    /** The same, its reason made only while somebody might still look at it. */
    public void skip(long line, Supplier<String> reason) {
        if (skipped < MAX_REASONS) {
            skip(line, reason.get());
        } else {
            skipped++;
        }
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
                file,
                format,
                skipped,
                examples,
                kinds.values().stream()
                        .sorted(Comparator.comparingLong(loss -> loss.first().line()))
                        .toList(),
                List.copyOf(warnings),
                onTrack);
    }
}
