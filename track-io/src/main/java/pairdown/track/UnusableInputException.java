package pairdown.track;

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

    /** One line, whatever names and texts of a file it quotes. */
    private static String line(String what, String where, String mend) {
        return (where + ": " + what + "; " + mend).replaceAll("[\\p{Cntrl}\u2028\u2029]+", " ");
    }
}
