package pairdown.report;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A sentence whose figures are facts. Public for the template engine's sake.
 *
 * @param parts in the order they are read: words, and figures between them
 */
public record Prose(List<Fact> parts) {
    public Prose {
        parts = List.copyOf(parts);
    }

    static Prose of(Fact fact) {
        return new Prose(List.of(fact));
    }

    static Prose words(String text) {
        return of(Fact.words(text));
    }

    /** As a reader sees it. */
    public String text() {
        return parts.stream().map(Fact::shown).collect(Collectors.joining());
    }
}
