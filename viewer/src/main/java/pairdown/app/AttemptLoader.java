package pairdown.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import pairdown.attempt.Attempt;
import pairdown.attempt.AttemptFolder;
import pairdown.panel.Opening;
import pairdown.panel.Opening.Purpose;
import pairdown.replay.Desk;
import pairdown.season.SeasonFolder;
import pairdown.track.UnusableInputException;
import pairdown.words.Words;

/**
 * Reads for the replay window, on a thread of its own: an attempt's folder, loose logs as a draft
 * attempt in memory, or a folder of attempts as a season.
 */
final class AttemptLoader implements Opening.Loader<Found> {
    /** The steps of a debrief and the ground: how far the bar has come is counted in them. */
    private static final double STEPS = 8;

    private final Words words;

    AttemptLoader(Words words) {
        this.words = words;
    }

    @Override
    public Found load(Opening.Wish wish, Consumer<Desk.Progress> progress)
            throws UnusableInputException {
        Path first = wish.paths().get(0);
        boolean isSeason =
                wish.purpose() == Purpose.SEASON
                        || (wish.purpose() == Purpose.SHOW && holdsAttempts(first));
        if (isSeason) {
            Consumer<String> told = step -> progress.accept(new Desk.Progress(step, Double.NaN));
            return new Found.Attempts(first, SeasonFolder.read(first, told));
        }
        Consumer<String> counted = new Counted(first, progress);
        Loaded loaded = Loaded.of(attempt(wish.paths()), counted);
        counted.accept(words.get("loading.curves"));
        return Found.Ready.of(loaded, words);
    }

    private static Attempt attempt(List<Path> paths) throws UnusableInputException {
        Path first = paths.get(0);
        boolean loose = Files.isRegularFile(first) && !AttemptFolder.isManifest(first);
        return loose
                ? AttemptFolder.ofFiles(paths.stream().filter(Files::isRegularFile).toList())
                : AttemptFolder.open(first);
    }

    /** Whether a folder is no attempt itself, but folders in it are. */
    private static boolean holdsAttempts(Path folder) throws UnusableInputException {
        if (!Files.isDirectory(folder) || AttemptFolder.hasManifest(folder)) {
            return false;
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.anyMatch(AttemptFolder::hasManifest);
        } catch (IOException e) {
            throw new UnusableInputException(
                    "can't be listed (" + e + ")", folder.toString(), "check its permissions", e);
        }
    }

    /** Turns the names of steps into a share of the whole. */
    private static final class Counted implements Consumer<String> {
        private final String name;
        private final Consumer<Desk.Progress> to;
        private int done;

        Counted(Path path, Consumer<Desk.Progress> to) {
            this.name = String.valueOf(path.getFileName());
            this.to = to;
        }

        @Override
        public void accept(String step) {
            to.accept(new Desk.Progress(name + ": " + step, Math.min(1, ++done / STEPS)));
        }
    }
}
