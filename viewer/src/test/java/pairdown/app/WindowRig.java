package pairdown.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import pairdown.debrief.Debrief;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.Pixels;
import pairdown.gl.Shaders;
import pairdown.gl.VirtualDisplay;
import pairdown.gl.Window;
import pairdown.input.Action;
import pairdown.input.HitAreas;
import pairdown.kept.KeptDebriefs;
import pairdown.replay.Alignment;
import pairdown.replay.Desk;
import pairdown.replay.Playback;
import pairdown.replay.ViewState;
import pairdown.scene.Diorama;
import pairdown.settings.SettingsFile;

/** A replay window as a person has it, with a hand at keys and mouse. */
final class WindowRig implements AutoCloseable {
    static final int WIDTH = 1366;
    static final int HEIGHT = 768;

    static final String TITLE = "Pairdown";
    private static final long LONGEST_NS = 60_000_000_000L;

    final Window window;
    final ReplayLoop loop;
    final ReplayDesk desk;

    private WindowRig(Path folder) throws NoGraphicsException {
        SettingsFile file = SettingsFile.in(folder);
        window = Window.open(TITLE, WIDTH, HEIGHT);
        SettingsFile.Read read = file.read();
        GhostChoice choice = GhostChoice.of(Alignment.On.CLOSEST);
        desk =
                new ReplayDesk(
                        file,
                        read.settings(),
                        KeptDebriefs.in(folder.resolve("kept")),
                        choice,
                        Window::wake);
        loop = new ReplayLoop(window, new Shaders(Optional.empty()), desk);
        desk.begin(List.of(), read.problem());
    }

    /** With what to do first on it. */
    static WindowRig empty(Path settings) throws NoGraphicsException {
        WindowRig rig = new WindowRig(settings);
        rig.ready();
        return rig;
    }

    /** With an attempt on it. */
    static WindowRig showing(Debrief debrief, Path settings) throws NoGraphicsException {
        WindowRig rig = new WindowRig(settings);
        rig.loop.show(rig.ready(debrief));
        rig.ready();
        return rig;
    }

    private Found.Ready ready(Debrief debrief) {
        return Found.Ready.of(new Loaded(debrief, Optional.empty(), List.of()), desk.words());
    }

    private void ready() {
        loop.round(window);
        VirtualDisplay.focus(TITLE);
        loop.round(window);
    }

    Desk state() {
        return desk.state();
    }

    Diorama diorama() {
        return loop.shown().orElseThrow();
    }

    Playback time() {
        return diorama().view().playback();
    }

    ViewState view() {
        return diorama().view();
    }

    void key(String... names) {
        for (String name : names) {
            VirtualDisplay.hand("key", name);
        }
    }

    void type(String text) {
        VirtualDisplay.hand("type", text);
    }

    /** Presses the left button at one place and lets go at another. */
    void drag(float fromX, float fromY, float toX, float toY) {
        VirtualDisplay.hand(
                "search",
                "--name",
                TITLE,
                "mousemove",
                "--window",
                "%1",
                px(fromX),
                px(fromY),
                "mousedown",
                "1",
                "mousemove",
                "--window",
                "%1",
                px(toX),
                px(toY),
                "mouseup",
                "1");
    }

    void click(float x, float y) {
        VirtualDisplay.hand(
                "search",
                "--name",
                TITLE,
                "mousemove",
                "--window",
                "%1",
                px(x),
                px(y),
                "click",
                "1");
    }

    /** Turns the wheel away from the person by a notch. */
    void wheelUp(float x, float y) {
        VirtualDisplay.hand(
                "search",
                "--name",
                TITLE,
                "mousemove",
                "--window",
                "%1",
                px(x),
                px(y),
                "click",
                "4");
    }

    /** Presses the first thing on screen that does this. */
    void press(Action action) {
        int a = area(action);
        HitAreas areas = areas();
        click(areas.x(a) + areas.width(a) / 2, areas.y(a) + areas.height(a) / 2);
    }

    private static String px(float at) {
        return String.valueOf(Math.round(at));
    }

    HitAreas areas() {
        return desk.panels().areas();
    }

    int area(Action action) {
        for (int a : areas().all()) {
            boolean isWall = areas().kind(a) == HitAreas.Kind.WALL;
            if (!isWall && areas().action(a) == action) {
                return a;
            }
        }
        throw new AssertionError("nothing to press for " + action);
    }

    /** Goes round the loop until something is so. */
    void until(String what, BooleanSupplier isSo) {
        long end_ns = System.nanoTime() + LONGEST_NS;
        while (!isSo.getAsBoolean()) {
            if (System.nanoTime() > end_ns) {
                throw new AssertionError(
                        "never came: " + what + state().notice().map(n -> "; " + n).orElse(""));
            }
            loop.round(window);
        }
    }

    Pixels picture() {
        return loop.picture();
    }

    @Override
    public void close() {
        loop.close();
        window.close();
        desk.close();
    }
}
