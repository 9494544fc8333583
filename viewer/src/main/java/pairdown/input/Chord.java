package pairdown.input;

import pairdown.gl.Key;
import pairdown.gl.WindowEvent.Held;

/** A key and what is held down with it. */
public record Chord(Key key, Held held) {
    static Chord plain(Key key) {
        return new Chord(key, Held.NOTHING);
    }

    static Chord shift(Key key) {
        return new Chord(key, new Held(true, false, false));
    }

    static Chord control(Key key) {
        return new Chord(key, new Held(false, true, false));
    }

    static Chord controlShift(Key key) {
        return new Chord(key, new Held(true, true, false));
    }

    static Chord alt(Key key) {
        return new Chord(key, new Held(false, false, true));
    }

    /** As a person reads it: {@code "Ctrl Shift U"}. */
    public String label() {
        return (held.control() ? "Ctrl " : "")
                + (held.alt() ? "Alt " : "")
                + (held.shift() ? "Shift " : "")
                + name(key);
    }

    private static String name(Key key) {
        return switch (key) {
            case COMMA -> ",";
            case PERIOD -> ".";
            case SLASH -> "/";
            case SEMICOLON -> ";";
            case APOSTROPHE -> "'";
            case LEFT_BRACKET -> "[";
            case RIGHT_BRACKET -> "]";
            case BACKSLASH -> "\\";
            case MINUS -> "\u2212";
            case EQUAL -> "=";
            case GRAVE -> "`";
            case SPACE -> "Space";
            case ESCAPE -> "Esc";
            case ENTER -> "Enter";
            case TAB -> "Tab";
            case BACKSPACE -> "Backspace";
            case DELETE -> "Del";
            case INSERT -> "Ins";
            case HOME -> "Home";
            case END -> "End";
            case PAGE_UP -> "PgUp";
            case PAGE_DOWN -> "PgDn";
            case LEFT -> "\u2190";
            case RIGHT -> "\u2192";
            case UP -> "\u2191";
            case DOWN -> "\u2193";
            default -> key.name().replace("DIGIT_", "").replace("PAD_", "Pad ");
        };
    }
}
