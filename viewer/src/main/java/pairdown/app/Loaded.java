package pairdown.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
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
 * @param complaints what was read over on the way, a line for each
 */
record Loaded(Debrief debrief, Optional<Relief> relief, List<String> complaints) {
    Loaded {
        complaints = List.copyOf(complaints);
    }

    /**
     * Reads and debriefs an attempt, saying progress and complaints where the verb's go.
     *
     * @throws UnusableInputException if nothing in it can be shown
     */
    static Loaded from(Path folder, CommandSpec spec) throws UnusableInputException {
        Loaded loaded = of(AttemptFolder.open(folder), Terminal.progress(spec));
        loaded.complaints().forEach(c -> spec.commandLine().getErr().println(Main.oneLine(c)));
        return loaded;
    }

    /**
     * Debriefs an attempt.
     *
     * @param progress told each step as it begins
     * @throws UnusableInputException if nothing in it can be shown
     */
    static Loaded of(Attempt attempt, Consumer<String> progress) throws UnusableInputException {
        return of(Debriefer.debrief(attempt, progress));
    }

    /**
     * Looks for terrain beside a debriefed attempt.
     *
     * @throws UnusableInputException if nothing in it can be shown
     */
    static Loaded of(Debrief debrief) throws UnusableInputException {
        if (debrief.participants().stream().allMatch(p -> p.trajectory().isEmpty())) {
            throw new UnusableInputException(
                    "no log gives a track to show",
                    debrief.attempt().folder().toString(),
                    "see: pairdown inspect on each log");
        }
        Terrain terrain = Terrain.of(debrief.attempt().folder(), debrief);
        return new Loaded(debrief, terrain.relief(), terrain.complaints());
    }

    Path folder() {
        return debrief.attempt().folder();
    }
}
