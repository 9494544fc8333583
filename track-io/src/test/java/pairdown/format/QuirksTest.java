package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.format.source.LogSource;
import pairdown.track.UnusableInputException;

/**
 * One small log for each quirk of a format, in {@code quirks}, and beside it, under its whole name
 * and {@code .expected}, what must be read of it: the first lines, after {@code #}, say why. A
 * column map lies beside a log as {@code NAME.columns.json}.
 */
class QuirksTest {
    private static final String EXPECTED = ".expected";
    private static final String MAP = ".columns.json";

    @SuppressWarnings("ArrayRecordComponent") // a name beside bytes, never compared
    private record Quirk(String name, byte[] log, Optional<Path> map, String expected) {
        static Quirk of(Path expected) {
            try {
                String name = expected.getFileName().toString().replace(EXPECTED, "");
                Path map = expected.resolveSibling(name.replaceAll("\\.\\w+$", MAP));
                return new Quirk(
                        name,
                        Files.readAllBytes(expected.resolveSibling(name)),
                        Files.exists(map) ? Optional.of(map) : Optional.empty(),
                        Files.readAllLines(expected).stream()
                                .filter(line -> !line.startsWith("#"))
                                .map(line -> line + "\n")
                                .collect(Collectors.joining()));
            } catch (IOException e) {
                throw new AssertionError(expected.toString(), e);
            }
        }

        boolean isWide() {
            return log.length > 1 && (log[0] & 0xff) >= 0xfe;
        }

        /** What is read of these bytes, in words. */
        String read(byte[] bytes) {
            try {
                return TrackText.of(LogFiles.read(LogSource.of(name, bytes), map));
            } catch (UnusableInputException e) {
                return "refused: " + e.getMessage() + "\n";
            }
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static List<Path> files() throws IOException, URISyntaxException {
        Path folder =
                Path.of(Objects.requireNonNull(QuirksTest.class.getResource("quirks")).toURI());
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    static Stream<Quirk> quirks() throws IOException, URISyntaxException {
        return files().stream().filter(f -> f.toString().endsWith(EXPECTED)).map(Quirk::of);
    }

    @Test
    void everyLogHasItsExpectation() throws Exception {
        List<String> names = files().stream().map(f -> f.getFileName().toString()).toList();
        for (String name : names) {
            boolean log = !name.endsWith(EXPECTED) && !name.endsWith(MAP);
            assertTrue(!log || names.contains(name + EXPECTED), name);
        }
        assertTrue(names.size() > 60, "only " + names.size());
    }

    @ParameterizedTest
    @MethodSource("quirks")
    void isReadAsExpected(Quirk quirk) {
        assertEquals(quirk.expected(), quirk.read(quirk.log()));
    }

    @ParameterizedTest
    @MethodSource("quirks")
    void isReadAlikeWithOtherEndsOfLine(Quirk quirk) {
        if (quirk.isWide()) {
            return;
        }
        String text = new String(quirk.log(), StandardCharsets.ISO_8859_1).replace("\r\n", "\n");
        for (String end : new String[] {"\r\n", "\r"}) {
            byte[] other = text.replace("\n", end).getBytes(StandardCharsets.ISO_8859_1);
            assertEquals(quirk.expected(), quirk.read(other));
        }
    }

    @ParameterizedTest
    @MethodSource("quirks")
    void isReadAlikeWhenPacked(Quirk quirk) {
        assertEquals(quirk.expected(), quirk.read(TestLogs.gzip(quirk.log())));
        assertEquals(quirk.expected(), quirk.read(TestLogs.zip(quirk.log(), "C:\\..\\log")));
    }

    /** Cut anywhere, a log is read as far as it goes or refused in one line. */
    @ParameterizedTest
    @MethodSource("quirks")
    void isNeverAStumblingBlockWhenCut(Quirk quirk) {
        for (int length = 0; length < quirk.log().length; length++) {
            String read = quirk.read(Arrays.copyOf(quirk.log(), length));
            boolean refused = read.startsWith("refused: ");
            assertTrue(!refused || read.lines().count() == 1, read);
        }
    }
}
