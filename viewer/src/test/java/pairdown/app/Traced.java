package pairdown.app;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    /** What the file says this should read; empty where the file has no such value. */
    Optional<String> wanted(JsonNode debrief, Words words, Figures figures) {
        JsonNode first = debrief.at(from.split(" ", -1)[0]);
        if (first.isMissingNode()) {
            return Optional.empty();
        }
        return Optional.of(
                switch (form) {
                    case "TIME" -> first.asText().substring(11, 23);
                    case "COUNT" -> String.valueOf(first.isArray() ? first.size() : first.asLong());
                    default ->
                            form.endsWith(".")
                                    ? words.get(form + first.asText())
                                    : measured(debrief, figures);
                });
    }

    private String measured(JsonNode debrief, Figures figures) {
        double value = 0;
        for (String term : from.split(" ", -1)) {
            boolean minus = term.startsWith("-");
            double v = debrief.at(term.replaceFirst("^[+-]", "")).asDouble(Double.NaN);
            value += minus ? -v : v;
        }
        double spread = sigma.isEmpty() ? Double.NaN : debrief.at(sigma).asDouble(Double.NaN);
        return figures.add(new Line(), Measure.valueOf(form), value, spread).toString();
    }

    /** Differences carry a plus, which a value of the file does not. */
    String shownUnsigned() {
        return shown.replaceFirst("^\\+", "");
    }
}
