package pairdown.export;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A zip file being written. Every entry has the same instant, the earliest a zip can hold: when a
 * file was made is nobody's business, and the same content makes the same archive.
 */
final class Archive implements AutoCloseable {
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final ZipOutputStream zip;

    private Archive(ZipOutputStream zip) {
        this.zip = zip;
    }

    static Archive at(Path file) throws IOException {
        return new Archive(new ZipOutputStream(Files.newOutputStream(file)));
    }

    /** What writes an entry's content; it must leave the stream open. */
    @FunctionalInterface
    interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    void add(String name, Content content) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
        content.writeTo(zip);
        zip.closeEntry();
    }

    void addText(String name, String text) throws IOException {
        add(name, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    void addFile(String name, Path file) throws IOException {
        add(name, out -> Files.copy(file, out));
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
