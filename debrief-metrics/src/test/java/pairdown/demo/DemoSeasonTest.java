package pairdown.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.attempt.AttemptFolder;

class DemoSeasonTest {
    private static final Path SAMPLES = SampleComparison.SAMPLES;
    private static final long MOST_BYTES = 15_000_000;

    @TempDir private Path folder;

    private static DemoAttempt attempt(String id) {
        return DemoSeason.attempts(DemoSeason.SEED).stream()
                .filter(a -> a.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theSameSeedMakesTheSameBytes() throws Exception {
        for (String again : List.of("one", "two")) {
            DemoFolder.write(folder.resolve(again), attempt("2031-05-15-02"), DemoSeason.SEED);
        }
        assertEquals(
                List.of(),
                SampleComparison.differences(folder.resolve("one"), folder.resolve("two")));
    }

    @Test
    void whatStandsInTheSamplesIsWhatTheVerbMakes() throws Exception {
        List<DemoAttempt> all = DemoSeason.attempts(DemoSeason.SEED);
        for (String id : List.of("2031-05-02-02", "2031-05-06-02", "2031-05-14-02")) {
            DemoAttempt demo = attempt(id);
            DemoFolder.write(folder.resolve(id), demo, DemoSeason.SEED);
            assertEquals(
                    List.of(),
                    SampleComparison.differences(
                            SAMPLES.resolve(demo.folder()), folder.resolve(id)));
        }
        assertEquals(DemoReadme.of(all), Files.readString(SAMPLES.resolve("README.md")));
        Set<String> folders =
                SampleComparison.files(SAMPLES).keySet().stream()
                        .filter(f -> f.endsWith("/attempt.json"))
                        .map(f -> f.replace("/attempt.json", ""))
                        .collect(Collectors.toSet());
        assertEquals(all.stream().map(DemoAttempt::folder).collect(Collectors.toSet()), folders);
    }

    @Test
    void theSamplesAreSmallEnoughToShip() throws Exception {
        long bytes = 0;
        for (Path file : SampleComparison.files(SAMPLES).values()) {
            bytes += Files.size(file);
        }
        assertTrue(bytes < MOST_BYTES, bytes + " bytes");
    }

    @Test
    void aDebriefNeverSeesTheTruth() throws Exception {
        Path copy = folder.resolve("logs");
        Files.createDirectories(copy.resolve("truth"));
        Path attempt = SAMPLES.resolve("practice-dives").resolve("2031-05-05-01");
        for (Map.Entry<String, Path> f : SampleComparison.files(attempt).entrySet()) {
            if (!f.getKey().equals("attempt.json")) {
                Files.copy(f.getValue(), copy.resolve(f.getKey()));
            }
        }
        List<String> guessed =
                AttemptFolder.open(copy).participants().stream()
                        .flatMap(p -> p.logs().stream())
                        .map(l -> l.file())
                        .toList();
        assertTrue(guessed.contains("lead.csv"), guessed::toString);
        assertFalse(guessed.stream().anyMatch(f -> f.contains("truth")), guessed::toString);
    }

    @Test
    void nothingIsOverwritten() throws Exception {
        Path kept = Files.writeString(folder.resolve("mine.txt"), "mine");
        assertThrows(
                DirectoryNotEmptyException.class, () -> DemoSeason.write(folder, 1, step -> {}));
        assertThrows(FileAlreadyExistsException.class, () -> DemoSeason.write(kept, 1, step -> {}));
        assertEquals("mine", Files.readString(kept));
        assertEquals(1, SampleComparison.files(folder).size());
    }

    @Test
    void thirtyThreeAttemptsWithTwentyPracticeDivesEachOnceAndInOrder() {
        List<DemoAttempt> all = DemoSeason.attempts(7);
        assertEquals(33, all.size());
        assertEquals(33, all.stream().map(DemoAttempt::id).distinct().count());
        assertEquals(
                20, all.stream().filter(a -> a.folder().startsWith("practice-dives/")).count());
        assertEquals(
                all.stream().map(a -> a.scenario().start()).sorted().toList(),
                all.stream().map(a -> a.scenario().start()).toList());
    }
}
