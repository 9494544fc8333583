package pairdown.format.csv;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pairdown.format.source.Text;
import pairdown.track.UnusableInputException;

/**
 * A column map as its file has it: what a person says of a CSV log whose header does not.
 *
 * @param file the map's file name, for messages
 * @param skipRows rows before the header row
 * @param time the time's column and kind, if told
 * @param channels which column each channel is
 */
record ColumnMap(
        String file,
        int skipRows,
        Optional<Byte> delimiter,
        Optional<Byte> decimal,
        Optional<Time> time,
        List<Mapped> channels) {

    /** The time's column; the week is a number or the name of its column. */
    record Time(
            String column,
            String as,
            Optional<String> week,
            Optional<String> zone,
            Optional<String> date) {}

    /** One channel's column. */
    record Mapped(
            String channel,
            String column,
            double scale,
            double offset,
            Optional<String> unit,
            Optional<String> datum) {}

    private static final long MOST_BYTES = 1 << 20;
    private static final JsonMapper JSON =
            JsonMapper.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

    ColumnMap {
        channels = List.copyOf(channels);
    }

    /** Reads a map; a field it does not know is an error, since it would be a typing error. */
    static ColumnMap read(Path path) throws UnusableInputException {
        String file = String.valueOf(path.getFileName());
        try {
            if (Files.size(path) > MOST_BYTES) {
                throw new UnusableInputException("is too long for a column map", file, "check it");
            }
            return parse(file, Files.readAllBytes(path));
        } catch (IOException e) {
            throw new UnusableInputException(
                    "the column map can't be read", file, "check its path", e);
        }
    }

    /** Reads a map's bytes; {@code file} stands for it in messages. */
    static ColumnMap parse(String file, byte[] json) throws UnusableInputException {
        JsonNode root;
        try {
            root = JSON.readTree(json);
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            throw new UnusableInputException(
                    "is no JSON (" + Text.complaint(e) + ")",
                    file + ":" + Math.max(line, 1),
                    "mend the column map",
                    e);
        } catch (IOException e) {
            throw new UnusableInputException("is no text", file, "mend the column map", e);
        }
        return new Parser(file).map(root);
    }

    private record Parser(String file) {
        ColumnMap map(JsonNode root) throws UnusableInputException {
            known(root, "the map", "skipRows", "delimiter", "decimal", "time", "channels");
            JsonNode channels = root.path("channels");
            List<Mapped> mapped = new ArrayList<>();
            for (Map.Entry<String, JsonNode> entry : channels.properties()) {
                mapped.add(mapped(entry.getKey(), entry.getValue()));
            }
            if (mapped.isEmpty()) {
                throw wrong("maps no channel", "add \"channels\"");
            }
            int skipRows = root.path("skipRows").asInt(0);
            if (skipRows < 0 || skipRows > 1000) {
                throw wrong("skipRows is " + skipRows, "give the rows before the header row");
            }
            return new ColumnMap(
                    file,
                    skipRows,
                    mark(root, "delimiter", ",;\t|"),
                    mark(root, "decimal", ".,"),
                    root.has("time") ? Optional.of(time(root.get("time"))) : Optional.empty(),
                    mapped);
        }

        private Time time(JsonNode node) throws UnusableInputException {
            known(node, "time", "column", "as", "week", "zone", "date");
            return new Time(
                    needed(node, "time", "column"),
                    text(node, "as").orElse("iso"),
                    node.has("week") ? Optional.of(node.get("week").asText("")) : Optional.empty(),
                    text(node, "zone"),
                    text(node, "date"));
        }

        private Mapped mapped(String channel, JsonNode node) throws UnusableInputException {
            known(node, channel, "column", "scale", "offset", "unit", "datum");
            return new Mapped(
                    channel,
                    needed(node, channel, "column"),
                    number(node, channel, "scale", 1),
                    number(node, channel, "offset", 0),
                    text(node, "unit"),
                    text(node, "datum"));
        }

        private double number(JsonNode node, String of, String field, double otherwise)
                throws UnusableInputException {
            if (!node.has(field)) {
                return otherwise;
            }
            if (!node.get(field).isNumber()) {
                throw wrong(field + " of " + of + " is no number", "give a plain number");
            }
            return node.get(field).asDouble();
        }

        private Optional<Byte> mark(JsonNode node, String field, String allowed)
                throws UnusableInputException {
            Optional<String> text = text(node, field).map(t -> t.equals("tab") ? "\t" : t);
            if (text.isEmpty()) {
                return Optional.empty();
            }
            if (text.get().length() != 1 || allowed.indexOf(text.get().charAt(0)) < 0) {
                throw wrong(
                        field + " '" + text.get() + "' is not known",
                        "use one of "
                                + String.join(" ", allowed.replace("\t", "tab").split("", -1)));
            }
            return Optional.of((byte) text.get().charAt(0));
        }

        private String needed(JsonNode node, String of, String field)
                throws UnusableInputException {
            Optional<String> text = text(node, field);
            if (text.isEmpty()) {
                throw wrong(of + " names no " + field, "add \"" + field + "\"");
            }
            return text.get();
        }

        private static Optional<String> text(JsonNode node, String field) {
            return node.hasNonNull(field)
                    ? Optional.of(node.get(field).asText())
                    : Optional.empty();
        }

        private void known(JsonNode node, String of, String... fields)
                throws UnusableInputException {
            if (!node.isObject()) {
                throw wrong(of + " is no JSON object", "see the column map's description");
            }
            Set<String> allowed = Set.of(fields);
            for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
                String name = names.next();
                if (!allowed.contains(name)) {
                    throw wrong(
                            "'" + name + "' of " + of + " is not known",
                            "use " + String.join(", ", fields));
                }
            }
        }

        private UnusableInputException wrong(String what, String mend) {
            return new UnusableInputException(what, file, mend);
        }
    }
}
