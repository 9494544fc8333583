package pairdown.season;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * A file as it was when it was looked at.
 *
 * @param modified_ms time of last change since 1970
 * @param content hash of the content; of a file too large to be a log, its size and time of change
 */
public record FileStamp(long size, long modified_ms, String content) {
    /** Films lie beside logs; no log is this large, and hashing them would cost minutes. */
    private static final long LARGEST_HASHED = 512L << 20;

    /** Coarsest time of change that file systems keep, with some for the clocks of a share. */
    private static final long CLOCK_CANNOT_TELL_MS = 2500;

    /**
     * Looks at a file. What {@code before} said of the content holds still if size and time of
     * change are the same, unless the file was changed so shortly before {@code looked_ms}, when
     * that was noted, that a second change could have left the same time.
     */
    static FileStamp of(Path file, Optional<FileStamp> before, long looked_ms) throws IOException {
        BasicFileAttributes a = Files.readAttributes(file, BasicFileAttributes.class);
        long modified_ms = a.lastModifiedTime().toMillis();
        boolean unchanged =
                before.filter(b -> b.size() == a.size() && b.modified_ms() == modified_ms)
                        .filter(b -> modified_ms < looked_ms - CLOCK_CANNOT_TELL_MS)
                        .isPresent();
        return new FileStamp(
                a.size(),
                modified_ms,
                unchanged ? before.get().content() : content(file, a.size(), modified_ms));
    }

    private static String content(Path file, long size, long modified_ms) throws IOException {
        if (size > LARGEST_HASHED) {
            return size + " bytes of " + modified_ms;
        }
        MessageDigest digest = digest();
        byte[] buffer = new byte[1 << 16];
        try (InputStream in = Files.newInputStream(file)) {
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                digest.update(buffer, 0, n);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    /** Hash of a text, for names of files. */
    public static String hash(String text) {
        return HexFormat.of().formatHex(digest().digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
