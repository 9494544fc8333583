package pairdown.attempt;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;

/** Files that are there whole or not at all: written beside their place, then moved there. */
public final class WholeFile {
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
        Path beside = parent.resolve(".writing-" + UUID.randomUUID() + "-" + place.getFileName());
        try {
            content.writeTo(beside);
            move(beside, place);
        } finally {
            Files.deleteIfExists(beside);
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
