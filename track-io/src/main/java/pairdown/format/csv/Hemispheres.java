package pairdown.format.csv;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Columns that say by a letter on which side of the equator and of Greenwich a place lies, where
 * the degrees themselves are without a sign.
 *
 * @param latitude column of N or S, −1 where there is none
 * @param longitude column of E or W, −1 where there is none
 */
record Hemispheres(int latitude, int longitude) {
    private static final Set<String> SIDE =
            Set.of("hemisphere", "hemi", "dir", "direction", "indicator", "ref", "side");

    /** The columns of letters among a header's. */
    static Hemispheres among(List<Heading> headings) {
        return new Hemispheres(
                column(headings, words -> isOne(words, "n", "s", Set.of("lat", "latitude"))),
                column(headings, words -> isOne(words, "e", "w", Set.of("lon", "longitude"))));
    }

    private static int column(List<Heading> headings, Predicate<List<String>> isOne) {
        return IntStream.range(0, headings.size())
                .filter(i -> isOne.test(Heading.words(headings.get(i).text())))
                .findFirst()
                .orElse(-1);
    }

    boolean has(int column) {
        return column == latitude || column == longitude;
    }

    /** "N/S", "NS", "Lat N/S", "latitude hemisphere". */
    private static boolean isOne(List<String> words, String a, String b, Set<String> of) {
        boolean letters = words.contains(a + b) || (words.contains(a) && words.contains(b));
        boolean named =
                words.stream().anyMatch(of::contains) && words.stream().anyMatch(SIDE::contains);
        return letters || named;
    }

    /** Degrees with the sign of their letter; NaN if it is none of the two. */
    static double signed(double degrees, String letter) {
        return switch (letter.toUpperCase(java.util.Locale.ROOT)) {
            case "N", "E", "NORTH", "EAST" -> degrees;
            case "S", "W", "SOUTH", "WEST" -> -Math.abs(degrees);
            default -> Double.NaN;
        };
    }
}
