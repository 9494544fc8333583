package pairdown.gl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;

@NeedsGl
class OffscreenContextTest {
    @Test
    void aPictureIsMadeWithoutADisplay() throws NoGraphicsException {
        try (OffscreenContext context = OffscreenContext.open(40, 30)) {
            context.beginScene();
            Pass.begin(0, 0, 40, 30, 0x336699FF);
            context.endScene();
            context.present();
            Pixels pixels = context.read();
            assertEquals(0x336699, pixels.rgb(0, 0));
            assertEquals(0x336699, pixels.rgb(39, 29));
        }
    }

    @Test
    void theTopRowComesFirst() throws NoGraphicsException {
        try (OffscreenContext context = OffscreenContext.open(8, 8)) {
            context.beginScene();
            Pass.begin(0, 0, 8, 8, 0x000000FF);
            Pass.begin(0, 6, 8, 2, 0xFF0000FF);
            context.endScene();
            assertEquals(0xFF0000, context.read().rgb(4, 0));
            assertEquals(0x000000, context.read().rgb(4, 7));
        }
    }

    @Test
    void smoothedEdgesComeOutTheSameSize() throws NoGraphicsException {
        try (OffscreenContext context = OffscreenContext.open(16, 9, 4, 1)) {
            context.beginScene();
            Pass.begin(0, 0, 16, 9, 0x00FF00FF);
            context.endScene();
            assertEquals(0x00FF00, context.read().rgb(15, 8));
        }
    }

    @Test
    void theNextPictureOfAProcessIsAsGoodAsTheFirst() throws NoGraphicsException {
        for (int i = 0; i < 3; i++) {
            try (OffscreenContext context = OffscreenContext.open(4, 4)) {
                context.beginScene();
                Pass.begin(0, 0, 4, 4, 0x0000FFFF);
                context.endScene();
                assertEquals(0x0000FF, context.read().rgb(2, 2));
                assertFalse(context.renderer().isEmpty());
            }
        }
    }
}
