package pairdown.panel;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import pairdown.debrief.Debrief;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.OffscreenContext;
import pairdown.gl.Pixels;
import pairdown.gl.VectorCanvas;
import pairdown.input.Action;
import pairdown.input.Command;
import pairdown.input.Keymap;
import pairdown.replay.Desk;
import pairdown.replay.Moment;
import pairdown.replay.Playback;
import pairdown.replay.Recording;
import pairdown.replay.SyntheticDebrief;
import pairdown.replay.ViewState;
import pairdown.settings.PanelKind;
import pairdown.settings.ViewerSettings;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Words;

/**
 * Draws every panel into pictures, to be looked at: {@code PanelGallery FOLDER small|large [dark]}.
 * Also the rig that rendering tests draw with.
 */
final class PanelGallery {
    private PanelGallery() {}

    /** Everything that a frame needs, on a picture in memory. */
    static final class Rig implements AutoCloseable {
        final OffscreenContext context;
        final VectorCanvas canvas;
        final Desk desk;
        final Panels panels;
        final Operator operator;
        final Playback playback;
        final Moment moment;
        final Sizes sizes;
        private final Optional<Moment> shown;
        private Theme theme;

        Rig(int width_px, int height_px, double percent, ViewerSettings settings, Debrief debrief)
                throws NoGraphicsException {
            context = OffscreenContext.open(width_px, height_px);
            canvas = VectorCanvas.create();
            desk = new Desk(settings);
            panels = new Panels(Words.of(Locale.ENGLISH), Keymap.standard());
            operator = new Operator(desk);
            Recording recording = Recording.of(debrief);
            ViewState view = new ViewState(debrief);
            playback = view.playback();
            panels.show(new Board(recording, Words.of(Locale.ENGLISH)), view, operator);
            moment = new Moment(recording);
            shown = Optional.of(moment);
            sizes = Sizes.atPercent(percent);
            theme = new Theme(Palette.LIGHT, sizes);
        }

        void act(Action action) {
            operator.apply(Command.of(action));
        }

        void act(Action action, double value) {
            operator.apply(new Command(action, value));
        }

        /** The same object until another is chosen, as in the window. */
        Theme theme() {
            Palette palette = desk.settings().isDark() ? Palette.DARK : Palette.LIGHT;
            if (!theme.palette().equals(palette)) {
                theme = new Theme(palette, sizes);
            }
            return theme;
        }

        void frame() {
            moment.fill(playback.t_s());
            paint();
        }

        /** A frame of the moment as it is filled. */
        void paint() {
            context.beginScene();
            context.endScene();
            canvas.begin(context.width_px(), context.height_px());
            canvas.fill(0, 0, context.width_px(), context.height_px(), theme().palette().sky());
            panels.draw(
                    canvas,
                    theme(),
                    context.width_px(),
                    context.height_px(),
                    desk,
                    shown,
                    playback);
            canvas.end();
        }

        Pixels picture() {
            frame();
            return context.read();
        }

        @Override
        public void close() {
            canvas.close();
            context.close();
        }
    }

    public static void main(String[] args) throws NoGraphicsException, IOException {
        Path folder = Path.of(args[0]);
        Files.createDirectories(folder);
        boolean dark = args.length > 2 && args[2].equals("dark");
        String tail = dark ? "-dark" : "";
        if (args[1].equals("small")) {
            gallery(folder, "small" + tail, 1366, 768, 100, dark);
        } else {
            gallery(folder, "large" + tail, 3840, 2160, 200, dark);
        }
    }

    private static void gallery(
            Path folder, String name, int width_px, int height_px, double percent, boolean dark)
            throws NoGraphicsException, IOException {
        ViewerSettings settings =
                dark ? ViewerSettings.DEFAULT.withOtherTheme() : ViewerSettings.DEFAULT;
        for (String recent : List.of("/hangar/2031/04-02-01", "/hangar/2031/05-14-03")) {
            settings = settings.withOpened(recent);
        }
        Debrief debrief = Checked.of(new SyntheticDebrief().withGapAt(120).build());
        try (Rig rig = new Rig(width_px, height_px, percent, settings, debrief)) {
            rig.playback.seek(SyntheticDebrief.JOINED_S + 6);
            save(rig, folder, name + "-trust");
            for (PanelKind panel : PanelKind.values()) {
                if (panel != PanelKind.TRUST && panel != PanelKind.NONE) {
                    rig.desk.settings(rig.desk.settings().withToggled(panel));
                    save(rig, folder, name + "-" + panel.key());
                }
            }
            rig.act(Action.CURSOR_A);
            rig.act(Action.LOOP);
            rig.act(Action.TEN_ON);
            rig.act(Action.CURSOR_B);
            rig.act(Action.LOOP);
            rig.act(Action.STRIPS_ZOOM_IN);
            rig.act(Action.STRIPS);
            rig.act(Action.STRIPS_DOWN);
            rig.act(Action.FLYERS);
            save(rig, folder, name + "-cursors");
            rig.act(Action.BIG_FIGURES);
            save(rig, folder, name + "-big");
            rig.act(Action.HELP);
            save(rig, folder, name + "-help");
            rig.act(Action.HELP);
            rig.act(Action.START);
            save(rig, folder, name + "-start");
            rig.act(Action.START);
            rig.act(Action.TYPE_TIME);
            rig.desk.progress(Optional.of(new Desk.Progress("Reading blue.csv", 0.4)));
            rig.desk.tell(
                    Optional.of(
                            new Desk.Notice(
                                    "blue.csv:812: latitude 95.2 is outside ±90; mend the line or"
                                            + " take it out",
                                    true)));
            "15:02:11".codePoints().forEach(rig.desk::type);
            save(rig, folder, name + "-messages");
        }
    }

    private static void save(Rig rig, Path folder, String name) throws IOException {
        ImageIO.write(rig.picture().toImage(), "png", folder.resolve(name + ".png").toFile());
    }
}
