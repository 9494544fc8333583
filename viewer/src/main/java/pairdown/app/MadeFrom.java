package pairdown.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.CRC32C;
import pairdown.debrief.ResultFolder;

/**
 * What results were made from, kept beside them with their checksums, so that they are not made
 * again for nothing. Times of change are not trusted: two changes may bear the same.
 *
 * @param origin a text that differs whenever the results would
 * @param names the results' files
 */
record MadeFrom(ResultFolder results, String origin, List<String> names) {
    private static final String FILE = ".made-from";

    /** Whether all files are as they were when they were made from the same. */
    boolean stillStands() throws IOException {
        Path note = results.path().resolve(FILE);
        for (String name : names) {
            if (!Files.isRegularFile(results.path().resolve(name))) {
                return false;
            }
        }
        return Files.isRegularFile(note)
                && Files.readString(note, StandardCharsets.UTF_8).equals(text());
    }

    void note() throws IOException {
        String text = text();
        results.text(FILE, out -> out.append(text));
    }

    private String text() throws IOException {
        StringBuilder text = new StringBuilder();
        for (String name : names) {
            CRC32C sum = new CRC32C();
            sum.update(Files.readAllBytes(results.path().resolve(name)));
            text.append("%s %08x\n".formatted(name, sum.getValue()));
        }
        return text.append(origin).toString();
    }
}
