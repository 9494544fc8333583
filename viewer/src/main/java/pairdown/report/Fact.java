package pairdown.report;

/**
 * One figure on the page, and how it comes out of {@code debrief.json}: a reader or a test can
 * follow it back.
 *
 * @param shown as a reader sees it, with its uncertainty and unit
 * @param from JSON pointer to the value; two of them, the second led by {@code +} or {@code -},
 *     where it is a sum or a difference; empty where the text stands for a missing value
 * @param sigma JSON pointer to its standard deviation; empty where none is shown
 * @param form how the value becomes the text: a measure's name, {@code TIME}, {@code COUNT}, or the
 *     beginning of the key of a word
 */
public record Fact(String shown, String from, String sigma, String form) {
    static final String TIME = "TIME";
    static final String COUNT = "COUNT";

    static Fact missing(String shown) {
        return new Fact(shown, "", "", "");
    }
}
