package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoVerbTest {
    @TempDir private Path folder = Path.of("");

    private List<Path> below() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.toList();
        }
    }

    @Test
    void aFolderWithSomethingInItIsLeftAsItIs() throws IOException {
        Path mine = Files.writeString(folder.resolve("mine.csv"), "time\n");
        Said said = Said.by("demo", folder);
        assertEquals(ExitStatus.OUTPUT, said.status());
        assertEquals(1, said.errLines().size(), said.err());
        assertTrue(said.err().contains("not empty"), said.err());
        assertTrue(said.err().contains("new or empty folder"), said.err());
        assertEquals(List.of(mine), below());
    }

    @Test
    void aFileInThePlaceOfTheFolderIsLeftAsItIs() throws IOException {
        Path mine = Files.writeString(folder.resolve("season"), "mine");
        Said said = Said.by("demo", mine);
        assertEquals(ExitStatus.OUTPUT, said.status());
        assertEquals("mine", Files.readString(mine));
        assertEquals(List.of(mine), below());
    }

    @Test
    void aSeedThatIsNoNumberIsAMistakeInTheCommand() throws IOException {
        Said said = Said.by("demo", folder.resolve("new"), "--seed", "spring");
        assertEquals(ExitStatus.USAGE, said.status());
        assertEquals(List.of(), below());
    }
}
