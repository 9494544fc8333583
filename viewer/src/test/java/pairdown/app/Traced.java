package pairdown.app;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairdown.words.Figures;
import pairdown.words.Line;
import pairdown.words.Measure;
import pairdown.words.Words;

/**
 * A figure of the report's page, and what {@code debrief.json} says it should read. Written anew
 * from the meaning of the page's attributes, so that the report's own code can't agree with itself.
 */
record Traced(String shown, String from, String sigma, String form) {
    private static final Pattern FACT =
            Pattern.compile(
                    "<span class=\"fact\" data-from=\"([^\"]+)\" data-sigma=\"([^\"]*)\""
                            + " data-form=\"([^\"]*)\">([^<]*)</span>");

    private static final DateTimeFormatter CLOCK =
            DateTimeFormatter.ofPattern("HH:mm:ss.SSS", Locale.ROOT).withZone(ZoneOffset.UTC);

    /** All figures on a page or a part of it. */
    static List<Traced> on(String page) {
        List<Traced> found = new ArrayList<>();
        Matcher m = FACT.matcher(page);
        while (m.find()) {
            found.add(
                    new Traced(
                            m.group(4).replace("&#39;", "'"), m.group(1), m.group(2), m.group(3)));
        }
        return found;
    }

    /**
     * What the file says this should read: more than one where the file's own rounding leaves the
     * last digit open; none where the file has no such value.
     */
    Set<String> wanted(JsonNode debrief, Words words, Figures figures) {
        JsonNode first = first(debrief);
        if (first.isMissingNode()) {
            return Set.of();
        }
        return switch (form) {
            case "TIME" -> clocks(first.asText(), debrief);
            case "COUNT" -> Set.of(String.valueOf(first.isArray() ? first.size() : first.asLong()));
            case "PROBABILITY" ->
                    Set.of(
                            first.asDouble() < 0.005
                                    ? words.get("report.under", figures.number(Measure.RATIO, 0.01))
                                    : figures.number(Measure.RATIO, first.asDouble()));
            case "BARE" ->
                    Set.of(
                            String.format(words.locale(), "%.0f", first.asDouble())
                                    .replaceFirst("^-0$", "0")
                                    .replace('-', Line.MINUS));
            case "TENTHS" -> Set.of(String.format(words.locale(), "%.1f", first.asDouble()));
            default ->
                    form.endsWith(".")
                            ? Set.of(words.get(form + first.asText()))
                            : measured(debrief, figures);
        };
    }

    /** To the tenth, or to the second where the instant's own sigma reads as one or more. */
    private Set<String> clocks(String instant, JsonNode debrief) {
        boolean whole = !sigma.isEmpty() && debrief.at(sigma).asDouble() >= 0.95;
        long part_ms = whole ? 1000 : 100;
        Set<String> readings = new HashSet<>();
        for (int open_ms = -1; open_ms <= 1; open_ms++) {
            long ms = Instant.parse(instant).toEpochMilli() + open_ms;
            Instant rounded =
                    Instant.ofEpochMilli(Math.floorDiv(ms + part_ms / 2, part_ms) * part_ms);
            readings.add(CLOCK.format(rounded).substring(0, whole ? 8 : 10));
        }
        return readings;
    }

    private Set<String> measured(JsonNode debrief, Figures figures) {
        double value = 0;
        for (String term : from.split(" ", -1)) {
            double v = number(debrief.at(term.replaceFirst("^[+|-]", "")));
            value += term.startsWith("-") ? -v : term.startsWith("|") ? Math.abs(v) : v;
        }
        double spread = sigma.isEmpty() ? Double.NaN : debrief.at(sigma).asDouble(Double.NaN);
        // Numbers are rounded to the fourth decimal, times to the millisecond.
        double open = first(debrief).isTextual() ? 1e-3 : 1e-4;
        Set<String> readings = new HashSet<>();
        for (double v : new double[] {value - open, value, value + open}) {
            for (double s : new double[] {spread - open, spread, spread + open}) {
                readings.add(figures.add(new Line(), Measure.valueOf(form), v, s).toString());
            }
        }
        return readings;
    }

    private JsonNode first(JsonNode debrief) {
        return debrief.at(from.split(" ", -1)[0].replaceFirst("^\\|", ""));
    }

    /** A number, or an instant in seconds. */
    private static double number(JsonNode node) {
        return node.isTextual()
                ? Instant.parse(node.asText()).toEpochMilli() / 1e3
                : node.asDouble(Double.NaN);
    }

    /** Differences carry a plus, which a value of the file does not. */
    String shownUnsigned() {
        return shown.replaceFirst("^\\+", "");
    }
}
