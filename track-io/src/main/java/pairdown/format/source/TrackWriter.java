package pairdown.format.source;

import java.io.IOException;
import java.io.OutputStream;
import pairdown.track.Track;

/** A writer of one format. Stateless. */
public interface TrackWriter {
    /** The format's name: {@code "igc"}. */
    String key();

    /** Whether the format can hold a track without instants. */
    default boolean allowsRelativeTime() {
        return false;
    }

    /** Whether the format can hold a track without positions. */
    default boolean allowsNoPositions() {
        return false;
    }

    /** Writes a track that the format can hold. The stream is flushed, not closed. */
    void write(Track track, OutputStream out) throws IOException;
}
