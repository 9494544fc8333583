package pairdown.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.units.Unit;

/**
 * The sample season's dives without flyers, and one attempt with flyers to hold them against: each
 * lesson is in the season's results and in the truth.
 */
class SampleDivesTest {
    private static final Path SAMPLES = Path.of("..", "sample-tracks");
    private static final Set<String> EPISODES =
            Set.of("2031-05-05-04", "2031-05-06-02", "2031-05-07-01");

    @TempDir private static Path folder;
    private static Season season = SeasonSamples.NONE;

    @BeforeAll
    static void debriefThem() throws Exception {
        for (String part : List.of("idle-dives", "practice-dives", "2031-05-14-02")) {
            copy(SAMPLES.resolve(part), folder.resolve(part));
        }
        season = SeasonFolder.at(folder, folder.resolve("cache")).season(step -> {});
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.filter(Files::isRegularFile).toList()) {
                Path copied = to.resolve(from.relativize(path).toString());
                Files.createDirectories(copied.getParent());
                Files.copy(path, copied);
            }
        }
    }

    private static List<AttemptSummary> in(String part) {
        return season.attempts().stream().filter(a -> a.folder().startsWith(part)).toList();
    }

    private static JsonNode truth(AttemptSummary attempt) throws IOException {
        return new JsonMapper()
                .readTree(folder.resolve(attempt.folder()).resolve("truth/truth.json").toFile());
    }

    private static List<SteadySegment> idle() {
        return in("idle-dives").stream()
                .flatMap(a -> a.segments().stream())
                .filter(s -> s.configuration().equals("flap 40°, idle"))
                .toList();
    }

    @Test
    void atTheFlyersAirspeedAnIdleDiveSinksHalfAsFast() {
        List<SteadySegment> atTarget =
                idle().stream().filter(s -> Math.abs(s.trueAirspeed_mps() - 38) < 0.7).toList();
        assertTrue(atTarget.size() > 10, atTarget::toString);
        double mean_mps =
                atTarget.stream().mapToDouble(SteadySegment::sink_mps).average().orElseThrow();
        // 1,500 to 1,660 ft/min by the balance of forces, against 3,500.
        assertEquals(1600, Unit.FOOT_PER_MINUTE.fromBase(mean_mps), 120);
    }

    @Test
    void whereAnIdleDiveSinksAsFastItIsFarFaster() {
        List<SteadySegment> steep = idle().stream().filter(s -> s.sink_mps() > 16).toList();
        assertTrue(steep.size() > 5, steep::toString);
        for (SteadySegment s : steep) {
            assertTrue(Unit.MILE_PER_HOUR.fromBase(s.trueAirspeed_mps()) > 108, s::toString);
        }
    }

    @Test
    void idleAndFlyersDoNotOverlapAndReverseAndFlyersDo() {
        for (Envelope.Overlap o : season.envelope().overlaps()) {
            if (o.configuration().equals("flap 40°, idle")) {
                assertEquals(0, o.area_m2ps2(), o::toString);
                assertTrue(o.nearest().distance() > 2, o::toString);
            } else if (o.configuration().equals("flap 40°, reverse")) {
                assertTrue(o.area_m2ps2() > 0, o::toString);
            }
        }
        assertEquals(
                Set.of("flap 40°, idle", "flap 40°, reverse"),
                season.envelope().overlaps().stream()
                        .map(Envelope.Overlap::configuration)
                        .filter(c -> c.startsWith("flap 40°"))
                        .collect(Collectors.toSet()));
    }

    @Test
    void theForceMissingAtIdleIsWhatReverseGives() {
        // W·(17.78 − 8.3)/38 of 1,650 kg: 4.0 kN; the balance asks for 4.5 less idle drag of 0.4.
        MissingForce force =
                season.envelope().missingForces().stream()
                        .filter(f -> f.configuration().equals("flap 40°, idle"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(4050, force.value_N(), 300);
    }

    @Test
    void seventeenOfTwentyPracticeDivesAreHeld() {
        List<AttemptSummary> dives = in("practice-dives");
        assertEquals(20, dives.size());
        assertTrue(dives.stream().allMatch(a -> a.dive().orElseThrow().held()), dives::toString);
        assertEquals(17, dives.stream().filter(a -> a.descentHeld().orElseThrow()).count());
    }

    @Test
    void threeHaveAnEpisodeAndItIsTrue() throws IOException {
        Set<String> found = new TreeSet<>();
        Set<String> really = new TreeSet<>();
        for (AttemptSummary a : in("practice-dives")) {
            JsonNode truth = truth(a);
            if (a.episodes().orElseThrow() > 0) {
                found.add(a.attempt());
            }
            if (!truth.path("episodes").isEmpty()) {
                really.add(a.attempt());
                JsonNode episode = truth.path("episodes").get(0);
                JsonNode before = episode.path("precededBy");
                assertTrue(
                        before.path("to_pct").asDouble() < before.path("from_pct").asDouble(),
                        "preceded by more reverse");
            }
        }
        assertEquals(EPISODES, really);
        assertEquals(really, found);
    }
}
