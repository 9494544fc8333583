package pairdown.panel;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pairdown.input.Action;
import pairdown.input.HitAreas;
import pairdown.input.Keymap;
import pairdown.replay.Desk;
import pairdown.replay.Moment;
import pairdown.replay.Recording;
import pairdown.replay.SyntheticDebrief;
import pairdown.replay.ViewState;
import pairdown.settings.PanelKind;
import pairdown.settings.StripKind;
import pairdown.settings.ViewerSettings;
import pairdown.tail.Episode;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Words;

/** The pilot's strips and the list of episodes, of a debrief with one episode. */
class TailPanelTest {
    private static final Recording RECORDING =
            Recording.of(Checked.of(new SyntheticDebrief().build()));
    private static final Episode EPISODE =
            RECORDING.debrief().tailControl().orElseThrow().episodes().get(0);

    private final RecordingCanvas canvas = new RecordingCanvas();
    private final Desk desk = new Desk(ViewerSettings.DEFAULT);
    private final Panels panels = new Panels(Words.of(Locale.ENGLISH), Keymap.standard());
    private final ViewState view = new ViewState(RECORDING.debrief());

    TailPanelTest() {
        panels.show(new Board(RECORDING, Words.of(Locale.ENGLISH)), view, new Operator(desk));
        view.playback().seek(EPISODE.span().start_s());
    }

    private void draw() {
        Moment moment = new Moment(RECORDING);
        moment.fill(view.playback().t_s());
        panels.draw(
                canvas,
                new Theme(Palette.LIGHT, Sizes.atPercent(100)),
                1366,
                768,
                desk,
                Optional.of(moment),
                view.playback());
    }

    private void showOnly(StripKind kind) {
        for (StripKind k : StripKind.values()) {
            if (desk.settings().strips().contains(k) != (k == kind)) {
                desk.settings(desk.settings().withToggled(k));
            }
        }
    }

    @Test
    void ratesOfTurnHaveAStripWithTheExcursionSign() {
        showOnly(StripKind.TURNING);
        draw();
        for (String text : new String[] {"Turning", "nose up", "nose right", "excursion"}) {
            assertTrue(canvas.says(text), text);
        }
        assertTrue(canvas.says("°/s"), "its unit");
    }

    /** The band is as wide as the episode is long, and stands where it is on the strips' axis. */
    @ParameterizedTest
    @EnumSource(names = {"POWER", "ELEVATOR", "RUDDER", "TURNING"})
    void episodesAreBandsOnThePilotsStrips(StripKind kind) {
        showOnly(kind);
        draw();
        HitAreas areas = panels.areas();
        int strip =
                Arrays.stream(areas.all())
                        .filter(a -> areas.action(a) == Action.SEEK_ON_STRIP)
                        .findFirst()
                        .orElseThrow();
        double second_px = areas.width(strip) / RECORDING.debrief().span().duration_s();
        boolean there =
                canvas.fills.stream()
                        .filter(f -> f[3] > 20)
                        .anyMatch(
                                f ->
                                        Math.abs(
                                                                areas.value(strip, f[0])
                                                                        - EPISODE.span().start_s())
                                                        < 0.5
                                                && Math.abs(
                                                                f[2] / second_px
                                                                        - EPISODE.span()
                                                                                .duration_s())
                                                        < 1);
        assertTrue(there, "no band where the episode is");
    }

    @Test
    void anEpisodeInTheListIsGoneTo() {
        desk.settings(desk.settings().withToggled(PanelKind.TAIL));
        draw();
        HitAreas areas = panels.areas();
        boolean goesThere =
                Arrays.stream(areas.all())
                        .filter(a -> areas.action(a) == Action.SEEK)
                        .mapToDouble(a -> areas.value(a, areas.x(a) + 2))
                        .anyMatch(t -> Math.abs(t - EPISODE.span().start_s()) < 1e-9);
        assertTrue(goesThere, "no row goes to the episode");
    }
}
