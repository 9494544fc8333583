package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.gl.NeedsDisplay;
import pairdown.gl.VirtualDisplay;
import pairdown.input.Action;

/** What people and disks do to a window that nobody planned. */
@NeedsDisplay
class WindowTroubleTest {
    private static final int ACTS = 4;

    private final Path folder;

    WindowTroubleTest(@TempDir Path folder) {
        this.folder = folder;
    }

    private WindowRig showing(Path attempt) throws Exception {
        WindowRig rig = WindowRig.empty(folder);
        VirtualDisplay.drop(List.of(attempt));
        rig.until("the attempt", () -> rig.loop.shown().isPresent());
        return rig;
    }

    private Path small() throws IOException {
        return SmallAttempt.write(folder.resolve("flown"), "flown", 0);
    }

    private Path rubbish(String name) throws IOException {
        byte[] bytes = new byte[5000];
        new Random(1).nextBytes(bytes);
        return Files.write(folder.resolve(name), bytes);
    }

    private Path zip() throws IOException {
        Path file = folder.resolve("holiday.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            zip.putNextEntry(new ZipEntry("read me.txt"));
            zip.write("no log".getBytes(StandardCharsets.UTF_8));
        }
        return file;
    }

    /** Each is told of in words, what was shown stays, and the window goes on. */
    @Test
    void whatIsNoAttemptIsToldOfAndChangesNothing() throws Exception {
        try (WindowRig rig = showing(small())) {
            for (List<Path> dropped :
                    List.of(
                            List.of(rubbish("song.mp3")),
                            List.of(rubbish("lead.csv")),
                            List.of(zip()),
                            List.of(Files.createDirectories(folder.resolve("empty"))),
                            List.of(folder.resolve("not there")),
                            List.of(rubbish("a.gpx"), folder.resolve("empty")))) {
                VirtualDisplay.drop(dropped);
                rig.until(dropped + " told of", () -> rig.state().notice().isPresent());
                assertTrue(rig.state().notice().orElseThrow().isProblem(), dropped.toString());
                assertEquals("flown", rig.diorama().moment().debrief().attempt().id());
                rig.loop.round(rig.window);
                rig.press(Action.CANCEL);
                rig.until("no words", () -> rig.state().notice().isEmpty());
            }
            rig.key("space");
            rig.until("playing", () -> rig.time().isPlaying());
        }
    }

    @Test
    void anAttemptDeletedWhileShownIsPlayedOnAndNotMadeAnew() throws Exception {
        Path flown = small();
        try (WindowRig rig = showing(flown)) {
            delete(flown);
            rig.key("m");
            rig.until("the question", () -> rig.state().asking().name().equals("NOTE"));
            rig.type("late");
            rig.key("Return");
            rig.until("told of", () -> rig.state().notice().isPresent());
            rig.key("Escape", "Escape", "ctrl+s");
            rig.until("the picture", () -> rig.state().notice().isPresent());
            assertTrue(rig.state().notice().orElseThrow().isProblem());
            assertFalse(Files.exists(flown));
            rig.key("Escape", "Escape", "space");
            rig.until("playing", () -> rig.time().isPlaying());
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    /** As a cat on the keys: nothing fails, the card has no complaint, nothing is said. */
    @Test
    void anyKeysInAnyOrderAreTaken() throws Exception {
        PrintStream before = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        try (WindowRig rig = showing(small())) {
            System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
            RandomHand hand = new RandomHand(rig, 20310514);
            for (int i = 0; i < ACTS; i++) {
                hand.act();
                assertEquals(0, VirtualDisplay.complaint(), "OpenGL");
            }
            assertTrue(rig.picture().width_px() > 0);
        } finally {
            System.setErr(before);
        }
        assertEquals("", said.toString(StandardCharsets.UTF_8));
    }
}
