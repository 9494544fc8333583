package pairdown.format.geojson;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import pairdown.format.source.LogSource;
import pairdown.format.source.Notes;
import pairdown.format.source.Rows;
import pairdown.format.source.Text;
import pairdown.format.source.TrackFormat;
import pairdown.track.HeightDatum;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/**
 * GeoJSON (RFC 7946) lines whose features carry a time for each coordinate, under {@code
 * coordinateProperties.times}, {@code coordTimes} or {@code times}, or points with a {@code time}.
 * Heights are above the ellipsoid, as the RFC has them.
 */
public final class GeoJsonFormat implements TrackFormat {
    private static final int MOST_DEPTH = 100;
    private static final JsonFactory JSON =
            JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxNestingDepth(MOST_DEPTH)
                                    .maxStringLength(1 << 20)
                                    .maxNameLength(1 << 14)
                                    .maxNumberLength(100)
                                    .build())
                    // Else each name met is held, and a file may be all names.
                    .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
                    .build();

    @Override
    public String key() {
        return "geojson";
    }

    @Override
    public boolean recognises(byte[] head) {
        String text = Text.decode(head, 0, head.length);
        return text.stripLeading().startsWith("{")
                && text.contains("\"type\"")
                && (text.contains("\"Feature")
                        || text.contains("\"LineString")
                        || text.contains("\"coordinates\""));
    }

    @Override
    public Track read(LogSource source) throws IOException, UnusableInputException {
        Notes notes = new Notes();
        Rows rows = new Rows(source, key(), notes);
        FeatureReader features = new FeatureReader(rows, notes);
        // A reader, since a parser of bytes stops at the first letter of another encoding.
        try (Reader in = letters(source);
                JsonParser json = JSON.createParser(in)) {
            try {
                features.read(json);
            } catch (JsonProcessingException e) {
                long line = Math.max(1, json.currentLocation().getLineNr());
                int fixes = afterBreak(source, features.begin(), rows, notes);
                notes.warn(
                        "cut or damaged at line "
                                + line
                                + "; what was whole before it was read"
                                + (fixes == 0
                                        ? ""
                                        : ", and " + fixes + " of the fixes from there on"));
            }
        }
        if (rows.size() == 0 && notes.skippedCount() == 0) {
            throw source.unusable(
                    "holds no line with a time for each coordinate",
                    "export it with times; a drawn line has none");
        }
        return rows.finish(true, HeightDatum.ELLIPSOID);
    }

    private static Reader letters(LogSource source) throws IOException, UnusableInputException {
        return new InputStreamReader(source.open(), StandardCharsets.UTF_8);
    }

    /** Reads what begins at the feature that breaks; how many fixes there were. */
    private static int afterBreak(LogSource source, long begin, Rows rows, Notes notes)
            throws IOException, UnusableInputException {
        int before = rows.size();
        try (Reader in = letters(source)) {
            new FeatureFragments(in, rows, notes).read(begin);
        }
        return rows.size() - before;
    }
}
