package pairdown.format.geojson;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import pairdown.format.source.Decimal;
import pairdown.format.source.NamedTracksWriter;
import pairdown.format.source.Segments;
import pairdown.track.Channel;
import pairdown.track.EllipsoidHeight;
import pairdown.track.Track;

/**
 * Writes GeoJSON (RFC 7946): one feature, a line for each stretch without a gap, heights above the
 * ellipsoid as the RFC has them, times and the other channels as arrays shaped like the coordinates
 * under {@code coordinateProperties}. A fix alone between two gaps can't be a line: it is a point
 * with its time, a feature by itself.
 */
public final class GeoJsonWriter implements NamedTracksWriter {
    private static final JsonFactory JSON = new JsonFactory();
    private static final int DEGREE_DECIMALS = 9;
    private static final int DECIMALS = 4;

    @Override
    public String key() {
        return "geojson";
    }

    @Override
    public void write(Track track, OutputStream out) throws IOException {
        try (JsonGenerator json = to(out)) {
            List<Item> features = features(track, Optional.empty());
            if (features.size() == 1) {
                features.get(0).writeTo(json);
            } else {
                collection(json, features);
            }
            json.writeRaw('\n');
        }
        out.flush();
    }

    @Override
    public void write(Map<String, Track> byName, OutputStream out) throws IOException {
        List<Item> features = new ArrayList<>();
        byName.forEach((name, track) -> features.addAll(features(track, Optional.of(name))));
        try (JsonGenerator json = to(out)) {
            collection(json, features);
            json.writeRaw('\n');
        }
        out.flush();
    }

    private static void collection(JsonGenerator json, List<Item> features) throws IOException {
        json.writeStartObject();
        json.writeStringField("type", "FeatureCollection");
        json.writeArrayFieldStart("features");
        for (Item feature : features) {
            feature.writeTo(json);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static JsonGenerator to(OutputStream out) throws IOException {
        return JSON.createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    }

    private static List<Item> features(Track track, Optional<String> name) {
        Map<Boolean, List<List<Integer>>> byLine =
                Segments.of(track).stream().collect(Collectors.partitioningBy(s -> s.size() > 1));
        List<List<Integer>> lines = byLine.getOrDefault(true, List.of());
        List<Item> features = new ArrayList<>();
        if (!lines.isEmpty()) {
            features.add(json -> lines(json, track, name, lines));
        }
        for (List<Integer> alone : byLine.getOrDefault(false, List.of())) {
            features.add(json -> point(json, track, name, alone.get(0)));
        }
        return features;
    }

    private static void lines(
            JsonGenerator json, Track track, Optional<String> name, List<List<Integer>> segments)
            throws IOException {
        begin(json, "MultiLineString");
        lines(json, segments, row -> coordinates(track, row));
        properties(json, name);
        json.writeObjectFieldStart("coordinateProperties");
        json.writeFieldName("times");
        lines(json, segments, row -> time(track, row));
        for (Channel channel : Segments.extras(track)) {
            json.writeFieldName(channel.key());
            lines(json, segments, row -> value(track.value(channel, row)));
        }
        json.writeEndObject();
        end(json);
    }

    private static void point(JsonGenerator json, Track track, Optional<String> name, int row)
            throws IOException {
        begin(json, "Point");
        coordinates(track, row).writeTo(json);
        properties(json, name);
        json.writeFieldName("time");
        time(track, row).writeTo(json);
        for (Channel channel : Segments.extras(track)) {
            json.writeFieldName(channel.key());
            value(track.value(channel, row)).writeTo(json);
        }
        end(json);
    }

    private static void begin(JsonGenerator json, String geometry) throws IOException {
        json.writeStartObject();
        json.writeStringField("type", "Feature");
        json.writeObjectFieldStart("geometry");
        json.writeStringField("type", geometry);
        json.writeFieldName("coordinates");
    }

    private static void properties(JsonGenerator json, Optional<String> name) throws IOException {
        json.writeEndObject();
        json.writeObjectFieldStart("properties");
        if (name.isPresent()) {
            json.writeStringField("name", name.get());
        }
    }

    private static void end(JsonGenerator json) throws IOException {
        json.writeEndObject();
        json.writeEndObject();
    }

    private static Item time(Track track, int row) {
        return json -> json.writeString(Segments.instant(track, row).toString());
    }

    @FunctionalInterface
    private interface Item {
        void writeTo(JsonGenerator json) throws IOException;
    }

    private static void lines(
            JsonGenerator json, List<List<Integer>> segments, IntFunction<Item> item)
            throws IOException {
        json.writeStartArray();
        for (List<Integer> segment : segments) {
            json.writeStartArray();
            for (int row : segment) {
                item.apply(row).writeTo(json);
            }
            json.writeEndArray();
        }
        json.writeEndArray();
    }

    private static Item coordinates(Track track, int row) {
        return json -> {
            json.writeStartArray();
            number(json, track.value(Channel.LONGITUDE, row), DEGREE_DECIMALS);
            number(json, track.value(Channel.LATITUDE, row), DEGREE_DECIMALS);
            double height_m = EllipsoidHeight.of(track, row);
            if (!Double.isNaN(height_m)) {
                number(json, height_m, DECIMALS);
            }
            json.writeEndArray();
        };
    }

    private static Item value(double value) {
        return json -> {
            if (Double.isNaN(value)) {
                json.writeNull();
            } else {
                number(json, value, DECIMALS);
            }
        };
    }

    private static void number(JsonGenerator json, double value, int decimals) throws IOException {
        json.writeNumber(new BigDecimal(Decimal.of(value, decimals)));
    }
}
