package pairdown.format;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pairdown.format.csv.CsvFormat;
import pairdown.format.csv.CsvWriter;
import pairdown.format.geojson.GeoJsonFormat;
import pairdown.format.geojson.GeoJsonWriter;
import pairdown.format.gpx.GpxFormat;
import pairdown.format.gpx.GpxWriter;
import pairdown.format.igc.IgcFormat;
import pairdown.format.igc.IgcWriter;
import pairdown.format.kml.KmlFormat;
import pairdown.format.kml.KmlWriter;
import pairdown.format.nmea.NmeaFormat;
import pairdown.format.nmea.NmeaWriter;
import pairdown.format.source.LogSource;
import pairdown.format.source.NamedTracksWriter;
import pairdown.format.source.TrackFormat;
import pairdown.format.source.TrackWriter;
import pairdown.track.MotionLimits;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** Reads logs, whatever their format, and writes tracks in open formats. */
public final class LogFiles {
    /** In order of how sure their first bytes make one. */
    private static final List<TrackFormat> FORMATS =
            List.of(
                    new GpxFormat(),
                    new KmlFormat(),
                    new GeoJsonFormat(),
                    new NmeaFormat(),
                    new IgcFormat(),
                    new CsvFormat());

    private static final List<TrackWriter> WRITERS =
            List.of(
                    new GpxWriter(),
                    new KmlWriter(),
                    new IgcWriter(),
                    new CsvWriter(),
                    new GeoJsonWriter(),
                    new NmeaWriter());

    private LogFiles() {}

    /** Names of the formats that {@link #write} knows. */
    public static List<String> writable() {
        return WRITERS.stream().map(TrackWriter::key).toList();
    }

    /**
     * Whether a format can hold a track.
     *
     * @throws UnusableInputException if it can't: most want instants and positions
     * @throws IllegalArgumentException if there is no such format
     */
    public static void requireWritable(Track track, String format) throws UnusableInputException {
        TrackWriter writer = writer(format);
        String name = track.report().file();
        if (!track.hasAbsoluteTime() && !writer.allowsRelativeTime()) {
            throw new UnusableInputException(
                    "has no absolute time, which " + format + " needs", name, "write it as csv");
        }
        if (!track.hasPositions() && !writer.allowsNoPositions()) {
            throw new UnusableInputException(
                    "has no positions, which " + format + " needs", name, "write it as csv");
        }
    }

    private static TrackWriter writer(String format) {
        return WRITERS.stream()
                .filter(w -> w.key().equals(format))
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "no format '" + format + "', only " + writable()));
    }

    /**
     * Writes a track: its rows with a position, in CSV all of them.
     *
     * @param format one of {@link #writable()}
     * @throws UnusableInputException if the format can't hold the track: most want instants and
     *     positions
     * @throws IllegalArgumentException if there is no such format
     */
    public static void write(Track track, String format, OutputStream out)
            throws IOException, UnusableInputException {
        requireWritable(track, format);
        writer(format).write(track, out);
    }

    /**
     * Writes several tracks into one file, each under its name.
     *
     * @param format {@code gpx}, {@code kml} or {@code geojson}
     * @throws UnusableInputException if the format can't hold one of them
     * @throws IllegalArgumentException if the format holds one track a file
     */
    public static void write(Map<String, Track> byName, String format, OutputStream out)
            throws IOException, UnusableInputException {
        for (Track track : byName.values()) {
            requireWritable(track, format);
        }
        if (!(writer(format) instanceof NamedTracksWriter writer)) {
            throw new IllegalArgumentException(format + " holds one track a file");
        }
        writer.write(byName, out);
    }

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

    /** The track, with what its holes say about the logger's setting. */
    private static Track hinted(Track read) {
        List<String> hints = MotionLimits.hints(read);
        if (hints.isEmpty()) {
            return read;
        }
        List<String> warnings = new ArrayList<>(read.report().warnings());
        warnings.addAll(hints);
        return read.withReport(read.report().withWarnings(warnings));
    }

    static Track read(LogSource source, Optional<Path> columnMap) throws UnusableInputException {
        byte[] head = source.head();
        if (head.length == 0) {
            throw source.unusable("is empty", "copy it anew from the logger");
        }
        if (isBlank(head)) {
            throw source.unusable(
                    "begins with nothing but blanks or zeros",
                    "copy it anew; the logger may have stopped before it wrote anything");
        }
        try {
            if (columnMap.isPresent()) {
                return hinted(new CsvFormat().read(source, columnMap.get()));
            }
            for (TrackFormat format : FORMATS) {
                if (format.recognises(head)) {
                    return hinted(format.read(source));
                }
            }
        } catch (IOException e) {
            throw source.unreadable(e);
        }
        if (NmeaFormat.hasSentences(head)) {
            throw source.unusable(
                    "holds NMEA sentences, but none with a position",
                    "let the logger record RMC and GGA");
        }
        if (NmeaFormat.hasDamagedSentences(head)) {
            throw source.unusable(
                    "holds NMEA sentences, but no checksum fits", "copy it anew from the logger");
        }
        Optional<String> table = CsvFormat.complaint(head);
        if (table.isPresent()) {
            throw source.unusable(table.get(), "write a column map, or check that all was copied");
        }
        throw source.unusable(
                "is no log of a known format (gpx igc nmea kml geojson csv)",
                "check that it is the logger's own file");
    }

    private static boolean isBlank(byte[] head) {
        for (byte b : head) {
            if (b > ' ' || b < 0) {
                return false;
            }
        }
        return true;
    }
}
