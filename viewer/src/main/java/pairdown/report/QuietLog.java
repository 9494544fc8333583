package pairdown.report;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLogger;
import java.util.logging.Level;

/**
 * The PDF renderer's log, for developers: its progress and the style rules it has no use for are no
 * business of who runs a debrief. What it can't render is an exception.
 */
final class QuietLog implements XRLogger {
    private static final System.Logger LOG = System.getLogger("pairdown.report.pdf");

    @Override
    public void log(String where, Level level, String message) {
        LOG.log(System.Logger.Level.DEBUG, "{0}: {1}", where, message);
    }

    @Override
    public void log(String where, Level level, String message, Throwable cause) {
        LOG.log(System.Logger.Level.DEBUG, where + ": " + message, cause);
    }

    @Override
    public void setLevel(String logger, Level level) {
        // The platform's own settings decide.
    }

    @Override
    public boolean isLogLevelEnabled(Diagnostic diagnostic) {
        return LOG.isLoggable(System.Logger.Level.DEBUG);
    }
}
