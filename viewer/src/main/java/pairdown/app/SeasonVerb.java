package pairdown.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pairdown.debrief.ResultFolder;
import pairdown.season.AttemptSummary;
import pairdown.season.Season;
import pairdown.season.SeasonFiles;
import pairdown.season.SeasonFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** All attempts below a folder: step-down, repeatability, envelope. */
@Command(
        name = "season",
        mixinStandardHelpOptions = true,
        description =
                "Brings all attempts below a folder together: step-down, repeatability, envelope.")
final class SeasonVerb implements Callable<Integer> {
    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FOLDER", description = "the folder above the attempts' folders")
    private Path folder = Path.of("");

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "where results go (default: FOLDER/season)")
    private @Nullable Path out;

    @Override
    public Integer call() throws Exception {
        Season season = SeasonFolder.read(folder, Terminal.progress(spec));
        for (AttemptSummary a : season.attempts()) {
            a.reason().ifPresent(r -> spec.commandLine().getErr().println(Main.oneLine(r)));
        }
        season.notes().forEach(n -> spec.commandLine().getErr().println(Main.oneLine(n)));
        Path place = Optional.ofNullable(out).orElse(folder.resolve("season"));
        try {
            SeasonFiles.write(season, ResultFolder.at(place));
        } catch (IOException e) {
            throw new OutputException(place, e);
        }
        spec.commandLine().getOut().println(place.resolve("season.json"));
        return season.attempts().stream().anyMatch(AttemptSummary::usable)
                ? ExitStatus.DONE
                : ExitStatus.INPUT;
    }
}
