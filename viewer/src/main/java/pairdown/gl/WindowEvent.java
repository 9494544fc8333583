package pairdown.gl;

import java.nio.file.Path;
import java.util.List;

/**
 * Something that happened to a window, as plain data in the order it happened. Places are in pixels
 * of the picture from its top left.
 */
public sealed interface WindowEvent {
    /**
     * Keys held down with another.
     *
     * @param control the control key, or the command key on a Mac
     */
    record Held(boolean shift, boolean control, boolean alt) {
        public static final Held NOTHING = new Held(false, false, false);
    }

    /**
     * A key pressed, repeated or let go.
     *
     * @param pressed false when let go
     * @param repeated true while held down
     */
    record KeyTurned(Key key, boolean pressed, boolean repeated, Held held)
            implements WindowEvent {}

    /** A character typed. */
    record Typed(int codePoint) implements WindowEvent {}

    /** Which button of the mouse. */
    enum MouseButton {
        LEFT,
        RIGHT,
        MIDDLE
    }

    /** A mouse button pressed or let go. */
    record ButtonTurned(MouseButton button, boolean pressed, double x, double y, Held held)
            implements WindowEvent {}

    /** The pointer moved. */
    record Moved(double x, double y) implements WindowEvent {}

    /**
     * The wheel turned or two fingers moved.
     *
     * @param dy away from the person positive
     */
    record Scrolled(double dx, double dy, double x, double y, Held held) implements WindowEvent {}

    /** Files or folders let go over the window. */
    record Dropped(List<Path> paths) implements WindowEvent {
        public Dropped {
            paths = List.copyOf(paths);
        }
    }

    /** The picture has another size or density from now on. */
    record Resized(int width_px, int height_px, float scale) implements WindowEvent {}

    /** The window became, or ceased to be, the one typed into. */
    record Focused(boolean focused) implements WindowEvent {}
}
