package pairdown.demo;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import pairdown.attempt.AttemptFolder;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.track.UnusableInputException;

/** Debriefs of the sample season's attempts, each made once for all tests. */
final class SampleDebriefs {
    static final Path SEASON = Path.of("..", "sample-tracks");
    private static final Map<String, Debrief> DEBRIEFS = new ConcurrentHashMap<>();

    private SampleDebriefs() {}

    /**
     * Not for parallel streams: a debrief runs its steps side by side, and a step that waits for
     * another's place in the map would hold up both.
     *
     * @param folder below the season's
     */
    static Debrief of(String folder) {
        return DEBRIEFS.computeIfAbsent(folder, f -> debrief(SEASON.resolve(f)));
    }

    private static Debrief debrief(Path folder) {
        try {
            return Debriefer.debrief(AttemptFolder.open(folder), step -> {});
        } catch (UnusableInputException e) {
            throw new IllegalStateException(e);
        }
    }
}
