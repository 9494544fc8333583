package pairdown.season;

import java.nio.file.Path;
import java.util.List;
import pairdown.track.UnusableInputException;

/**
 * What is known of a season at once, for a window that lists attempts and must not wait: the kept
 * results of every attempt whose files are what they were, and the rest by name. {@link
 * SeasonFolder#read} brings the rest up to date; an attempt opens from {@code
 * folder.resolve(summary.folder())}.
 *
 * @param season of the attempts that are up to date; ladder, repeatability and envelope are theirs
 *     alone
 * @param notDebriefed folders of attempts that are new or have changed since, by name
 */
public record SeasonResults(Season season, List<Path> notDebriefed) {
    public SeasonResults {
        notDebriefed = List.copyOf(notDebriefed);
    }

    /**
     * Reads what is kept; debriefs nothing.
     *
     * @throws UnusableInputException if there is no such folder, no attempt below it, or its {@code
     *     season.json} makes no sense
     */
    public static SeasonResults read(Path folder) throws UnusableInputException {
        return SeasonFolder.at(folder, SeasonFolder.userCache()).known();
    }

    /** Whether every attempt is up to date. */
    public boolean complete() {
        return notDebriefed.isEmpty();
    }
}
