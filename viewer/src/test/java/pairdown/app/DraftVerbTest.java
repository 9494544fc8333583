package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.attempt.AttemptFolder;
import pairdown.words.Translation;

class DraftVerbTest {
    private static final Path SAMPLE = Sample.FOLDER;

    @TempDir private Path folder = Path.of("");

    private Path manifest() {
        return folder.resolve("attempt.json");
    }

    private void copyTheSamplesLogs() throws IOException {
        try (Stream<Path> files = Files.list(SAMPLE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = file.getFileName().toString();
                if (!name.endsWith(".json") && !name.startsWith("truth")) {
                    Files.copy(file, folder.resolve(name));
                }
            }
        }
    }

    @Test
    void aFolderOfLogsBecomesAnAttemptThatOpens() throws Exception {
        copyTheSamplesLogs();
        Said said = Said.by("draft", folder);
        assertEquals(ExitStatus.DONE, said.status(), said.err());
        assertEquals(manifest().toString(), said.out().strip());
        assertTrue(said.err().contains("guessed"), said.err());
        JsonNode drafted = new JsonMapper().readTree(manifest().toFile());
        JsonNode written = new JsonMapper().readTree(SAMPLE.resolve("attempt.json").toFile());
        assertEquals(role("lead", written), role("lead", drafted), drafted.toPrettyString());
        assertEquals(
                written.get("participants").size(),
                AttemptFolder.open(folder).participants().size(),
                drafted.toPrettyString());
        assertFalse(drafted.has("gate"), "a guess invents no plan");
        assertFalse(drafted.has("limits"), "nor limits");
    }

    @Test
    void aCopyOfALogIsNotASecondPerson() throws Exception {
        copyTheSamplesLogs();
        int logs = AttemptFolder.open(folder).participants().size();
        Path log =
                folder.resolve(
                        AttemptFolder.open(folder).participants().get(0).logs().get(0).file());
        String name = log.getFileName().toString();
        Files.copy(log, folder.resolve(name + "~"));
        Files.copy(log, folder.resolve("Copy of " + name));
        Said said = Said.by("draft", folder);
        assertEquals(ExitStatus.DONE, said.status(), said.err());
        assertTrue(
                said.err().contains("not used: Copy of " + name + ": is a copy of " + name),
                said.err());
        assertEquals(logs, AttemptFolder.open(folder).participants().size(), said.err());
    }

    @Test
    void anotherFormOfALogIsNotASecondPerson() throws Exception {
        copyTheSamplesLogs();
        int logs = AttemptFolder.open(folder).participants().size();
        for (String form : List.of("gpx", "igc")) {
            Path copy = folder.resolve("blue." + form);
            Said made = Said.by("convert", folder.resolve("blue.csv"), "--to", form, "--out", copy);
            assertEquals(ExitStatus.DONE, made.status(), made.err());
        }
        Said said = Said.by("draft", folder);
        assertEquals(ExitStatus.DONE, said.status(), said.err());
        List<String> notes =
                said.errLines().stream().filter(l -> l.contains("same flight as blue.")).toList();
        assertEquals(2, notes.size(), said.err());
        assertTrue(notes.stream().allMatch(Translation::knows), said.err());
        assertEquals(logs, AttemptFolder.open(folder).participants().size(), said.err());
    }

    private static String role(String role, JsonNode attempt) {
        for (JsonNode participant : attempt.get("participants")) {
            if (participant.get("role").asText().equals(role)) {
                return participant.get("id").asText();
            }
        }
        return "none";
    }

    @Test
    void whatAPersonWroteIsNeverWrittenOver() throws IOException {
        copyTheSamplesLogs();
        Files.writeString(manifest(), "{}");
        Said said = Said.by("draft", folder);
        assertEquals(ExitStatus.OUTPUT, said.status());
        assertEquals("{}", Files.readString(manifest()));
    }

    @Test
    void aFolderWithoutLogsIsRefusedInOneLine() throws IOException {
        Files.writeString(folder.resolve("amber.csv"), "");
        Said said = Said.by("draft", folder);
        assertEquals(ExitStatus.INPUT, said.status());
        assertEquals(1, said.errLines().size(), said.err());
        assertTrue(said.err().contains("amber.csv: is empty"), said.err());
        assertFalse(Files.exists(manifest()));
        assertEquals(ExitStatus.INPUT, Said.by("draft", folder.resolve("missing")).status());
    }
}
