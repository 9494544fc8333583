package pairdown.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.TypeConversionException;

/** Entry point of {@code pairdown.jar}. */
@Command(
        name = "pairdown",
        mixinStandardHelpOptions = true,
        version = "Pairdown 0.1.0",
        description = "3D replay and debrief for formation attempts.",
        synopsisSubcommandLabel = "VERB",
        subcommands = {
            DebriefVerb.class,
            DraftVerb.class,
            InspectVerb.class,
            ConvertVerb.class,
            SeasonVerb.class,
            ReplayVerb.class,
            StillVerb.class,
            ClipVerb.class,
            DemoVerb.class
        },
        footer = {
            "",
            "A record viewer for people already qualified and authorised. It does not teach, plan or",
            "approve a flight; the flight manual and the authority with jurisdiction decide.",
            "",
            "Exit status: 0 done, 2 wrong usage, 3 the input can't be used, 4 an output can't be written."
        })
public final class Main {
    private Main() {}

    /** Runs a verb and exits with its status. */
    public static void main(String[] args) {
        System.exit(ShortRun.of(args).orElseGet(() -> run(args)));
    }

    /** Runs a verb. */
    static int run(String... args) {
        return commandLine().execute(args);
    }

    static CommandLine commandLine() {
        CommandLine line = new CommandLine(new Main());
        line.registerConverter(Path.class, Main::path);
        line.setExecutionExceptionHandler(new Complaints());
        line.setParameterExceptionHandler(
                (e, given) -> {
                    PrintWriter err = e.getCommandLine().getErr();
                    err.println(
                            oneLine(String.valueOf(e.getMessage()))
                                    + "; see: pairdown "
                                    + name(e)
                                    + "--help");
                    return ExitStatus.USAGE;
                });
        line.setExecutionStrategy(
                parsed -> {
                    List<CommandLine> chain = parsed.asCommandLineList();
                    boolean verbless =
                            chain.size() == 1
                                    && !parsed.isUsageHelpRequested()
                                    && !parsed.isVersionHelpRequested();
                    if (verbless) {
                        chain.get(0).getErr().println("no verb given; see: pairdown --help");
                        return ExitStatus.USAGE;
                    }
                    return new CommandLine.RunLast().execute(parsed);
                });
        return line;
    }

    private static String name(CommandLine.ParameterException e) {
        String verb = e.getCommandLine().getCommandName();
        return verb.equals("pairdown") ? "" : verb + " ";
    }

    /** An empty name, as an unset variable in a script gives, would mean the current folder. */
    private static Path path(String given) {
        if (given.isBlank()) {
            throw new TypeConversionException("is empty, name a file or a folder (this one is .)");
        }
        return Path.of(given);
    }

    static String oneLine(String text) {
        return text.replaceAll("\\s*\\R\\s*", " ").trim();
    }
}
