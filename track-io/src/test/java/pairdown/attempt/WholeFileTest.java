package pairdown.attempt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    private final Path folder;
    private final Path place;

    WholeFileTest(@TempDir Path folder) {
        this.folder = folder;
        this.place = folder.resolve("result.csv");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    /** What a process leaves that is ended while it writes. */
    private String cutOff(String name, Duration ago) throws IOException {
        String unfinished = ".writing-" + UUID.randomUUID() + "-" + name;
        Path file = Files.writeString(folder.resolve(unfinished), "half");
        Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(ago)));
        return unfinished;
    }

    @Test
    void aFailureLeavesWhatWasThere() throws Exception {
        Files.writeString(place, "whole");
        assertThrows(
                IOException.class,
                () ->
                        WholeFile.write(
                                place,
                                beside -> {
                                    Files.writeString(beside, "half");
                                    throw new IOException("no space left");
                                }));
        assertEquals("whole", Files.readString(place));
        assertEquals(List.of("result.csv"), names());
    }

    @Test
    void whatPowerCutOffAnotherDayIsTakenAwayAndOthersWorkIsNot() throws Exception {
        cutOff("result.csv", Duration.ofDays(3));
        String another = cutOff("my-result.csv", Duration.ofDays(3));
        String fresh = cutOff("result.csv", Duration.ofMinutes(5));
        WholeFile.write(place, beside -> Files.writeString(beside, "whole"));
        assertEquals(Stream.of(another, fresh, "result.csv").sorted().toList(), names());
    }
}
