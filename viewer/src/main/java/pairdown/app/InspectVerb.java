package pairdown.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pairdown.format.LogFiles;
import pairdown.track.UnusableInputException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what logs are: format, rate, span, gaps, datum, what was skipped and why. */
@Command(
        name = "inspect",
        mixinStandardHelpOptions = true,
        description =
                "Says what a log is: format, rate, span, gaps, datum, what was skipped and why.")
final class InspectVerb implements Callable<Integer> {
    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "logs of any known format")
    private List<Path> files = List.of();

    @Option(names = "--json", description = "for programs: one array, an object for each file")
    private boolean json;

    @Option(
            names = "--columns",
            paramLabel = "MAP",
            description = "a column map, for CSV logs whose header is not self-explanatory")
    private @Nullable Path columns;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        InspectionJson array = new InspectionJson();
        int usable = 0;
        for (Path file : files) {
            String name = file.toString();
            try {
                Inspection log = Inspection.of(LogFiles.read(file, Optional.ofNullable(columns)));
                usable++;
                if (json) {
                    array.add(name, log);
                } else {
                    out.println(InspectionText.of(name, log));
                }
            } catch (UnusableInputException e) {
                String reason = Main.oneLine(String.valueOf(e.getMessage()));
                array.addUnusable(name, reason);
                err.println(reason);
            }
        }
        if (json) {
            out.println(array.text());
        }
        out.flush();
        return usable > 0 ? ExitStatus.DONE : ExitStatus.INPUT;
    }
}
