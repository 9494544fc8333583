package pairdown.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.app.Sample;
import pairdown.attempt.LogRef;
import pairdown.attempt.Participant;
import pairdown.debrief.Debrief;
import pairdown.debrief.DebriefJson;
import pairdown.track.Channel;
import pairdown.track.Track;

/** What a stripped archive of the sample holds, and what of the original it must not. */
class StrippedAttemptTest {
    @TempDir private static Path folder;

    private static final Debrief DEBRIEF = Sample.debrief();
    private static final Map<String, String> ENTRIES = new LinkedHashMap<>();

    @BeforeAll
    static void strip() throws Exception {
        Path zip = folder.resolve("stripped.zip");
        StrippedAttempt.write(DEBRIEF, zip);
        try (ZipFile file = new ZipFile(zip.toFile())) {
            for (ZipEntry entry : file.stream().map(e -> (ZipEntry) e).toList()) {
                assertEquals(
                        1980, entry.getTimeLocal().getYear(), "an entry tells when it was made");
                ENTRIES.put(entry.getName(), text(file, entry));
            }
        }
    }

    private static String text(ZipFile file, ZipEntry entry) {
        try {
            return new String(file.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every name, file, date and sentence of the original, in no byte of any entry or name. */
    @Test
    void nothingThatWasTypedOrNamedIsInIt() {
        List<String> secrets = new ArrayList<>(new TreeSet<>(sentences()));
        secrets.add(DEBRIEF.attempt().id());
        for (Participant p : DEBRIEF.attempt().participants()) {
            for (LogRef log : p.logs()) {
                secrets.add(log.file());
            }
        }
        for (String secret : secrets) {
            assertNowhere(Pattern.compile(Pattern.quote(secret), Pattern.CASE_INSENSITIVE));
        }
        for (Participant p : DEBRIEF.attempt().participants()) {
            // A role is a word of the file's own, and may be somebody's name as well.
            boolean ownWord = p.id().equals(p.role().key());
            String name = Pattern.quote(p.id());
            assertNowhere(
                    Pattern.compile(
                            ownWord
                                    ? "\"" + name + "\"(?! *:)(?<!role\" : \"" + name + "\")"
                                    : "\\b" + name + "\\b"));
        }
        assertTrue(secrets.size() > 10, "too little to look for");
    }

    /** Whatever text the results file has that is longer than a word. */
    private static List<String> sentences() {
        List<String> found = new ArrayList<>();
        gather(DebriefJson.of(DEBRIEF), found);
        return found;
    }

    private static void gather(JsonNode node, List<String> found) {
        if (node.isTextual() && node.asText().contains(" ")) {
            found.add(node.asText());
        }
        node.forEach(child -> gather(child, found));
    }

    @Test
    void noDateIsInIt() {
        assertNowhere(Pattern.compile("20\\d\\d-\\d\\d"));
        assertNowhere(Pattern.compile("\\d\\d:\\d\\d:\\d\\d"));
        assertNowhere(Pattern.compile("\\d\\d\\d\\dT"));
    }

    /** A coordinate needs five decimals to tell a field; none that was flown over appears. */
    @Test
    void noPlaceIsInIt() {
        TreeSet<String> places = new TreeSet<>();
        for (Track track : Tracks.of(DEBRIEF).values()) {
            for (int row = 0; row < track.size(); row++) {
                places.add(degrees(track.value(Channel.LATITUDE, row)));
                places.add(degrees(track.value(Channel.LONGITUDE, row)));
            }
        }
        Pattern fine = Pattern.compile("(\\d+\\.\\d{3})\\d{2,}");
        ENTRIES.forEach(
                (name, text) ->
                        fine.matcher(text)
                                .results()
                                .forEach(
                                        n ->
                                                assertFalse(
                                                        places.contains(n.group(1)),
                                                        () -> name + " tells " + n.group())));
        assertNowhere(Pattern.compile("(?i)latitude|longitude|east_m|north_m|undulation|origin"));
    }

    private static String degrees(double value) {
        return String.format(Locale.ROOT, "%.3f", Math.abs(value));
    }

    private static void assertNowhere(Pattern secret) {
        ENTRIES.forEach(
                (name, text) -> {
                    assertFalse(secret.matcher(name).find(), () -> name + " tells " + secret);
                    var found = secret.matcher(text);
                    assertFalse(found.find(), () -> name + " tells " + secret + " in its entry");
                });
    }

    @Test
    void figuresAreThoseOfTheDebrief() throws IOException {
        JsonNode stripped = new JsonMapper().readTree(ENTRIES.get("results.json"));
        JsonNode whole = DebriefJson.of(DEBRIEF);
        for (int i = 0; i < whole.path("pairs").size(); i++) {
            for (String figure :
                    new String[] {"separation_m", "separationSigma_m", "ahead_m", "gap_m"}) {
                assertEquals(
                        whole.at("/pairs/" + i + "/closest/" + figure),
                        stripped.at("/pairs/" + i + "/closest/" + figure));
            }
        }
        assertEquals(whole.path("safety").size(), stripped.path("safety").size());
        assertEquals(whole.path("events").size(), stripped.path("events").size());
    }

    @Test
    void timesCountFromTheFirstExit() throws IOException {
        JsonNode stripped = new JsonMapper().readTree(ENTRIES.get("results.json"));
        double first_s = Double.POSITIVE_INFINITY;
        for (JsonNode event : stripped.path("events")) {
            if (event.path("kind").asText().equals("exit")) {
                first_s = Math.min(first_s, event.path("time_s").asDouble());
            }
        }
        assertEquals(0, first_s, 0.0011);
    }

    @Test
    void everyRowOfASeriesHasAsManyCellsAsItsHeader() {
        ENTRIES.forEach(
                (name, text) -> {
                    if (name.endsWith(".csv")) {
                        List<String> lines = text.lines().toList();
                        int cells = lines.get(0).split(",", -1).length;
                        assertTrue(lines.size() > 100, name);
                        for (String line : lines) {
                            assertEquals(cells, line.split(",", -1).length, name + ": " + line);
                        }
                    }
                });
    }

    @Test
    void twoWhoseNamesBeginAlikeKeepApart() {
        Initials initials = new Initials(DEBRIEF.attempt());
        long different =
                DEBRIEF.attempt().participants().stream()
                        .map(p -> initials.of(p.id()))
                        .distinct()
                        .count();
        assertEquals(DEBRIEF.attempt().participants().size(), different);
    }
}
