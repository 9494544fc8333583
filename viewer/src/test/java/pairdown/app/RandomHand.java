package pairdown.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import pairdown.gl.Key;
import pairdown.gl.VirtualDisplay;
import pairdown.input.Action;

/** A hand that presses whatever is there: keys with and without others held, mouse and wheel. */
final class RandomHand {
    private static final int KEYS_AT_ONCE = 20;

    /** Those that end the window or wait for the system's own dialog. */
    private static final Set<String> NOT = Set.of("ctrl+q", "ctrl+shift+q", "ctrl+o");

    private final WindowRig rig;
    private final Random random;
    private final List<String> keys = new ArrayList<>();

    RandomHand(WindowRig rig, long seed) {
        this.rig = rig;
        this.random = new Random(seed);
        for (Key key : Key.values()) {
            keys.add(spelt(key));
        }
    }

    /** As the hand spells it. */
    private static String spelt(Key key) {
        String name = key.name();
        if (name.startsWith("DIGIT_")) {
            return name.substring(6);
        }
        if (name.startsWith("PAD_")) {
            String of = name.substring(4);
            return "KP_" + of.charAt(0) + of.substring(1).toLowerCase(java.util.Locale.ROOT);
        }
        return switch (key) {
            case SPACE -> "space";
            case ESCAPE -> "Escape";
            case ENTER -> "Return";
            case TAB -> "Tab";
            case BACKSPACE -> "BackSpace";
            case DELETE -> "Delete";
            case INSERT -> "Insert";
            case HOME -> "Home";
            case END -> "End";
            case PAGE_UP -> "Prior";
            case PAGE_DOWN -> "Next";
            case LEFT -> "Left";
            case RIGHT -> "Right";
            case UP -> "Up";
            case DOWN -> "Down";
            case COMMA -> "comma";
            case PERIOD -> "period";
            case SLASH -> "slash";
            case SEMICOLON -> "semicolon";
            case APOSTROPHE -> "apostrophe";
            case LEFT_BRACKET -> "bracketleft";
            case RIGHT_BRACKET -> "bracketright";
            case BACKSLASH -> "backslash";
            case MINUS -> "minus";
            case EQUAL -> "equal";
            case GRAVE -> "grave";
            default ->
                    name.startsWith("F") && name.length() > 1
                            ? name
                            : name.toLowerCase(java.util.Locale.ROOT);
        };
    }

    /** Some keys, a press, a drag and a turn of the wheel; each is dealt with by the window. */
    void act() {
        List<String> line = new ArrayList<>(List.of("key", "--delay", "1"));
        for (int i = 0; i < KEYS_AT_ONCE; i++) {
            line.add(key());
        }
        VirtualDisplay.hand(line.toArray(String[]::new));
        rounds();
        float x = x();
        float y = y();
        if (!opensDialog(x, y)) {
            rig.click(x, y);
        }
        rounds();
        float fromX = x();
        float fromY = y();
        if (!opensDialog(fromX, fromY)) {
            rig.drag(fromX, fromY, x(), y());
        }
        rig.wheelUp(x(), y());
        rounds();
    }

    private String key() {
        String key = keys.get(random.nextInt(keys.size()));
        String held =
                switch (random.nextInt(8)) {
                    case 0 -> "ctrl+";
                    case 1 -> "alt+";
                    case 2, 3 -> "shift+";
                    case 4 -> "ctrl+shift+";
                    default -> "";
                };
        return NOT.contains(held + key) ? "Escape" : held + key;
    }

    private boolean opensDialog(float x, float y) {
        int area = rig.areas().at(x, y);
        return area >= 0 && rig.areas().action(area) == Action.OPEN;
    }

    private float x() {
        return random.nextInt(Math.max(1, rig.window.width_px()));
    }

    private float y() {
        return random.nextInt(Math.max(1, rig.window.height_px()));
    }

    private void rounds() {
        for (int i = 0; i < 2; i++) {
            rig.loop.round(rig.window);
        }
    }
}
