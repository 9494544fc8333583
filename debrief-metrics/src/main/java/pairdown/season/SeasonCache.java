package pairdown.season;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import pairdown.debrief.ResultFolder;

/**
 * Summaries kept by the content of the files they were made from. A file whose size and time of
 * change are as they were counts as unchanged, unless it changed so shortly before it was looked at
 * that the clock could not tell; else its content decides. Each attempt has its own file, written
 * beside and moved, so that two people can work on one shared folder; where that is read-only, the
 * cache lies with the user.
 */
final class SeasonCache {
    /** Rises whenever a summary or the computation behind it changes its meaning. */
    private static final int MODEL = 2;

    private static final String HERE = ".pairdown";
    private static final long CLOCK_CANNOT_TELL_MS = 2500;
    private static final JsonMapper MAPPER =
            JsonMapper.builder().addModule(new Jdk8Module()).build();

    private final Path folder;
    private final String made;

    private SeasonCache(Path folder, String made) {
        this.folder = folder;
        this.made = made;
    }

    /** A file as it was when the summary was made. */
    record Seen(long size, long modified_ms, String sha256) {}

    /** What is kept. */
    record Kept(String made, long written_ms, Map<String, Seen> files, AttemptSummary summary) {}

    static SeasonCache of(Path season, SeasonSettings settings) {
        String made = MODEL + " " + settings;
        Path here = season.resolve(HERE);
        boolean mine = Files.isDirectory(here) ? Files.isWritable(here) : Files.isWritable(season);
        return new SeasonCache(mine ? here : elsewhere(season), made);
    }

    private static Path elsewhere(Path season) {
        String name =
                sha256(
                        season.toAbsolutePath()
                                .normalize()
                                .toString()
                                .getBytes(StandardCharsets.UTF_8));
        Path base =
                Optional.ofNullable(System.getenv("XDG_CACHE_HOME"))
                        .or(() -> Optional.ofNullable(System.getenv("LOCALAPPDATA")))
                        .map(Path::of)
                        .orElse(Path.of(System.getProperty("user.home", "."), ".cache"));
        return base.resolve("pairdown").resolve(name.substring(0, 16));
    }

    /** The kept summary if the attempt's files are what they were, else the one computed now. */
    AttemptSummary get(Path attempt, Supplier<AttemptSummary> compute) {
        Path file = folder.resolve(key(attempt) + ".json");
        Optional<Kept> kept = read(file);
        Map<String, Seen> now;
        try {
            now = look(attempt, kept);
        } catch (IOException e) {
            return compute.get();
        }
        if (kept.isPresent() && sameContent(kept.get().files(), now)) {
            if (!kept.get().files().equals(now)) {
                write(file, new Kept(made, Clock.systemUTC().millis(), now, kept.get().summary()));
            }
            return kept.get().summary();
        }
        long before_ms = Clock.systemUTC().millis();
        AttemptSummary summary = compute.get();
        write(file, new Kept(made, before_ms, now, summary));
        return summary;
    }

    private static String key(Path attempt) {
        Path name = attempt.toAbsolutePath().normalize();
        String last = name.getFileName().toString().replaceAll("[^\\p{L}\\p{N}._-]", "-");
        return last
                + "-"
                + sha256(name.toString().getBytes(StandardCharsets.UTF_8)).substring(0, 8);
    }

    private Optional<Kept> read(Path file) {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            return Optional.of(MAPPER.readValue(file.toFile(), Kept.class))
                    .filter(k -> k.made().equals(made));
        } catch (IOException e) {
            // A damaged or foreign file in the cache is as good as none.
            return Optional.empty();
        }
    }

    /** A cache that can't be written costs time, not results. */
    private static void write(Path file, Kept kept) {
        try {
            ResultFolder.write(file, beside -> MAPPER.writeValue(beside.toFile(), kept));
        } catch (IOException e) {
            // The next run computes again.
            return;
        }
    }

    private static boolean sameContent(Map<String, Seen> a, Map<String, Seen> b) {
        return a.keySet().equals(b.keySet())
                && a.entrySet().stream()
                        .allMatch(
                                e ->
                                        Optional.ofNullable(b.get(e.getKey()))
                                                .filter(
                                                        s ->
                                                                s.sha256()
                                                                        .equals(
                                                                                e.getValue()
                                                                                        .sha256()))
                                                .isPresent());
    }

    private static Map<String, Seen> look(Path attempt, Optional<Kept> kept) throws IOException {
        List<Path> files = new ArrayList<>();
        try (Stream<Path> entries = Files.list(attempt)) {
            entries.filter(Files::isRegularFile)
                    .filter(p -> !p.getFileName().toString().startsWith("."))
                    .forEach(files::add);
        }
        Map<String, Seen> now = new TreeMap<>();
        for (Path p : files) {
            BasicFileAttributes a = Files.readAttributes(p, BasicFileAttributes.class);
            String name = p.getFileName().toString();
            long modified_ms = a.lastModifiedTime().toMillis();
            Optional<String> known = kept.flatMap(k -> unchanged(k, name, a.size(), modified_ms));
            now.put(
                    name,
                    new Seen(a.size(), modified_ms, known.isPresent() ? known.get() : sha256(p)));
        }
        return now;
    }

    private static Optional<String> unchanged(Kept kept, String name, long size, long modified_ms) {
        return Optional.ofNullable(kept.files().get(name))
                .filter(s -> s.size() == size && s.modified_ms() == modified_ms)
                .filter(s -> modified_ms < kept.written_ms() - CLOCK_CANNOT_TELL_MS)
                .map(Seen::sha256);
    }

    private static String sha256(Path file) throws IOException {
        MessageDigest digest = digest();
        byte[] buffer = new byte[1 << 16];
        try (InputStream in = Files.newInputStream(file)) {
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                digest.update(buffer, 0, n);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(digest().digest(bytes));
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
