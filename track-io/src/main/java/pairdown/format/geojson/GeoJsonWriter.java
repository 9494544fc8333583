package pairdown.format.geojson;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import pairdown.format.source.Decimal;
import pairdown.format.source.NamedTracksWriter;
import pairdown.format.source.Segments;
import pairdown.track.Channel;
import pairdown.track.EllipsoidHeight;
import pairdown.track.Track;

/**
 * Writes GeoJSON (RFC 7946): one feature, a line for each stretch without a gap, heights above the
 * ellipsoid as the RFC has them, times and the other channels as arrays shaped like the coordinates
 * under {@code coordinateProperties}.
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
            feature(json, track, Optional.empty());
            json.writeRaw('\n');
        }
        out.flush();
    }

    @Override
    public void write(Map<String, Track> byName, OutputStream out) throws IOException {
        try (JsonGenerator json = to(out)) {
            json.writeStartObject();
            json.writeStringField("type", "FeatureCollection");
            json.writeArrayFieldStart("features");
            for (Map.Entry<String, Track> named : byName.entrySet()) {
                feature(json, named.getValue(), Optional.of(named.getKey()));
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        }
        out.flush();
    }

    private static JsonGenerator to(OutputStream out) throws IOException {
        return JSON.createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    }

    private static void feature(JsonGenerator json, Track track, Optional<String> name)
            throws IOException {
        List<List<Integer>> segments = Segments.of(track);
        json.writeStartObject();
        json.writeStringField("type", "Feature");
        json.writeObjectFieldStart("geometry");
        json.writeStringField("type", "MultiLineString");
        json.writeFieldName("coordinates");
        lines(json, segments, row -> coordinates(track, row));
        json.writeEndObject();
        json.writeObjectFieldStart("properties");
        if (name.isPresent()) {
            json.writeStringField("name", name.get());
        }
        json.writeObjectFieldStart("coordinateProperties");
        json.writeFieldName("times");
        lines(json, segments, row -> g -> g.writeString(Segments.instant(track, row).toString()));
        for (Channel channel : Segments.extras(track)) {
            json.writeFieldName(channel.key());
            lines(json, segments, row -> value(track.value(channel, row)));
        }
        json.writeEndObject();
        json.writeEndObject();
        json.writeEndObject();
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
