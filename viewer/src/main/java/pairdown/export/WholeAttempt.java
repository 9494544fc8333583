package pairdown.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import pairdown.attempt.Attempt;
import pairdown.attempt.LogRef;
import pairdown.attempt.MarksFile;
import pairdown.attempt.WholeFile;

/**
 * A zip of everything an attempt consists of: its file and marks, the logs and column maps it
 * names, byte for byte, and the results. Unpacked it is an attempt's folder.
 */
public final class WholeAttempt {
    private static final String RESULTS = "debrief/";

    /** What a debrief writes; whatever else lies beside it is not for sharing. */
    private static final Pattern WRITTEN =
            Pattern.compile(
                    "debrief\\.json|report\\.(html|pdf)|(pairs|participants)/.*\\.csv"
                            + "|tracks\\.[a-z]+|tracks/.*");

    private WholeAttempt() {}

    /**
     * Writes it.
     *
     * @param results where the results of its debrief are
     */
    public static void write(Attempt attempt, Path results, Path zip) throws IOException {
        WholeFile.write(
                zip,
                beside -> {
                    try (Archive archive = Archive.at(beside)) {
                        for (Map.Entry<String, Path> file : files(attempt, results).entrySet()) {
                            archive.addFile(attempt.id() + "/" + file.getKey(), file.getValue());
                        }
                    }
                });
    }

    /** By their names within the attempt's folder. */
    private static Map<String, Path> files(Attempt attempt, Path results) throws IOException {
        Map<String, Path> files = new TreeMap<>();
        for (String own : List.of("attempt.json", MarksFile.NAME)) {
            Path file = attempt.folder().resolve(own);
            if (Files.isRegularFile(file)) {
                files.put(own, file);
            }
        }
        attempt.participants().stream()
                .flatMap(p -> p.logs().stream())
                .forEach(log -> log(files, attempt, log));
        try (Stream<Path> written = Files.walk(results)) {
            written.filter(f -> isResult(results, f))
                    .forEach(f -> files.put(RESULTS + name(results, f), f));
        }
        return files;
    }

    private static boolean isResult(Path results, Path file) {
        return Files.isRegularFile(file) && WRITTEN.matcher(name(results, file)).matches();
    }

    private static void log(Map<String, Path> files, Attempt attempt, LogRef log) {
        if (Files.isRegularFile(log.path())) {
            files.put(name(attempt.folder(), log.path()), log.path());
        }
        log.columns()
                .filter(Files::isRegularFile)
                .ifPresent(map -> files.put(name(attempt.folder(), map), map));
    }

    private static String name(Path folder, Path file) {
        return folder.toAbsolutePath()
                .normalize()
                .relativize(file.toAbsolutePath().normalize())
                .toString()
                .replace('\\', '/');
    }
}
