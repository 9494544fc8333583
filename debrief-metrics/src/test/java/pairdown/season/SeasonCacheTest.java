package pairdown.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SeasonCacheTest {
    @TempDir private Path season;
    @TempDir private Path user;

    private final AtomicInteger made = new AtomicInteger();

    @BeforeEach
    void anAttemptOfTwoFiles() throws IOException {
        write("a/lead.csv", "one");
        write("a/blue.csv", "two");
        write("b/lead.csv", "three");
    }

    private void write(String name, String text) throws IOException {
        Path file = season.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
        // Long ago, so that the time of change can be relied on.
        Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2031-06-02T09:00:00Z")));
    }

    private SeasonCache cache() {
        return SeasonCache.of(season, SeasonSettings.DEFAULT, user);
    }

    private AttemptSummary get(String attempt, Path... besides) {
        return cache().get(
                        season.resolve(attempt),
                        new SeasonCache.Source() {
                            @Override
                            public List<Path> files() {
                                return List.of(besides);
                            }

                            @Override
                            public AttemptSummary summary() {
                                made.incrementAndGet();
                                return SeasonSamples.dive(
                                        7, true, java.util.OptionalDouble.of(made.get()), 0);
                            }
                        })
                .summary();
    }

    private List<Path> filesIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    @Test
    void whatIsUnchangedIsNotMadeAgainAndReadsAsItWas() {
        AttemptSummary first = get("a");
        assertEquals(first, get("a"));
        assertEquals(1, made.get());
    }

    @Test
    void everyFieldOfASummarySurvives() {
        AttemptSummary full =
                SeasonSamples.attempt(3, 30, SeasonSamples.flyer("blue", 28, 2, "on-gate"));
        AttemptSummary kept = cache().get(season.resolve("a"), source(full)).summary();
        assertEquals(full, kept);
        assertEquals(
                Optional.of(full),
                cache().current(season.resolve("a")).map(SeasonCache.Current::summary));
        AttemptSummary segments =
                SeasonSamples.flown(4, SeasonSamples.segment("lead", "lead", "idle", 38, 7));
        cache().get(season.resolve("b"), source(segments));
        assertEquals(
                Optional.of(segments),
                cache().current(season.resolve("b")).map(SeasonCache.Current::summary));
    }

    static SeasonCache.Source source(AttemptSummary summary) {
        return new SeasonCache.Source() {
            @Override
            public List<Path> files() {
                return List.of();
            }

            @Override
            public AttemptSummary summary() {
                return summary;
            }
        };
    }

    @Test
    void aChangedLogMakesItsAttemptAgainAndNoOther() throws IOException {
        get("a");
        get("b");
        write("a/blue.csv", "other");
        get("b");
        assertEquals(2, made.get());
        get("a");
        assertEquals(3, made.get());
    }

    @Test
    void aChangeOfTheSameLengthAndTimeIsSeenWhenRecent() throws IOException {
        Path log = season.resolve("a/blue.csv");
        FileTime now = FileTime.from(Instant.now());
        Files.setLastModifiedTime(log, now);
        get("a");
        Files.writeString(log, "owt");
        Files.setLastModifiedTime(log, now);
        get("a");
        assertEquals(2, made.get());
    }

    @Test
    void aCopyWithOtherTimesIsTheSame() throws IOException {
        get("a");
        Files.setLastModifiedTime(season.resolve("a/blue.csv"), FileTime.fromMillis(1));
        get("a");
        assertEquals(1, made.get());
    }

    @Test
    void filesAddedRemovedOrNamedElsewhereCount() throws IOException {
        write("shared/ship.igc", "ship");
        Path ship = season.resolve("shared/ship.igc");
        get("a", ship);
        get("a", ship);
        assertEquals(1, made.get());
        write("shared/ship.igc", "other");
        get("a", ship);
        assertEquals(2, made.get());
        write("a/amber.csv", "late");
        get("a", ship);
        assertEquals(3, made.get());
        Files.delete(season.resolve("a/amber.csv"));
        get("a", ship);
        assertEquals(4, made.get());
    }

    @Test
    void whatAnotherBuildMadeIsMadeAnew() throws IOException {
        get("a");
        assertEquals(1, made.get());
        for (Path file : filesIn(season.resolve(".pairdown"))) {
            String kept = Files.readString(file);
            Files.writeString(file, kept.replaceFirst("\"made\":\"", "$0other build "));
        }
        get("a");
        assertEquals(2, made.get());
    }

    @Test
    void otherSettingsMakeAnew() {
        get("a");
        SeasonSettings d = SeasonSettings.DEFAULT;
        SeasonSettings other =
                new SeasonSettings(
                        6,
                        d.airspeedSd_mps(),
                        d.sinkSd_mps(),
                        d.acceleration_mps2(),
                        d.bank_deg(),
                        d.pathRate_dps(),
                        d.stable_s(),
                        d.steepPath_deg(),
                        d.reverse_pct(),
                        d.airspeedScale_mps(),
                        d.sinkScale_mps(),
                        d.nearTarget_mps(),
                        d.massShare(),
                        d.sinkSigma_mps(),
                        d.airspeedSigma_mps(),
                        d.confidence());
        assertTrue(SeasonCache.of(season, other, user).current(season.resolve("a")).isEmpty());
        assertTrue(cache().current(season.resolve("a")).isPresent());
    }

    @Test
    void whereTheSeasonCantBeWrittenTheUsersFolderKeeps() throws IOException {
        // A file where the cache's folder would be: nothing can be written there, by no one.
        Files.writeString(season.resolve(".pairdown"), "in the way");
        get("a");
        get("a");
        assertEquals(1, made.get());
        assertEquals(1, filesIn(user).size());
    }

    @Test
    void aSeasonMountedElsewhereIsTheSame(@TempDir Path elsewhere) throws IOException {
        get("a");
        Path moved = elsewhere.resolve("season");
        Files.move(season, moved);
        assertTrue(
                SeasonCache.of(moved, SeasonSettings.DEFAULT, user)
                        .current(moved.resolve("a"))
                        .isPresent());
        Files.move(moved, season);
    }

    @Test
    void aDamagedCacheFileIsAsGoodAsNone() throws IOException {
        get("a");
        for (Path file : filesIn(season.resolve(".pairdown"))) {
            Files.writeString(file, Files.readString(file).substring(0, 40));
        }
        get("a");
        get("a");
        assertEquals(2, made.get());
    }

    @Test
    void severalAtOnceLeaveOneWholeFile() throws IOException {
        IntStream.range(0, 64).parallel().forEach(i -> get(i % 2 == 0 ? "a" : "b"));
        assertEquals(2, filesIn(season.resolve(".pairdown")).size());
        assertTrue(cache().current(season.resolve("a")).isPresent());
        assertTrue(cache().current(season.resolve("b")).isPresent());
    }

    /** Two processes write and read one attempt over and over; neither ever sees half a file. */
    @Test
    void twoProcessesAtOnceDoNotSpoilEachOther() throws Exception {
        List<Process> others = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            others.add(
                    new ProcessBuilder(
                                    Path.of(System.getProperty("java.home"), "bin", "java")
                                            .toString(),
                                    "-cp",
                                    System.getProperty("java.class.path"),
                                    CacheUser.class.getName(),
                                    season.toString(),
                                    user.toString())
                            .redirectErrorStream(true)
                            .start());
        }
        for (Process p : others) {
            String said = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertEquals(0, p.waitFor(), said);
        }
        assertEquals(1, filesIn(season.resolve(".pairdown")).size());
    }
}
