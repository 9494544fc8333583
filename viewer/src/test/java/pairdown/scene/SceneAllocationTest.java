package pairdown.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pairdown.camera.Vantage;
import pairdown.debrief.Debrief;
import pairdown.gl.NeedsGl;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.OffscreenContext;
import pairdown.gl.Shaders;
import pairdown.gl.VectorCanvas;
import pairdown.replay.Alignment;
import pairdown.replay.Crowd;
import pairdown.replay.Recording;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Figures;
import pairdown.words.Units;

/**
 * A picture allocates nothing once all it needs is there: no pause of the collector in a replay.
 */
@NeedsGl
class SceneAllocationTest {
    /** As long as the compiler takes to find what need not be allocated, with something over. */
    private static final int FRAMES = 600;

    private static final int COUNTED = 60;

    @ParameterizedTest
    @ValueSource(
            strings = {"square-on", "left-window", "right-wingtip", "eyes-flyer2", "plan", "orbit"})
    void aFrameAllocatesNothing(String from) throws NoGraphicsException {
        count(from, Optional.empty(), false);
    }

    @Test
    void norDoTwoViewsWithASecondAttempt() throws NoGraphicsException {
        Debrief other = Crowd.of(8, 3);
        Alignment same = new Alignment(Alignment.On.EXIT, 0, 0);
        Overlay overlay = new Overlay(Blueprint.of(Recording.of(other), Optional.empty()), same);
        count("square-on", Optional.of(overlay), true);
    }

    private static void count(String from, Optional<Overlay> overlay, boolean two)
            throws NoGraphicsException {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        Theme theme = new Theme(Palette.LIGHT, Sizes.atPercent(100));
        Figures figures = new Figures(Units.MILES, Locale.ROOT);
        long[] bytes = new long[COUNTED];
        try (OffscreenContext context = OffscreenContext.open(96, 54);
                VectorCanvas canvas = VectorCanvas.create();
                Shaders shaders = Shaders.ofJar();
                Diorama diorama = new Diorama(shaders, Crowd.of(8, 3), Optional.empty(), overlay)) {
            diorama.view().look(Vantage.named(from).orElseThrow());
            if (two) {
                diorama.view().toggleSplit();
            }
            for (int i = 0; i < FRAMES; i++) {
                long before = threads.getCurrentThreadAllocatedBytes();
                // The same three seconds again and again, some of them with pairs in words.
                diorama.view().playback().seek(110 + (i % 30) * 0.1);
                context.beginScene();
                diorama.draw(theme, figures, 0, 0, 96, 54, 1 / 60.0);
                context.endScene();
                canvas.begin(96, 54);
                diorama.drawWords(canvas, theme, 0, 0, 54);
                canvas.end();
                context.present();
                bytes[i % COUNTED] = threads.getCurrentThreadAllocatedBytes() - before;
            }
        }
        Arrays.sort(bytes);
        assertEquals(0, bytes[COUNTED / 2], "median of the last frames");
        // One frame may meet the compiler throwing away what it guessed wrong.
        assertEquals(0, bytes[COUNTED - 3], "all but two of the last frames");
    }
}
