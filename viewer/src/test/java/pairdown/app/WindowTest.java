package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.attempt.Mark;
import pairdown.attempt.MarksFile;
import pairdown.camera.Vantage;
import pairdown.gl.NeedsDisplay;
import pairdown.gl.Pixels;
import pairdown.gl.VirtualDisplay;
import pairdown.input.Action;
import pairdown.input.HitAreas;
import pairdown.panel.Rect;
import pairdown.replay.Alignment;
import pairdown.replay.Desk;
import pairdown.replay.Moment;
import pairdown.replay.SyntheticDebrief;
import pairdown.settings.PanelKind;
import pairdown.settings.SettingsFile;
import pairdown.theme.Palette;
import pairdown.time.Span;

/** The replay in a real window, driven by keys and mouse. */
@NeedsDisplay
class WindowTest {
    private final Path folder;

    WindowTest(@TempDir Path folder) {
        this.folder = folder;
    }

    private WindowRig showing() throws Exception {
        return WindowRig.showing(new SyntheticDebrief().in(folder).build(), folder);
    }

    private static float barX(WindowRig rig, int bar, double t_s) {
        HitAreas areas = rig.areas();
        double first = areas.value(bar, areas.x(bar));
        double last = areas.value(bar, areas.x(bar) + areas.width(bar));
        return (float) (areas.x(bar) + (t_s - first) / (last - first) * areas.width(bar));
    }

    @Test
    void draggingAlongTheBarScrubs() throws Exception {
        try (WindowRig rig = showing()) {
            int bar = rig.area(Action.SEEK);
            float y = rig.areas().y(bar) + rig.areas().height(bar) / 2;
            float to = barX(rig, bar, 110);
            rig.drag(barX(rig, bar, 70), y, to, y);
            rig.until("110 s", () -> Math.abs(rig.time().t_s() - 110) < 0.5);
            Pixels pixels = rig.picture();
            assertTrue(
                    isDark(pixels, Math.round(to), Math.round(y)),
                    "no line of the instant on the bar");
        }
    }

    private static boolean isDark(Pixels pixels, int x, int y) {
        for (int dx = -3; dx <= 3; dx++) {
            if ((pixels.rgb(x + dx, y) & 0xFF) < 0x60) {
                return true;
            }
        }
        return false;
    }

    @Test
    void aKeyAndAPressedRowGoToEvents() throws Exception {
        try (WindowRig rig = showing()) {
            double[] events = rig.diorama().moment().recording().eventTimes_s();
            rig.key("Home", "n");
            rig.until("the next event", () -> isOneOf(rig.time().t_s(), events));
            rig.press(Action.EVENTS);
            rig.until("the events", () -> rig.state().settings().panel() == PanelKind.EVENTS);
            rig.key("End");
            rig.until("the end", () -> rig.time().t_s() > events[events.length - 1] - 1e-6);
            int row = rowWith(rig, events[0]);
            rig.click(rig.areas().x(row) + 20, rig.areas().y(row) + 20);
            rig.until("the first event", () -> Math.abs(rig.time().t_s() - events[0]) < 1e-6);
        }
    }

    private static boolean isOneOf(double t_s, double[] moments_s) {
        for (double moment_s : moments_s) {
            if (Math.abs(moment_s - t_s) < 1e-6) {
                return true;
            }
        }
        return false;
    }

    /** A row of the side panel that goes to an instant. */
    private static int rowWith(WindowRig rig, double t_s) {
        HitAreas areas = rig.areas();
        for (int a : areas.all()) {
            if (areas.kind(a) == HitAreas.Kind.BUTTON
                    && areas.action(a) == Action.SEEK
                    && Math.abs(areas.value(a, 0) - t_s) < 1e-6) {
                return a;
            }
        }
        throw new AssertionError("no row for " + t_s);
    }

    @Test
    void playingGoesOnByItself() throws Exception {
        try (WindowRig rig = showing()) {
            double before_s = rig.time().t_s();
            rig.key("space");
            rig.until("a second later", () -> rig.time().t_s() > before_s + 1);
            rig.key("space");
            rig.until("a stop", () -> !rig.time().isPlaying());
        }
    }

    @Test
    void aTypedTimeIsGoneToAndALoopGoesRound() throws Exception {
        try (WindowRig rig = showing()) {
            rig.key("t");
            rig.until("the question", () -> rig.state().asking() == Desk.Asking.TIME);
            rig.key("ctrl+a", "BackSpace");
            rig.type("15:01:50.000");
            rig.key("Return");
            rig.until("110 s", () -> Math.abs(rig.time().t_s() - 110) < 1e-6);
            rig.key("l", "Right", "l");
            rig.until("the loop", () -> rig.time().loop().isPresent());
            Span loop = rig.time().loop().orElseThrow();
            assertEquals(new Span(110, 111), loop);
            rig.key("space");
            rig.until("playing", () -> rig.time().isPlaying());
            rig.until("near its end", () -> rig.time().t_s() > 110.6);
            rig.until("its beginning again", () -> rig.time().t_s() < 110.4);
        }
    }

    @Test
    void twoCursorsShowWhatLiesBetween() throws Exception {
        try (WindowRig rig = showing()) {
            rig.key("Home", "n", "a", "n", "n", "b");
            rig.until("both", () -> !Double.isNaN(rig.state().cursorB_s()));
            double[] events = rig.diorama().moment().recording().eventTimes_s();
            assertEquals(events[0], rig.state().cursorA_s(), 1e-6);
            assertTrue(rig.state().cursorB_s() > rig.state().cursorA_s());
            Pixels with = rig.picture();
            rig.key("shift+a");
            rig.until("none", () -> Double.isNaN(rig.state().cursorA_s()));
            int strip = rig.area(Action.SEEK_ON_STRIP);
            int x = Math.round(barX(rig, strip, events[0]));
            int y = Math.round(rig.areas().y(strip));
            Pixels without = rig.picture();
            assertTrue(
                    IntStream.range(y, y + Math.round(rig.areas().height(strip)))
                            .anyMatch(i -> with.rgb(x, i) != without.rgb(x, i)),
                    "no line at cursor A");
        }
    }

    @Test
    void theLastAttemptIsOpenedAgainByAKeyAndAPress() throws Exception {
        Path flown = SmallAttempt.write(folder.resolve("flown"), "flown", 0);
        try (WindowRig rig = WindowRig.empty(folder)) {
            VirtualDisplay.drop(List.of(flown));
            rig.until("the attempt", () -> rig.loop.shown().isPresent());
        }
        try (WindowRig rig = WindowRig.empty(folder)) {
            rig.key("ctrl+r");
            rig.until("the attempt", () -> rig.loop.shown().isPresent());
            assertEquals("flown", rig.diorama().moment().debrief().attempt().id());
        }
        try (WindowRig rig = WindowRig.empty(folder)) {
            rig.loop.round(rig.window);
            rig.press(Action.OPEN_RECENT);
            rig.until("the attempt", () -> rig.loop.shown().isPresent());
            assertEquals("flown", rig.diorama().moment().debrief().attempt().id());
        }
    }

    @Test
    void theThemeSwitchesAndIsKept() throws Exception {
        try (WindowRig rig = showing()) {
            int x = WindowRig.WIDTH - 2;
            int y = WindowRig.HEIGHT / 2;
            rig.loop.round(rig.window);
            assertEquals(Palette.LIGHT.panel() >>> 8, rig.picture().rgb(x, y));
            rig.key("F12");
            rig.until("dark", () -> rig.state().settings().isDark());
            assertEquals(Palette.DARK.panel() >>> 8, rig.picture().rgb(x, y));
            assertTrue(SettingsFile.in(folder).read().settings().isDark());
        }
    }

    @Test
    void theSplitShowsTwoVantagePointsWithALineBetween() throws Exception {
        try (WindowRig rig = showing()) {
            rig.key("y");
            rig.until("two views", () -> rig.view().second().isPresent());
            rig.until("still cameras", () -> !rig.diorama().isMoving());
            Rect scene = scene(rig);
            Pixels pixels = rig.picture();
            int middle = Math.round(scene.x() + scene.width() / 2);
            int edge = Palette.LIGHT.edge() >>> 8;
            int on = 0;
            for (int y = 1; y < scene.height(); y++) {
                on += pixels.rgb(middle, y) == edge || pixels.rgb(middle - 1, y) == edge ? 1 : 0;
            }
            // The notes of the first view may lie over its end.
            assertTrue(on > 0.8 * scene.height(), on + " of " + scene.height());
            rig.key("y");
            rig.until("one view", () -> rig.view().second().isEmpty());
        }
    }

    private static Rect scene(WindowRig rig) {
        return rig.loop.scene();
    }

    @Test
    void draggingTheSceneTurnsIt() throws Exception {
        try (WindowRig rig = showing()) {
            Rect scene = scene(rig);
            float x = scene.x() + 0.6f * scene.width();
            float y = scene.y() + 0.6f * scene.height();
            Pixels before = rig.picture();
            rig.drag(x, y, x + 120, y);
            rig.until("the orbit", () -> rig.view().vantage().kind() == Vantage.Kind.ORBIT);
            rig.until("still cameras", () -> !rig.diorama().isMoving());
            assertNotEquals(0, differing(before, rig.picture(), scene));
        }
    }

    private static int differing(Pixels a, Pixels b, Rect part) {
        int n = 0;
        for (int y = Math.round(part.y()); y < part.bottom(); y += 4) {
            for (int x = Math.round(part.x()); x < part.right(); x += 4) {
                n += a.rgb(x, y) == b.rgb(x, y) ? 0 : 1;
            }
        }
        return n;
    }

    @Test
    void anotherSizeIsLaidOutAnew() throws Exception {
        try (WindowRig rig = showing()) {
            rig.window.resize(1100, 700);
            rig.until("the size", () -> rig.window.width_px() == 1100);
            rig.loop.round(rig.window);
            int quit = rig.area(Action.HELP);
            HitAreas areas = rig.areas();
            assertEquals(700, areas.y(quit) + areas.height(quit), 1);
            assertEquals(700, rig.picture().height_px());
            int bar = rig.area(Action.SEEK);
            assertTrue(areas.x(bar) + areas.width(bar) <= 1100);
        }
    }

    @Test
    void aMarkTypedIsKeptBesideTheAttempt() throws Exception {
        try (WindowRig rig = showing()) {
            rig.key("m");
            rig.until("the question", () -> !rig.state().asking().name().equals("NOTHING"));
            rig.type("hand on wing");
            rig.key("Return");
            rig.until("the mark", () -> !rig.state().marks().isEmpty());
            List<Mark> marks = MarksFile.read(folder);
            assertEquals("hand on wing", marks.get(0).note());
        }
    }

    @Test
    void aDroppedFolderOpensWhileTheWindowAnswers() throws Exception {
        try (WindowRig rig = WindowRig.empty(folder)) {
            VirtualDisplay.drop(List.of(Sample.FOLDER.toAbsolutePath().normalize()));
            rig.until("progress", () -> rig.state().progress().isPresent());
            rig.key("F12");
            rig.until("dark", () -> rig.state().settings().isDark());
            assertTrue(rig.loop.shown().isEmpty(), "it was read before the key was answered");
            rig.until("the attempt", () -> rig.loop.shown().isPresent());
            assertEquals(
                    Sample.FOLDER.getFileName().toString(),
                    rig.diorama().moment().debrief().attempt().id());
            assertFalse(rig.state().isStarting());
            assertTrue(
                    rig.state()
                            .settings()
                            .recent()
                            .get(0)
                            .endsWith(Sample.FOLDER.getFileName().toString()));
        }
    }

    @Test
    void droppedLogsMakeADraftAttempt() throws Exception {
        Path flown = SmallAttempt.write(folder.resolve("flown"), "flown", 0);
        List<Path> logs = List.of(flown.resolve("lead.csv"), flown.resolve("blue.csv"));
        try (WindowRig rig = WindowRig.empty(folder)) {
            VirtualDisplay.drop(logs);
            rig.until("the attempt", () -> rig.loop.shown().isPresent());
            assertEquals(
                    Set.of("lead", "blue"), Set.copyOf(rig.diorama().moment().recording().ids()));
        }
    }

    @Test
    void aFolderOfAttemptsIsListedAndTwoAreLaidOver() throws Exception {
        Path season = folder.resolve("season");
        SmallAttempt.write(season.resolve("first"), "first", 0);
        SmallAttempt.write(season.resolve("second"), "second", 10);
        try (WindowRig rig = WindowRig.empty(folder)) {
            VirtualDisplay.drop(List.of(season));
            rig.until("the last attempt", () -> rig.loop.shown().isPresent());
            assertEquals(2, rig.state().season().size());
            assertEquals("second", rig.diorama().moment().debrief().attempt().id());
            rig.loop.round(rig.window);
            rig.press(Action.PANEL_DOWN);
            rig.until("the list", () -> shows(rig, Action.OVERLAY_ATTEMPT, 1));
            pressOverlayOf(rig, 1);
            rig.until("the other", () -> rig.diorama().moment().ghost().isPresent());
            Moment.Ghost before = rig.diorama().moment().ghost().orElseThrow();
            assertEquals("first", before.moment().debrief().attempt().id());
            rig.key("ctrl+g");
            rig.until("another alignment", () -> alignedOn(rig) != before.alignment().on());
            rig.loop.round(rig.window);
            pressOverlayOf(rig, 1);
            rig.until("one attempt", () -> rig.diorama().moment().ghost().isEmpty());
        }
    }

    private static void pressOverlayOf(WindowRig rig, int number) {
        int button = nth(rig, Action.OVERLAY_ATTEMPT, number);
        rig.click(rig.areas().x(button) + 20, rig.areas().y(button) + 20);
    }

    private static Alignment.On alignedOn(WindowRig rig) {
        return rig.diorama().moment().ghost().orElseThrow().alignment().on();
    }

    @Test
    void vantagePointsArePressedOnTheirPanel() throws Exception {
        try (WindowRig rig = showing()) {
            rig.press(Action.VIEWS);
            rig.until("the panel", () -> rig.state().settings().panel() == PanelKind.VIEWS);
            rig.loop.round(rig.window);
            HitAreas areas = rig.areas();
            int third = nth(rig, Action.LOOK_FROM, 2);
            rig.click(areas.x(third) + 20, areas.y(third) + 20);
            rig.until("astern", () -> rig.view().vantage().kind() == Vantage.Kind.ASTERN_ABOVE);
            int second = nth(rig, Action.LOOK_SECOND, 3);
            rig.click(areas.x(second) + 20, areas.y(second) + 20);
            Vantage window = Vantage.of(Vantage.Kind.LEFT_WINDOW);
            rig.until("two", () -> rig.view().second().equals(Optional.of(window)));
        }
    }

    private static boolean shows(WindowRig rig, Action action, int value) {
        HitAreas areas = rig.areas();
        return IntStream.of(areas.all())
                .anyMatch(a -> areas.action(a) == action && areas.value(a, 0) == value);
    }

    private static int nth(WindowRig rig, Action action, int value) {
        HitAreas areas = rig.areas();
        for (int a : areas.all()) {
            if (areas.action(a) == action && areas.value(a, 0) == value) {
                return a;
            }
        }
        throw new AssertionError("no " + action + " " + value);
    }

    @Test
    void theWheelZoomsStripsAboutThePointer() throws Exception {
        try (WindowRig rig = showing()) {
            int strip = rig.area(Action.SEEK_ON_STRIP);
            HitAreas areas = rig.areas();
            float x = areas.x(strip) + areas.width(strip) / 4;
            float y = areas.y(strip) + areas.height(strip) / 2;
            double under_s = areas.value(strip, x);
            rig.wheelUp(x, y);
            rig.until("a window", () -> !Double.isNaN(rig.state().windowStart_s()));
            rig.loop.round(rig.window);
            int zoomed = rig.area(Action.SEEK_ON_STRIP);
            assertEquals(under_s, areas.value(zoomed, x), 1);
            assertTrue(rig.state().windowEnd_s() - rig.state().windowStart_s() < 100);
        }
    }

    @Test
    void whatCannotBeOpenedIsToldInTheWindow() throws Exception {
        Path empty = Files.createDirectory(folder.resolve("nothing"));
        try (WindowRig rig = WindowRig.empty(folder)) {
            VirtualDisplay.drop(List.of(empty));
            rig.until("words", () -> rig.state().notice().isPresent());
            String told = rig.state().notice().orElseThrow().text();
            assertTrue(told.contains("nothing") && told.contains("put the attempt's logs"), told);
            rig.loop.round(rig.window);
            rig.press(Action.CANCEL);
            rig.until("no words", () -> rig.state().notice().isEmpty());
        }
    }

    @Test
    void damagedSettingsAreToldAndTheDefaultsHold() throws Exception {
        Files.writeString(SettingsFile.in(folder).path(), "{\"dark\": tru");
        try (WindowRig rig = WindowRig.empty(folder)) {
            assertTrue(rig.state().notice().orElseThrow().text().contains("damaged"));
            assertFalse(rig.state().settings().isDark());
        }
    }
}
