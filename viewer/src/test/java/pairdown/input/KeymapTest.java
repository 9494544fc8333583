package pairdown.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pairdown.gl.Key;
import pairdown.gl.WindowEvent.Held;
import pairdown.words.Words;

class KeymapTest {
    private static final Keymap KEYS = Keymap.standard();

    @Test
    void everyActionThatNeedsNoValueIsOnAKey() {
        List<Action> without =
                Arrays.stream(Action.values())
                        .filter(a -> !a.needsValue() && KEYS.chord(a).isEmpty())
                        .toList();
        assertTrue(without.isEmpty(), () -> "no key for " + without);
    }

    @Test
    void everyKeyLeadsBackToItsAction() {
        for (Action action : Action.values()) {
            KEYS.chord(action)
                    .ifPresent(
                            c -> assertEquals(Optional.of(action), KEYS.action(c.key(), c.held())));
        }
    }

    @Test
    void everyActionWithAKeyHasAText() {
        Words words = Words.of(Locale.ENGLISH);
        for (Action action : Action.values()) {
            assertTrue(
                    action.needsValue() || words.has("action." + action.key()),
                    () -> "no text for " + action);
        }
        for (Action.Group group : Action.Group.values()) {
            assertTrue(group == Action.Group.POINTED || words.has("group." + group.key()));
        }
    }

    @Test
    void aKeyWithAnotherHeldIsAnotherKey() {
        assertEquals(Optional.of(Action.PLAY), KEYS.action(Key.SPACE, Held.NOTHING));
        assertEquals(Optional.empty(), KEYS.action(Key.SPACE, new Held(true, true, true)));
    }
}
