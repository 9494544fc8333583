package pairdown.format.source;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import pairdown.track.UnusableInputException;

/**
 * A log's bytes, unpacked and in an encoding in which ASCII is ASCII, to be read from the start as
 * often as a reader likes; nothing is held in memory but a buffer.
 */
public final class LogSource {
    /** Enough to see what a log is. */
    public static final int HEAD_BYTES = 1 << 16;

    private static final int BUFFER_BYTES = 1 << 16;

    /** Gives a log's bytes from the start, as often as it is asked. */
    @FunctionalInterface
    public interface Opener {
        InputStream open() throws IOException;
    }

    private final String name;
    private final Opener opener;
    private final ReadSettings settings;

    private LogSource(String name, Opener opener, ReadSettings settings) {
        this.name = name;
        this.opener = opener;
        this.settings = settings;
    }

    /** A log on disk; the file's name stands for it in messages. */
    public static LogSource of(Path file) throws UnusableInputException {
        String name = String.valueOf(file.getFileName());
        if (Files.isDirectory(file)) {
            throw new UnusableInputException(
                    "is a folder, not a log", file.toString(), "name a file");
        }
        if (!Files.isReadable(file)) {
            throw new UnusableInputException(
                    Files.exists(file) ? "may not be read" : "does not exist",
                    file.toString(),
                    "check the path and its permissions");
        }
        return new LogSource(name, () -> Files.newInputStream(file), ReadSettings.DEFAULT);
    }

    /** A log in memory. */
    public static LogSource of(String name, byte[] bytes) {
        return new LogSource(name, () -> new ByteArrayInputStream(bytes), ReadSettings.DEFAULT);
    }

    /** A log from anywhere; the name stands for it in messages. */
    public static LogSource of(String name, Opener opener) {
        return new LogSource(name, opener, ReadSettings.DEFAULT);
    }

    public String name() {
        return name;
    }

    public ReadSettings settings() {
        return settings;
    }

    /**
     * The log's bytes from the start: gzip and zip undone, UTF-16 turned into UTF-8, the byte-order
     * mark taken off.
     *
     * @throws UnusableInputException if an archive holds no log or several, or swells like a bomb
     */
    public InputStream open() throws IOException, UnusableInputException {
        InputStream raw = opener.open();
        try {
            InputStream unpacked = Unpacked.of(new BufferedInputStream(raw, BUFFER_BYTES), this);
            return Decoded.asciiCompatible(new BufferedInputStream(unpacked, BUFFER_BYTES));
        } catch (IOException | UnusableInputException | RuntimeException e) {
            raw.close();
            throw e;
        }
    }

    /** The first bytes, at most {@link #HEAD_BYTES}. */
    public byte[] head() throws UnusableInputException {
        try (InputStream in = open()) {
            return in.readNBytes(HEAD_BYTES);
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /** The complaint about a file that fails while it is read. */
    public UnusableInputException unreadable(IOException e) {
        for (Throwable t = e; t != null; t = t.getCause()) {
            if (t instanceof Unpacked.Refused refused) {
                return refused.reason();
            }
        }
        String what =
                e instanceof NoSuchFileException
                        ? "does not exist"
                        : "can't be read (" + e.getMessage() + ")";
        return new UnusableInputException(what, name, "copy it anew from the logger", e);
    }

    /** A complaint about this log. */
    public UnusableInputException unusable(String what, String mend) {
        return new UnusableInputException(what, name, mend);
    }

    /** A complaint about a line of this log. */
    public UnusableInputException unusable(long line, String what, String mend) {
        return new UnusableInputException(what, name + ":" + line, mend);
    }
}
