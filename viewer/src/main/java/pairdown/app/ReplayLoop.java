package pairdown.app;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pairdown.gl.Pixels;
import pairdown.gl.RenderContext;
import pairdown.gl.Shaders;
import pairdown.gl.VectorCanvas;
import pairdown.gl.Window;
import pairdown.gl.WindowEvent;
import pairdown.input.Command;
import pairdown.panel.Opening;
import pairdown.panel.Rect;
import pairdown.replay.Moment;
import pairdown.replay.Playback;
import pairdown.scene.Diorama;
import pairdown.settings.ViewerSettings;
import pairdown.settings.WindowSize;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.time.Span;
import pairdown.words.Figures;

/**
 * The replay in its window. A frame reads: gather what the person did, turn it into actions, carry
 * them out, take up what was read in the background, let time pass, draw, show.
 */
final class ReplayLoop implements AutoCloseable {
    /** While nothing moves, a picture is drawn anew at least this often. */
    private static final double REST_S = 0.5;

    /** A stall (a dialog, a laptop asleep) must not throw the replay far ahead. */
    private static final double LONGEST_STEP_S = 0.25;

    private final RenderContext context;
    private final Shaders shaders;
    private final VectorCanvas canvas = VectorCanvas.create();
    private final ReplayDesk desk;
    private final SceneDrag drag = new SceneDrag();
    private final Playback nothing = new Playback(new Span(0, 1));
    private Optional<Diorama> diorama = Optional.empty();
    private Optional<ReplayDesk.Coming> coming = Optional.empty();
    private Optional<Moment> moment = Optional.empty();
    private List<String> names = List.of();
    private @Nullable ViewerSettings drawnWith;
    private boolean savesPicture;
    private long before_ns = System.nanoTime();
    private Theme theme;
    private Figures figures;

    /**
     * @param shaders closed with this
     */
    ReplayLoop(RenderContext context, Shaders shaders, ReplayDesk desk) {
        this.context = context;
        this.shaders = shaders;
        this.desk = desk;
        this.theme = themeNow();
        this.figures = figuresNow();
    }

    private Theme themeNow() {
        ViewerSettings settings = desk.settings();
        double pixel_mm = context instanceof Window window ? window.pixel_mm() : 0;
        return new Theme(
                (settings.isDark() ? Palette.DARK : Palette.LIGHT).forNames(names),
                Sizes.of(
                        context.width_px(),
                        context.height_px(),
                        context.scale(),
                        pixel_mm,
                        settings.zoom()));
    }

    private Figures figuresNow() {
        return new Figures(desk.settings().units(), Locale.getDefault());
    }

    /** Shows an attempt from now on, beginning some seconds before the moment it is about. */
    void show(Found.Ready ready) {
        ReplayDesk.Coming next = desk.show(ready, shaders);
        next.diorama().uploadAll();
        replace(next);
    }

    private void replace(ReplayDesk.Coming next) {
        diorama.ifPresent(Diorama::close);
        diorama = Optional.of(next.diorama());
        moment = Optional.of(next.diorama().moment());
        names = next.diorama().moment().recording().ids();
        next.takeUp().run();
        theme = themeNow();
    }

    /** Runs until the person closes the window. */
    void run(Window window) {
        while (!window.shouldClose()) {
            round(window);
        }
        int[] size = window.size();
        if (WindowSize.isPossible(size[0], size[1])) {
            desk.front().shut(new WindowSize(size[0], size[1]));
        }
    }

    /** Once round the loop; sleeps a while first where nothing changes by itself. */
    void round(Window window) {
        if (!changes() || window.isHidden()) {
            window.await(REST_S, event -> take(window, event));
        } else {
            window.poll(event -> take(window, event));
        }
        takeUp(window);
        List<String> wrong = shaders.reloadChanged();
        if (!wrong.isEmpty()) {
            desk.tell(wrong);
        }
        long now_ns = System.nanoTime();
        double elapsed_s = Math.min(LONGEST_STEP_S, (now_ns - before_ns) / 1e9);
        before_ns = now_ns;
        playback().advance(elapsed_s);
        desk.state().elapse(elapsed_s);
        if (window.isHidden()) {
            return;
        }
        draw(elapsed_s);
        if (savesPicture) {
            savesPicture = false;
            desk.savePicture(context.read(), playback().t_s());
        }
        context.present();
    }

    /** What the window shows now. */
    Pixels picture() {
        draw(0);
        return context.read();
    }

    /** Where the scene lies. */
    Rect scene() {
        return desk.panels().scene(context.width_px(), context.height_px(), theme, desk.settings());
    }

    Optional<Diorama> shown() {
        return diorama;
    }

    private boolean changes() {
        return playback().isPlaying()
                || coming.isPresent()
                || diorama.map(Diorama::isMoving).orElse(false);
    }

    private Playback playback() {
        return diorama.isPresent() ? diorama.get().view().playback() : nothing;
    }

    /**
     * Puts what was read in the background on show: a slice of it goes into the card's memory with
     * each picture of what is shown until then.
     */
    private void takeUp(Window window) {
        if (coming.isPresent()) {
            if (!coming.get().diorama().upload()) {
                replace(coming.get());
                coming = Optional.empty();
                desk.title().ifPresent(window::setTitle);
            }
            return;
        }
        Optional<Opening.Opened<Found>> opened = desk.poll();
        if (opened.isEmpty()) {
            return;
        }
        Found found = opened.get().result();
        boolean overlay = opened.get().wish().purpose() == Opening.Purpose.OVERLAY;
        if (found instanceof Found.Attempts attempts) {
            desk.list(attempts, diorama.isEmpty());
        } else if (found instanceof Found.Ready ready && overlay && diorama.isPresent()) {
            coming = desk.overlay(ready, diorama.get(), shaders);
        } else if (found instanceof Found.Ready ready) {
            coming = Optional.of(desk.show(ready, shaders));
        }
    }

    /** Times frames of the replay running at its own speed, with all panels. */
    String time(int frames, String place) {
        FrameTable table = new FrameTable(frames);
        playback().play(false);
        while (!table.isFull()) {
            table.begin();
            playback().advance(1 / 60.0);
            draw(1 / 60.0);
            context.present();
            table.end();
        }
        String load =
                diorama.map(
                                d ->
                                        d.moment().bodies().size()
                                                + " participants, "
                                                + d.segments()
                                                + " path segments")
                        .orElse("nothing");
        return table.print(
                context.renderer(), place, context.width_px(), context.height_px(), load);
    }

    /** Settings are compared as objects: a comparison by value would allocate in every frame. */
    @SuppressWarnings("ReferenceEquality")
    private void draw(double elapsed_s) {
        if (drawnWith != desk.settings()) {
            drawnWith = desk.settings();
            theme = themeNow();
            figures = figuresNow();
        }
        int width_px = context.width_px();
        int height_px = context.height_px();
        boolean seen = diorama.isPresent() && !desk.coversScene();
        Rect part = scene();
        context.beginScene();
        if (seen) {
            Diorama shown = diorama.get();
            shown.leaveCorner(
                    desk.panels().cornerWidth(theme, desk.state()),
                    desk.panels().cornerHeight(theme, desk.state(), shown.moment(), part));
            drawScene(shown, part, height_px, elapsed_s);
        }
        context.endScene();
        canvas.begin(width_px, height_px);
        if (seen) {
            diorama.get().drawWords(canvas, theme, part.x(), part.y(), part.height());
        }
        desk.panels().draw(canvas, theme, width_px, height_px, desk.state(), moment, playback());
        canvas.end();
    }

    private void drawScene(Diorama shown, Rect part, int height_px, double elapsed_s) {
        int left = Math.round(part.x());
        int bottom = Math.round(part.bottom());
        shown.draw(
                theme,
                figures,
                left,
                height_px - bottom,
                Math.max(1, Math.round(part.right()) - left),
                Math.max(1, bottom - Math.round(part.y())),
                elapsed_s);
    }

    private void take(Window window, WindowEvent event) {
        if (event instanceof WindowEvent.Resized) {
            theme = themeNow();
            return;
        }
        desk.front()
                .take(
                        event,
                        desk.panels().areas(),
                        e -> diorama.ifPresent(d -> drag.take(e, d, context.scale())),
                        command -> act(window, command));
    }

    /** Carries out what is the scene's or the window's. */
    private void act(Window window, Command command) {
        switch (command.action()) {
            case QUIT -> window.requestClose();
            case FULL_SCREEN -> window.toggleFullScreen();
            case SAVE_PICTURE -> savesPicture = true;
            case GHOST_ALIGNMENT -> diorama.ifPresent(desk::alignNext);
            case ALIGN_ON_GAP -> diorama.ifPresent(d -> desk.alignOnGap(d, command.value()));
            case OVERLAY_ATTEMPT ->
                    diorama.filter(d -> coming.isEmpty())
                            .flatMap(d -> desk.overlay((int) command.value(), d, shaders))
                            .ifPresent(c -> coming = Optional.of(c));
            default -> diorama.ifPresent(d -> ViewActions.apply(command, d));
        }
    }

    @Override
    public void close() {
        coming.ifPresent(c -> c.diorama().close());
        diorama.ifPresent(Diorama::close);
        canvas.close();
        shaders.close();
    }
}
