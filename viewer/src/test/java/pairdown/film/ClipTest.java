package pairdown.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.jcodec.api.FrameGrab;
import org.jcodec.api.JCodecException;
import org.jcodec.common.io.NIOUtils;
import org.jcodec.common.model.Picture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.camera.Vantage;
import pairdown.gl.NeedsGl;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.Pixels;
import pairdown.replay.SyntheticDebrief;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.time.Span;
import pairdown.words.Figures;
import pairdown.words.Units;

class ClipTest {
    private static final Theme LIGHT = new Theme(Palette.LIGHT, Sizes.atPercent(50));
    private static final Figures FIGURES = new Figures(Units.METRIC, Locale.ROOT);

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit fills it
    Path folder;

    private static Clip clip(List<Vantage> path) {
        return new Clip(new Span(95, 96), path, 2, 20, false);
    }

    @Test
    void slowMotionHasMorePictures() {
        Span second = new Span(10, 11);
        assertEquals(30, new Clip(second, List.of(Vantage.DEFAULT), 1, 30, true).frames());
        assertEquals(120, new Clip(second, List.of(Vantage.DEFAULT), 0.25, 30, true).frames());
    }

    @Test
    void eachVantagePointOfAPathHasAnEqualPart() {
        Vantage plan = Vantage.of(Vantage.Kind.PLAN);
        Clip clip = clip(List.of(Vantage.DEFAULT, plan));
        assertEquals(10, clip.frames());
        assertEquals(Vantage.DEFAULT, clip.vantage(4));
        assertEquals(plan, clip.vantage(5));
        assertEquals(plan, clip.vantage(9));
    }

    @Test
    @NeedsGl
    void theBuiltInEncoderGivesBackThePicturesItWasGiven()
            throws IOException, NoGraphicsException, JCodecException {
        Path file = folder.resolve("film.mp4");
        try (Studio studio =
                        Studio.open(
                                new SyntheticDebrief().build(),
                                192,
                                128,
                                Optional.empty(),
                                Optional.empty());
                OwnWriter writer = new OwnWriter(file, 192, 128, 20)) {
            Clip clip = clip(List.of(Vantage.of(Vantage.Kind.PLAN)));
            assertTrue(clip.shoot(studio, writer, LIGHT, FIGURES, share -> {}, () -> false));
            Pixels first = studio.still(95, Vantage.of(Vantage.Kind.PLAN), LIGHT, FIGURES, false);
            try (var channel = NIOUtils.readableChannel(file.toFile())) {
                FrameGrab grab = FrameGrab.createFrameGrab(channel);
                Picture picture = grab.getNativeFrame();
                int rgb = first.rgb(20, 20);
                int expected = OwnWriter.luma((rgb >> 16) & 0xff, (rgb >> 8) & 0xff, rgb & 0xff);
                int found = picture.getPlaneData(0)[20 * picture.getWidth() + 20] + 128;
                // The encoder loses a little: its quantiser at this size is within 6 of 219 steps.
                assertEquals(expected, found, 6);
                int frames = 1;
                while (grab.getNativeFrame() != null) {
                    frames++;
                }
                assertEquals(clip.frames(), frames);
            }
        }
    }

    /** ITU-R BT.601-7, table 3: black is 16, white 235. */
    @Test
    void blackAndWhiteAreWhereVideoHasThem() {
        assertEquals(16, OwnWriter.luma(0, 0, 0));
        assertEquals(235, OwnWriter.luma(255, 255, 255));
    }

    @Test
    @NeedsGl
    void aFilmThatIsStoppedIsNotFinished() throws IOException, NoGraphicsException {
        AtomicInteger asked = new AtomicInteger();
        try (Studio studio =
                        Studio.open(
                                new SyntheticDebrief().build(),
                                64,
                                64,
                                Optional.empty(),
                                Optional.empty());
                OwnWriter writer = new OwnWriter(folder.resolve("f.mp4"), 64, 64, 20)) {
            boolean whole =
                    clip(List.of(Vantage.DEFAULT))
                            .shoot(
                                    studio,
                                    writer,
                                    LIGHT,
                                    FIGURES,
                                    share -> {},
                                    () -> asked.incrementAndGet() > 3);
            assertFalse(whole);
        }
    }

    @Test
    void anOddSizeIsRefusedInWords() throws IOException {
        assertThrows(
                IllegalArgumentException.class,
                () -> FilmWriter.open(folder.resolve("f.mp4"), 101, 100, 30));
        assertFalse(Files.exists(folder.resolve("f.mp4")));
    }
}
