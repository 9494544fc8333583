package pairdown.format.csv;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
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
                column(headings, Set.of("lat", "latitude"), Set.of("n s", "ns")),
                column(headings, Set.of("lon", "long", "longitude"), Set.of("e w", "ew")));
    }

    private static int column(List<Heading> headings, Set<String> degrees, Set<String> letters) {
        return IntStream.range(0, headings.size())
                .filter(i -> isOne(headings.get(i).text(), degrees, letters))
                .findFirst()
                .orElse(-1);
    }

    /** "N/S", "NS", "Lat N/S", "latitude hemisphere". */
    private static boolean isOne(String text, Set<String> degrees, Set<String> letters) {
        List<String> words = Heading.words(text);
        boolean named =
                words.stream().anyMatch(degrees::contains)
                        && words.stream().anyMatch(SIDE::contains);
        String rest =
                words.stream()
                        .filter(w -> !degrees.contains(w) && !SIDE.contains(w))
                        .collect(Collectors.joining(" "));
        return rest.isEmpty() ? named : letters.contains(rest);
    }

    boolean has(int column) {
        return column == latitude || column == longitude;
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
