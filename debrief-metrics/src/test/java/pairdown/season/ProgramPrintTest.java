package pairdown.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProgramPrintTest {
    @TempDir private Path folder;

    private Path jar(String name, String code, long time_ms) throws IOException {
        Path jar = folder.resolve(name);
        try (OutputStream out = Files.newOutputStream(jar);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            add(zip, "pairdown/pair/Gate.class", code, time_ms);
            add(zip, "org/other/Library.class", name, time_ms);
        }
        return jar;
    }

    private static void add(ZipOutputStream zip, String name, String text, long time_ms)
            throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(time_ms);
        zip.putNextEntry(entry);
        zip.write(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    @Test
    void copiesOfOneBuildAgreeAndAnotherBuildDiffers() throws IOException {
        String one = ProgramPrint.of(jar("a.jar", "code", 1_000_000_000_000L));
        assertEquals(one, ProgramPrint.of(jar("b.jar", "code", 1_200_000_000_000L)));
        assertNotEquals(one, ProgramPrint.of(jar("c.jar", "changed", 1_000_000_000_000L)));
    }

    @Test
    void aFolderOfClassesIsReadAsItsJarIs() throws IOException {
        Path classes = folder.resolve("classes/pairdown/pair");
        Files.createDirectories(classes);
        Files.writeString(classes.resolve("Gate.class"), "code");
        assertEquals(
                ProgramPrint.of(jar("a.jar", "code", 1_000_000_000_000L)),
                ProgramPrint.of(folder.resolve("classes")));
    }

    @Test
    void theRunningProgramHasAPrint() {
        assertTrue(ProgramPrint.ofThisProgram().matches("[0-9a-f]{16}"));
    }
}
