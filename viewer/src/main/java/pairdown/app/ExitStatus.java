package pairdown.app;

/** What the process says to its caller. */
final class ExitStatus {
    static final int DONE = 0;
    static final int DEFECT = 1;
    static final int USAGE = 2;
    static final int INPUT = 3;
    static final int OUTPUT = 4;

    private ExitStatus() {}
}
