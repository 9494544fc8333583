package pairdown.attempt;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pairdown.track.UnusableInputException;

/**
 * The file {@code marks.json} beside an attempt's logs: {@code {"format": "pairdown-marks",
 * "version": 1, "marks": [{"time": "…", "kind": "touch", "participants": ["blue"], "note": "…",
 * "video": "…"}]}}, by rising time.
 */
public final class MarksFile {
    public static final String NAME = "marks.json";

    private static final String FORMAT = "pairdown-marks";
    private static final int VERSION = 1;
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private MarksFile() {}

    /**
     * The marks of an attempt; none where it has no such file.
     *
     * @throws UnusableInputException if the file can't be read or a mark in it makes no sense
     */
    public static List<Mark> read(Path attemptFolder) throws UnusableInputException {
        Path file = attemptFolder.resolve(NAME);
        if (!Files.exists(file)) {
            return List.of();
        }
        return marks(JsonFile.read(file));
    }

    /** The marks a file holds. */
    static List<Mark> marks(JsonFile json) throws UnusableInputException {
        Path file = json.path();
        JsonNode root = json.root();
        if (!root.path("format").asText().equals(FORMAT)) {
            throw damaged(file, "it is no marks file: \"format\" is not \"" + FORMAT + "\"");
        }
        if (root.path("version").asInt() != VERSION) {
            throw new UnusableInputException(
                    "marks of version " + root.path("version").asText() + " are not known here",
                    file.toString(),
                    "open it with a newer Pairdown");
        }
        List<Mark> marks = new ArrayList<>();
        for (JsonNode node : root.path("marks")) {
            marks.add(mark(node, file));
        }
        marks.sort(Comparator.comparing(Mark::time));
        return List.copyOf(marks);
    }

    private static Mark mark(JsonNode node, Path file) throws UnusableInputException {
        String kindKey = node.path("kind").asText(Mark.Kind.MOMENT.key());
        Mark.Kind kind =
                Arrays.stream(Mark.Kind.values())
                        .filter(k -> k.key().equals(kindKey))
                        .findFirst()
                        .orElseThrow(() -> damaged(file, "unknown kind '" + kindKey + "'"));
        List<String> participants = new ArrayList<>();
        node.path("participants").forEach(p -> participants.add(p.asText()));
        return new Mark(
                time(node.path("time").asText(), file),
                kind,
                participants,
                node.path("note").asText(),
                node.hasNonNull("video")
                        ? Optional.of(node.get("video").asText())
                        : Optional.empty());
    }

    private static Instant time(String text, Path file) throws UnusableInputException {
        try {
            return Instant.parse(text);
        } catch (DateTimeParseException e) {
            throw damaged(file, "'" + text + "' is no instant");
        }
    }

    private static UnusableInputException damaged(Path file, String what) {
        return new UnusableInputException(
                what, file.toString(), "mend it, or move it away to begin without marks");
    }

    /**
     * Writes the marks beside the file first and then puts them in its place, so that a crash
     * leaves the old marks or the new ones.
     *
     * @throws IOException if the folder can't be written
     */
    public static void write(Path attemptFolder, List<Mark> marks) throws IOException {
        WholeFile.write(
                attemptFolder.resolve(NAME),
                file ->
                        MAPPER.writerWithDefaultPrettyPrinter()
                                .writeValue(file.toFile(), json(marks)));
    }

    private static ObjectNode json(List<Mark> marks) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("format", FORMAT).put("version", VERSION);
        ArrayNode list = root.putArray("marks");
        marks.stream()
                .sorted(Comparator.comparing(Mark::time))
                .forEach(
                        mark -> {
                            ObjectNode node = list.addObject();
                            node.put("time", mark.time().toString());
                            node.put("kind", mark.kind().key());
                            ArrayNode who = node.putArray("participants");
                            mark.participants().forEach(who::add);
                            node.put("note", mark.note());
                            mark.video().ifPresent(video -> node.put("video", video));
                        });
        return root;
    }
}
