package pairdown.attempt;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

/** Files that are there whole or not at all: written beside their place, then moved there. */
public final class WholeFile {
    private static final String UNFINISHED = ".writing-";

    /** Nothing is written for so long: what is older was left when power or a process went. */
    private static final Duration LEFT_OVER = Duration.ofDays(1);

    private WholeFile() {}

    /** Writes a file's content to where it is told. */
    @FunctionalInterface
    public interface Content {
        void writeTo(Path file) throws IOException;
    }

    /**
     * Writes a file, its folder made if it is not there. Nobody ever reads half of it, and a
     * failure leaves what was there before.
     *
     * @throws IOException if the content can't be written or put in its place
     */
    public static void write(Path place, Content content) throws IOException {
        Path parent = place.toAbsolutePath().getParent();
        if (parent == null) {
            throw new IOException("no file can be written at " + place);
        }
        Files.createDirectories(parent);
        Path beside = parent.resolve(UNFINISHED + UUID.randomUUID() + "-" + place.getFileName());
        try {
            content.writeTo(beside);
            move(beside, place);
        } finally {
            Files.deleteIfExists(beside);
        }
        sweep(parent, beside.getFileName().toString().length(), "-" + place.getFileName());
    }

    /** Takes away what an earlier writing of the same file left that was cut off. */
    private static void sweep(Path folder, int length, String end) {
        Instant before = Instant.now().minus(LEFT_OVER);
        try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, UNFINISHED + "*")) {
            for (Path file : left) {
                String name = file.getFileName().toString();
                boolean same = name.length() == length && name.endsWith(end);
                if (same && Files.getLastModifiedTime(file).toInstant().isBefore(before)) {
                    Files.deleteIfExists(file);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // The file itself is written; rubbish that can't be taken away harms nobody.
            return;
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(
                    from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
