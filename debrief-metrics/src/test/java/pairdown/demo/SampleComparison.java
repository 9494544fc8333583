package pairdown.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether the samples are, to the last byte, what the demo makes now. Run as a program it makes the
 * whole season anew and ends with 1 if anything differs; the build looks at some attempts.
 */
public final class SampleComparison {
    static final Path SAMPLES = Path.of("..", "sample-tracks");

    private static final Set<String> RESULTS = Set.of("debrief", "season", ".pairdown");

    private SampleComparison() {}

    /** Files below a folder by their names within it, results of a debrief left aside. */
    static Map<String, Path> files(Path root) throws IOException {
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(Files::isRegularFile)
                    .filter(f -> !isResult(root.relativize(f)))
                    .collect(
                            Collectors.toMap(
                                    f -> root.relativize(f).toString().replace('\\', '/'),
                                    f -> f,
                                    (a, b) -> a,
                                    TreeMap::new));
        }
    }

    private static boolean isResult(Path within) {
        for (Path part : within) {
            if (RESULTS.contains(part.toString())) {
                return true;
            }
        }
        return false;
    }

    /** What two folders differ in, a line a file; none if they are alike. */
    static List<String> differences(Path one, Path other) throws IOException {
        Map<String, Path> a = files(one);
        Map<String, Path> b = files(other);
        Set<String> names = new TreeSet<>(a.keySet());
        names.addAll(b.keySet());
        List<String> out = new ArrayList<>();
        for (String name : names) {
            if (!a.containsKey(name) || !b.containsKey(name)) {
                out.add(name + " is only in " + (a.containsKey(name) ? one : other));
            } else {
                long at = Files.mismatch(a.get(name), b.get(name));
                if (at >= 0) {
                    out.add(name + " differs at byte " + at);
                }
            }
        }
        return out;
    }

    /** {@code [SAMPLES]}: compares all of them, those in the repository unless said. */
    public static void main(String[] args) throws IOException {
        Path samples = Path.of(args.length > 0 ? args[0] : "sample-tracks");
        Path anew = Files.createTempDirectory("season");
        DemoSeason.write(anew, DemoSeason.SEED, System.out::println);
        List<String> differences = differences(samples, anew);
        differences.forEach(System.out::println);
        System.out.println(
                differences.isEmpty()
                        ? files(samples).size() + " files alike"
                        : differences.size() + " files differ from those in " + anew);
        System.exit(differences.isEmpty() ? 0 : 1);
    }
}
