package pairdown.format.source;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Map;
import pairdown.track.Track;

/** A writer of a format that can hold several tracks, each under its name. Stateless. */
public interface NamedTracksWriter extends TrackWriter {
    /** Writes tracks in the map's order. The stream is flushed, not closed. */
    void write(Map<String, Track> byName, OutputStream out) throws IOException;
}
