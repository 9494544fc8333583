package pairdown.panel;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pairdown.gl.Canvas;
import pairdown.input.HitAreas;
import pairdown.input.Keymap;
import pairdown.replay.Desk;
import pairdown.replay.Moment;
import pairdown.replay.Playback;
import pairdown.replay.ViewState;
import pairdown.settings.PanelKind;
import pairdown.settings.ViewerSettings;
import pairdown.theme.Theme;
import pairdown.words.Figures;
import pairdown.words.Translation;
import pairdown.words.Words;

/**
 * All panels of the window. {@link #draw} draws a frame of them and refreshes {@link #areas}; the
 * scene has the rectangle {@link #scene}. What changes seldom is kept as pictures, each under a key
 * of all it depends on.
 */
public final class Panels {
    private static final int SCRUB = 0;
    private static final int BUTTONS = 1;
    private static final int STRIPS = 2;
    private static final int SIDE = 3;
    private static final int RAIL = 4;
    private static final int OVERLAY = 5;
    private static final int MESSAGES = 6;
    private static final int LAYERS = 7;

    private static final List<PanelKind> READ_IN_ORDER =
            List.of(
                    PanelKind.TRUST,
                    PanelKind.FLYERS,
                    PanelKind.EVENTS,
                    PanelKind.LIMITS,
                    PanelKind.TAIL);

    /** A scene lower than this has no room for the whole read-out (mm). */
    private static final float LOW_SCENE_MM = 75;

    /** A panel that follows with fewer rows than these is not worth beginning. */
    private static final int LEAST_MORE_ROWS = 3;

    private final Words words;
    private final Translation told;
    private final Keymap keys;
    private final HitAreas areas = new HitAreas(LAYERS);
    private Optional<Board> board = Optional.empty();
    private Optional<ViewState> view = Optional.empty();
    private @Nullable Frame frame;

    /** What stays the same while window, settings and canvas do. */
    private record Frame(
            Canvas canvas,
            Theme theme,
            ViewerSettings settings,
            int width_px,
            int height_px,
            Sheet sheet,
            Layout layout,
            StripPainter strips,
            Transport transport,
            Overlays overlays,
            long key) {
        /** Settings are compared as objects: by value that would allocate in every frame. */
        @SuppressWarnings("ReferenceEquality")
        boolean isFor(Theme looks, int width, int height, ViewerSettings chosen) {
            return theme.equals(looks)
                    && settings == chosen
                    && width_px == width
                    && height_px == height;
        }
    }

    public Panels(Words words, Keymap keys) {
        this.words = words;
        this.told = new Translation(words);
        this.keys = keys;
    }

    /** From now on this is shown, and {@code operator} works on it. */
    public void show(Board made, ViewState seen, Operator operator) {
        board = Optional.of(made);
        view = Optional.of(seen);
        operator.operate(made, seen.playback());
    }

    /** What can be pressed, as drawn last. */
    public HitAreas areas() {
        return areas;
    }

    /** Where the scene lies for a window of this size: what the panels leave. */
    public Rect scene(int width_px, int height_px, Theme theme, ViewerSettings settings) {
        Frame f = frame;
        return f != null && f.isFor(theme, width_px, height_px, settings)
                ? f.layout.scene()
                : Layout.of(width_px, height_px, theme.sizes(), settings).scene();
    }

    /** How far the read-out reaches from the scene's left edge (px); 0 without one. */
    public float cornerWidth(Theme theme, Desk desk) {
        return hasReadout(desk) ? Readout.width(theme.sizes()) : 0;
    }

    /** How far it reaches down from the upper edge. */
    public float cornerHeight(Theme theme, Desk desk, Moment moment, Rect scene) {
        return hasReadout(desk)
                ? Readout.height(theme.sizes(), board.get(), desk, moment, isShort(theme, scene))
                : 0;
    }

    /** Beside two views, and under a low scene, the whole of it would hide what it is about. */
    private boolean isShort(Theme theme, Rect scene) {
        boolean split = view.isPresent() && view.get().second().isPresent();
        return split || scene.height() < theme.sizes().mm(LOW_SCENE_MM);
    }

    private boolean hasReadout(Desk desk) {
        return board.isPresent() && !desk.settings().hasBigFigures();
    }

    /**
     * Draws a frame.
     *
     * @param moment the moment shown; empty while nothing is open
     */
    public void draw(
            Canvas canvas,
            Theme theme,
            int width_px,
            int height_px,
            Desk desk,
            Optional<Moment> moment,
            Playback playback) {
        Frame f = frame(canvas, theme, width_px, height_px, desk.settings());
        if (board.isPresent() && moment.isPresent() && !covered(desk)) {
            drawReplay(f, board.get(), desk, moment.get(), playback);
        } else {
            for (int layer = SCRUB; layer <= RAIL; layer++) {
                areas.begin(layer);
            }
        }
        drawOverlays(f, desk);
    }

    private boolean covered(Desk desk) {
        return desk.isStarting() || desk.isHelping();
    }

    @SuppressWarnings("ReferenceEquality")
    private Frame frame(
            Canvas canvas, Theme theme, int width_px, int height_px, ViewerSettings settings) {
        Frame f = frame;
        if (f != null && f.canvas == canvas && f.isFor(theme, width_px, height_px, settings)) {
            return f;
        }
        Figures figures = new Figures(settings.units(), words.locale());
        Sheet sheet = new Sheet(canvas, theme, areas, words, figures, keys);
        Layout layout = Layout.of(width_px, height_px, theme.sizes(), settings);
        long key = Key64.mix(theme.hashCode(), settings.hashCode());
        key = Key64.mix(Key64.mix(key, (long) width_px), (long) height_px);
        Frame made =
                new Frame(
                        canvas,
                        theme,
                        settings,
                        width_px,
                        height_px,
                        sheet,
                        layout,
                        new StripPainter(layout.strips(), theme.sizes()),
                        new Transport(layout.scrub(), layout.buttons(), theme.sizes()),
                        new Overlays(sheet, layout.whole()),
                        key);
        frame = made;
        return made;
    }

    private void drawReplay(Frame f, Board shown, Desk desk, Moment moment, Playback playback) {
        long key = Key64.mix(Key64.mix(f.key, (long) shown.number()), (long) desk.revision());
        scrub(f, key, shown, desk, playback);
        buttons(f, shown, desk, playback);
        strips(f, key, shown, desk, playback);
        side(f, key, shown, desk, moment);
        rail(f, desk);
        Rect scene = f.layout.scene();
        if (!desk.settings().hasBigFigures()) {
            Readout.paint(f.sheet, shown, desk, moment, scene, isShort(f.theme, scene));
        }
    }

    private boolean begin(Frame f, int layer, long key, Rect r) {
        boolean stale = f.canvas.beginPicture(layer, key, r.x(), r.y(), r.width(), r.height());
        if (stale) {
            areas.begin(layer);
        }
        return stale;
    }

    private void scrub(Frame f, long key, Board shown, Desk desk, Playback playback) {
        if (begin(f, SCRUB, key, f.layout.scrub())) {
            f.transport.paintBar(f.sheet, shown, desk);
            f.canvas.endPicture();
        }
        f.transport.paintNow(f.sheet, shown, desk, playback);
    }

    private void buttons(Frame f, Board shown, Desk desk, Playback playback) {
        long key = Key64.mix(f.key, Transport.buttonsKey(playback, desk));
        if (begin(f, BUTTONS, key, f.layout.buttons())) {
            f.transport.paintButtons(f.sheet, playback, desk);
            f.canvas.endPicture();
        }
        f.transport.paintClock(f.sheet, shown, playback);
    }

    private void strips(Frame f, long key, Board shown, Desk desk, Playback playback) {
        Rect r = f.layout.strips();
        if (r.height() <= 0) {
            areas.begin(STRIPS);
            return;
        }
        long windowed = Key64.mix(key, shown.windowStart_s(desk));
        if (begin(f, STRIPS, Key64.mix(windowed, shown.windowEnd_s(desk)), r)) {
            f.strips.paint(f.sheet, shown, desk);
            f.canvas.endPicture();
        }
        f.strips.paintNow(f.sheet, shown, desk, playback.t_s());
    }

    private void side(Frame f, long key, Board shown, Desk desk, Moment moment) {
        Rect r = f.layout.side();
        if (r.width() <= 0) {
            areas.begin(SIDE);
            return;
        }
        if (desk.settings().hasBigFigures()) {
            areas.begin(SIDE);
            areas.wall(r.x(), r.y(), r.width(), r.height());
            BigReadout.paint(f.sheet, shown, desk, moment, r);
            return;
        }
        PanelKind panel = desk.settings().panel();
        boolean ofView = panel == PanelKind.VIEWS && view.isPresent();
        long whole = ofView ? Key64.mix(key, ViewRows.key(view.get())) : key;
        if (begin(f, SIDE, whole, r)) {
            List<Row> rows = rows(f.sheet, shown, desk, panel);
            desk.scrollAtMost(panel, Math.max(0, rows.size() - 1));
            float end = new RowPainter(f.sheet, r).paint(panel, rows, desk.scroll(panel));
            more(f, shown, desk, panel, new Rect(r.x(), end, r.width(), r.bottom() - end));
            f.canvas.endPicture();
        }
    }

    /** On a tall window the panels read next follow below, as far as there is room. */
    private void more(Frame f, Board shown, Desk desk, PanelKind above, Rect free) {
        Rect rest = free;
        for (PanelKind next : READ_IN_ORDER) {
            if (next.compareTo(above) <= 0) {
                continue;
            }
            List<Row> rows = rows(f.sheet, shown, desk, next);
            float top = rest.y() + f.sheet.sizes().mm(4);
            Rect part = new Rect(rest.x(), top, rest.width(), rest.bottom() - top);
            RowPainter painter = new RowPainter(f.sheet, part);
            int fit = painter.fitting(rows);
            if (fit < Math.min(LEAST_MORE_ROWS, rows.size())) {
                return;
            }
            float end = painter.paint(next, rows.subList(0, fit), 0);
            rest = new Rect(rest.x(), end, rest.width(), rest.bottom() - end);
        }
    }

    private List<Row> rows(Sheet sheet, Board shown, Desk desk, PanelKind panel) {
        HappenedRows happened = new HappenedRows(words, told, sheet.figures());
        return switch (panel) {
            case TRUST -> new TrustRows(shown, words, told, sheet.figures()).rows();
            case FLYERS -> new FlyerRows(shown, words, told, sheet.figures()).rows(desk);
            case EVENTS -> happened.events(shown);
            case LIMITS -> happened.limits(shown);
            case TAIL -> happened.tail(shown);
            case SEASON ->
                    new SeasonRows(words, told, sheet.figures(), keys)
                            .rows(desk, shown.recording());
            case MARKS -> happened.marks(shown, desk, keys);
            case VIEWS -> view.map(new ViewRows(words, keys)::rows).orElse(List.of());
            case STRIPS -> happened.strips(desk, keys);
            case NONE -> List.of();
        };
    }

    private void rail(Frame f, Desk desk) {
        if (begin(f, RAIL, Key64.mix(f.key, 7L), f.layout.rail())) {
            Rail.paint(f.sheet, f.layout.rail(), desk);
            f.canvas.endPicture();
        }
    }

    private void drawOverlays(Frame f, Desk desk) {
        Overlays overlays = f.overlays;
        if (!covered(desk) && board.isPresent()) {
            areas.begin(OVERLAY);
        } else if (begin(
                f,
                OVERLAY,
                Key64.mix(Key64.mix(f.key, desk.isHelping()), (long) desk.revision()),
                f.layout.whole())) {
            if (desk.isHelping()) {
                overlays.paintHelp();
            } else {
                overlays.paintStart(desk);
            }
            f.canvas.endPicture();
        }
        areas.begin(MESSAGES);
        if (board.isEmpty() || desk.isStarting()) {
            overlays.paintMessages(desk);
        } else {
            overlays.paintMessages(desk, f.layout.scene(), cornerWidth(f.theme, desk));
        }
    }
}
