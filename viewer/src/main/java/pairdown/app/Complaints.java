package pairdown.app;

import pairdown.gl.NoGraphicsException;
import pairdown.track.UnusableInputException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Turns what stopped a verb into one line on standard error and an exit status. */
final class Complaints implements IExecutionExceptionHandler {
    /** Set to see where in the code a defect lies. */
    private static final String TRACE = "pairdown.trace";

    @Override
    public int handleExecutionException(Exception e, CommandLine line, ParseResult parsed) {
        if (e instanceof UnusableInputException) {
            return say(line, String.valueOf(e.getMessage()), ExitStatus.INPUT);
        }
        if (e instanceof OutputException) {
            return say(line, String.valueOf(e.getMessage()), ExitStatus.OUTPUT);
        }
        if (e instanceof NoGraphicsException) {
            return say(line, String.valueOf(e.getMessage()), ExitStatus.OUTPUT);
        }
        if (Boolean.getBoolean(TRACE)) {
            e.printStackTrace(line.getErr());
        }
        return say(
                line,
                "defect in Pairdown ("
                        + e
                        + "); run java -D"
                        + TRACE
                        + "=true -jar … and report what it prints",
                ExitStatus.DEFECT);
    }

    private static int say(CommandLine line, String message, int status) {
        line.getErr().println(Main.oneLine(message));
        return status;
    }
}
