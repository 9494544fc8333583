package pairdown.format.geojson;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pairdown.format.source.Doubles;
import pairdown.format.source.Longs;
import pairdown.format.source.Notes;
import pairdown.format.source.Numbers;
import pairdown.format.source.PointNames;
import pairdown.format.source.Rows;
import pairdown.time.IsoTime;
import pairdown.track.Channel;

/**
 * Reads features one after the other: coordinates, times and further arrays come in any order and
 * are paired when the feature ends.
 */
final class FeatureReader {
    private static final Set<String> TIMES = Set.of("times", "coordTimes", "time", "timestamp");
    private static final double MOST_UNIX_S = 1e11;

    /** Counts from 1970 end in the year 2200, as dates do. */
    private static final double MOST_S = 7.26e9;

    private final Rows rows;
    private final Notes notes;
    private final double[] position = new double[3];
    private Doubles coordinates = new Doubles();
    private Longs lines = new Longs();
    private Longs times = new Longs();
    private final Map<Channel, Doubles> arrays = new EnumMap<>(Channel.class);

    FeatureReader(Rows rows, Notes notes) {
        this.rows = rows;
        this.notes = notes;
    }

    /** Reads an object whose start the parser is at: a feature, or something that holds some. */
    void object(JsonParser json) throws IOException {
        boolean feature = false;
        while (json.nextToken() != JsonToken.END_OBJECT) {
            String name = json.currentName();
            JsonToken value = json.nextToken();
            if (name.equals("type") && value.isScalarValue()) {
                feature |= "Feature".equals(json.getText());
            } else if (name.equals("coordinates") && value == JsonToken.START_ARRAY) {
                coordinates(json);
            } else if (TIMES.contains(name)) {
                times(json);
            } else if (value == JsonToken.START_OBJECT) {
                object(json);
            } else if (value == JsonToken.START_ARRAY && name.equals("features")) {
                features(json);
            } else {
                extra(name, json);
            }
        }
        if (feature) {
            emit();
        }
    }

    private void features(JsonParser json) throws IOException {
        while (json.nextToken() != JsonToken.END_ARRAY) {
            if (json.currentToken() == JsonToken.START_OBJECT) {
                object(json);
            } else {
                json.skipChildren();
            }
        }
    }

    /** Nested arrays of positions: each innermost array is one. */
    private void coordinates(JsonParser json) throws IOException {
        int depth = 1;
        int numbers = 0;
        while (depth > 0) {
            JsonToken token = json.nextToken();
            if (token == null) {
                return;
            }
            switch (token) {
                case START_ARRAY -> {
                    depth++;
                    numbers = 0;
                }
                case END_ARRAY -> {
                    depth--;
                    if (numbers > 0) {
                        endPosition(numbers, json);
                    }
                    numbers = 0;
                }
                case START_OBJECT -> json.skipChildren();
                default -> {
                    if (numbers < position.length) {
                        position[numbers] = token.isNumeric() ? json.getDoubleValue() : Double.NaN;
                    }
                    numbers++;
                }
            }
        }
    }

    private void endPosition(int given, JsonParser json) {
        for (int i = 0; i < position.length; i++) {
            coordinates.add(i < given ? position[i] : Double.NaN);
        }
        lines.add(json.currentLocation().getLineNr());
    }

    private void times(JsonParser json) throws IOException {
        int depth = 0;
        do {
            switch (json.currentToken()) {
                case START_ARRAY -> depth++;
                case END_ARRAY -> depth--;
                case VALUE_STRING -> times.add(IsoTime.utc_ns(json.getText()));
                case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
                        times.add(unix_ns(json.getDoubleValue()));
                case START_OBJECT -> json.skipChildren();
                default -> times.add(IsoTime.NONE);
            }
        } while (depth > 0 && json.nextToken() != null);
    }

    private static long unix_ns(double value) {
        double t_s = Math.abs(value) < MOST_UNIX_S ? value : value / 1000;
        return t_s >= 0 && t_s < MOST_S ? Math.round(t_s * 1e6) * 1000 : IsoTime.NONE;
    }

    private void extra(String name, JsonParser json) throws IOException {
        Optional<Channel> channel = PointNames.channel(name);
        if (channel.isEmpty()) {
            json.skipChildren();
            return;
        }
        Doubles values = arrays.computeIfAbsent(channel.get(), c -> new Doubles());
        int depth = 0;
        do {
            switch (json.currentToken()) {
                case START_ARRAY -> depth++;
                case END_ARRAY -> depth--;
                case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> values.add(json.getDoubleValue());
                case VALUE_STRING -> values.add(Numbers.parse(json.getText()));
                case START_OBJECT -> json.skipChildren();
                default -> values.add(Double.NaN);
            }
        } while (depth > 0 && json.nextToken() != null);
    }

    /** Makes rows of the feature read, or of what came before a break. */
    void emit() {
        int places = coordinates.size() / 3;
        int pairs = Math.min(Math.min(places, times.size()), lines.size());
        if (places > 0 && times.size() > 0 && places != times.size()) {
            notes.warn(
                    "a line has "
                            + places
                            + " coordinates and "
                            + times.size()
                            + " times: the first "
                            + pairs
                            + " of each were paired, the rest dropped; if one is missing in the middle,"
                            + " what follows is shifted");
        }
        if (places > 0 && times.size() == 0) {
            notes.skip(lines.size() == 0 ? 0 : lines.get(0), "a line or point without times");
        } else {
            for (int i = pairs; i < Math.max(Math.min(places, lines.size()), times.size()); i++) {
                notes.skip(
                        lines.size() == 0 ? 0 : lines.get(Math.min(i, lines.size() - 1)),
                        i < places ? "coordinate without a time" : "time without a coordinate");
            }
        }
        rows.beginTrack();
        for (int i = 0; i < pairs; i++) {
            row(i, places);
        }
        coordinates = new Doubles();
        lines = new Longs();
        times = new Longs();
        arrays.clear();
    }

    private void row(int i, int places) {
        double lon = coordinates.get(3 * i);
        double lat = coordinates.get(3 * i + 1);
        if (times.get(i) == IsoTime.NONE || Double.isNaN(lon) || Double.isNaN(lat)) {
            notes.skip(lines.get(i), "unreadable time or coordinate");
            return;
        }
        rows.begin(times.get(i), lines.get(i));
        if (rows.position(lat, lon)) {
            rows.set(Channel.HEIGHT, coordinates.get(3 * i + 2));
            arrays.forEach(
                    (channel, values) -> {
                        if (values.size() == places) {
                            rows.set(channel, values.get(i));
                        }
                    });
        }
    }
}
