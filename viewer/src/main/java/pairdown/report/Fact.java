package pairdown.report;

/**
 * One figure on the page, and how it comes out of {@code debrief.json}: a reader or a test can
 * follow it back.
 *
 * @param shown as a reader sees it, with its uncertainty and unit
 * @param from JSON pointer to the value; two of them, the second led by {@code +} or {@code -},
 *     where it is a sum or a difference; led by {@code |} where its sign is told in words; empty
 *     where the text stands for a missing value or for no value
 * @param sigma JSON pointer to its standard deviation; empty where none is shown
 * @param form how the value becomes the text: a measure's name, {@code TIME}, {@code COUNT}, {@code
 *     BARE} and {@code TENTHS} for a number to the whole or the tenth, the beginning of the key of
 *     a word, or {@code WORDS} where there is no value
 */
public record Fact(String shown, String from, String sigma, String form) {
    static final String TIME = "TIME";
    static final String PROBABILITY = "PROBABILITY";
    static final String COUNT = "COUNT";
    static final String BARE = "BARE";
    static final String TENTHS = "TENTHS";
    private static final String WORDS = "WORDS";

    /** Words between figures. */
    static Fact words(String shown) {
        return new Fact(shown, "", "", WORDS);
    }

    static Fact missing(String shown) {
        return new Fact(shown, "", "", "");
    }
}
