package pairdown.report;

import pairdown.words.Measure;

/**
 * One figure on the page, and where in {@code debrief.json} it comes from.
 *
 * @param shown as a reader sees it, with its uncertainty and unit
 * @param from JSON pointer to the value; empty where the text stands for a missing value
 * @param measure what kind of quantity it is, by name; empty for plain numbers and words
 */
public record Fact(String shown, String from, String measure) {
    static Fact of(String shown, String from, Measure measure) {
        return new Fact(shown, from, measure.name());
    }

    static Fact word(String shown, String from) {
        return new Fact(shown, from, "");
    }

    static Fact missing(String shown) {
        return new Fact(shown, "", "");
    }
}
