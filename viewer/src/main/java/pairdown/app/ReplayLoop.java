package pairdown.app;

import java.util.Locale;
import java.util.Optional;
import pairdown.gl.RenderContext;
import pairdown.gl.Shaders;
import pairdown.gl.VectorCanvas;
import pairdown.gl.Window;
import pairdown.gl.WindowEvent;
import pairdown.gl.WindowEvent.MouseButton;
import pairdown.input.Action;
import pairdown.input.Command;
import pairdown.input.Keymap;
import pairdown.scene.Diorama;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Figures;
import pairdown.words.Units;

/**
 * The replay in its window. A frame reads: gather what the person did, turn it into actions, carry
 * them out, let time pass, draw, show.
 */
final class ReplayLoop implements AutoCloseable {
    /** A pixel of dragging turns the free camera by this much. */
    private static final double DRAG_DEG = 0.3;

    /** One notch of the wheel. */
    private static final double WHEEL = 1.15;

    /** While nothing moves, a picture is drawn anew at least this often. */
    private static final double REST_S = 0.5;

    /** A stall (a dialog, a laptop asleep) must not throw the replay far ahead. */
    private static final double LONGEST_STEP_S = 0.25;

    /** How long before the closest approach the replay opens: the joining is seen at once. */
    private static final double LEAD_IN_S = 20;

    private final RenderContext context;
    private final Shaders shaders;
    private final VectorCanvas canvas = VectorCanvas.create();
    private final Diorama diorama;
    private final Keymap keys = Keymap.standard();
    private Units units;
    private Theme theme;
    private Figures figures;
    private boolean dark;
    private boolean dragging;
    private double pointerX;
    private double pointerY;

    ReplayLoop(RenderContext context, Shaders shaders, Diorama diorama, Units units) {
        this.context = context;
        this.shaders = shaders;
        this.diorama = diorama;
        this.units = units;
        this.figures = new Figures(units, Locale.getDefault());
        this.theme = themeNow();
    }

    private Theme themeNow() {
        return new Theme(
                dark ? Palette.DARK : Palette.LIGHT,
                Sizes.of(context.width_px(), context.height_px(), context.scale(), 0, 1));
    }

    /** Begins at the moment the attempt is about, some seconds before. */
    void start() {
        diorama.view().playback().seek(diorama.moment().recording().middle_s() - LEAD_IN_S);
    }

    /** Runs until the person closes the window. */
    void run(Window window) {
        long before_ns = System.nanoTime();
        while (!window.shouldClose()) {
            boolean changes = diorama.view().playback().isPlaying() || diorama.isMoving();
            if (!changes || window.isHidden()) {
                window.await(REST_S, event -> take(window, event));
            } else {
                window.poll(event -> take(window, event));
            }
            long now_ns = System.nanoTime();
            double elapsed_s = Math.min(LONGEST_STEP_S, (now_ns - before_ns) / 1e9);
            before_ns = now_ns;
            diorama.view().playback().advance(elapsed_s);
            if (!window.isHidden()) {
                draw(elapsed_s);
                context.present();
            }
        }
    }

    /** Times frames of the replay running at its own speed. */
    String time(int frames, String place) {
        FrameTable table = new FrameTable(frames);
        diorama.view().playback().play(false);
        while (!table.isFull()) {
            table.begin();
            diorama.view().playback().advance(1 / 60.0);
            draw(1 / 60.0);
            context.present();
            table.end();
        }
        return table.print(
                context.renderer(),
                place,
                context.width_px(),
                context.height_px(),
                diorama.moment().bodies().size()
                        + " participants, "
                        + diorama.segments()
                        + " path segments");
    }

    private void draw(double elapsed_s) {
        context.beginScene();
        diorama.draw(theme, figures, 0, 0, context.width_px(), context.height_px(), elapsed_s);
        context.endScene();
        canvas.begin(context.width_px(), context.height_px());
        diorama.drawWords(canvas, theme, 0, 0, context.height_px());
        canvas.end();
    }

    private void take(Window window, WindowEvent event) {
        if (event instanceof WindowEvent.KeyTurned key && key.pressed()) {
            keys.action(key.key(), key.held()).ifPresent(a -> act(window, Command.of(a)));
        } else if (event instanceof WindowEvent.ButtonTurned button) {
            dragging = button.pressed() && button.button() == MouseButton.LEFT;
            pointerX = button.x();
            pointerY = button.y();
        } else if (event instanceof WindowEvent.Moved moved) {
            drag(moved);
        } else if (event instanceof WindowEvent.Scrolled scrolled) {
            diorama.view().zoom(Math.pow(WHEEL, scrolled.dy()));
        } else if (event instanceof WindowEvent.Resized) {
            theme = themeNow();
        }
    }

    private void drag(WindowEvent.Moved moved) {
        if (dragging) {
            ViewActions.turn(
                    diorama,
                    (pointerX - moved.x()) * DRAG_DEG / context.scale(),
                    (moved.y() - pointerY) * DRAG_DEG / context.scale());
        }
        pointerX = moved.x();
        pointerY = moved.y();
    }

    private void act(Window window, Command command) {
        if (ViewActions.apply(command, diorama)
                || TimeActions.apply(
                        command, diorama.view().playback(), diorama.moment().recording())) {
            return;
        }
        if (command.action() == Action.QUIT) {
            window.requestClose();
        } else if (command.action() == Action.FULL_SCREEN) {
            window.toggleFullScreen();
        } else if (command.action() == Action.THEME) {
            dark = !dark;
            theme = themeNow();
        } else if (command.action() == Action.UNITS) {
            units = units.next();
            figures = new Figures(units, Locale.getDefault());
        }
    }

    /** Complaints about changed shaders, for a developer. */
    Optional<String> reloadShaders() {
        return shaders.reloadChanged().stream().reduce((a, b) -> a + "\n" + b);
    }

    @Override
    public void close() {
        diorama.close();
        canvas.close();
        shaders.close();
    }
}
