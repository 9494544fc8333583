package pairdown.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import pairdown.attempt.Attempt;
import pairdown.attempt.AttemptFolder;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.kept.KeptDebriefs;
import pairdown.panel.Opening;
import pairdown.panel.Opening.Purpose;
import pairdown.replay.Desk;
import pairdown.season.FolderContent;
import pairdown.season.SeasonFolder;
import pairdown.track.UnusableInputException;
import pairdown.words.Translation;
import pairdown.words.Words;

/**
 * Reads for the replay window, on a thread of its own: an attempt's folder, loose logs as a draft
 * attempt in memory, or a folder of attempts as a season.
 */
final class AttemptLoader implements Opening.Loader<Found> {
    /** The steps of a debrief and the ground: how far the bar has come is counted in them. */
    private static final double STEPS = 8;

    private final Words words;
    private final KeptDebriefs kept;

    AttemptLoader(Words words, KeptDebriefs kept) {
        this.words = words;
        this.kept = kept;
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
        Loaded loaded = loaded(wish.paths(), counted);
        counted.accept(words.get("loading.curves"));
        return Found.Ready.of(loaded, words);
    }

    @Override
    public String told(String english) {
        return new Translation(words).of(english);
    }

    private Loaded loaded(List<Path> paths, Consumer<String> progress)
            throws UnusableInputException {
        Path folder = AttemptFolder.isManifest(paths.get(0)) ? parent(paths.get(0)) : paths.get(0);
        Optional<Debrief> before = kept.current(folder);
        if (before.isPresent()) {
            return Loaded.of(before.get());
        }
        Attempt attempt = attempt(paths);
        Optional<FolderContent> content = kept.look(attempt);
        Debrief debrief = Debriefer.debrief(attempt, progress);
        Loaded loaded = Loaded.of(debrief);
        if (content.isPresent() && attempt.folder().equals(folder)) {
            // Shown first: keeping takes a moment.
            new Thread(() -> kept.keep(content.get(), debrief), "keeping").start();
        }
        return loaded;
    }

    private static Path parent(Path manifest) {
        return manifest.resolveSibling("");
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
