package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the guides at the top of the project show is what the project does. */
class GuidesTest {
    private static final Path TOP = Path.of("..");
    private static final Pattern CLASS = Pattern.compile("`pairdown\\.([a-z.]+)\\.([A-Z]\\w+)");
    private static final Pattern RUN =
            Pattern.compile("java -jar viewer/target/pairdown.jar ([^`\n]+)");
    private static final Pattern JSON = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL);
    private static final Pattern PICTURE = Pattern.compile("!\\[[^]]+]\\(([^)]+)\\)");

    private static String guide(String name) throws IOException {
        return Files.readString(TOP.resolve(name));
    }

    private static List<String> found(Pattern pattern, String text, int group) {
        return pattern.matcher(text).results().map((MatchResult r) -> r.group(group)).toList();
    }

    @Test
    void everyCommandOfTheReadmeIsOneThatTheProgramTakes() throws Exception {
        List<String> commands = found(RUN, guide("README.md"), 1);
        assertTrue(commands.size() >= 2, commands::toString);
        for (String command : commands) {
            if (!command.startsWith("VERB")) {
                Main.commandLine().parseArgs(command.trim().split(" +"));
            }
        }
    }

    @Test
    void theReadmesTableHasEveryVerb() throws Exception {
        String readme = guide("README.md");
        Set<String> verbs = new TreeSet<>(Main.commandLine().getSubcommands().keySet());
        Set<String> told =
                readme.lines()
                        .filter(l -> l.startsWith("| `"))
                        .map(l -> l.substring(0, l.indexOf('|', 1)))
                        .flatMap(l -> found(Pattern.compile("`([a-z]+)[ `]"), l, 1).stream())
                        .filter(verbs::contains)
                        .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(verbs, told);
    }

    @Test
    void theReadmesSettingsAreTaken(@TempDir Path folder) throws Exception {
        List<String> shown = found(JSON, guide("README.md"), 1);
        assertFalse(shown.isEmpty());
        Files.writeString(folder.resolve("season.json"), shown.get(0));
        Path attempt = Files.createDirectories(folder.resolve("one"));
        Path sample = TOP.resolve("sample-tracks/2031-05-12-01");
        try (Stream<Path> files = Files.list(sample)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, attempt.resolve(file.getFileName().toString()));
            }
        }
        Path out = folder.resolve("out");
        int status = Main.run("season", folder.toString(), "--out", out.toString());
        assertEquals(0, status);
        String season = Files.readString(out.resolve("season.json"));
        assertTrue(season.contains("discDiameter_m is set to 2.6, usually 2.8"));
        assertTrue(season.contains("season.segment_s is set to 8, usually 5"));
    }

    @Test
    void picturesOfTheReadmeAreThere() throws Exception {
        List<String> pictures = found(PICTURE, guide("README.md"), 1);
        assertTrue(pictures.size() >= 2);
        pictures.forEach(p -> assertTrue(Files.isRegularFile(TOP.resolve(p)), p));
    }

    @Test
    void classesThatTheGuideNamesExist() throws Exception {
        List<MatchResult> named = CLASS.matcher(guide("DEVELOPERS.md")).results().toList();
        assertTrue(named.size() > 10);
        for (MatchResult r : named) {
            String file = r.group(1).replace('.', '/') + "/" + r.group(2) + ".java";
            assertTrue(
                    Stream.of("track-io", "debrief-metrics", "viewer")
                            .flatMap(
                                    m -> Stream.of("main", "test", "jmh").map(k -> m + "/src/" + k))
                            .anyMatch(
                                    root ->
                                            Files.isRegularFile(
                                                    TOP.resolve(root + "/java/pairdown/" + file))),
                    file);
        }
    }
}
