package pairdown.app;

import java.util.function.Consumer;
import picocli.CommandLine.Model.CommandSpec;

/** Progress for a person: on standard error, and only where that is a terminal. */
final class Terminal {
    private Terminal() {}

    /** Says a step that begins. */
    static Consumer<String> progress(CommandSpec spec) {
        if (System.console() == null) {
            return step -> {};
        }
        return step -> spec.commandLine().getErr().println(step + " …");
    }
}
