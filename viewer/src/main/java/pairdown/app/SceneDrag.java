package pairdown.app;

import pairdown.gl.WindowEvent;
import pairdown.gl.WindowEvent.MouseButton;
import pairdown.scene.Diorama;

/** Turns and zooms the scene by the mouse. It remembers where the pointer was last. */
final class SceneDrag {
    /** A pixel of dragging at 100 % turns the free camera by this much. */
    private static final double DRAG_DEG = 0.3;

    /** One notch of the wheel. */
    private static final double WHEEL = 1.15;

    private boolean dragging;
    private double x;
    private double y;

    /**
     * Takes an event over the scene.
     *
     * @param scale pixels a unit of layout
     */
    void take(WindowEvent event, Diorama diorama, float scale) {
        if (event instanceof WindowEvent.ButtonTurned button) {
            dragging = button.pressed() && button.button() == MouseButton.LEFT;
            x = button.x();
            y = button.y();
        } else if (event instanceof WindowEvent.Moved moved) {
            if (dragging) {
                ViewActions.turn(
                        diorama,
                        (x - moved.x()) * DRAG_DEG / scale,
                        (moved.y() - y) * DRAG_DEG / scale);
            }
            x = moved.x();
            y = moved.y();
        } else if (event instanceof WindowEvent.Scrolled scrolled) {
            diorama.view().zoom(Math.pow(WHEEL, scrolled.dy()));
        }
    }
}
