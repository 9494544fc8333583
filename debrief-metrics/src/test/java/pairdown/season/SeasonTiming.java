package pairdown.season;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Times a season of many attempts, all copies of one: {@code SeasonTiming ATTEMPT FOLDER COUNT}
 * makes the folders where they are not there yet, reads them all, and reads them again from the
 * cache.
 */
final class SeasonTiming {
    private SeasonTiming() {}

    public static void main(String[] args) throws Exception {
        Path attempt = Path.of(args[0]);
        Path season = Path.of(args[1]);
        int count = Integer.parseInt(args[2]);
        PrintStream out = System.out;
        for (int i : IntStream.range(0, count).toArray()) {
            copy(attempt, season.resolve(String.format(Locale.ROOT, "day%02d/%03d", i / 10, i)));
        }
        out.printf(Locale.ROOT, "first: %.2f s%n", read_s(season));
        for (int i = 0; i < 3; i++) {
            out.printf(Locale.ROOT, "again: %.2f s%n", read_s(season));
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        if (Files.isDirectory(to)) {
            return;
        }
        Files.createDirectories(to);
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, to.resolve(file.getFileName()));
            }
        }
    }

    private static double read_s(Path season) throws Exception {
        long begun_ns = System.nanoTime();
        Season read = SeasonFolder.read(season, step -> {});
        List<String> bad =
                read.attempts().stream().flatMap(a -> a.reason().stream()).limit(1).toList();
        if (!bad.isEmpty()) {
            throw new IllegalStateException(bad.get(0));
        }
        return (System.nanoTime() - begun_ns) / 1e9;
    }
}
