package pairdown.panel;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pairdown.debrief.Debrief;
import pairdown.input.Action;
import pairdown.input.Command;
import pairdown.input.Keymap;
import pairdown.pair.PairSeries.Figure;
import pairdown.replay.Desk;
import pairdown.replay.Link;
import pairdown.replay.Moment;
import pairdown.replay.Recording;
import pairdown.replay.SyntheticDebrief;
import pairdown.replay.ViewState;
import pairdown.settings.PanelKind;
import pairdown.settings.ViewerSettings;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Figures;
import pairdown.words.Line;
import pairdown.words.Measure;
import pairdown.words.Words;

/** The figures of the moment, each with what it is uncertain by. */
class ReadoutTest {
    private static final int WIDTH = 1366;
    private static final int HEIGHT = 768;
    private static final Theme THEME = new Theme(Palette.LIGHT, Sizes.atPercent(100));

    /** On the way in: the gap is some metres, the closure some metres per second. */
    private static final double CLOSING_S = SyntheticDebrief.JOINED_S - 12;

    private final RecordingCanvas canvas = new RecordingCanvas();
    private final Desk desk = new Desk(ViewerSettings.DEFAULT);
    private final Operator operator = new Operator(desk);
    private final Panels panels = new Panels(Words.of(Locale.ENGLISH), Keymap.standard());
    private final Figures figures = new Figures(desk.settings().units(), Locale.ENGLISH);

    private final class Shown {
        final Moment moment;
        final ViewState view;

        Shown(Debrief debrief) {
            Recording recording = Recording.of(debrief);
            moment = new Moment(recording);
            view = new ViewState(debrief);
            panels.show(new Board(recording, Words.of(Locale.ENGLISH)), view, operator);
        }

        void draw() {
            canvas.texts.clear();
            view.playback().seek(CLOSING_S);
            moment.fill(CLOSING_S);
            Optional<Moment> one = Optional.of(moment);
            panels.draw(canvas, THEME, WIDTH, HEIGHT, desk, one, view.playback());
        }

        Link chosen() {
            return moment.links().get(0);
        }
    }

    private String plusMinus(Measure measure, double value, double sigma) {
        return figures.addPlusMinus(new Line(), measure, value, sigma).toString();
    }

    private void checkUncertain(Shown shown) {
        shown.draw();
        double gap_m = shown.chosen().figure(Figure.GAP);
        double closure_mps = shown.chosen().figure(Figure.CLOSURE_RATE);
        assertTrue(canvas.says(figures.number(Measure.DISTANCE, gap_m)));
        assertTrue(
                canvas.says(
                        plusMinus(
                                Measure.DISTANCE, gap_m, shown.chosen().figure(Figure.GAP_SIGMA))));
        assertTrue(
                canvas.says(
                        plusMinus(
                                Measure.CLOSURE,
                                closure_mps,
                                shown.chosen().figure(Figure.CLOSURE_SIGMA))));
    }

    @Test
    void gapAndClosureStandWithTheirSigma() {
        checkUncertain(new Shown(new SyntheticDebrief().build()));
    }

    @Test
    void soTheyDoBesideTwoViewsAndInBigFigures() {
        Shown shown = new Shown(new SyntheticDebrief().build());
        shown.view.toggleSplit();
        checkUncertain(shown);
        assertTrue(operator.apply(Command.of(Action.BIG_FIGURES)));
        checkUncertain(shown);
    }

    /** The other flyers' too, each on its line. */
    @Test
    void everyFlyersGapStandsWithItsSigma() {
        Shown shown = new Shown(new SyntheticDebrief().build());
        shown.draw();
        Link other = shown.moment.links().get(1);
        String text =
                figures.add(
                                new Line(),
                                Measure.DISTANCE,
                                other.figure(Figure.GAP),
                                other.figure(Figure.GAP_SIGMA))
                        .toString();
        assertTrue(canvas.texts.stream().anyMatch(t -> t.text().endsWith(text)), text);
    }

    @Test
    void besideTwoViewsItLeavesTheFirstRoom() {
        Shown shown = new Shown(new SyntheticDebrief().build());
        shown.draw();
        Rect scene = panels.scene(WIDTH, HEIGHT, THEME, desk.settings());
        float alone = panels.cornerHeight(THEME, desk, shown.moment, scene);
        shown.view.toggleSplit();
        shown.draw();
        float beside = panels.cornerHeight(THEME, desk, shown.moment, scene);
        assertTrue(beside < 0.65f * alone, beside + " of " + alone);
        assertTrue(beside < scene.height() / 3, beside + " of " + scene.height());
    }

    /** Most strips open at 1366×768 leave the scene a hand's breadth. */
    @Test
    void soItDoesInALowScene() {
        Shown shown = new Shown(new SyntheticDebrief().build());
        shown.draw();
        assertTrue(operator.apply(Command.of(Action.STRIPS)));
        shown.draw();
        Rect scene = panels.scene(WIDTH, HEIGHT, THEME, desk.settings());
        assertTrue(scene.height() < HEIGHT / 3f, "strips took " + scene.height());
        float height = panels.cornerHeight(THEME, desk, shown.moment, scene);
        assertTrue(height < 0.7f * scene.height(), height + " of " + scene.height());
    }

    /** What can't be told is no "not matched". */
    @Test
    void positionsAloneAreNotJudged() {
        Shown shown = new Shown(new SyntheticDebrief().ofPositionsOnly().build());
        shown.draw();
        assertTrue(canvas.says("match not judged"));
        assertFalse(canvas.says("not matched"));
    }

    @Test
    void withoutASlotTheStripAndTheReadoutSpeakOfSeparation() {
        Shown shown = new Shown(new SyntheticDebrief().ofPositionsOnly().withGate(30).build());
        shown.draw();
        assertTrue(canvas.texts.stream().anyMatch(t -> t.text().equals("Separation")));
        assertFalse(canvas.texts.stream().anyMatch(t -> t.text().equals("Gap")));
        assertFalse(canvas.texts.stream().anyMatch(t -> t.text().equals("gate")));
    }

    @Test
    void aCardSpeaksOfItsPairWithoutNamingItAgain() {
        desk.settings(desk.settings().withToggled(PanelKind.FLYERS));
        new Shown(new SyntheticDebrief().ofPositionsOnly().build()).draw();
        assertTrue(canvas.says("a match must hold for 4 s"));
        assertFalse(canvas.says("lead–blue: "));
    }

    @Test
    void theLongestMatchIsAlsoSaidWithinOneSigma() {
        desk.settings(desk.settings().withToggled(PanelKind.FLYERS));
        Shown shown = new Shown(new SyntheticDebrief().build());
        shown.draw();
        double longest_s = shown.chosen().pair().matched().longest().orElseThrow().duration_s();
        assertTrue(
                canvas.says(
                        figures.number(Measure.DURATION, longest_s - 0.5)
                                + " to "
                                + figures.text(Measure.DURATION, longest_s + 0.5)));
    }

    @Test
    void theUnitOfTheReadoutsPlaceIsSaid() {
        new Shown(new SyntheticDebrief().build()).draw();
        String unit = figures.symbol(Measure.DISTANCE);
        RecordingCanvas.Text above =
                canvas.texts.stream()
                        .filter(t -> t.text().equals("above") && t.baseline() < HEIGHT / 2)
                        .findFirst()
                        .orElseThrow();
        assertTrue(
                canvas.texts.stream()
                        .anyMatch(
                                t ->
                                        t.text().equals(unit)
                                                && Math.abs(t.baseline() - above.baseline()) < 1));
    }
}
