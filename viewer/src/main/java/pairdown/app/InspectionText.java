package pairdown.app;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pairdown.geodesy.Geodetic;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Flight;
import pairdown.track.HeightDatum;
import pairdown.track.LogReport;
import pairdown.track.Skipped;
import pairdown.track.Track;

/** An inspection in lines for people. */
final class InspectionText {
    private static final DateTimeFormatter DAY_TIME =
            DateTimeFormatter.ofPattern("d MMMM uuuu HH:mm:ss.SSS", Locale.ROOT)
                    .withZone(ZoneOffset.UTC);
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("HH:mm:ss.SSS", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final int SHOWN = 5;

    private InspectionText() {}

    static String of(String file, Inspection log) {
        List<String> lines = new ArrayList<>();
        lines.add(file);
        lines.add(what(log));
        lines.add(when(log));
        log.firstFix().ifPresent(fix -> lines.add(where(fix, log)));
        if (log.firstFix().isPresent()) {
            lines.add(heights(log));
        }
        lines.add("has " + String.join(", ", channels(log)));
        flights(lines, log);
        gaps(lines, log);
        skipped(lines, log);
        log.report().warnings().forEach(w -> lines.add("note: " + w));
        return String.join(System.lineSeparator() + "  ", lines);
    }

    private static String what(Inspection log) {
        String format = log.report().format().toUpperCase(Locale.ROOT);
        String rate = log.rate_Hz().isPresent() ? ", " + rate(log.rate_Hz().getAsDouble()) : "";
        return log.fixes() > 0
                ? format + " log, " + count(log.fixes(), "fix", "fixes") + rate
                : format + " log without positions, " + count(log.rows(), "row", "rows") + rate;
    }

    private static String rate(double rate_Hz) {
        return rate_Hz >= 0.95
                ? plain(rate_Hz) + " a second"
                : "one every " + plain(1 / rate_Hz) + " s";
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
    }

    private static String when(Inspection log) {
        String length = "(" + duration(log.span_s()) + ")";
        Optional<Instant> start = log.start();
        Optional<Instant> end = log.end();
        if (start.isEmpty() || end.isEmpty()) {
            return "no absolute time; " + duration(log.span_s()) + " on its own clock";
        }
        boolean sameDay = DAY.format(start.get()).equals(DAY.format(end.get()));
        return DAY_TIME.format(start.get())
                + " to "
                + (sameDay ? TIME : DAY_TIME).format(end.get())
                + " UTC "
                + length;
    }

    private static String duration(double seconds) {
        long whole = Math.round(seconds);
        if (whole < 120) {
            return plain(seconds) + " s";
        }
        return whole < 7200
                ? whole / 60 + " min " + whole % 60 + " s"
                : whole / 3600 + " h " + whole % 3600 / 60 + " min";
    }

    private static String where(Geodetic fix, Inspection log) {
        String place =
                String.format(Locale.ROOT, "%.6f, %.6f", fix.latitude_deg(), fix.longitude_deg());
        return "first fix: "
                + place
                + (log.firstFixHasHeight() ? height(fix, log) : ", without a height");
    }

    private static String height(Geodetic fix, Inspection log) {
        return String.format(
                Locale.ROOT,
                ", %.1f m above sea level (%.1f m above the ellipsoid)",
                fix.height_m() - log.geoidSeparation_m().orElse(0),
                fix.height_m());
    }

    private static String heights(Inspection log) {
        if (!log.track().has(Channel.HEIGHT)) {
            return "heights: none" + seaLevel(log.geoidSeparation_m().orElse(Double.NaN));
        }
        HeightDatum datum = log.track().datum();
        String from =
                switch (datum) {
                    case ELLIPSOID -> "above the ellipsoid";
                    case MSL -> "above sea level";
                    case UNKNOWN -> "not said from what, taken as above sea level";
                };
        return "heights: " + from + seaLevel(log.geoidSeparation_m().orElse(Double.NaN));
    }

    private static String seaLevel(double separation_m) {
        return Double.isNaN(separation_m)
                ? ""
                : String.format(
                        Locale.ROOT,
                        "; sea level is %.1f m %s the ellipsoid there",
                        Math.abs(separation_m),
                        separation_m < 0 ? "below" : "above");
    }

    /** Channels as people call them: the key's words without its unit, the two degrees as one. */
    private static List<String> channels(Inspection log) {
        return log.channels().stream()
                .filter(key -> !key.equals(Channel.LONGITUDE.key()))
                .map(key -> key.equals(Channel.LATITUDE.key()) ? "position" : inWords(key))
                .toList();
    }

    private static String inWords(String key) {
        return key.replaceFirst("_\\w+$", "").replaceAll("(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    private static void flights(List<String> lines, Inspection log) {
        if (log.flights().size() > 1) {
            lines.add(log.flights().size() + " flights in this file:");
            for (Flight flight : log.flights()) {
                Track track = log.track();
                lines.add(
                        "  "
                                + span(
                                        track,
                                        track.time_s(flight.fromRow()),
                                        track.time_s(flight.toRow() - 1))
                                + ", "
                                + track.fixes(flight.fromRow(), flight.toRow())
                                + " fixes");
            }
        }
    }

    private static void gaps(List<String> lines, Inspection log) {
        List<Span> gaps = log.gaps();
        if (gaps.isEmpty()) {
            lines.add("no gaps");
            return;
        }
        double missing_s = gaps.stream().mapToDouble(Span::duration_s).sum();
        String together = gaps.size() > 1 ? ", " + duration(missing_s) + " together" : "";
        String order = gaps.size() > SHOWN ? ", the longest:" : ":";
        lines.add(count(gaps.size(), "gap", "gaps") + together + order);
        for (Span gap : longest(gaps)) {
            String length = " (" + duration(gap.duration_s()) + ")";
            lines.add("  " + span(log.track(), gap.start_s(), gap.end_s()) + length);
        }
        more(lines, gaps.size(), SHOWN);
    }

    /** The longest of them, in order of time. */
    private static List<Span> longest(List<Span> gaps) {
        return gaps.stream()
                .sorted(Comparator.comparingDouble(Span::duration_s).reversed())
                .limit(SHOWN)
                .sorted(Comparator.comparingDouble(Span::start_s))
                .toList();
    }

    private static String span(Track track, double from_s, double to_s) {
        Optional<Instant> from = Inspection.instant(track, from_s);
        Optional<Instant> to = Inspection.instant(track, to_s);
        return from.isPresent() && to.isPresent()
                ? TIME.format(from.get()) + " to " + TIME.format(to.get())
                : plain(from_s) + " s to " + plain(to_s) + " s";
    }

    private static void skipped(List<String> lines, Inspection log) {
        long count = log.report().skippedCount();
        if (count == 0) {
            lines.add("nothing skipped");
            return;
        }
        lines.add("not used: " + count(count, "record or value", "records or values"));
        long told = 0;
        for (LogReport.Loss loss : log.report().losses()) {
            Skipped first = loss.first();
            String others = loss.count() > 1 ? " (and " + (loss.count() - 1) + " alike)" : "";
            String where = first.line() > 0 ? "line " + first.line() + ": " : "";
            lines.add("  " + where + first.reason() + others);
            told += loss.count();
        }
        more(lines, count, told);
    }

    private static void more(List<String> lines, long count, long shown) {
        if (count > shown) {
            lines.add("  and " + (count - shown) + " more");
        }
    }

    private static String count(long n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }
}
