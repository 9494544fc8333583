package pairdown.season;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import pairdown.attempt.Attempt;
import pairdown.attempt.LogRef;
import pairdown.attempt.Participant;
import pairdown.attempt.SeasonFile;
import pairdown.track.UnusableInputException;

/**
 * The files an attempt rests on, as they were when they were looked at: those in its folder and
 * those its {@code attempt.json} names elsewhere, and the {@code season.json} above it that sets
 * numbers for it. What was made from it counts as long as the content is the same.
 *
 * @param looked_ms when they were looked at
 * @param files by path relative to the attempt's folder
 */
public record FolderContent(long looked_ms, Map<String, FileStamp> files) {
    /**
     * Looks at the files now; those that have not changed since {@code before} are not read again.
     *
     * @param besides files to be looked at beyond those in the folder and those looked at before
     * @throws IOException if one can't be read
     */
    public static FolderContent look(
            Path attempt, Optional<FolderContent> before, List<Path> besides) throws IOException {
        long now_ms = Clock.systemUTC().millis();
        TreeSet<String> names = new TreeSet<>();
        for (Path file : filesIn(attempt)) {
            names.add(name(attempt, file));
        }
        besides.forEach(file -> names.add(name(attempt, file)));
        settingsAbove(attempt).ifPresent(file -> names.add(name(attempt, file)));
        before.ifPresent(b -> names.addAll(b.files().keySet()));
        Map<String, FileStamp> now = new TreeMap<>();
        for (String name : names) {
            Path file = attempt.resolve(name);
            Optional<FileStamp> then =
                    before.flatMap(b -> Optional.ofNullable(b.files().get(name)));
            if (Files.isRegularFile(file)) {
                now.put(
                        name,
                        FileStamp.of(file, then, before.map(FolderContent::looked_ms).orElse(0L)));
            }
        }
        return new FolderContent(now_ms, now);
    }

    /**
     * A season's file that the attempt is debriefed by; one that makes no sense is its reader's.
     */
    private static Optional<Path> settingsAbove(Path attempt) {
        try {
            return SeasonFile.above(attempt);
        } catch (UnusableInputException e) {
            return Optional.empty();
        }
    }

    /** The logs and column maps of an attempt, wherever they lie. */
    public static List<Path> named(Attempt attempt) {
        List<Path> files = new ArrayList<>();
        for (Participant p : attempt.participants()) {
            for (LogRef log : p.logs()) {
                files.add(log.path());
                log.columns().ifPresent(files::add);
            }
        }
        return files;
    }

    /** Whether all files hold the same, whenever they were written. */
    public boolean holdsSameAs(FolderContent other) {
        return contents().equals(other.contents());
    }

    /** What each file holds. */
    Map<String, String> contents() {
        Map<String, String> contents = new TreeMap<>();
        files.forEach((name, stamp) -> contents.put(name, stamp.content()));
        return contents;
    }

    private static List<Path> filesIn(Path attempt) throws IOException {
        List<Path> files = new ArrayList<>();
        try (Stream<Path> entries = Files.list(attempt)) {
            entries.filter(p -> !p.getFileName().toString().startsWith("."))
                    .filter(Files::isRegularFile)
                    .forEach(files::add);
        }
        return files;
    }

    /** A file's path relative to a folder, with slashes. */
    static String name(Path from, Path file) {
        return from.toAbsolutePath()
                .normalize()
                .relativize(file.toAbsolutePath().normalize())
                .toString()
                .replace('\\', '/');
    }
}
