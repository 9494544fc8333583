package pairdown.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class NamedColoursTest {
    private static final int BLUE = Palette.LIGHT.participant(0);
    private static final int GOLD = Palette.LIGHT.participant(4);

    private static List<Integer> colours(Palette palette, int count) {
        return IntStream.range(0, count).mapToObj(palette::participant).toList();
    }

    @Test
    void aNameThatIsAColourHasIt() {
        Palette palette = Palette.LIGHT.forNames(List.of("lead", "ship", "Blue-2", "amber"));
        assertEquals(BLUE, palette.participant(2));
        assertEquals(GOLD, palette.participant(3));
        assertNotEquals(BLUE, palette.participant(0));
    }

    @Test
    void twoOfOneColourAreStillToldApart() {
        Palette palette = Palette.LIGHT.forNames(List.of("blue", "blue 2", "blue 3"));
        assertEquals(3, new HashSet<>(colours(palette, 3)).size());
        assertEquals(BLUE, palette.participant(0));
    }

    @Test
    void withoutColoursInNamesNothingChanges() {
        List<String> names = List.of("ship", "one", "two", "redwood");
        assertEquals(Palette.DARK.participants(), Palette.DARK.forNames(names).participants());
    }

    @Test
    void theLeadLooksTheSameInEveryAttempt() {
        int alone = Palette.LIGHT.forNames(List.of("lead")).participant(0);
        assertEquals(alone, Palette.LIGHT.forNames(List.of("lead", "blue")).participant(0));
        assertEquals(alone, Palette.LIGHT.forNames(List.of("one", "two", "lead")).participant(2));
    }

    @Test
    void allOfTheFirstEightDifferAndMoreGoOnRound() {
        List<String> names = List.of("green", "a", "b", "red", "c", "d", "e", "f", "g", "h");
        Palette palette = Palette.LIGHT.forNames(names);
        assertEquals(8, new HashSet<>(colours(palette, 8)).size());
        assertEquals(10, palette.participants().size());
    }

    /** White ink would not be seen on light paper, nor black on dark. */
    @Test
    void blackAndWhiteAreInkWhereInkIsThatColour() {
        assertEquals(
                Palette.LIGHT.participant(6),
                Palette.LIGHT.forNames(List.of("black")).participant(0));
        assertEquals(
                Palette.DARK.participant(6),
                Palette.DARK.forNames(List.of("white")).participant(0));
        assertNotEquals(
                Palette.LIGHT.participant(6),
                Palette.LIGHT.forNames(List.of("white")).participant(0));
    }

    /** Eight shapes and eight colours: none of a large crowd is another's double. */
    @Test
    void noTwoOfACrowdShareColourAndShape() {
        List<String> names =
                List.of(
                        "lead", "ship", "blue", "amber", "green", "white", "violet", "red", "teal",
                        "grey", "lime", "rose", "sand", "plum", "kim", "lee", "max", "noa", "ola",
                        "pia", "rio", "sam", "tom", "uma", "vic", "wim", "xia", "yan", "zoe", "ann",
                        "bob", "cas", "dan", "eve", "fay", "gus", "hal", "ida", "jan", "kit");
        for (Palette palette : List.of(Palette.LIGHT, Palette.DARK)) {
            Palette given = palette.forNames(names);
            Set<String> seen = new HashSet<>();
            for (int i = 0; i < names.size(); i++) {
                String look = Marker.of(i) + " " + given.participant(i);
                assertTrue(seen.add(look), names.get(i) + " is a double: " + look);
            }
        }
    }
}
