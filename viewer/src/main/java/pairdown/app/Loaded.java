package pairdown.app;

import java.nio.file.Path;
import java.util.Optional;
import pairdown.attempt.Attempt;
import pairdown.attempt.AttemptFolder;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.scene.Relief;
import pairdown.scene.Terrain;
import pairdown.track.UnusableInputException;
import picocli.CommandLine.Model.CommandSpec;

/**
 * An attempt ready to be shown.
 *
 * @param relief terrain, where its folder holds a tile that covers it
 */
record Loaded(Debrief debrief, Optional<Relief> relief) {
    /**
     * Reads and debriefs an attempt.
     *
     * @throws UnusableInputException if nothing in it can be shown
     */
    static Loaded from(Path folder, CommandSpec spec) throws UnusableInputException {
        Attempt attempt = AttemptFolder.open(folder);
        Debrief debrief = Debriefer.debrief(attempt, Terminal.progress(spec));
        if (debrief.participants().stream().allMatch(p -> p.trajectory().isEmpty())) {
            throw new UnusableInputException(
                    "no log gives a track to show",
                    folder.toString(),
                    "see: pairdown inspect on each log");
        }
        Terrain terrain = Terrain.of(attempt.folder(), debrief);
        terrain.complaints().forEach(c -> spec.commandLine().getErr().println(Main.oneLine(c)));
        return new Loaded(debrief, terrain.relief());
    }
}
