package pairdown.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jcodec.api.FrameGrab;
import org.jcodec.api.JCodecException;
import org.jcodec.common.io.NIOUtils;
import org.jcodec.common.model.Picture;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.camera.Vantage;
import pairdown.gl.NeedsGl;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.OffscreenContext;
import pairdown.gl.Pixels;
import pairdown.replay.SyntheticDebrief;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.time.Span;
import pairdown.words.Figures;
import pairdown.words.Units;

/**
 * Films as they come out of the file again, by each encoder this machine has. Where ffmpeg is on
 * the path it is also who reads them back, a reader that shares nothing with the built-in writer.
 */
@NeedsGl
class FilmTest {
    private static final int WIDTH = 320;
    private static final int HEIGHT = 192;
    private static final int RATE_HZ = 20;
    private static final Theme LIGHT = new Theme(Palette.LIGHT, Sizes.atPercent(50));
    private static final Figures FIGURES = new Figures(Units.METRIC, Locale.ROOT);

    /**
     * Mean loss of the encoders at this size, in steps of 255; another picture is 10 off and more.
     */
    private static final double LOSS = 4;

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit fills it
    Path folder;

    /** Opens a writer. */
    interface Opener {
        FilmWriter open(Path file) throws IOException;
    }

    static Stream<Opener> encoders() {
        Opener own = file -> new OwnWriter(file, WIDTH, HEIGHT, RATE_HZ);
        Opener ffmpeg = file -> new FfmpegWriter(file, WIDTH, HEIGHT, RATE_HZ);
        return FfmpegWriter.isHere() ? Stream.of(own, ffmpeg) : Stream.of(own);
    }

    /** Hands pictures on and keeps them. */
    private record Keeping(FilmWriter writer, List<Pixels> kept) implements FilmWriter {
        @Override
        public String encoder() {
            return writer.encoder();
        }

        @Override
        public void add(Pixels picture) throws IOException {
            kept.add(picture);
            writer.add(picture);
        }

        @Override
        public void finish() throws IOException {
            writer.finish();
        }

        @Override
        public void close() {
            writer.close();
        }
    }

    private List<Pixels> film(Path file, Opener opener, Clip clip)
            throws IOException, NoGraphicsException {
        List<Pixels> kept = new ArrayList<>();
        try (Studio studio =
                        Studio.open(
                                new SyntheticDebrief().build(),
                                WIDTH,
                                HEIGHT,
                                Optional.empty(),
                                Optional.empty());
                FilmWriter writer = new Keeping(opener.open(file), kept)) {
            assertTrue(clip.shoot(studio, writer, LIGHT, FIGURES, share -> {}, () -> false));
        }
        return kept;
    }

    /** The brightness (0 to 255) of each pixel of each picture in a film. */
    private static List<int[]> read(Path file)
            throws IOException, InterruptedException, JCodecException {
        return FfmpegWriter.isHere() ? readByFfmpeg(file) : readByLibrary(file);
    }

    private static List<int[]> readByFfmpeg(Path file) throws IOException, InterruptedException {
        Process process =
                new ProcessBuilder(
                                "ffmpeg",
                                "-loglevel",
                                "error",
                                "-i",
                                file.toString(),
                                "-f",
                                "rawvideo",
                                "-pix_fmt",
                                "rgb24",
                                "-")
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        byte[] rgb = process.getInputStream().readAllBytes();
        assertEquals(0, process.waitFor());
        List<int[]> pictures = new ArrayList<>();
        for (int from = 0; from + WIDTH * HEIGHT * 3 <= rgb.length; from += WIDTH * HEIGHT * 3) {
            int[] brightness = new int[WIDTH * HEIGHT];
            for (int i = 0; i < brightness.length; i++) {
                int at = from + 3 * i;
                brightness[i] = brightness(rgb[at] & 0xff, rgb[at + 1] & 0xff, rgb[at + 2] & 0xff);
            }
            pictures.add(brightness);
        }
        return pictures;
    }

    private static List<int[]> readByLibrary(Path file) throws IOException, JCodecException {
        List<int[]> pictures = new ArrayList<>();
        try (var channel = NIOUtils.readableChannel(file.toFile())) {
            FrameGrab grab = FrameGrab.createFrameGrab(channel);
            for (Picture p = grab.getNativeFrame(); p != null; p = grab.getNativeFrame()) {
                int[] brightness = new int[WIDTH * HEIGHT];
                for (int i = 0; i < brightness.length; i++) {
                    int at = i / WIDTH * p.getWidth() + i % WIDTH;
                    brightness[i] = (p.getPlaneData(0)[at] + 128 - 16) * 255 / 219;
                }
                pictures.add(brightness);
            }
        }
        return pictures;
    }

    private static int brightness(int r, int g, int b) {
        return (int) Math.round(0.299 * r + 0.587 * g + 0.114 * b);
    }

    /** Mean difference of brightness. */
    private static double away(int[] read, Pixels made) {
        double sum = 0;
        for (int i = 0; i < read.length; i++) {
            int rgb = made.rgb(i % WIDTH, i / WIDTH);
            int wanted = brightness((rgb >> 16) & 0xff, (rgb >> 8) & 0xff, rgb & 0xff);
            sum += Math.abs(read[i] - wanted);
        }
        return sum / read.length;
    }

    @ParameterizedTest
    @MethodSource("encoders")
    void firstMiddleAndLastPictureComeBackAsMade(Opener opener) throws Exception {
        Path file = folder.resolve("film.mp4");
        Vantage side = Vantage.of(Vantage.Kind.SQUARE_ON);
        Vantage plan = Vantage.of(Vantage.Kind.PLAN);
        Clip clip = new Clip(new Span(70, 82), List.of(side, plan), 8, RATE_HZ, true);
        List<Pixels> made = film(file, opener, clip);
        List<int[]> read = read(file);
        assertEquals(30, made.size());
        assertEquals(made.size(), read.size());
        for (int i : new int[] {0, 15, 29}) {
            double loss = away(read.get(i), made.get(i));
            assertTrue(loss < LOSS, "picture " + i + " is off by " + loss);
        }
        assertTrue(away(read.get(29), made.get(0)) > 2 * LOSS, "the camera has not moved");
    }

    @ParameterizedTest
    @MethodSource("encoders")
    void wordsAreBurnedInOnlyWhereAskedFor(Opener opener) throws Exception {
        Path with = folder.resolve("with.mp4");
        Path without = folder.resolve("without.mp4");
        List<Vantage> side = List.of(Vantage.DEFAULT);
        film(with, opener, new Clip(new Span(95, 95.2), side, 1, RATE_HZ, true));
        List<Pixels> bare =
                film(without, opener, new Clip(new Span(95, 95.2), side, 1, RATE_HZ, false));
        assertTrue(away(read(without).get(2), bare.get(2)) < LOSS);
        int[] worded = read(with).get(2);
        int[] plain = read(without).get(2);
        int changed = 0;
        for (int i = 0; i < plain.length; i++) {
            changed += Math.abs(worded[i] - plain[i]) > 25 ? 1 : 0;
        }
        assertTrue(changed > 500, "pixels changed by words: " + changed);
    }

    @ParameterizedTest
    @MethodSource("encoders")
    void aFilmIsGivenUpByClosingIt(Opener opener) throws Exception {
        Path file = folder.resolve("film.mp4");
        try (FilmWriter writer = opener.open(file);
                OffscreenContext context = OffscreenContext.open(WIDTH, HEIGHT)) {
            writer.add(context.read());
        }
        assertTrue(
                ProcessHandle.current()
                        .children()
                        .noneMatch(p -> p.info().command().orElse("").endsWith("ffmpeg")),
                "somebody still writes");
        Files.deleteIfExists(file);
    }
}
