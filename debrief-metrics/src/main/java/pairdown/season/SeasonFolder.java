package pairdown.season;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.Stream;
import pairdown.attempt.AttemptFolder;
import pairdown.debrief.Debriefer;
import pairdown.track.UnusableInputException;

/**
 * A folder of attempts: finds them, debriefs what has changed since last time, and brings them
 * together. An attempt is a folder with an {@code attempt.json}, or a folder of files without
 * folders in it; results, truth of simulations and hidden folders are passed over.
 */
public final class SeasonFolder {
    private static final Set<String> NOT_ATTEMPTS = Set.of("debrief", "truth", "season");
    private static final int DEEPEST = 12;

    private final Path folder;
    private final SeasonSettings settings;
    private final SeasonCache cache;

    private SeasonFolder(Path folder, SeasonSettings settings) {
        this.folder = folder;
        this.settings = settings;
        this.cache = SeasonCache.of(folder, settings);
    }

    /**
     * Reads a season.
     *
     * @param progress told each attempt as it is done
     * @throws UnusableInputException if there is no such folder, no attempt below it, or its {@code
     *     season.json} makes no sense
     */
    public static Season read(Path folder, Consumer<String> progress)
            throws UnusableInputException {
        if (!Files.isDirectory(folder)) {
            throw new UnusableInputException(
                    "no such folder",
                    folder.toString(),
                    "name the folder above the attempts' folders");
        }
        return new SeasonFolder(folder, SeasonSettings.DEFAULT).season(progress);
    }

    private Season season(Consumer<String> progress) throws UnusableInputException {
        List<String> notes = new ArrayList<>();
        Criteria criteria = Criteria.read(folder, notes);
        List<Path> attempts = new ArrayList<>();
        find(folder, 0, attempts);
        if (attempts.isEmpty()) {
            throw new UnusableInputException(
                    "no attempt below it",
                    folder.toString(),
                    "put each attempt's logs in a folder here");
        }
        AtomicInteger done = new AtomicInteger();
        List<AttemptSummary> summaries =
                attempts.parallelStream()
                        .map(
                                a -> {
                                    AttemptSummary s = summary(a);
                                    progress.accept(
                                            done.incrementAndGet()
                                                    + " of "
                                                    + attempts.size()
                                                    + ": "
                                                    + s.folder());
                                    return s;
                                })
                        .toList();
        return Season.of(summaries, criteria, settings, notes);
    }

    private void find(Path here, int depth, List<Path> attempts) throws UnusableInputException {
        if (AttemptFolder.hasManifest(here)) {
            attempts.add(here);
            return;
        }
        List<Path> below = foldersIn(here);
        if (below.isEmpty() && depth > 0) {
            attempts.add(here);
        }
        for (Path next : below) {
            if (depth < DEEPEST) {
                find(next, depth + 1, attempts);
            }
        }
    }

    private static List<Path> foldersIn(Path here) throws UnusableInputException {
        try (Stream<Path> entries = Files.list(here)) {
            return entries.filter(p -> Files.isDirectory(p) && !Files.isSymbolicLink(p))
                    .filter(p -> !p.getFileName().toString().startsWith("."))
                    .filter(p -> !NOT_ATTEMPTS.contains(p.getFileName().toString()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UnusableInputException(
                    "can't be listed (" + e + ")", here.toString(), "check its permissions", e);
        }
    }

    /** One attempt's summary. Whatever is wrong with it is its own affair: the rest go on. */
    private AttemptSummary summary(Path attempt) {
        String name = folder.relativize(attempt).toString().replace('\\', '/');
        return cache.get(attempt, () -> compute(attempt, name));
    }

    private AttemptSummary compute(Path attempt, String name) {
        try {
            return new Summariser(settings)
                    .summarise(Debriefer.debrief(AttemptFolder.open(attempt), step -> {}), name);
        } catch (UnusableInputException e) {
            return AttemptSummary.unusable(lastName(attempt), name, String.valueOf(e.getMessage()));
        } catch (RuntimeException e) {
            // A defect met in one attempt must not cost the team the other attempts of the day.
            return AttemptSummary.unusable(lastName(attempt), name, "defect in Pairdown: " + e);
        }
    }

    private static String lastName(Path attempt) {
        return attempt.getFileName().toString();
    }
}
