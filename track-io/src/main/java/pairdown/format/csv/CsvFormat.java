package pairdown.format.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import pairdown.format.source.ByteLines;
import pairdown.format.source.LogSource;
import pairdown.format.source.TrackFormat;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** CSV logs: comma, semicolon, tab or bar, with a header of plain words, or with a column map. */
public final class CsvFormat implements TrackFormat {
    @Override
    public String key() {
        return "csv";
    }

    /** A row whose cells name a time and a channel. */
    @Override
    public boolean recognises(byte[] head) {
        return HeaderLayout.of(head).isPresent();
    }

    @Override
    public Track read(LogSource source) throws IOException, UnusableInputException {
        Layout layout =
                HeaderLayout.of(source.head())
                        .orElseThrow(
                                () ->
                                        source.unusable(
                                                "has no header that names a time and a channel",
                                                "write a column map"));
        return read(source, layout);
    }

    /** Reads a log as a column map says. */
    public Track read(LogSource source, Path columnMap) throws IOException, UnusableInputException {
        return read(source, ColumnMap.read(columnMap));
    }

    static Track read(LogSource source, ColumnMap map) throws IOException, UnusableInputException {
        return read(source, MappedLayout.of(map, source, source.head()));
    }

    private static Track read(LogSource source, Layout layout)
            throws IOException, UnusableInputException {
        try (InputStream in = source.open()) {
            ByteLines lines = new ByteLines(in, source.settings().lineBytes());
            return new CsvReader(source, layout).read(lines);
        }
    }

    /** Why a file that looks like CSV is not read, in words. */
    public static Optional<String> complaint(byte[] head) {
        Dialect dialect = Dialect.of(head);
        SampleLines lines = SampleLines.of(head, dialect);
        if (HeaderLayout.isHeaderAlone(lines)) {
            return Optional.of("has a header row and no record after it");
        }
        boolean table = lines.size() > 1 && lines.cells(0).size() > 1;
        return table
                ? Optional.of(
                        "looks like CSV, but no header row names a time and a channel in words known"
                                + " here")
                : Optional.empty();
    }
}
