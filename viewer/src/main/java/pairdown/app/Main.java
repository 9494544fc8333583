package pairdown.app;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Entry point of {@code pairdown.jar}. */
@Command(
        name = "pairdown",
        mixinStandardHelpOptions = true,
        version = "Pairdown 0.1.0",
        description = "3D replay and debrief for formation attempts.",
        synopsisSubcommandLabel = "VERB")
public final class Main {
    private Main() {}

    /** Runs a verb and exits with its status. */
    public static void main(String[] args) {
        System.exit(new CommandLine(new Main()).execute(args));
    }
}
