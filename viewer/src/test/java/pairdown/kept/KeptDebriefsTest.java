package pairdown.kept;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.esotericsoftware.kryo.Kryo;
import com.esotericsoftware.kryo.KryoException;
import com.esotericsoftware.kryo.io.Output;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.app.Sample;
import pairdown.app.SmallAttempt;
import pairdown.attempt.Attempt;
import pairdown.attempt.AttemptFolder;
import pairdown.debrief.Debrief;
import pairdown.debrief.DebriefFiles;
import pairdown.debrief.Debriefer;
import pairdown.debrief.ResultFolder;
import pairdown.motion.Trajectory;
import pairdown.season.FolderContent;

class KeptDebriefsTest {
    private final Path place;
    private final Path attempt;
    private final AtomicReference<String> program = new AtomicReference<>("this build");
    private final KeptDebriefs kept;

    KeptDebriefsTest(@TempDir Path folder) throws Exception {
        place = folder.resolve("kept");
        kept = new KeptDebriefs(place, program::get, 2);
        attempt = SmallAttempt.write(folder.resolve("attempt"), "first", 0);
    }

    private Debrief keep(Path folder) throws Exception {
        Attempt opened = AttemptFolder.open(folder);
        FolderContent content = kept.look(opened).orElseThrow();
        Debrief debrief = Debriefer.debrief(opened, step -> {});
        assertTrue(kept.keep(content, debrief));
        return debrief;
    }

    private static Map<String, byte[]> results(Debrief debrief, Path folder) throws IOException {
        DebriefFiles.write(debrief, ResultFolder.at(folder));
        Map<String, byte[]> results = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                results.put(folder.relativize(file).toString(), Files.readAllBytes(file));
            }
        }
        return results;
    }

    private void assertSame(Debrief made, Debrief read) throws IOException {
        Map<String, byte[]> before = results(made, place.resolve("made"));
        Map<String, byte[]> after = results(read, place.resolve("read"));
        assertEquals(before.keySet(), after.keySet());
        before.forEach((name, bytes) -> assertArrayEquals(bytes, after.get(name), name));
        for (int i = 0; i < made.participants().size(); i++) {
            Optional<Trajectory> path = made.participants().get(i).trajectory();
            Optional<Trajectory> again = read.participants().get(i).trajectory();
            assertEquals(path.isPresent(), again.isPresent());
            if (path.isPresent()) {
                double t_s = (path.get().start_s() + path.get().end_s()) / 2;
                assertEquals(path.get().at(t_s), again.get().at(t_s));
                assertEquals(
                        made.participants().get(i).attitudes().at(t_s),
                        read.participants().get(i).attitudes().at(t_s));
            }
        }
    }

    @Test
    void aKeptDebriefIsTheSameToTheLastDigit() throws Exception {
        Debrief made = keep(attempt);
        assertSame(made, kept.current(attempt).orElseThrow());
    }

    @Test
    void soIsOneWithSystemsAndTailControl() throws Exception {
        Debrief made = Sample.debrief();
        assertTrue(kept.keep(kept.look(made.attempt()).orElseThrow(), made));
        assertSame(made, kept.current(made.attempt().folder()).orElseThrow());
    }

    @Test
    void aChangedLogCountsNoMore() throws Exception {
        keep(attempt);
        Path log = attempt.resolve("blue.csv");
        String text = Files.readString(log);
        Files.writeString(log, text.substring(0, text.length() / 2));
        assertTrue(kept.current(attempt).isEmpty());
        Files.writeString(log, text);
        assertTrue(kept.current(attempt).isPresent());
    }

    @Test
    void anAddedFileAndAnotherBuildCountNoMore() throws Exception {
        keep(attempt);
        program.set("another build");
        assertTrue(kept.current(attempt).isEmpty());
        program.set("this build");
        Files.writeString(attempt.resolve("extra.csv"), "time,latitude_deg,longitude_deg\n");
        assertTrue(kept.current(attempt).isEmpty());
    }

    @Test
    void aDamagedFileIsAsGoodAsNone() throws Exception {
        keep(attempt);
        Path file = only();
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length / 2] ^= 1;
        Files.write(file, bytes);
        assertTrue(kept.current(attempt).isEmpty());
        Files.write(file, Arrays.copyOf(bytes, bytes.length / 3));
        assertTrue(kept.current(attempt).isEmpty());
        Files.write(file, new byte[0]);
        assertTrue(kept.current(attempt).isEmpty());
    }

    private Path only() throws IOException {
        try (Stream<Path> files = Files.list(place)) {
            return files.reduce(
                            (a, b) -> {
                                throw new AssertionError(a + " and " + b);
                            })
                    .orElseThrow();
        }
    }

    @Test
    void aFileNamesNoForeignClasses() {
        Kryo foreign = DebriefBytes.kryo();
        Output out = new Output(1 << 10);
        assertThrows(
                KryoException.class,
                () -> foreign.writeClassAndObject(out, new javax.swing.JPanel()));
    }

    @Test
    void theLeastRecentlyUsedMakeRoom() throws Exception {
        Path second = SmallAttempt.write(attempt.resolveSibling("second"), "second", 5);
        Path third = SmallAttempt.write(attempt.resolveSibling("third"), "third", 10);
        keep(attempt);
        age(only());
        keep(second);
        keep(third);
        assertTrue(kept.current(attempt).isEmpty());
        assertTrue(kept.current(second).isPresent());
        assertTrue(kept.current(third).isPresent());
    }

    private static void age(Path file) throws IOException {
        Files.setLastModifiedTime(file, FileTime.fromMillis(0));
    }
}
