package pairdown.theme;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Gives participants the palette's colours so that one whose name is a colour has that colour: a
 * flyer called blue drawn in orange would be taken for another. The rest get what is left, in
 * order.
 */
final class NamedColours {
    /** Places in the palette's list, by the colour seen there. */
    private static final int BLUE = 0;

    private static final int RED = 1;
    private static final int GREEN = 2;
    private static final int PINK = 3;
    private static final int GOLD = 4;
    private static final int SKY = 5;
    private static final int INK = 6;
    private static final int YELLOW = 7;

    /** The places that suit a word, the best first. */
    private static final Map<String, List<Integer>> SUITING =
            Map.ofEntries(
                    // One colour in all attempts, whoever flew in them.
                    Map.entry("lead", List.of(RED)),
                    Map.entry("blue", List.of(BLUE, SKY)),
                    Map.entry("navy", List.of(BLUE)),
                    Map.entry("cobalt", List.of(BLUE)),
                    Map.entry("indigo", List.of(BLUE)),
                    Map.entry("sky", List.of(SKY)),
                    Map.entry("cyan", List.of(SKY)),
                    Map.entry("azure", List.of(SKY, BLUE)),
                    Map.entry("turquoise", List.of(SKY, GREEN)),
                    Map.entry("teal", List.of(GREEN, SKY)),
                    Map.entry("red", List.of(RED)),
                    Map.entry("scarlet", List.of(RED)),
                    Map.entry("crimson", List.of(RED)),
                    Map.entry("ruby", List.of(RED)),
                    Map.entry("orange", List.of(RED, GOLD)),
                    Map.entry("green", List.of(GREEN)),
                    Map.entry("emerald", List.of(GREEN)),
                    Map.entry("jade", List.of(GREEN)),
                    Map.entry("lime", List.of(GREEN, YELLOW)),
                    Map.entry("pink", List.of(PINK)),
                    Map.entry("rose", List.of(PINK)),
                    Map.entry("purple", List.of(PINK)),
                    Map.entry("violet", List.of(PINK)),
                    Map.entry("magenta", List.of(PINK)),
                    Map.entry("lilac", List.of(PINK)),
                    Map.entry("amber", List.of(GOLD, YELLOW)),
                    Map.entry("gold", List.of(GOLD, YELLOW)),
                    Map.entry("ochre", List.of(GOLD, YELLOW)),
                    Map.entry("yellow", List.of(YELLOW, GOLD)),
                    Map.entry("olive", List.of(YELLOW, GREEN)));

    private final boolean[] taken;

    private NamedColours(int count) {
        this.taken = new boolean[count];
    }

    /**
     * Colours for participants in the order of their names; as many more as the palette has follow,
     * so that numbers beyond go on round.
     */
    static List<Integer> of(List<String> names, List<Integer> colours, boolean isDark) {
        NamedColours giving = new NamedColours(colours.size());
        List<Optional<Integer>> byName = new ArrayList<>();
        for (String name : names) {
            byName.add(giving.suiting(name, isDark));
        }
        while (byName.size() < colours.size()) {
            byName.add(Optional.empty());
        }
        for (int i = 0; i < byName.size(); i++) {
            if (byName.get(i).isEmpty()) {
                byName.set(i, Optional.of(giving.next(ofTheSameShape(byName, i))));
            }
        }
        return byName.stream().map(place -> colours.get(place.orElseThrow())).toList();
    }

    /** Two of one shape must not have one colour as well: nothing would tell them apart. */
    private static Set<Integer> ofTheSameShape(List<Optional<Integer>> places, int number) {
        Set<Integer> there = new HashSet<>();
        for (int i = 0; i < places.size(); i++) {
            if (Marker.of(i) == Marker.of(number)) {
                places.get(i).ifPresent(there::add);
            }
        }
        return there;
    }

    private Optional<Integer> suiting(String name, boolean isDark) {
        String[] words = name.toLowerCase(Locale.ROOT).split("[^a-z]+", -1);
        return Arrays.stream(words)
                .flatMap(w -> places(w, isDark).stream())
                .filter(place -> place < taken.length && !taken[place])
                .findFirst()
                .map(this::take);
    }

    /** Ink is black on light and white on dark, so each of these two words suits one of them. */
    private static List<Integer> places(String word, boolean isDark) {
        if (word.equals(isDark ? "white" : "black")) {
            return List.of(INK);
        }
        return SUITING.getOrDefault(word, List.of());
    }

    /** The next free place; when all are taken, round again. */
    private int next(Set<Integer> other) {
        for (int round = 0; round < 2; round++) {
            for (int place = 0; place < taken.length; place++) {
                if (!taken[place] && !other.contains(place)) {
                    return take(place);
                }
            }
            Arrays.fill(taken, false);
        }
        return take(0);
    }

    private int take(int place) {
        taken[place] = true;
        return place;
    }
}
