package pairdown.season;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import pairdown.track.UnusableInputException;

/**
 * A folder of attempts: debriefs what has changed since last time, several at once, and brings all
 * together. Nothing but the cache is written.
 */
public final class SeasonFolder {
    private final Path folder;
    private final SeasonPlan plan;
    private final SeasonCache cache;

    private SeasonFolder(Path folder, SeasonPlan plan, Path userCache) {
        this.folder = folder;
        this.plan = plan;
        this.cache = SeasonCache.of(folder, plan.settings(), userCache);
    }

    /**
     * Reads a season, debriefing the attempts that are new or have changed.
     *
     * @param progress told each attempt as it is done, from several threads, one at a time
     * @throws UnusableInputException if there is no such folder, no attempt below it, or its {@code
     *     season.json} makes no sense
     */
    public static Season read(Path folder, Consumer<String> progress)
            throws UnusableInputException {
        return at(folder, userCache()).season(progress);
    }

    static SeasonFolder at(Path folder, Path userCache) throws UnusableInputException {
        if (!Files.isDirectory(folder)) {
            throw new UnusableInputException(
                    "no such folder",
                    folder.toString(),
                    "name the folder above the attempts' folders");
        }
        return new SeasonFolder(folder, SeasonPlan.read(folder), userCache);
    }

    /** Where a user's caches lie by the custom of the system. */
    public static Path userCache() {
        return Optional.ofNullable(System.getenv("XDG_CACHE_HOME"))
                .or(() -> Optional.ofNullable(System.getenv("LOCALAPPDATA")))
                .map(Path::of)
                .orElse(Path.of(System.getProperty("user.home", "."), ".cache"))
                .resolve("pairdown");
    }

    Season season(Consumer<String> progress) throws UnusableInputException {
        List<Path> attempts = AttemptFinder.below(folder);
        AtomicInteger done = new AtomicInteger();
        List<SeasonCache.Current> found =
                attempts.parallelStream()
                        .map(
                                a -> {
                                    SeasonCache.Current c =
                                            cache.get(
                                                    a,
                                                    new AttemptSource(a, name(a), plan.settings()));
                                    synchronized (done) {
                                        // One after another: a count that is told never falls.
                                        progress.accept(
                                                done.incrementAndGet()
                                                        + " of "
                                                        + attempts.size()
                                                        + ": "
                                                        + name(a));
                                    }
                                    return c;
                                })
                        .toList();
        return season(found);
    }

    private Season season(List<SeasonCache.Current> found) {
        StringJoiner madeFrom = new StringJoiner("\n");
        madeFrom.add(plan.toString());
        found.forEach(c -> madeFrom.add(c.summary().folder() + " " + c.madeFrom()));
        List<AttemptSummary> summaries = found.stream().map(SeasonCache.Current::summary).toList();
        return Season.of(summaries, plan).madeFrom(FileStamp.hash(madeFrom.toString()));
    }

    /** What is known without debriefing anything. */
    SeasonResults known() throws UnusableInputException {
        List<SeasonCache.Current> current = new ArrayList<>();
        List<Path> changed = new ArrayList<>();
        for (Path attempt : AttemptFinder.below(folder)) {
            cache.current(attempt).ifPresentOrElse(current::add, () -> changed.add(attempt));
        }
        return new SeasonResults(season(current), changed);
    }

    private String name(Path attempt) {
        return folder.relativize(attempt).toString().replace('\\', '/');
    }
}
