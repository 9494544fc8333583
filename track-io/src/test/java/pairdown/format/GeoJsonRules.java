package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.time.Instant;
import java.util.Set;

/**
 * What RFC 7946 asks of a file with lines and points, each rule with its section, and of times that
 * go with them: an instant for each position, in arrays shaped like the coordinates.
 */
final class GeoJsonRules {
    /** I-JSON (RFC 7493, by RFC 7946 section 11): no name twice, nothing behind the text. */
    private static final JsonMapper JSON =
            JsonMapper.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .build();

    /** Section 7.1: names that belong to one type of object are not used on another. */
    private static final Set<String> OF_GEOMETRY = Set.of("coordinates", "geometries");

    private int positions;

    private GeoJsonRules() {}

    /** Checks a file; how many positions it has. */
    static int require(byte[] written) throws IOException {
        JsonNode root = JSON.readTree(written);
        GeoJsonRules rules = new GeoJsonRules();
        if (root.path("type").asText().equals("FeatureCollection")) {
            rules.collection(root);
        } else {
            rules.feature(root);
        }
        return rules.positions;
    }

    /** Section 3.3. */
    private void collection(JsonNode collection) {
        onlyItsOwn(collection, Set.of("type", "features", "bbox"));
        JsonNode features = collection.path("features");
        assertTrue(features.isArray(), "features is an array");
        features.forEach(this::feature);
    }

    /** Section 3.2; and section 4: no coordinate reference system but WGS 84. */
    private void feature(JsonNode feature) {
        assertEquals("Feature", feature.path("type").asText());
        onlyItsOwn(feature, Set.of("type", "geometry", "properties", "id", "bbox"));
        JsonNode properties = feature.path("properties");
        assertTrue(properties.isObject(), "properties is an object");
        JsonNode geometry = feature.path("geometry");
        onlyItsOwn(geometry, Set.of("type", "coordinates", "bbox"));
        JsonNode coordinates = geometry.path("coordinates");
        switch (geometry.path("type").asText()) {
            case "Point" -> {
                position(coordinates);
                assertFalse(Instant.parse(properties.path("time").asText()).equals(Instant.MIN));
            }
            case "MultiLineString" -> {
                coordinates.forEach(this::line);
                properties
                        .path("coordinateProperties")
                        .forEach(array -> sameShape(coordinates, array));
                properties
                        .at("/coordinateProperties/times")
                        .forEach(line -> line.forEach(time -> Instant.parse(time.asText())));
            }
            default -> throw new AssertionError("not written here: " + geometry.path("type"));
        }
    }

    private static void onlyItsOwn(JsonNode object, Set<String> names) {
        object.fieldNames()
                .forEachRemaining(
                        name -> assertTrue(names.contains(name), "foreign member " + name));
        if (!names.contains("coordinates")) {
            OF_GEOMETRY.forEach(name -> assertFalse(object.has(name), name));
        }
    }

    /** Section 3.1.4: two or more positions. */
    private void line(JsonNode line) {
        assertTrue(line.isArray() && line.size() >= 2, "a line of " + line.size());
        line.forEach(this::position);
    }

    /**
     * Section 3.1.1: longitude, latitude, and no more than a height; section 4: decimal degrees.
     */
    private void position(JsonNode position) {
        assertTrue(position.isArray() && position.size() >= 2 && position.size() <= 3);
        position.forEach(number -> assertTrue(number.isNumber(), position.toString()));
        assertTrue(Math.abs(position.get(0).asDouble()) <= 180, position.toString());
        assertTrue(Math.abs(position.get(1).asDouble()) <= 90, position.toString());
        positions++;
    }

    private static void sameShape(JsonNode lines, JsonNode values) {
        assertEquals(lines.size(), values.size());
        for (int i = 0; i < lines.size(); i++) {
            assertEquals(lines.get(i).size(), values.get(i).size());
        }
    }
}
