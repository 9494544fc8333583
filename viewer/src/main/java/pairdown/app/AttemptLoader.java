package pairdown.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import pairdown.attempt.AttemptFolder;
import pairdown.panel.Opening;
import pairdown.replay.Desk;
import pairdown.track.UnusableInputException;

/** Reads for the replay window, on a thread of its own. */
final class AttemptLoader implements Opening.Loader<Loaded> {
    /** The steps of a debrief and the ground: how far the bar has come is counted in them. */
    private static final double STEPS = 7;

    @Override
    public Loaded load(Opening.Wish wish, Consumer<Desk.Progress> progress)
            throws UnusableInputException {
        Path given = wish.paths().get(0);
        Path folder = Files.isRegularFile(given) ? given.resolveSibling("") : given;
        return Loaded.of(AttemptFolder.open(folder), new Counted(folder, progress));
    }

    /** Turns the names of steps into a share of the whole. */
    private static final class Counted implements Consumer<String> {
        private final String name;
        private final Consumer<Desk.Progress> to;
        private int done;

        Counted(Path folder, Consumer<Desk.Progress> to) {
            this.name = String.valueOf(folder.getFileName());
            this.to = to;
        }

        @Override
        public void accept(String step) {
            to.accept(new Desk.Progress(name + ": " + step, Math.min(1, ++done / STEPS)));
        }
    }
}
