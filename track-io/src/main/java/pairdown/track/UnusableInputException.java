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
        super(where + ": " + what + "; " + mend);
    }

    public UnusableInputException(String what, String where, String mend, Throwable cause) {
        super(where + ": " + what + "; " + mend, cause);
    }
}
