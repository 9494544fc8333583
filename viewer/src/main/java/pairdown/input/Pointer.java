package pairdown.input;

import java.util.function.Consumer;
import pairdown.gl.WindowEvent;
import pairdown.gl.WindowEvent.Held;
import pairdown.gl.WindowEvent.MouseButton;

/**
 * Turns what the mouse does over the {@link HitAreas} into commands. It remembers where the pointer
 * is and what it holds, and nothing else. A slider that is held follows the pointer anywhere.
 */
public final class Pointer {
    private double x = -1;
    private double y = -1;
    private boolean holding;
    private boolean panning;
    private Action held = Action.CANCEL;
    private float from;
    private float length = 1;
    private double first;
    private double last;
    private double grabbed;

    public double x() {
        return x;
    }

    public double y() {
        return y;
    }

    /** Whether a slider is held: the scene then gets no moves. */
    public boolean isHolding() {
        return holding;
    }

    /**
     * Takes a mouse event if it concerns an area.
     *
     * @return false if the event is the scene's
     */
    public boolean take(WindowEvent event, HitAreas areas, Consumer<Command> to) {
        if (event instanceof WindowEvent.Moved moved) {
            return move(moved, to);
        }
        if (event instanceof WindowEvent.ButtonTurned button) {
            return button.pressed() ? press(button, areas, to) : release();
        }
        if (event instanceof WindowEvent.Scrolled scrolled) {
            return scroll(scrolled, areas, to);
        }
        return false;
    }

    private boolean move(WindowEvent.Moved moved, Consumer<Command> to) {
        x = moved.x();
        y = moved.y();
        if (holding) {
            follow(to);
        }
        return holding;
    }

    private void follow(Consumer<Command> to) {
        double share = (x - from) / length;
        if (panning) {
            to.accept(new Command(Action.PAN_STRIPS, first + (grabbed - share) * (last - first)));
        } else {
            double inside = Math.max(0, Math.min(1, share));
            to.accept(new Command(held, first + inside * (last - first)));
        }
    }

    private boolean press(WindowEvent.ButtonTurned button, HitAreas areas, Consumer<Command> to) {
        x = button.x();
        y = button.y();
        int area = areas.at(x, y);
        if (area == HitAreas.NONE) {
            return false;
        }
        switch (areas.kind(area)) {
            case BUTTON -> pressButton(button, areas, area, to);
            case SLIDER -> grab(button, areas, area, to);
            case WALL -> {}
        }
        return true;
    }

    private static void pressButton(
            WindowEvent.ButtonTurned button, HitAreas areas, int area, Consumer<Command> to) {
        if (button.button() == MouseButton.LEFT) {
            to.accept(new Command(areas.action(area), areas.value(area, button.x())));
        }
    }

    private void grab(
            WindowEvent.ButtonTurned button, HitAreas areas, int area, Consumer<Command> to) {
        boolean onStrip = areas.action(area) == Action.SEEK_ON_STRIP;
        Held with = button.held();
        if (onStrip && with.control()) {
            Action cursor = with.shift() ? Action.CURSOR_B_AT : Action.CURSOR_A_AT;
            to.accept(new Command(cursor, areas.value(area, x)));
            return;
        }
        panning = onStrip && (button.button() != MouseButton.LEFT || with.shift());
        if (!panning && button.button() != MouseButton.LEFT) {
            return;
        }
        holding = true;
        held = areas.action(area);
        from = areas.x(area);
        length = areas.width(area);
        first = areas.value(area, from);
        last = areas.value(area, from + length);
        grabbed = (x - from) / length;
        if (!panning) {
            follow(to);
        }
    }

    private boolean release() {
        boolean was = holding;
        holding = false;
        panning = false;
        return was;
    }

    private boolean scroll(WindowEvent.Scrolled scrolled, HitAreas areas, Consumer<Command> to) {
        int area = areas.at(scrolled.x(), scrolled.y());
        if (area == HitAreas.NONE) {
            return false;
        }
        boolean up = scrolled.dy() > 0;
        if (areas.action(area) == Action.SEEK_ON_STRIP && !scrolled.held().shift()) {
            double at = areas.value(area, scrolled.x());
            to.accept(new Command(up ? Action.ZOOM_STRIPS_AT : Action.UNZOOM_STRIPS_AT, at));
        } else if (areas.action(area) == Action.SEEK_ON_STRIP) {
            to.accept(Command.of(up ? Action.STRIPS_UP : Action.STRIPS_DOWN));
        } else {
            to.accept(new Command(up ? Action.PANEL_UP : Action.PANEL_DOWN, 1));
        }
        return true;
    }
}
