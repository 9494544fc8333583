package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.gl.NeedsDisplay;
import pairdown.gl.Pixels;
import pairdown.gl.VirtualDisplay;
import pairdown.input.Action;
import pairdown.replay.SyntheticDebrief;
import pairdown.settings.SettingsFile;
import pairdown.settings.WindowSize;

/** What may happen to a window while a replay runs in it. */
@NeedsDisplay
class WindowChangesTest {
    private static final int LONGEST_S = 120;

    private final Path folder;

    WindowChangesTest(@TempDir Path folder) {
        this.folder = folder;
    }

    private WindowRig showing() throws Exception {
        return WindowRig.showing(new SyntheticDebrief().in(folder).build(), folder);
    }

    @Test
    void hiddenItGoesOnAndShownAgainItIsDrawn() throws Exception {
        try (WindowRig rig = showing()) {
            rig.key("space");
            rig.until("playing", () -> rig.time().isPlaying());
            VirtualDisplay.unmap(WindowRig.TITLE);
            rig.until("hidden", rig.window::isHidden);
            double then_s = rig.time().t_s();
            rig.until("time passes", () -> rig.time().t_s() > then_s + 0.5);
            VirtualDisplay.map(WindowRig.TITLE);
            rig.until("shown", () -> !rig.window.isHidden());
            rig.loop.round(rig.window);
            assertTrue(colours(rig.picture()) > 50);
        }
    }

    private static long colours(Pixels pixels) {
        return java.util.stream.IntStream.range(0, pixels.width_px() * pixels.height_px() / 97)
                .map(i -> i * 97)
                .map(i -> pixels.rgb(i % pixels.width_px(), i / pixels.width_px()))
                .distinct()
                .count();
    }

    @Test
    void tinyAndHugeItIsDrawnAndWorksAgainAfterwards() throws Exception {
        try (WindowRig rig = showing()) {
            for (int[] size : new int[][] {{40, 30}, {200, 900}, {3900, 2200}, {1366, 768}}) {
                rig.window.resize(size[0], size[1]);
                rig.until("the size", () -> rig.window.width_px() == size[0]);
                rig.loop.round(rig.window);
                assertEquals(size[1], rig.picture().height_px());
            }
            rig.press(Action.PLAY);
            rig.until("playing", () -> rig.time().isPlaying());
        }
    }

    @Test
    void shutItIsAsLargeTheNextTime() throws Exception {
        try (WindowRig rig = showing()) {
            rig.window.resize(1000, 650);
            rig.until("the size", () -> rig.window.width_px() == 1000);
            rig.key("ctrl+q");
            rig.loop.run(rig.window);
        }
        assertEquals(new WindowSize(1000, 650), SettingsFile.in(folder).read().settings().window());
    }

    @Test
    void movedAndWithOtherMonitorsItKeepsItsMeasure() throws Exception {
        try (WindowRig rig = showing()) {
            float target = rig.areas().width(rig.area(Action.PLAY));
            VirtualDisplay.move(WindowRig.TITLE, 200, 150);
            VirtualDisplay.monitorsChange();
            rig.loop.round(rig.window);
            rig.loop.round(rig.window);
            assertEquals(target, rig.areas().width(rig.area(Action.PLAY)));
            rig.press(Action.THEME);
            rig.until("dark", () -> rig.state().settings().isDark());
        }
    }

    @Test
    void theSystemsScaleMayChange() throws Exception {
        try (WindowRig rig = showing()) {
            VirtualDisplay.rescale();
            rig.loop.round(rig.window);
            assertFalse(rig.window.isHidden());
            assertEquals(WindowRig.WIDTH, rig.picture().width_px());
        }
    }

    /** A driver of twenty years ago: the same library, told to say it has no more. */
    @Test
    void withoutOpenGl33OneLineSaysWhatToDo() throws Exception {
        ProcessBuilder builder =
                new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "pairdown.app.Main",
                        "replay");
        builder.environment().put("DISPLAY", VirtualDisplay.name());
        builder.environment().put("MESA_GL_VERSION_OVERRIDE", "2.1");
        Process process = builder.start();
        String said = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(LONGEST_S, TimeUnit.SECONDS));
        assertEquals(ExitStatus.OUTPUT, process.exitValue(), said);
        List<String> lines = said.lines().filter(line -> line.contains("window")).toList();
        assertEquals(1, lines.size(), said);
        assertTrue(lines.get(0).contains("no OpenGL 3.3"), said);
        assertTrue(lines.get(0).contains("LIBGL_ALWAYS_SOFTWARE"), said);
        assertFalse(said.contains("\tat "), said);
    }
}
