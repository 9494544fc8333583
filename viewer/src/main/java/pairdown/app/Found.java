package pairdown.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pairdown.panel.Board;
import pairdown.replay.Desk;
import pairdown.replay.Recording;
import pairdown.scene.Blueprint;
import pairdown.season.AttemptSummary;
import pairdown.season.Season;
import pairdown.words.Words;

/** What a person's wish to open something led to. */
sealed interface Found permits Found.Ready, Found.Attempts {
    /** An attempt with all that can be made of it without a window. */
    record Ready(Loaded loaded, Blueprint blueprint, Board board) implements Found {
        static Ready of(Loaded loaded, Words words) {
            Recording recording = Recording.of(loaded.debrief());
            return new Ready(
                    loaded, Blueprint.of(recording, loaded.relief()), new Board(recording, words));
        }
    }

    /**
     * The attempts below a folder.
     *
     * @param folder absolute
     */
    record Attempts(Path folder, Season season) implements Found {
        /** The latest first: between loads it is the one that is asked about. */
        List<Desk.SeasonLine> lines() {
            List<Desk.SeasonLine> lines = new ArrayList<>();
            for (AttemptSummary a : season.attempts()) {
                Path place = folder.resolve(a.folder()).normalize();
                lines.add(a.usable() ? 0 : lines.size(), new Desk.SeasonLine(a, place));
            }
            return lines;
        }
    }
}
