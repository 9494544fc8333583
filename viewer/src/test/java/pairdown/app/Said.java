package pairdown.app;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.util.List;

/**
 * What the program said to a terminal, and the status it ended with.
 *
 * @param status exit status
 * @param out standard output
 * @param err standard error
 */
record Said(int status, String out, String err) {
    /** Runs the program as from a command line. */
    static Said by(Object... arguments) {
        String[] args = new String[arguments.length];
        for (int i = 0; i < args.length; i++) {
            args[i] = arguments[i].toString();
        }
        PrintStream terminal = System.out;
        PrintStream complaints = System.err;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(out, true, Charset.defaultCharset()));
            System.setErr(new PrintStream(err, true, Charset.defaultCharset()));
            int status = Main.run(args);
            return new Said(status, text(out), text(err));
        } finally {
            System.setOut(terminal);
            System.setErr(complaints);
        }
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(Charset.defaultCharset()).replace("\r\n", "\n");
    }

    List<String> errLines() {
        return err.lines().toList();
    }
}
