package pairdown.format;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pairdown.format.igc.IgcFormat;
import pairdown.format.nmea.NmeaFormat;
import pairdown.format.source.LogSource;
import pairdown.format.source.TrackFormat;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** Reads logs, whatever their format, and writes tracks in open formats. */
public final class LogFiles {
    /** In order of how sure their first bytes make one. */
    private static final List<TrackFormat> FORMATS = List.of(new NmeaFormat(), new IgcFormat());

    private LogFiles() {}

    /**
     * Reads a log; its format is found by its content, not by its name.
     *
     * @param columnMap a column map, for a CSV log whose header is not self-explanatory
     * @throws UnusableInputException if the file can't be read, is no log, or holds no usable
     *     record
     */
    public static Track read(Path file, Optional<Path> columnMap) throws UnusableInputException {
        return read(LogSource.of(file), columnMap);
    }

    static Track read(LogSource source, Optional<Path> columnMap) throws UnusableInputException {
        byte[] head = source.head();
        if (head.length == 0) {
            throw source.unusable("is empty", "copy it anew from the logger");
        }
        try {
            for (TrackFormat format : FORMATS) {
                if (format.recognises(head)) {
                    return format.read(source);
                }
            }
        } catch (IOException e) {
            throw source.unreadable(e);
        }
        throw source.unusable(
                "is no log of a known format (gpx igc nmea kml geojson csv)",
                "check that it is the logger's own file");
    }
}
