package pairdown.debrief;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import pairdown.attempt.WholeFile;

/**
 * A folder that results are written into. Each file is written beside its place and then moved
 * there, so that nobody ever reads half a file and a failure leaves what was there before.
 */
public final class ResultFolder {
    private final Path folder;

    private ResultFolder(Path folder) {
        this.folder = folder;
    }

    /** Opens a folder, made if it is not there. */
    public static ResultFolder at(Path folder) throws IOException {
        Files.createDirectories(folder);
        return new ResultFolder(folder);
    }

    public Path path() {
        return folder;
    }

    /** What writes a text file's content. */
    @FunctionalInterface
    public interface Content {
        void writeTo(Writer out) throws IOException;
    }

    /** Writes a UTF-8 text file at a path relative to the folder. */
    public Path text(String name, Content content) throws IOException {
        return file(
                name,
                beside -> {
                    try (Writer out = Files.newBufferedWriter(beside, StandardCharsets.UTF_8)) {
                        content.writeTo(out);
                    }
                });
    }

    /** Writes any file at a path relative to the folder. */
    public Path file(String name, WholeFile.Content content) throws IOException {
        Path place = folder.resolve(name);
        WholeFile.write(place, content);
        return place;
    }
}
