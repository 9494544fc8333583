package pairdown.format;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Optional;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import pairdown.format.source.LogSource;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** Logs for tests, from resources and from text. */
final class TestLogs {
    private TestLogs() {}

    static byte[] reference(String name) {
        try (InputStream in =
                Objects.requireNonNull(
                        TestLogs.class.getResourceAsStream("reference/" + name), name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new AssertionError(name, e);
        }
    }

    static Track read(byte[] bytes) throws UnusableInputException {
        return LogFiles.read(LogSource.of("log", bytes), Optional.empty());
    }

    static Track read(String... lines) throws UnusableInputException {
        return read((String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    static int fixes(Track track) {
        int fixes = 0;
        for (int row = 0; row < track.size(); row++) {
            fixes += track.hasPosition(row) ? 1 : 0;
        }
        return fixes;
    }

    static byte[] written(Track track, String format) throws IOException, UnusableInputException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        LogFiles.write(track, format, out);
        return out.toByteArray();
    }

    /** An NMEA sentence with its checksum. */
    static String sentence(String body) {
        int sum = body.chars().reduce(0, (a, b) -> a ^ b);
        return String.format(java.util.Locale.ROOT, "$%s*%02X", body, sum);
    }

    static byte[] gzip(byte[] bytes) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(bytes);
        } catch (IOException e) {
            throw new AssertionError("memory can't fail", e);
        }
        return out.toByteArray();
    }

    /** An archive with a folder and one file. */
    static byte[] zip(byte[] bytes, String name) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("folder/"));
            zip.putNextEntry(new ZipEntry(name));
            zip.write(bytes);
        } catch (IOException e) {
            throw new AssertionError("memory can't fail", e);
        }
        return out.toByteArray();
    }
}
