package pairdown.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairdown.debrief.Debrief;
import pairdown.input.Action;
import pairdown.input.Command;
import pairdown.input.HitAreas;
import pairdown.input.Keymap;
import pairdown.pair.PairSeries;
import pairdown.replay.Alignment;
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
import pairdown.units.Estimate;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

class PanelsTest {
    private static final Recording RECORDING =
            Recording.of(Checked.of(new SyntheticDebrief().withGapAt(120).build()));

    private final RecordingCanvas canvas = new RecordingCanvas();
    private final Desk desk = new Desk(ViewerSettings.DEFAULT);
    private final Panels panels = new Panels(Words.of(Locale.ENGLISH), Keymap.standard());
    private final Operator operator = new Operator(desk);
    private final ViewState view = new ViewState(RECORDING.debrief());
    private final Playback playback = view.playback();
    private final Moment moment = new Moment(RECORDING);
    private int width_px = 1366;
    private int height_px = 768;
    private double percent = 100;

    PanelsTest() {
        panels.show(new Board(RECORDING, Words.of(Locale.ENGLISH)), view, operator);
        playback.seek(SyntheticDebrief.JOINED_S + 6);
    }

    private void draw() {
        moment.fill(playback.t_s());
        draw(moment);
    }

    private void draw(Moment shown) {
        canvas.texts.clear();
        canvas.strokes.clear();
        canvas.painted.clear();
        Palette palette = desk.settings().isDark() ? Palette.DARK : Palette.LIGHT;
        panels.draw(
                canvas,
                new Theme(palette, Sizes.atPercent(percent)),
                width_px,
                height_px,
                desk,
                Optional.of(shown),
                playback);
    }

    private void act(Action action) {
        assertTrue(operator.apply(Command.of(action)), () -> action + " did nothing");
    }

    private void act(Action action, double value) {
        assertTrue(operator.apply(new Command(action, value)), () -> action + " did nothing");
    }

    @ParameterizedTest
    @CsvSource({"1366, 768, 100", "3840, 2160, 200", "1920, 1080, 100"})
    void everyTargetIsFifteenMillimetresAndOverlapsNoOtherOfItsLayer(
            int width, int height, double scale) {
        width_px = width;
        height_px = height;
        percent = scale;
        for (PanelKind panel : PanelKind.values()) {
            if (desk.settings().panel() != panel) {
                desk.settings(desk.settings().withToggled(panel));
            }
            draw();
            checkTargets(panel);
        }
    }

    private void checkTargets(PanelKind panel) {
        HitAreas areas = panels.areas();
        float least = Sizes.atPercent(percent).target() - 0.6f;
        int[] all = areas.all();
        assertTrue(all.length > 25, "only " + all.length);
        for (int a : all) {
            if (areas.kind(a) == HitAreas.Kind.WALL) {
                continue;
            }
            assertTrue(
                    areas.width(a) >= least && areas.height(a) >= least,
                    () ->
                            panel
                                    + ": "
                                    + areas.action(a)
                                    + " is "
                                    + areas.width(a)
                                    + " × "
                                    + areas.height(a));
            assertTrue(
                    areas.x(a) >= 0
                            && areas.y(a) >= 0
                            && areas.x(a) + areas.width(a) <= width_px + 0.5f
                            && areas.y(a) + areas.height(a) <= height_px + 0.5f,
                    () -> panel + ": " + areas.action(a) + " reaches outside");
            for (int b : all) {
                if (a < b
                        && areas.kind(b) != HitAreas.Kind.WALL
                        && areas.kind(b) == areas.kind(a)) {
                    assertFalse(
                            overlap(areas, a, b),
                            () -> areas.action(a) + " under " + areas.action(b));
                }
            }
        }
    }

    private static boolean overlap(HitAreas areas, int a, int b) {
        float slack = 0.5f;
        return areas.x(a) + slack < areas.x(b) + areas.width(b)
                && areas.x(b) + slack < areas.x(a) + areas.width(a)
                && areas.y(a) + slack < areas.y(b) + areas.height(b)
                && areas.y(b) + slack < areas.y(a) + areas.height(a);
    }

    @Test
    void textStandsOnlyInInk() {
        for (PanelKind panel : PanelKind.values()) {
            desk.settings(desk.settings().withToggled(panel));
            draw();
            Set<Integer> inks = new HashSet<>();
            canvas.texts.forEach(t -> inks.add(t.rgba()));
            assertTrue(
                    Set.of(Palette.LIGHT.ink(), Palette.LIGHT.inkSoft()).containsAll(inks),
                    () -> panel + " writes in other colours");
        }
    }

    @Test
    void whatAnAttemptHasNothingForComesAfterTheOtherStrips() {
        Recording alone = Recording.of(Checked.withoutPairs(RECORDING.debrief()));
        panels.show(new Board(alone, Words.of(Locale.ENGLISH)), view, operator);
        draw(new Moment(alone));
        assertTrue(canvas.says("Power"));
        assertFalse(canvas.says("No lead and flyer to compare."));
    }

    @Test
    void noTextIsWiderThanTheWindow() {
        for (PanelKind panel : PanelKind.values()) {
            desk.settings(desk.settings().withToggled(panel));
            draw();
            for (RecordingCanvas.Text text : canvas.texts) {
                assertTrue(
                        text.left() >= 0 && text.right() <= width_px + 1,
                        () -> panel + ": '" + text.text() + "' from " + text.left());
            }
        }
    }

    @Test
    void aCurveHasNoMorePointsThanAreSeen() {
        draw();
        assertFalse(canvas.strokes.isEmpty());
        canvas.strokes.forEach(s -> assertTrue(s.points() <= StripRow.MOST_POINTS));
    }

    @Test
    void aFrameWhereOnlyTimeMovedPaintsNoPictureAnew() {
        draw();
        assertFalse(canvas.painted.isEmpty());
        playback.seek(playback.t_s() + 0.1);
        draw();
        assertEquals(List.of(), canvas.painted);
    }

    @Test
    void whatIsPressedStaysPressableWhenDrawnFromAPicture() {
        draw();
        int count = panels.areas().all().length;
        draw();
        assertEquals(count, panels.areas().all().length);
    }

    @Test
    void whatToTrustComesFirst() {
        draw();
        assertTrue(canvas.says("What to trust"));
        assertTrue(canvas.says("amber · amber.gpx"));
        assertTrue(canvas.says("2.41 ± 0.03 s"));
        assertTrue(canvas.says("warnings: 2"));
    }

    @Test
    void aFlyersCardSaysWhatTheTeamAsksFirst() {
        act(Action.FLYERS);
        draw();
        for (String part :
                List.of(
                        "planned gate",
                        "median gap",
                        "longest match",
                        "worst closure",
                        "match to break-off")) {
            assertTrue(canvas.says(part), part);
        }
        assertFalse(canvas.says("…"), "a name is cut off");
    }

    @Test
    void theWorstClosureIsThatAgainstTheClosingLimit() {
        act(Action.FLYERS);
        draw();
        // As the finding has it; the greatest closure of the whole flight is another.
        assertTrue(canvas.says("5.6 m/s"));
    }

    @Test
    void findingsAreShownWithTheirOutcomeAndLimit() {
        act(Action.LIMITS);
        draw();
        assertTrue(canvas.says("exceeded"));
        assertTrue(canvas.says("can't tell"));
        assertTrue(canvas.says("5410"));
        assertTrue(canvas.says("the record shows nothing over the limit"));
    }

    @Test
    void onePressSwitchesAllUnits() {
        draw();
        assertTrue(canvas.says("ft/min"));
        act(Action.UNITS);
        act(Action.UNITS);
        draw();
        assertFalse(canvas.says("ft/min"));
        assertTrue(canvas.says("17.8 m/s"));
    }

    @Test
    void bothCursorsShowTheDifference() {
        act(Action.CURSOR_A_AT, 104);
        act(Action.CURSOR_B_AT, 114);
        draw();
        assertTrue(canvas.says("B − A"));
    }

    @Test
    void zoomKeepsTheInstantUnderThePointer() {
        act(Action.ZOOM_STRIPS_AT, 100);
        double from_s = desk.windowStart_s();
        double to_s = desk.windowEnd_s();
        act(Action.ZOOM_STRIPS_AT, 100);
        assertEquals(
                (100 - from_s) / (to_s - from_s),
                (100 - desk.windowStart_s()) / (desk.windowEnd_s() - desk.windowStart_s()),
                1e-9);
    }

    @Test
    void stripsPannedPastTheEndStopThere() {
        act(Action.ZOOM_STRIPS_AT, 100);
        act(Action.PAN_STRIPS, 1e6);
        assertEquals(RECORDING.debrief().span().end_s(), desk.windowEnd_s(), 1e-9);
    }

    @Test
    void aTypedTimeIsGoneTo() {
        desk.ask(Desk.Asking.TIME, "15:01:10.5");
        assertTrue(operator.seekTyped());
        assertEquals(70.5, playback.t_s(), 1e-9);
        desk.ask(Desk.Asking.TIME, "soon");
        assertFalse(operator.seekTyped());
    }

    /** The other joins half a minute later: at the same time after the exit it is farther away. */
    @Test
    void theReadoutSaysByWhatTheSecondAttemptDiffers() {
        Debrief first = RECORDING.debrief();
        Debrief other = new SyntheticDebrief().joiningLater(30, "other").build();
        Alignment onExit = Alignment.of(first, other, Alignment.On.EXIT, 30).orElseThrow();
        Moment laid = new Moment(Recording.of(other));
        Moment both = new Moment(RECORDING, Optional.of(new Moment.Ghost(laid, onExit)));
        both.fill(SyntheticDebrief.JOINED_S + 6);
        draw(both);
        double own_m = both.links().get(0).figure(PairSeries.Figure.GAP);
        double other_m = laid.links().get(0).figure(PairSeries.Figure.GAP);
        assertTrue(other_m - own_m > 10, () -> own_m + " and " + other_m);
        Figures figures = new Figures(desk.settings().units(), Locale.ENGLISH);
        double sigma_m = laid.links().get(0).figure(PairSeries.Figure.GAP_SIGMA);
        assertTrue(
                canvas.says(figures.text(Measure.DISTANCE, new Estimate(other_m, sigma_m))),
                "the other's gap");
        // Both have the same sigma, and nothing in common.
        Estimate less = new Estimate(own_m - other_m, Math.sqrt(2) * sigma_m);
        assertTrue(canvas.says(figures.text(Measure.DISTANCE, less)), "the difference");
    }

    @Test
    void theReadoutSaysWhereTheTwoPassIfNothingChanges() {
        Moment moment = new Moment(RECORDING);
        moment.fill(SyntheticDebrief.JOINED_S - 15);
        draw(moment);
        assertTrue(canvas.says("o'clock"));
        double miss_m = moment.links().get(0).figure(PairSeries.Figure.PREDICTED_MISS);
        double in_s = moment.links().get(0).figure(PairSeries.Figure.PREDICTED_MISS_IN);
        Figures figures = new Figures(desk.settings().units(), Locale.ENGLISH);
        String miss = figures.number(Measure.DISTANCE, miss_m);
        assertTrue(canvas.says("in " + figures.text(Measure.DURATION, in_s) + ": " + miss + " ± "));
        moment.fill(SyntheticDebrief.JOINED_S + 10);
        draw(moment);
        assertTrue(canvas.says("holding against each other"));
    }

    @Test
    void theStartPanelShowsTheCautions() {
        act(Action.START);
        draw();
        assertTrue(canvas.says("already qualified and authorised"));
        assertTrue(canvas.says("flight manual"));
        act(Action.CANCEL);
        draw();
        assertFalse(canvas.says("already qualified"));
    }

    @Test
    void theListOfKeysNamesEveryAction() {
        act(Action.HELP);
        draw();
        Words words = Words.of(Locale.ENGLISH);
        for (Action action : Action.values()) {
            if (!action.needsValue()) {
                String text = words.get("action." + action.key());
                assertTrue(canvas.says(text), () -> text + " is missing or cut");
            }
        }
    }

    @Test
    void aProblemIsShownInWords() {
        desk.tell(Optional.of(new Desk.Notice("blue.csv:812: no latitude; mend the line", true)));
        draw();
        assertTrue(canvas.says("mend the line"));
        act(Action.CANCEL);
        draw();
        assertFalse(canvas.says("mend the line"));
    }

    /** What is told of must not hide what is read. */
    @ParameterizedTest
    @CsvSource({"1366, 768, 100", "3840, 2160, 200"})
    void aMessageLiesOverTheSceneBesideTheReadout(int width, int height, double scale) {
        width_px = width;
        height_px = height;
        percent = scale;
        desk.tell(Optional.of(new Desk.Notice("2031-05-14-02 is laid over", false)));
        canvas.fills.clear();
        draw();
        int close = area(Action.CANCEL);
        Theme theme = new Theme(Palette.LIGHT, Sizes.atPercent(percent));
        Rect scene = panels.scene(width_px, height_px, theme, desk.settings());
        float left = scene.x() + panels.cornerWidth(theme, desk);
        HitAreas areas = panels.areas();
        assertTrue(areas.x(close) + areas.width(close) <= scene.right());
        RecordingCanvas.Text said =
                canvas.texts.stream()
                        .filter(t -> t.text().contains("is laid over"))
                        .findFirst()
                        .orElseThrow();
        assertTrue(said.left() >= left, said.left() + " under " + left);
        assertTrue(said.right() <= areas.x(close));
    }

    private int area(Action action) {
        HitAreas areas = panels.areas();
        for (int a : areas.all()) {
            if (areas.kind(a) == HitAreas.Kind.BUTTON && areas.action(a) == action) {
                return a;
            }
        }
        throw new AssertionError("nothing to press for " + action);
    }

    @Test
    void theOtherThemeRepaintsEverything() {
        draw();
        act(Action.THEME);
        draw();
        assertTrue(canvas.painted.size() >= 5);
        assertTrue(canvas.texts.stream().anyMatch(t -> t.rgba() == Palette.DARK.ink()));
    }

    @Test
    void bigFiguresReplaceTheSidePanel() {
        act(Action.BIG_FIGURES);
        draw();
        float big = Sizes.atPercent(percent).bigFigure();
        assertTrue(canvas.texts.stream().filter(t -> t.size() >= 0.99f * big).count() >= 3);
        assertFalse(canvas.says("What to trust"));
    }

    @Test
    void everyPanelOpensAndShutsOnItsKey() {
        for (Action action :
                List.of(
                        Action.TRUST,
                        Action.FLYERS,
                        Action.EVENTS,
                        Action.LIMITS,
                        Action.TAIL,
                        Action.SEASON,
                        Action.MARKS,
                        Action.CHOOSE_STRIPS)) {
            PanelKind before = desk.settings().panel();
            act(action);
            assertNotEquals(before, desk.settings().panel());
            draw();
        }
    }
}
