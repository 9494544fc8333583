package pairdown.attempt;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import pairdown.format.source.Text;
import pairdown.track.UnusableInputException;

/**
 * A JSON file a person may have written: its tree, and the line each value stands on, so that every
 * complaint can name it.
 */
public final class JsonFile {
    /** More than any attempt or its marks have; a larger one is some other file. */
    private static final long LARGEST_BYTES = 1L << 20;

    private static final int MOST_VALUES = 20_000;
    private static final int LONGEST_NAME = 256;
    private static final int DEEPEST = 16;

    private static final JsonMapper MAPPER =
            JsonMapper.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .enable(JsonParser.Feature.ALLOW_COMMENTS)
                    .build();

    static {
        MAPPER.getFactory()
                .setStreamReadConstraints(
                        StreamReadConstraints.builder()
                                .maxNestingDepth(DEEPEST)
                                .maxNameLength(LONGEST_NAME)
                                .build());
    }

    private final Path path;
    private final JsonNode root;
    private final Map<String, Integer> lines;

    private JsonFile(Path path, JsonNode root, Map<String, Integer> lines) {
        this.path = path;
        this.root = root;
        this.lines = lines;
    }

    /**
     * Reads a file.
     *
     * @throws UnusableInputException if it can't be read or is no JSON, naming the line
     */
    public static JsonFile read(Path path) throws UnusableInputException {
        try {
            if (Files.size(path) > LARGEST_BYTES) {
                throw new UnusableInputException(
                        "larger than " + (LARGEST_BYTES >> 20) + " MB",
                        path.toString(),
                        "this is not the JSON file Pairdown expects here");
            }
            return parse(path, Files.readString(path));
        } catch (IOException e) {
            throw new UnusableInputException(
                    "can't be read (" + e + ")",
                    path.toString(),
                    "check the file and its permissions",
                    e);
        }
    }

    /** Reads a file's text; the path stands for it in messages. */
    static JsonFile parse(Path path, String text) throws UnusableInputException {
        try {
            Map<String, Integer> lines = lineOfEachValue(path, text);
            return new JsonFile(path, MAPPER.readTree(text), lines);
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
            throw new UnusableInputException(
                    "not valid JSON: " + Text.complaint(e),
                    path + ":" + line,
                    "mend the file there",
                    e);
        } catch (IOException e) {
            throw new UnusableInputException(
                    "can't be read (" + e + ")", path.toString(), "check the file", e);
        }
    }

    private static Map<String, Integer> lineOfEachValue(Path path, String text)
            throws IOException, UnusableInputException {
        Map<String, Integer> lines = new HashMap<>();
        try (JsonParser parser = MAPPER.createParser(text)) {
            JsonToken token = parser.nextToken();
            while (token != null) {
                if (token != JsonToken.FIELD_NAME && !token.isStructEnd()) {
                    lines.putIfAbsent(
                            parser.getParsingContext().pathAsPointer().toString(),
                            parser.currentTokenLocation().getLineNr());
                }
                if (lines.size() > MOST_VALUES) {
                    throw new UnusableInputException(
                            "more than " + MOST_VALUES + " values",
                            path.toString(),
                            "this is not the JSON file Pairdown expects here");
                }
                token = parser.nextToken();
            }
        }
        return lines;
    }

    public Path path() {
        return path;
    }

    public JsonNode root() {
        return root;
    }

    /**
     * File and line of the value at a JSON pointer, or of the nearest enclosing value that has a
     * line.
     */
    public String where(String pointer) {
        return path + ":" + line(pointer);
    }

    /** The same without the folders on the way, for what is told to those it is shared with. */
    String place(String pointer) {
        return path.getFileName() + ":" + line(pointer);
    }

    private int line(String pointer) {
        for (String p = pointer; !p.isEmpty(); p = p.substring(0, p.lastIndexOf('/'))) {
            Integer line = lines.get(p);
            if (line != null) {
                return line;
            }
        }
        return 1;
    }

    /** A complaint about the value at a pointer. */
    public UnusableInputException complaint(String what, String pointer, String mend) {
        return new UnusableInputException(what, where(pointer), mend);
    }
}
