package pairdown.format.source;

import java.io.IOException;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** A reader of one format. Stateless; one call reads one log. */
public interface TrackFormat {
    /** The format's name in results: {@code "igc"}. */
    String key();

    /**
     * Whether a log's first bytes are of this format.
     *
     * @param head ASCII-compatible, byte-order mark taken off
     */
    boolean recognises(byte[] head);

    /**
     * Reads a log to its last whole record.
     *
     * @throws UnusableInputException if no record of it can be used
     * @throws IOException if the bytes can't be had
     */
    Track read(LogSource source) throws IOException, UnusableInputException;
}
