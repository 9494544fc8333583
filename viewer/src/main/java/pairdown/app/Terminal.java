package pairdown.app;

import java.io.Console;
import java.util.function.Consumer;
import picocli.CommandLine.Model.CommandSpec;

/** Progress for a person: on standard error, and only where that is a terminal. */
final class Terminal {
    private Terminal() {}

    /** Says a step that begins. */
    static Consumer<String> progress(CommandSpec spec) {
        if (!isTerminal()) {
            return step -> {};
        }
        return step -> spec.commandLine().getErr().println(step + " …");
    }

    /**
     * Up to Java 21 a console is a terminal; later ones are asked, by a method 17 does not have.
     */
    @SuppressWarnings("SystemConsoleNull")
    static boolean isTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }
}
