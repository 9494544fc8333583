package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchService;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.gl.NeedsGl;

/** Pictures and films as asked for on the command line, each in a process of its own. */
class PictureVerbsTest {
    private static final int LONGEST_S = 120;

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit fills it
    Path folder;

    private Path attempt = Path.of("");
    private Path out = Path.of("");

    /** Two logs of two minutes that fly side by side. */
    @BeforeEach
    void anAttempt() throws IOException {
        attempt = Files.createDirectory(folder.resolve("attempt"));
        out = Files.createDirectory(folder.resolve("out"));
        log("lead.csv", 0);
        log("blue.csv", 0.0002);
    }

    private void log(String name, double east_deg) throws IOException {
        StringBuilder text = new StringBuilder("time,latitude_deg,longitude_deg,height_m\n");
        for (int i = 0; i < 120; i++) {
            text.append(
                    String.format(
                            Locale.ROOT,
                            "2031-05-14T15:%02d:%02d.000Z,%.7f,%.7f,%.1f%n",
                            i / 60,
                            i % 60,
                            -22.5 + i * 0.0003,
                            15.2 + east_deg,
                            3000.0 - 18 * i));
        }
        Files.writeString(attempt.resolve(name), text.toString());
    }

    private static Process start(List<String> machine, String... verb) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(machine);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), "pairdown.app.Main"));
        command.addAll(List.of(verb));
        return new ProcessBuilder(command).start();
    }

    private static String said(Process process) throws IOException {
        return new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    private static List<Path> files(Path in) throws IOException {
        try (Stream<Path> files = Files.list(in)) {
            return files.toList();
        }
    }

    @Test
    void withoutOpenGlOneLineSaysWhatToInstall() throws Exception {
        Process process =
                start(
                        List.of("-Dorg.lwjgl.egl.libname=libNotHere.so"),
                        "still",
                        attempt.toString(),
                        "--at",
                        "15:01:00",
                        "--out",
                        out.resolve("still.png").toString());
        String said = said(process);
        assertTrue(process.waitFor(LONGEST_S, TimeUnit.SECONDS));
        assertEquals(ExitStatus.OUTPUT, process.exitValue(), said);
        List<String> lines = said.lines().filter(line -> line.contains("picture")).toList();
        assertEquals(1, lines.size(), said);
        assertTrue(lines.get(0).contains("libEGL is missing"), said);
        assertTrue(lines.get(0).contains("libegl1") && lines.get(0).contains("mesa"), said);
        assertTrue(!said.contains("\tat "), said);
        assertTrue(files(out).isEmpty());
    }

    @Test
    @NeedsGl
    void aStillHasTheSizeAskedFor() throws Exception {
        Path still = out.resolve("still.png");
        Process process =
                start(
                        List.of(),
                        "still",
                        attempt.toString(),
                        "--at",
                        "15:01:00",
                        "--camera",
                        "plan",
                        "--size",
                        "321x123",
                        "--out",
                        still.toString());
        String said = said(process);
        assertTrue(process.waitFor(LONGEST_S, TimeUnit.SECONDS));
        assertEquals(ExitStatus.DONE, process.exitValue(), said);
        assertEquals(321, ImageIO.read(still.toFile()).getWidth());
        assertEquals(123, ImageIO.read(still.toFile()).getHeight());
    }

    @Test
    @NeedsGl
    void aFilmThatIsStoppedLeavesNothingBehind() throws Exception {
        WatchService begun = out.getFileSystem().newWatchService();
        out.register(begun, StandardWatchEventKinds.ENTRY_CREATE);
        Process process =
                start(
                        List.of(),
                        "clip",
                        attempt.toString(),
                        "--from",
                        "15:00:10",
                        "--to",
                        "15:01:50",
                        "--speed",
                        "0.1",
                        "--camera",
                        "plan,square-on,ground",
                        "--size",
                        "640x360",
                        "--out",
                        out.resolve("film.mp4").toString());
        try (BufferedReader err = process.errorReader(StandardCharsets.UTF_8)) {
            String line = err.readLine();
            while (line != null && !line.startsWith("encoded by")) {
                line = err.readLine();
            }
            assertTrue(line != null, "it ended before it began");
        }
        assertNotNull(begun.poll(LONGEST_S, TimeUnit.SECONDS), "nothing is written");
        begun.close();
        new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();
        assertTrue(process.waitFor(LONGEST_S, TimeUnit.SECONDS));
        assertTrue(process.exitValue() != ExitStatus.DONE);
        assertEquals(List.of(), files(out));
    }
}
