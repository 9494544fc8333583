package pairdown.app;

import java.nio.file.Path;
import pairdown.attempt.AttemptFolder;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.track.UnusableInputException;

/** The sample attempt that tests of whole outputs share, debriefed once. */
public final class Sample {
    public static final Path FOLDER = Path.of("..", "sample-tracks", "2031-05-14-02");

    private Sample() {}

    /** Its debrief. */
    public static Debrief debrief() {
        return Once.DEBRIEF;
    }

    private static final class Once {
        private static final Debrief DEBRIEF = debriefed();

        private static Debrief debriefed() {
            try {
                return Debriefer.debrief(AttemptFolder.open(FOLDER), step -> {});
            } catch (UnusableInputException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
