package pairdown.track;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An input that can't be used, in one line: what, where, and the mend. The only exception type that
 * tells a person about their files; only the command line catches it.
 */
public final class UnusableInputException extends Exception {
    private static final long serialVersionUID = 1L;

    /**
     * @param what what is wrong
     * @param where file, with {@code :line} where there is one
     * @param mend what the person can do about it
     */
    public UnusableInputException(String what, String where, String mend) {
        super(line(what, where, mend));
    }

    public UnusableInputException(String what, String where, String mend, Throwable cause) {
        super(line(what, where, mend), cause);
    }

    /**
     * The message for a result that others will read, who have no use for the path to {@code
     * folder} on this machine: there {@code name} stands for it, or nothing where that is empty.
     */
    public String messageFor(Path folder, String name) {
        Path absolute = folder.toAbsolutePath();
        String inside = name.isEmpty() ? "" : name + File.separator;
        String told = String.valueOf(getMessage());
        for (Path path : List.of(absolute, absolute.normalize(), folder, folder.normalize())) {
            if (path.getFileName() != null && !path.toString().isEmpty()) {
                told = replaced(told, path + File.separator, inside);
                told =
                        replaced(
                                told,
                                path + ":",
                                (name.isEmpty() ? path.getFileName() : name) + ":");
            }
        }
        return told;
    }

    /** Where the path stands by itself, not within a longer one. */
    private static String replaced(String text, String path, String by) {
        return text.replaceAll(
                "(?<![^\\s('\"])" + Pattern.quote(path), Matcher.quoteReplacement(by));
    }

    /** One line, whatever names and texts of a file it quotes. */
    private static String line(String what, String where, String mend) {
        return (where + ": " + what + "; " + mend).replaceAll("[\\p{Cntrl}\u2028\u2029]+", " ");
    }
}
