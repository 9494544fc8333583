package pairdown.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pairdown.debrief.Debrief;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.OffscreenContext;
import pairdown.gl.Shaders;
import pairdown.gl.VectorCanvas;
import pairdown.input.Keymap;
import pairdown.panel.Board;
import pairdown.panel.Operator;
import pairdown.panel.Panels;
import pairdown.panel.Rect;
import pairdown.replay.Crowd;
import pairdown.replay.Desk;
import pairdown.replay.Moment;
import pairdown.scene.Diorama;
import pairdown.settings.StripKind;
import pairdown.settings.ViewerSettings;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Figures;
import pairdown.words.Words;

/**
 * Times frames of crowds, larger than any real attempt, in memory: a line each for the scene alone
 * and with all strips and a panel open.
 *
 * <pre>FrameStudy [FRAMES [WIDTHxHEIGHT … [PARTICIPANTSxMINUTES …]]]</pre>
 */
final class FrameStudy {
    private static final List<String> SIZES = List.of("1280x720", "1920x1080", "3840x2160");
    private static final List<String> CROWDS = List.of("20x25", "100x60");
    private static final int JUMPS = 60;

    private FrameStudy() {}

    public static void main(String[] args) throws NoGraphicsException {
        int frames = args.length > 0 ? Integer.parseInt(args[0]) : 300;
        List<String> sizes = new ArrayList<>();
        List<String> crowds = new ArrayList<>();
        for (int i = 1; i < args.length; i++) {
            (args[i].matches("\\d{3,}x\\d{3,}") ? sizes : crowds).add(args[i]);
        }
        System.out.println(FrameTable.HEAD);
        for (String crowd : crowds.isEmpty() ? CROWDS : crowds) {
            String[] of = crowd.split("x", -1);
            Debrief debrief = Crowd.of(Integer.parseInt(of[0]), Double.parseDouble(of[1]));
            for (String size : sizes.isEmpty() ? SIZES : sizes) {
                String[] px = size.split("x", -1);
                try (Stand stand =
                        new Stand(debrief, Integer.parseInt(px[0]), Integer.parseInt(px[1]))) {
                    for (boolean panels : new boolean[] {false, true}) {
                        stand.time(crowd + " min " + (panels ? "panels" : "scene"), frames, panels);
                    }
                    stand.jump(crowd + " min jumps", JUMPS);
                }
            }
        }
    }

    /** All that a frame of the window needs, in memory. */
    private static final class Stand implements AutoCloseable {
        private static final double STEP_S = 1 / 60.0;

        private final OffscreenContext context;
        private final Shaders shaders = Shaders.ofJar();
        private final VectorCanvas canvas;
        private final Diorama diorama;
        private final Panels panels;
        private final Desk desk;
        private final Theme theme;
        private final Figures figures;
        private final Optional<Moment> moment;
        private final Rect whole;

        Stand(Debrief debrief, int width_px, int height_px) throws NoGraphicsException {
            context = OffscreenContext.open(width_px, height_px);
            canvas = VectorCanvas.create();
            long before_ns = System.nanoTime();
            diorama = new Diorama(shaders, debrief, Optional.empty(), Optional.empty());
            desk = new Desk(allOpen());
            Words words = Words.of(Locale.ENGLISH);
            panels = new Panels(words, Keymap.standard());
            panels.show(
                    new Board(diorama.moment().recording(), words),
                    diorama.view(),
                    new Operator(desk));
            theme =
                    new Theme(
                            Palette.LIGHT,
                            Sizes.of(width_px, height_px, Math.max(1, height_px / 1080f), 0, 1));
            figures = new Figures(desk.settings().units(), Locale.ENGLISH);
            moment = Optional.of(diorama.moment());
            whole = new Rect(0, 0, width_px, height_px);
            System.out.printf(
                    Locale.ROOT,
                    "%s; set up in %.2f s%n",
                    context.renderer(),
                    (System.nanoTime() - before_ns) / 1e9);
        }

        private static ViewerSettings allOpen() {
            ViewerSettings settings = ViewerSettings.DEFAULT;
            for (StripKind strip : StripKind.values()) {
                if (!settings.strips().contains(strip)) {
                    settings = settings.withToggled(strip);
                }
            }
            return settings;
        }

        void time(String load, int frames, boolean withPanels) {
            FrameTable table = new FrameTable(frames);
            diorama.view().playback().seek(diorama.moment().recording().middle_s());
            diorama.view().playback().play(false);
            // What making up the crowd left behind is no part of a replay.
            System.gc();
            while (!table.isFull()) {
                table.begin();
                diorama.view().playback().advance(STEP_S);
                draw(withPanels);
                table.end();
            }
            print(table, load);
        }

        /** Each frame at another instant, as a scrub asks for. */
        void jump(String load, int frames) {
            FrameTable table = new FrameTable(frames);
            double span_s = diorama.view().playback().span().duration_s();
            for (int i = 0; !table.isFull(); i++) {
                table.begin();
                diorama.view().playback().seek(span_s * (0.5 + 0.5 * Math.sin(i * 2.4)));
                draw(true);
                table.end();
            }
            print(table, load);
        }

        private void print(FrameTable table, String load) {
            System.out.println(
                    table.row(load, context.width_px(), context.height_px(), diorama.segments()));
        }

        private void draw(boolean withPanels) {
            int width = context.width_px();
            int height = context.height_px();
            Rect scene = withPanels ? panels.scene(width, height, theme, desk.settings()) : whole;
            int x = Math.round(scene.x());
            int y = Math.round(scene.y());
            int w = Math.round(scene.width());
            int h = Math.round(scene.height());
            context.beginScene();
            diorama.draw(theme, figures, x, height - y - h, w, h, STEP_S);
            context.endScene();
            canvas.begin(width, height);
            diorama.drawWords(canvas, theme, x, y, h);
            if (withPanels) {
                panels.draw(canvas, theme, width, height, desk, moment, diorama.view().playback());
            }
            canvas.end();
            context.present();
        }

        @Override
        public void close() {
            diorama.close();
            canvas.close();
            shaders.close();
            context.close();
        }
    }
}
