package pairdown.format.geojson;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.Optional;
import java.util.Set;
import pairdown.format.source.Doubles;
import pairdown.format.source.Notes;
import pairdown.format.source.Numbers;
import pairdown.format.source.PointNames;
import pairdown.format.source.Rows;
import pairdown.track.Channel;

/**
 * Reads features one after the other: coordinates, times and further arrays come in any order and
 * are paired when the feature ends.
 */
final class FeatureReader {
    static final Set<String> TIMES = Set.of("times", "coordTimes", "time", "timestamp");
    private final Rows rows;
    private final Notes notes;
    private final double[] position = new double[3];
    private Feature feature;
    private long begin;

    FeatureReader(Rows rows, Notes notes) {
        this.rows = rows;
        this.notes = notes;
        this.feature = new Feature(rows, notes);
    }

    /** Where, in letters, what is not yet made rows of begins. */
    long begin() {
        return begin;
    }

    /** Reads the next thing of a file or collection. */
    private void next(JsonParser json) throws IOException {
        if (json.currentToken() == JsonToken.START_OBJECT) {
            begin = json.currentTokenLocation().getCharOffset();
            object(json);
        } else {
            json.skipChildren();
        }
    }

    /** Reads a file to its end. */
    void read(JsonParser json) throws IOException {
        while (json.nextToken() != null) {
            next(json);
        }
    }

    /** Reads an object whose start the parser is at: a feature, or something that holds some. */
    private void object(JsonParser json) throws IOException {
        boolean isFeature = false;
        while (json.nextToken() != JsonToken.END_OBJECT) {
            String name = json.currentName();
            JsonToken value = json.nextToken();
            if (name.equals("type") && value.isScalarValue()) {
                isFeature |= "Feature".equals(json.getText());
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
        if (isFeature) {
            feature.emit();
            feature = new Feature(rows, notes);
            begin = json.currentLocation().getCharOffset();
        }
    }

    private void features(JsonParser json) throws IOException {
        while (json.nextToken() != JsonToken.END_ARRAY) {
            next(json);
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
                        feature.position(position, numbers, json.currentLocation().getLineNr());
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

    private void times(JsonParser json) throws IOException {
        if (!feature.beginTimes(json.currentToken() == JsonToken.START_ARRAY)) {
            json.skipChildren();
            return;
        }
        int depth = 0;
        do {
            switch (json.currentToken()) {
                case START_ARRAY -> depth++;
                case END_ARRAY -> depth--;
                case VALUE_STRING -> feature.time(json.getText());
                case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> feature.time(json.getDoubleValue());
                case START_OBJECT -> json.skipChildren();
                default -> feature.noTime();
            }
        } while (depth > 0 && json.nextToken() != null);
    }

    private void extra(String name, JsonParser json) throws IOException {
        Optional<Channel> channel = PointNames.channel(name);
        if (channel.isEmpty()) {
            json.skipChildren();
            return;
        }
        Doubles values = feature.array(channel.get());
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
}
