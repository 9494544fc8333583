package pairdown.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import pairdown.debrief.ResultFolder;

/**
 * What results were made from, kept beside them, so that they are not made again for nothing.
 *
 * @param origin a text that differs whenever the results would
 */
record MadeFrom(ResultFolder results, String origin) {
    private static final String FILE = ".made-from";

    /** Whether all files are there, untouched since they were made from the same. */
    boolean stillStands(String page, List<String> names) throws IOException {
        Path note = results.path().resolve(FILE);
        if (!Files.isRegularFile(note)
                || !Files.readString(note, StandardCharsets.UTF_8).equals(origin)) {
            return false;
        }
        FileTime made = Files.getLastModifiedTime(note);
        for (String name : names) {
            if (touched(name, made)) {
                return false;
            }
        }
        return !touched(page, made);
    }

    private boolean touched(String name, FileTime made) throws IOException {
        Path file = results.path().resolve(name);
        return !Files.isRegularFile(file) || Files.getLastModifiedTime(file).compareTo(made) > 0;
    }

    void note() throws IOException {
        results.text(FILE, out -> out.append(origin));
    }
}
