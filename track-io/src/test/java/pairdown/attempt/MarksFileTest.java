package pairdown.attempt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pairdown.track.UnusableInputException;

class MarksFileTest {
    private static final Mark TOUCH =
            new Mark(
                    Instant.parse("2031-05-14T15:02:11.350Z"),
                    Mark.Kind.TOUCH,
                    List.of("blue", "lead"),
                    "hand on the tip, \"left\" – über",
                    Optional.of("helmet.mp4 frame 5120"));
    private static final Mark EARLIER =
            new Mark(
                    Instant.parse("2031-05-14T15:01:00Z"),
                    Mark.Kind.MOMENT,
                    List.of(),
                    "",
                    Optional.empty());

    private final Path folder;

    MarksFileTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void whatWasMarkedComesBackByTime() throws IOException, UnusableInputException {
        MarksFile.write(folder, List.of(TOUCH, EARLIER));
        assertEquals(List.of(EARLIER, TOUCH), MarksFile.read(folder));
    }

    @Test
    void anAttemptWithoutMarksHasNone() throws UnusableInputException {
        assertEquals(List.of(), MarksFile.read(folder));
    }

    @Test
    void writingLeavesNothingHalfWrittenBeside() throws IOException {
        MarksFile.write(folder, List.of(TOUCH));
        MarksFile.write(folder, List.of(TOUCH, EARLIER));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(folder.resolve(MarksFile.NAME)), left.toList());
        }
    }

    @Test
    void aDamagedFileIsNamedWithItsLine() throws IOException {
        Files.writeString(folder.resolve(MarksFile.NAME), "{\n\"format\": \n ,}");
        UnusableInputException e =
                assertThrows(UnusableInputException.class, () -> MarksFile.read(folder));
        assertTrue(String.valueOf(e.getMessage()).contains("marks.json:3"), e.getMessage());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[]",
                "{}",
                "{\"format\":\"other\"}",
                "{\"format\":\"pairdown-marks\",\"version\":2}",
                "{\"format\":\"pairdown-marks\",\"version\":1,\"marks\":[{\"time\":\"noon\"}]}",
                "{\"format\":\"pairdown-marks\",\"version\":1,\"marks\":[{\"time\":"
                        + "\"2031-05-14T15:01:00Z\",\"kind\":\"guess\"}]}"
            })
    void whatMakesNoSenseIsRefusedWithTheMend(String text) throws IOException {
        Files.writeString(folder.resolve(MarksFile.NAME), text);
        assertThrows(UnusableInputException.class, () -> MarksFile.read(folder));
    }
}
