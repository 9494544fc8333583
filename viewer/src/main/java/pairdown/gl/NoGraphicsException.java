package pairdown.gl;

/**
 * No picture can be made on this machine. The message is one line: what is missing and which
 * packages bring it.
 */
public final class NoGraphicsException extends Exception {
    private static final long serialVersionUID = 1L;

    /** What a bare Debian needs for pictures without a display. */
    private static final String OFFSCREEN_MEND =
            "on Debian or Ubuntu install libegl1 and libgl1-mesa-dri";

    private static final String WINDOW_MEND =
            "run it from a desktop session, or on Debian or Ubuntu install xvfb, libgl1 and"
                    + " libgl1-mesa-dri and run it under xvfb-run; 'still' and 'clip' need no"
                    + " display";

    private NoGraphicsException(String message, Throwable cause) {
        super(message, cause);
    }

    private NoGraphicsException(String message) {
        super(message);
    }

    static NoGraphicsException offscreen(String what) {
        return new NoGraphicsException(
                "no picture can be made here: " + what + "; " + OFFSCREEN_MEND);
    }

    static NoGraphicsException offscreen(String what, Throwable cause) {
        return new NoGraphicsException(
                "no picture can be made here: " + what + "; " + OFFSCREEN_MEND, cause);
    }

    static NoGraphicsException noOpenGl(String what) {
        return new NoGraphicsException(
                "no window can be opened here: no OpenGL 3.3 ("
                        + what
                        + "); update the graphics driver, or on Linux set LIBGL_ALWAYS_SOFTWARE=1 to"
                        + " draw on the processor");
    }

    static NoGraphicsException window(String what) {
        return new NoGraphicsException(
                "no window can be opened here: " + what + "; " + WINDOW_MEND);
    }

    static NoGraphicsException window(String what, Throwable cause) {
        return new NoGraphicsException(
                "no window can be opened here: " + what + "; " + WINDOW_MEND, cause);
    }
}
