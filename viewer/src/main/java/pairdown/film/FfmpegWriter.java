package pairdown.film;

import java.io.BufferedOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import pairdown.gl.Pixels;

/** Films through the ffmpeg program found on the path, over a pipe. */
final class FfmpegWriter implements FilmWriter {
    private static final int FINISH_S = 120;

    private final Process process;
    private final OutputStream pipe;
    private final Path log;
    private final byte[] rgb;

    FfmpegWriter(Path file, int width_px, int height_px, int rate_Hz) throws IOException {
        this.rgb = new byte[width_px * height_px * 3];
        this.log = Files.createTempFile("pairdown-film", ".log");
        this.process =
                new ProcessBuilder(command(file, width_px, height_px, rate_Hz))
                        .redirectErrorStream(true)
                        .redirectOutput(log.toFile())
                        .start();
        this.pipe = new BufferedOutputStream(process.getOutputStream(), 1 << 20);
    }

    private static List<String> command(Path file, int width_px, int height_px, int rate_Hz) {
        return List.of(
                "ffmpeg",
                "-y",
                "-loglevel",
                "error",
                "-f",
                "rawvideo",
                "-pixel_format",
                "rgb24",
                "-video_size",
                width_px + "x" + height_px,
                "-framerate",
                Integer.toString(rate_Hz),
                "-i",
                "-",
                // What phones and browsers play: 4:2:0, colours said to be BT.709, index in front.
                "-vf",
                "scale=out_color_matrix=bt709:out_range=tv",
                "-c:v",
                "libx264",
                "-preset",
                "medium",
                "-crf",
                "20",
                "-pix_fmt",
                "yuv420p",
                "-colorspace",
                "bt709",
                "-color_primaries",
                "bt709",
                "-color_trc",
                "bt709",
                "-movflags",
                "+faststart",
                "-f",
                "mp4",
                file.toString());
    }

    /** Whether a folder of the path holds the program. */
    static boolean isHere() {
        String path = System.getenv("PATH");
        boolean isWindows =
                System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");
        String name = isWindows ? "ffmpeg.exe" : "ffmpeg";
        return path != null
                && Arrays.stream(path.split(File.pathSeparator))
                        .filter(folder -> !folder.isEmpty())
                        .anyMatch(folder -> new File(folder, name).canExecute());
    }

    @Override
    public String encoder() {
        return "ffmpeg on the path (H.264)";
    }

    @Override
    public void add(Pixels picture) throws IOException {
        picture.copyRgbTo(rgb);
        try {
            pipe.write(rgb);
        } catch (IOException e) {
            throw new IOException("ffmpeg gave up: " + said(), e);
        }
    }

    @Override
    public void finish() throws IOException {
        pipe.close();
        try {
            if (!process.waitFor(FINISH_S, TimeUnit.SECONDS) || process.exitValue() != 0) {
                throw new IOException("ffmpeg gave up: " + said());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("stopped while ffmpeg was finishing", e);
        }
    }

    private String said() throws IOException {
        String text = Files.readString(log, StandardCharsets.UTF_8).trim();
        return text.isEmpty() ? "it said nothing" : text.lines().findFirst().orElse("");
    }

    @Override
    public void close() {
        process.destroyForcibly();
        try {
            process.waitFor(FINISH_S, TimeUnit.SECONDS);
            Files.deleteIfExists(log);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (IOException leftBehind) {
            log.toFile().deleteOnExit();
        }
    }
}
