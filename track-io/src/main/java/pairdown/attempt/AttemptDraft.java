package pairdown.attempt;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A first {@code attempt.json} from a guess, for a person to edit. */
public final class AttemptDraft {
    private static final JsonMapper MAPPER = new JsonMapper();

    private AttemptDraft() {}

    /**
     * The guessed attempt as JSON text. What a guess can't know (plan, slots, limits) is left out,
     * not invented.
     */
    public static String json(Attempt attempt) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("attempt", attempt.id());
        ArrayNode participants = root.putArray("participants");
        for (Participant p : attempt.participants()) {
            ObjectNode entry = participants.addObject();
            entry.put("id", p.id());
            entry.put("role", p.role().key());
            ArrayNode logs = entry.putArray("logs");
            p.logs().forEach(log -> logs.addObject().put("file", log.file()));
        }
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Writes the draft into the attempt's folder.
     *
     * @return the file written
     * @throws FileAlreadyExistsException if there is an {@code attempt.json}: a person's work is
     *     never overwritten
     * @throws IOException if the folder can't be written
     */
    public static Path write(Attempt attempt) throws IOException {
        Path file = attempt.folder().resolve(AttemptFile.NAME);
        Files.writeString(file, json(attempt), StandardOpenOption.CREATE_NEW);
        return file;
    }
}
