package pairdown.app;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import pairdown.demo.DemoSeason;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The demo season, made anew with its truth beside it. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = "Makes the demo season anew, simulated, with its truth beside each log.")
final class DemoVerb implements Callable<Integer> {
    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FOLDER", description = "a new or empty folder")
    private Path folder = Path.of("");

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "another season of the same plans (default: ${DEFAULT-VALUE})")
    private long seed = DemoSeason.SEED;

    @Override
    public Integer call() throws Exception {
        try {
            DemoSeason.write(folder, seed, Terminal.progress(spec));
        } catch (DirectoryNotEmptyException e) {
            throw new OutputException(
                    folder, "is not empty and is never overwritten", "name a new or empty folder");
        } catch (IOException e) {
            throw new OutputException(folder, e);
        }
        spec.commandLine().getOut().println(folder);
        return ExitStatus.DONE;
    }
}
