package pairdown.app;

import java.nio.file.Path;
import java.util.List;
import pairdown.replay.Desk;
import pairdown.season.Season;

/** What a person's wish to open something led to. */
sealed interface Found permits Loaded, Found.Attempts {
    /**
     * The attempts below a folder.
     *
     * @param folder absolute
     */
    record Attempts(Path folder, Season season) implements Found {
        List<Desk.SeasonLine> lines() {
            return season.attempts().stream()
                    .map(a -> new Desk.SeasonLine(a, folder.resolve(a.folder()).normalize()))
                    .toList();
        }
    }
}
