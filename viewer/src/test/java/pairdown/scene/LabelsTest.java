package pairdown.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import pairdown.gl.Canvas;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;

class LabelsTest {
    private static final int WIDTH = 800;
    private static final int HEIGHT = 500;
    private static final List<Labels.Rank> RANKS =
            List.of(Labels.Rank.PARTICIPANT, Labels.Rank.PAIR, Labels.Rank.LIMIT, Labels.Rank.SLOT);
    private static final Theme THEME = new Theme(Palette.LIGHT, Sizes.atPercent(100));

    /** A rectangle on the picture. */
    private record Box(float left, float top, float right, float bottom) {
        boolean meets(Box other) {
            return left < other.right
                    && other.left < right
                    && top < other.bottom
                    && other.top < bottom;
        }
    }

    /** The plates behind the words that were drawn, and the words. */
    private static final class Drawn implements InvocationHandler {
        final List<Box> plates = new ArrayList<>();
        final List<String> words = new ArrayList<>();

        @Override
        @SuppressWarnings("NullAway") // verbs give nothing back
        public @Nullable Object invoke(Object proxy, Method verb, Object[] given) {
            switch (verb.getName()) {
                case "textWidth" -> {
                    return 0.55f * ((CharSequence) given[0]).length() * (float) given[2];
                }
                case "roundFill" ->
                        plates.add(
                                box(
                                        (float) given[0],
                                        (float) given[1],
                                        (float) given[2],
                                        (float) given[3]));
                case "text" -> words.add(given[0].toString());
                default -> {}
            }
            return null;
        }
    }

    private static Drawn drawn(Labels labels) {
        Drawn drawn = new Drawn();
        ClassLoader loader = Canvas.class.getClassLoader();
        Canvas canvas =
                (Canvas) Proxy.newProxyInstance(loader, new Class<?>[] {Canvas.class}, drawn);
        labels.draw(canvas, THEME, 0, 0, WIDTH, HEIGHT);
        return drawn;
    }

    private static Box box(float left, float top, float width, float height) {
        return new Box(left, top, left + width, top + height);
    }

    @Test
    void noLabelLiesOverTheCompass() {
        Labels labels = new Labels();
        for (int i = 0; i < 12; i++) {
            Labels.Label label = labels.add(Labels.Rank.PAIR, WIDTH - 12 * i, 5 * i, 0xFF);
            label.row(0).add("blue gap 12.3 m");
        }
        float reach = Compass.reach(THEME);
        Box rose = box(WIDTH - reach, 0, reach, reach);
        Drawn drawn = drawn(labels);
        assertFalse(drawn.plates.isEmpty());
        drawn.plates.forEach(plate -> assertFalse(plate.meets(rose), plate.toString()));
    }

    @Test
    void noLabelLiesOverTheNotes() {
        Labels labels = new Labels();
        labels.leaveFoot(400, 20);
        for (int i = 0; i < 12; i++) {
            Labels.Label label = labels.add(Labels.Rank.PAIR, WIDTH - 40 * i, HEIGHT - 6, 0xFF);
            label.row(0).add("blue gap 12.3 m");
        }
        Box notes = box(WIDTH - 400, HEIGHT - 20, 400, 20);
        Drawn drawn = drawn(labels);
        assertFalse(drawn.plates.isEmpty());
        drawn.plates.forEach(plate -> assertFalse(plate.meets(notes), plate.toString()));
    }

    @Property(tries = 60)
    void noLabelCoversAnotherOrLeavesThePicture(
            @ForAll @IntRange(min = 1, max = 60) int count, @ForAll long seed) {
        Random random = new Random(seed);
        Labels labels = new Labels();
        for (int i = 0; i < count; i++) {
            Labels.Rank rank = RANKS.get(random.nextInt(RANKS.size()));
            Labels.Label label =
                    labels.add(
                            rank,
                            random.nextFloat() * WIDTH,
                            random.nextFloat() * HEIGHT,
                            0x0072B2FF);
            for (int row = 0; row <= random.nextInt(3); row++) {
                label.row(row).add("words of some length".substring(random.nextInt(15)));
            }
        }
        Drawn drawn = drawn(labels);
        for (int i = 0; i < drawn.plates.size(); i++) {
            Box plate = drawn.plates.get(i);
            assertTrue(plate.left >= 0 && plate.right <= WIDTH, plate::toString);
            assertTrue(plate.top >= 0 && plate.bottom <= HEIGHT, plate::toString);
            for (int k = 0; k < i; k++) {
                assertFalse(plate.meets(drawn.plates.get(k)), plate + " on another");
            }
        }
    }

    @Test
    void whatMattersMostHasItsPlaceFirst() {
        Labels labels = new Labels();
        for (int i = 0; i < 40; i++) {
            labels.add(Labels.Rank.SLOT, 400, 250, 0).row(0).add("slot number " + i);
        }
        labels.add(Labels.Rank.PARTICIPANT, 400, 250, 0).row(0).add("lead");
        Drawn drawn = drawn(labels);
        assertEquals("lead", drawn.words.get(drawn.words.size() - 1));
        assertTrue(drawn.words.size() < 41, "all found a place");
    }

    @Test
    void aBodyIsKeptClearWhereThereIsRoom() {
        Labels labels = new Labels();
        Box body = new Box(340, 180, 460, 320);
        Labels.Label own = labels.add(Labels.Rank.PARTICIPANT, 400, 250, 0).of(0);
        own.round(body.left, body.top, body.right, body.bottom).row(0).add("lead");
        labels.add(Labels.Rank.PAIR, 390, 240, 0).row(0).add("blue gap 12.0 m");
        labels.add(Labels.Rank.SLOT, 360, 250, 0).row(0).add("slot left");
        Drawn drawn = drawn(labels);
        assertEquals(3, drawn.plates.size());
        for (Box plate : drawn.plates) {
            assertFalse(plate.meets(body), plate::toString);
        }
    }

    @Test
    void aParticipantsOwnLabelIsFoundAgain() {
        Labels labels = new Labels();
        labels.add(Labels.Rank.SLOT, 1, 1, 0);
        labels.add(Labels.Rank.PARTICIPANT, 1, 1, 0).of(7);
        assertEquals(1, labels.indexOf(7));
        assertEquals(-1, labels.indexOf(3));
        labels.clear();
        assertEquals(-1, labels.indexOf(7));
    }
}
