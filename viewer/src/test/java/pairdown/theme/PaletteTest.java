package pairdown.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PaletteTest {
    static List<Palette> palettes() {
        return List.of(Palette.LIGHT, Palette.DARK);
    }

    /** WCAG 2.1, definition of contrast ratio: black on white is 21, equal colours 1. */
    @Test
    void contrastIsThatOfTheWebGuidelines() {
        assertEquals(21, Contrast.ratio(0x000000FF, 0xFFFFFFFF), 1e-9);
        assertEquals(1, Contrast.ratio(0x123456FF, 0x123456FF), 1e-9);
        // #767676 is the grey usually named as the lightest with 4.5 on white.
        assertTrue(Contrast.ratio(0x767676FF, 0xFFFFFFFF) >= 4.5);
        assertTrue(Contrast.ratio(0x777777FF, 0xFFFFFFFF) < 4.5);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void textStandsOutSevenToOneOnEveryGroundItStandsOn(Palette palette) {
        for (int ink : List.of(palette.ink(), palette.inkSoft())) {
            for (int ground :
                    List.of(
                            palette.paper(),
                            palette.panel(),
                            palette.control(),
                            palette.chosen())) {
                assertTrue(
                        Contrast.ratio(ink, ground) >= 7,
                        () ->
                                String.format(
                                        "%08X on %08X: %.2f",
                                        ink, ground, Contrast.ratio(ink, ground)));
            }
        }
    }

    /** WCAG 2.1, criterion 1.4.11: parts of graphics 3 to 1 at least. */
    @ParameterizedTest
    @MethodSource("palettes")
    void curvesAndEdgesStandOutThreeToOne(Palette palette) {
        for (int colour : palette.participants()) {
            assertTrue(
                    Contrast.ratio(colour, palette.paper()) >= 3,
                    () -> String.format("%08X", colour));
        }
        assertTrue(Contrast.ratio(palette.limit(), palette.paper()) >= 3);
        assertTrue(Contrast.ratio(palette.edge(), palette.paper()) >= 3);
        assertTrue(Contrast.ratio(palette.now(), palette.paper()) >= 7);
    }

    @ParameterizedTest
    @MethodSource("palettes")
    void eightParticipantsDifferInColourAndInShape(Palette palette) {
        HashSet<Integer> colours = new HashSet<>();
        HashSet<Marker> shapes = new HashSet<>();
        for (int i = 0; i < 8; i++) {
            colours.add(palette.participant(i));
            shapes.add(Marker.of(i));
        }
        assertEquals(8, colours.size());
        assertEquals(8, shapes.size());
    }
}
