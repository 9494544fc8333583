package pairdown.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * The demo season: a made-up team's way from idle dives to both wing tips, each attempt with one
 * lesson and its truth beside it.
 */
public final class DemoSeason {
    /** The seed of the season that ships with Pairdown. */
    public static final long SEED = 20310514;

    private static final String CRITERIA =
            """
            {
              "title" : "Made-up team, May 2031",
              "criteria" : {
                "onGateInARow" : 2,
                "descentsHeldInARow" : 3,
                "closureExceedances" : 0,
                "episodes" : 0,
                "matched" : "10 s"
              }
            }
            """;

    private DemoSeason() {}

    /** All attempts of a season, in the order flown. */
    static List<DemoAttempt> attempts(long seed) {
        List<DemoAttempt> attempts = new ArrayList<>(DemoDives.idle(seed));
        attempts.addAll(DemoDives.practice(seed));
        attempts.addAll(DemoJoins.of(seed));
        return attempts;
    }

    /**
     * Flies the season and writes it into a new or empty folder. It is written beside and moved, so
     * that there is the whole season or nothing.
     *
     * @param progress told each attempt as it is done
     * @throws DirectoryNotEmptyException if the folder holds something: nothing is overwritten
     * @throws FileAlreadyExistsException if it is no folder
     * @throws IOException if it can't be written
     */
    public static void write(Path folder, long seed, Consumer<String> progress) throws IOException {
        Path place = folder.toAbsolutePath().normalize();
        refuseIfFull(place);
        Path parent = place.getParent();
        if (parent == null) {
            throw new IOException("no season can be written at " + place);
        }
        Files.createDirectories(parent);
        Path beside = parent.resolve(".writing-" + UUID.randomUUID());
        try {
            writeAll(beside, seed, progress);
            Files.deleteIfExists(place);
            Files.move(beside, place);
        } finally {
            deleteTree(beside);
        }
    }

    private static void refuseIfFull(Path place) throws IOException {
        if (!Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        if (!Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileAlreadyExistsException(place.toString());
        }
        try (Stream<Path> entries = Files.list(place)) {
            if (entries.findAny().isPresent()) {
                throw new DirectoryNotEmptyException(place.toString());
            }
        }
    }

    private static void writeAll(Path folder, long seed, Consumer<String> progress)
            throws IOException {
        List<DemoAttempt> attempts = attempts(seed);
        AtomicInteger done = new AtomicInteger();
        try {
            attempts.parallelStream()
                    .forEach(
                            a -> {
                                writeOne(folder, a, seed);
                                progress.accept(
                                        done.incrementAndGet()
                                                + " of "
                                                + attempts.size()
                                                + ": "
                                                + a.folder());
                            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        Files.writeString(folder.resolve("season.json"), CRITERIA, StandardCharsets.UTF_8);
        Files.writeString(
                folder.resolve("README.md"), DemoReadme.of(attempts), StandardCharsets.UTF_8);
    }

    private static void writeOne(Path folder, DemoAttempt attempt, long seed) {
        try {
            DemoFolder.write(folder.resolve(attempt.folder()), attempt, seed);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void deleteTree(Path root) throws IOException {
        if (!Files.exists(root)) {
            return;
        }
        try (Stream<Path> all = Files.walk(root)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
