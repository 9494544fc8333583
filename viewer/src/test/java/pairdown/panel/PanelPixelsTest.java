package pairdown.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import pairdown.gl.NeedsGl;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.Pixels;
import pairdown.input.Action;
import pairdown.input.HitAreas;
import pairdown.replay.SyntheticDebrief;
import pairdown.settings.ViewerSettings;
import pairdown.theme.Palette;

/** The panels as they really come out: pixels are asked where geometry says something must be. */
@NeedsGl
class PanelPixelsTest {
    private static final int WIDTH = 1366;
    private static final int HEIGHT = 768;
    private static final int FRAMES = 40;

    private static PanelGallery.Rig rig() throws NoGraphicsException {
        PanelGallery.Rig rig =
                new PanelGallery.Rig(
                        WIDTH,
                        HEIGHT,
                        100,
                        ViewerSettings.DEFAULT,
                        Checked.of(new SyntheticDebrief().build()));
        rig.playback.seek(SyntheticDebrief.JOINED_S + 6);
        return rig;
    }

    private static int area(HitAreas areas, Action action) {
        for (int a : areas.all()) {
            if (areas.action(a) == action) {
                return a;
            }
        }
        throw new AssertionError("nothing to press for " + action);
    }

    private static int barX(HitAreas areas, int bar, double t_s) {
        double first = areas.value(bar, 0);
        double last = areas.value(bar, WIDTH);
        return (int) (areas.x(bar) + (t_s - first) / (last - first) * areas.width(bar));
    }

    @Test
    void theMatchedWindowIsABandOnTheBarWhereItWas() throws NoGraphicsException {
        try (PanelGallery.Rig rig = rig()) {
            Pixels pixels = rig.picture();
            HitAreas areas = rig.panels.areas();
            int bar = area(areas, Action.SEEK);
            int y = (int) (areas.y(bar) + 1.3f * areas.height(bar) / 4);
            int inside = barX(areas, bar, SyntheticDebrief.JOINED_S + 20);
            int before = barX(areas, bar, SyntheticDebrief.EXIT_S + 5);
            assertEquals(Palette.LIGHT.matched() >>> 8, pixels.rgb(inside, y));
            assertEquals(Palette.LIGHT.paper() >>> 8, pixels.rgb(before, y));
        }
    }

    @Test
    void theInstantShownStandsOnBarAndStrips() throws NoGraphicsException {
        try (PanelGallery.Rig rig = rig()) {
            Pixels pixels = rig.picture();
            HitAreas areas = rig.panels.areas();
            int bar = area(areas, Action.SEEK);
            int x = barX(areas, bar, rig.playback.t_s());
            int y = (int) (areas.y(bar) + areas.height(bar) - 6);
            assertTrue(isDarkNear(pixels, x, y), "no line on the bar at " + x);
            int strip = area(areas, Action.SEEK_ON_STRIP);
            int sx = barX(areas, strip, rig.playback.t_s());
            int sy = (int) areas.y(strip) + 30;
            assertTrue(isDarkNear(pixels, sx, sy), "no line on the strips at " + sx);
        }
    }

    private static boolean isDarkNear(Pixels pixels, int x, int y) {
        for (int dx = -2; dx <= 2; dx++) {
            if ((pixels.rgb(x + dx, y) & 0xFF) < 0x60) {
                return true;
            }
        }
        return false;
    }

    @Test
    void aKeptPictureLooksAsWhenItWasPainted() throws NoGraphicsException {
        try (PanelGallery.Rig rig = rig()) {
            Pixels first = rig.picture();
            Pixels second = rig.picture();
            for (int y = 0; y < HEIGHT; y += 3) {
                for (int x = 0; x < WIDTH; x += 3) {
                    assertEquals(first.rgb(x, y), second.rgb(x, y));
                }
            }
        }
    }

    @Test
    void darkIsDark() throws NoGraphicsException {
        try (PanelGallery.Rig rig = rig()) {
            rig.frame();
            int light = rig.picture().rgb(WIDTH - 20, HEIGHT / 2);
            rig.act(Action.THEME);
            int dark = rig.picture().rgb(WIDTH - 20, HEIGHT / 2);
            assertNotEquals(light, dark);
            assertEquals(Palette.DARK.panel() >>> 8, dark);
        }
    }

    /** Playing on: time moves, everything else stands, and no frame leaves anything to collect. */
    @Test
    void aFrameInTheSteadyStateLeavesNoGarbage() throws NoGraphicsException {
        com.sun.management.ThreadMXBean threads =
                (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long[] bytes = new long[FRAMES];
        try (PanelGallery.Rig rig = rig()) {
            for (int i = -FRAMES; i < FRAMES; i++) {
                rig.playback.seek(103 + i * 0.05);
                rig.moment.fill(rig.playback.t_s());
                long before = threads.getCurrentThreadAllocatedBytes();
                rig.paint();
                bytes[Math.max(0, i)] = threads.getCurrentThreadAllocatedBytes() - before;
            }
        }
        Arrays.sort(bytes);
        assertEquals(0, bytes[bytes.length / 2], "median of the last frames");
    }
}
