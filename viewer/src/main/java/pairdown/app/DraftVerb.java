package pairdown.app;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import pairdown.attempt.Attempt;
import pairdown.attempt.AttemptDraft;
import pairdown.attempt.AttemptFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a first {@code attempt.json} for a folder of raw logs. */
@Command(
        name = "draft",
        mixinStandardHelpOptions = true,
        description = "Writes a first attempt.json for a folder of raw logs, to be edited.")
final class DraftVerb implements Callable<Integer> {
    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FOLDER", description = "the folder of logs")
    private Path folder = Path.of("");

    @Override
    public Integer call() throws Exception {
        Attempt guess = AttemptFolder.guess(folder);
        guess.notes().forEach(note -> spec.commandLine().getErr().println(Main.oneLine(note)));
        try {
            spec.commandLine().getOut().println(AttemptDraft.write(guess));
        } catch (FileAlreadyExistsException e) {
            throw new OutputException(
                    guess.folder().resolve("attempt.json"),
                    "is there already and is never overwritten",
                    "edit it, or move it away and draft again");
        } catch (IOException e) {
            throw new OutputException(guess.folder(), e);
        }
        return ExitStatus.DONE;
    }
}
