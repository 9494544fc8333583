package pairdown.season;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.stream.Stream;

/** One of several processes that use one season's cache at once. */
final class CacheUser {
    private static final int ROUNDS = 150;

    private CacheUser() {}

    /** Exits with 1 as soon as a cache file is not whole. */
    public static void main(String[] args) throws IOException {
        Path season = Path.of(args[0]);
        Path attempt = season.resolve("a");
        AttemptSummary large =
                SeasonSamples.flown(
                        1,
                        Collections.nCopies(
                                        300, SeasonSamples.segment("lead", "lead", "idle", 38, 7))
                                .toArray(SteadySegment[]::new));
        for (int i = 0; i < ROUNDS; i++) {
            SeasonCache cache = SeasonCache.of(season, SeasonSettings.DEFAULT, Path.of(args[1]));
            Files.writeString(attempt.resolve("note-" + i % 7 + ".csv"), "x".repeat(i % 5));
            cache.get(attempt, SeasonCacheTest.source(large));
            if (!allWhole(season.resolve(".pairdown"))) {
                System.exit(1);
            }
        }
    }

    private static boolean allWhole(Path cache) throws IOException {
        try (Stream<Path> files = Files.list(cache)) {
            for (Path file : files.toList()) {
                if (!file.getFileName().toString().startsWith(".") && !whole(file)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean whole(Path file) throws IOException {
        return Files.readString(file).endsWith("}");
    }
}
