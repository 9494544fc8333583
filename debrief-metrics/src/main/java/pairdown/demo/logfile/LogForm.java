package pairdown.demo.logfile;

import java.util.Optional;
import pairdown.track.Track;

/** The form of a log's file. */
public sealed interface LogForm permits OpenForm, TableForm {
    /** The file's text; all forms are text. */
    String text(Track track);

    /** The column map that a reader needs, as JSON. */
    Optional<String> columnMap();
}
