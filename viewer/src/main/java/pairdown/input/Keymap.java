package pairdown.input;

import static pairdown.input.Chord.alt;
import static pairdown.input.Chord.control;
import static pairdown.input.Chord.controlShift;
import static pairdown.input.Chord.plain;
import static pairdown.input.Chord.shift;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import pairdown.gl.Key;
import pairdown.gl.WindowEvent.Held;

/** Which key does what. Every action that needs no value has exactly one. */
public final class Keymap {
    private final Map<Chord, Action> actions = new HashMap<>();
    private final Map<Action, Chord> chords = new EnumMap<>(Action.class);

    private Keymap() {
        time();
        view();
        strips();
        panels();
        files();
    }

    /** The one there is. */
    public static Keymap standard() {
        return new Keymap();
    }

    private void time() {
        put(Action.PLAY, plain(Key.SPACE));
        put(Action.TURN, plain(Key.R));
        put(Action.FASTER, plain(Key.EQUAL));
        put(Action.SLOWER, plain(Key.MINUS));
        put(Action.REAL_TIME, plain(Key.BACKSPACE));
        put(Action.STEP_ON, plain(Key.PERIOD));
        put(Action.STEP_BACK, plain(Key.COMMA));
        put(Action.SECOND_ON, plain(Key.RIGHT));
        put(Action.SECOND_BACK, plain(Key.LEFT));
        put(Action.TEN_ON, shift(Key.RIGHT));
        put(Action.TEN_BACK, shift(Key.LEFT));
        put(Action.TO_START, plain(Key.HOME));
        put(Action.TO_END, plain(Key.END));
        put(Action.NEXT_EVENT, plain(Key.N));
        put(Action.PREVIOUS_EVENT, plain(Key.P));
        put(Action.NEXT_MATCH, plain(Key.W));
        put(Action.PREVIOUS_MATCH, shift(Key.W));
        put(Action.NEXT_EPISODE, plain(Key.E));
        put(Action.PREVIOUS_EPISODE, shift(Key.E));
        put(Action.NEXT_FINDING, plain(Key.F));
        put(Action.PREVIOUS_FINDING, shift(Key.F));
        put(Action.LOOP, plain(Key.L));
        put(Action.TYPE_TIME, plain(Key.T));
        put(Action.WHOLE_RECORD, plain(Key.O));
    }

    private void view() {
        put(Action.NEXT_VANTAGE, plain(Key.V));
        put(Action.PREVIOUS_VANTAGE, shift(Key.V));
        put(Action.VANTAGE_1, plain(Key.DIGIT_1));
        put(Action.VANTAGE_2, plain(Key.DIGIT_2));
        put(Action.VANTAGE_3, plain(Key.DIGIT_3));
        put(Action.VANTAGE_4, plain(Key.DIGIT_4));
        put(Action.VANTAGE_5, plain(Key.DIGIT_5));
        put(Action.VANTAGE_6, plain(Key.DIGIT_6));
        put(Action.VANTAGE_7, plain(Key.DIGIT_7));
        put(Action.VANTAGE_8, plain(Key.DIGIT_8));
        put(Action.VANTAGE_9, plain(Key.DIGIT_9));
        put(Action.FREE_ORBIT, plain(Key.DIGIT_0));
        put(Action.FRAME, plain(Key.X));
        put(Action.FOLLOW, plain(Key.C));
        put(Action.SPLIT, plain(Key.Y));
        put(Action.SWAP_VIEWS, shift(Key.Y));
        put(Action.NEARER, plain(Key.RIGHT_BRACKET));
        put(Action.FARTHER, plain(Key.LEFT_BRACKET));
        put(Action.WIDER, shift(Key.LEFT_BRACKET));
        put(Action.NARROWER, shift(Key.RIGHT_BRACKET));
        put(Action.ORBIT_LEFT, alt(Key.LEFT));
        put(Action.ORBIT_RIGHT, alt(Key.RIGHT));
        put(Action.ORBIT_UP, alt(Key.UP));
        put(Action.ORBIT_DOWN, alt(Key.DOWN));
        put(Action.ENLARGE, plain(Key.S));
        put(Action.TRAILS, shift(Key.T));
        put(Action.GATES, shift(Key.G));
        put(Action.ELLIPSOIDS, shift(Key.S));
        put(Action.VECTORS, shift(Key.D));
        put(Action.LABELS, shift(Key.L));
        put(Action.GHOST, plain(Key.G));
        put(Action.GHOST_ALIGNMENT, control(Key.G));
        put(Action.GHOST_GAP, controlShift(Key.G));
        put(Action.NEXT_FLYER, plain(Key.TAB));
        put(Action.PREVIOUS_FLYER, shift(Key.TAB));
        put(Action.FULL_SCREEN, plain(Key.F11));
        put(Action.SAVE_PICTURE, control(Key.S));
    }

    private void strips() {
        put(Action.STRIPS, plain(Key.F9));
        put(Action.STRIPS_ZOOM_IN, plain(Key.Z));
        put(Action.STRIPS_ZOOM_OUT, shift(Key.Z));
        put(Action.STRIPS_LATER, shift(Key.PERIOD));
        put(Action.STRIPS_EARLIER, shift(Key.COMMA));
        put(Action.STRIPS_ALL, plain(Key.BACKSLASH));
        put(Action.STRIPS_DOWN, plain(Key.DOWN));
        put(Action.STRIPS_UP, plain(Key.UP));
        put(Action.CURSOR_A, plain(Key.A));
        put(Action.CURSOR_B, plain(Key.B));
        put(Action.NO_CURSORS, shift(Key.A));
        put(Action.STRIP_1, control(Key.F1));
        put(Action.STRIP_2, control(Key.F2));
        put(Action.STRIP_3, control(Key.F3));
        put(Action.STRIP_4, control(Key.F4));
        put(Action.STRIP_5, control(Key.F5));
        put(Action.STRIP_6, control(Key.F6));
        put(Action.STRIP_7, control(Key.F7));
        put(Action.STRIP_8, control(Key.F8));
        put(Action.STRIP_9, control(Key.F9));
        put(Action.STRIP_10, control(Key.F10));
        put(Action.STRIP_11, control(Key.F11));
        put(Action.STRIP_12, control(Key.F12));
        put(Action.STRIP_13, controlShift(Key.F1));
    }

    private void panels() {
        put(Action.HELP, plain(Key.F1));
        put(Action.TRUST, plain(Key.F2));
        put(Action.FLYERS, plain(Key.F3));
        put(Action.EVENTS, plain(Key.F4));
        put(Action.LIMITS, plain(Key.F5));
        put(Action.TAIL, plain(Key.F6));
        put(Action.SEASON, plain(Key.F7));
        put(Action.MARKS, plain(Key.F8));
        put(Action.VIEWS, plain(Key.K));
        put(Action.CHOOSE_STRIPS, shift(Key.F9));
        put(Action.PANEL_DOWN, plain(Key.PAGE_DOWN));
        put(Action.PANEL_UP, plain(Key.PAGE_UP));
        put(Action.BIG_FIGURES, plain(Key.F10));
        put(Action.THEME, plain(Key.F12));
        put(Action.UNITS, plain(Key.U));
        put(Action.AIRSPEED_UNIT, shift(Key.U));
        put(Action.SINK_UNIT, control(Key.U));
        put(Action.HEIGHT_UNIT, controlShift(Key.U));
        put(Action.DISTANCE_UNIT, alt(Key.U));
        put(Action.LARGER, control(Key.EQUAL));
        put(Action.SMALLER, control(Key.MINUS));
    }

    private void files() {
        put(Action.OPEN, control(Key.O));
        put(Action.OPEN_PATH, controlShift(Key.O));
        put(Action.OPEN_LAST, control(Key.R));
        put(Action.OPEN_SEASON, shift(Key.F7));
        put(Action.START, control(Key.W));
        put(Action.MARK, plain(Key.M));
        put(Action.MARK_TOUCH, shift(Key.M));
        put(Action.DELETE_MARK, plain(Key.DELETE));
        put(Action.ACCEPT, plain(Key.ENTER));
        put(Action.CANCEL, plain(Key.ESCAPE));
        put(Action.QUIT, control(Key.Q));
    }

    private void put(Action action, Chord chord) {
        Action earlier = actions.put(chord, action);
        if (earlier != null || chords.put(action, chord) != null) {
            throw new IllegalStateException(chord.label() + " is given twice");
        }
    }

    /** What a key does; empty for one that does nothing. */
    public Optional<Action> action(Key key, Held held) {
        return Optional.ofNullable(actions.get(new Chord(key, held)));
    }

    /** The key of an action; empty for one that needs a value. */
    public Optional<Chord> chord(Action action) {
        return Optional.ofNullable(chords.get(action));
    }

    /** The key of an action as a person reads it; empty text for one that needs a value. */
    public String label(Action action) {
        return chord(action).map(Chord::label).orElse("");
    }
}
