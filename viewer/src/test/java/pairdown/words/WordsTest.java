package pairdown.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pairdown.attempt.AirspeedKind;
import pairdown.attempt.Role;
import pairdown.camera.Vantage;
import pairdown.clock.ClockMethod;
import pairdown.pair.Axes;
import pairdown.pair.GateHeld;
import pairdown.pair.MatchedWindow;
import pairdown.pair.Touch;
import pairdown.phase.EventKind;
import pairdown.phase.Phase;
import pairdown.replay.Alignment;
import pairdown.safety.Finding;
import pairdown.tail.Episode;
import pairdown.track.HeightDatum;

class WordsTest {
    private static final Words WORDS = Words.of(Locale.ENGLISH);

    @Test
    void everyKindThatResultsCanHaveHasAText() {
        Stream<String> keys =
                Stream.of(
                                keys("verdict", GateHeld.Verdict.values(), v -> v.key()),
                                keys("finding", Finding.Outcome.values(), v -> v.key()),
                                keys("event", EventKind.values(), v -> v.key()),
                                keys("phase", Phase.values(), v -> v.key()),
                                keys("role", Role.values(), v -> v.key()),
                                keys("touch", Touch.Grade.values(), v -> v.key()),
                                keys("evidence", Touch.Evidence.values(), v -> v.key()),
                                keys("grade", Episode.Grade.values(), v -> v.key()),
                                keys("sign", Episode.Sign.values(), v -> v.key()),
                                keys("ended", MatchedWindow.EndedBy.values(), v -> v.key()),
                                keys("clock", ClockMethod.values(), v -> v.key()),
                                keys("datum", HeightDatum.values(), v -> v.key()),
                                keys("vantage", Vantage.Kind.values(), v -> v.key()),
                                keys("ghost.on", Alignment.On.values(), v -> v.key()),
                                keys("scene.aligned", Alignment.On.values(), v -> v.key()),
                                keys("axes", Axes.values(), v -> v.key()),
                                keys("airspeed", AirspeedKind.values(), v -> v.key()))
                        .flatMap(s -> s);
        List<String> missing = keys.filter(k -> !WORDS.has(k)).toList();
        assertTrue(missing.isEmpty(), () -> "no text for " + missing);
    }

    private static <E> Stream<String> keys(
            String place, E[] values, java.util.function.Function<E, String> key) {
        return Arrays.stream(values).map(v -> place + "." + key.apply(v));
    }

    /** Keys written out in the code and the templates; those put together are checked above. */
    @Test
    void everyKeyThatIsAskedForHasAText() throws IOException {
        Pattern asked =
                Pattern.compile("\\b(?:words\\.get|\\bword|w)\\(\\s*\"([a-zA-Z][\\w.-]*[\\w])\"");
        int found = 0;
        for (Path file : sources()) {
            Matcher key = asked.matcher(Files.readString(file));
            while (key.find()) {
                found++;
                assertTrue(WORDS.has(key.group(1)), () -> file + ": no text for " + key.group(1));
            }
        }
        assertTrue(found > 100, "only " + found + " keys");
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src", "main"))) {
            return files.filter(f -> f.toString().matches(".*\\.(java|ftlh)")).toList();
        }
    }

    /** Of two texts with one key the later is read, without a word. */
    @Test
    void eachKeyIsWrittenOnce() throws IOException {
        Path texts = Path.of("src", "main", "resources", "pairdown", "words", "words.properties");
        Set<String> seen = new HashSet<>();
        for (String line : Files.readAllLines(texts)) {
            int equals = line.indexOf('=');
            if (equals > 0 && !line.startsWith("#")) {
                String key = line.substring(0, equals).strip();
                assertTrue(seen.add(key), () -> key + " is written twice");
            }
        }
        assertEquals(seen, WORDS.keys());
    }

    @Test
    void noTextClaimsWhatNoRecordCanShow() {
        for (String key : WORDS.keys()) {
            String text = " " + WORDS.get(key).toLowerCase(Locale.ROOT) + " ";
            for (String word : List.of("safe", "cleared", "ready", "proven", "caused", "100 %")) {
                assertFalse(
                        text.matches("(?s).*\\b" + word + "\\b.*"),
                        () -> key + " says '" + word + "'");
            }
        }
    }

    @Test
    void aLanguageWithoutTranslationReadsEnglish() {
        assertTrue(Words.of(Locale.JAPANESE).has("app.name"));
    }

    @Test
    void anUnknownKeyIsNamed() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> WORDS.get("no.such"));
        assertTrue(String.valueOf(e.getMessage()).contains("no.such"));
    }
}
