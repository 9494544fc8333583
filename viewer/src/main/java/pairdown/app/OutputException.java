package pairdown.app;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** An output that can't be written, in one line: what, where and the mend. */
final class OutputException extends Exception {
    private static final long serialVersionUID = 1L;

    OutputException(Path where, IOException cause) {
        super(where + ": can't be written (" + reason(cause) + "); " + mend(cause), cause);
    }

    OutputException(Path where, String what, String mend) {
        super(where + ": " + what + "; " + mend);
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "no permission";
        }
        if (e instanceof FileAlreadyExistsException) {
            return "a file of that name is in the way";
        }
        if (e instanceof NoSuchFileException) {
            return "no such folder";
        }
        String message = e.getMessage();
        return message == null ? e.getClass().getSimpleName() : message;
    }

    private static String mend(IOException e) {
        return e instanceof FileAlreadyExistsException
                ? "choose another place or move it away"
                : "choose another place with --out, or check the folder's permissions and free space";
    }
}
