package pairdown.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pairdown.debrief.Debrief;
import pairdown.demo.physics.Simulation;
import pairdown.demo.truth.Truth;

/**
 * The sample season's figures against its truth: all attempts in which flyers join, and some dives.
 * {@link SeasonStudy} takes all of them, with more draws of receivers.
 */
class SeasonTruthTest {
    /** One that was held, one after an episode, one late, one at idle. */
    private static final Set<String> DIVES =
            Set.of("2031-05-02-02", "2031-05-05-01", "2031-05-05-04", "2031-05-06-02");

    /** Two sigma are 95 %; of some thirty figures, three beyond are chance still. */
    private static final double MOST = 0.9;

    private static final Map<String, Truth> TRUTHS = new ConcurrentHashMap<>();
    private static final SeasonErrors ERRORS = new SeasonErrors();

    @BeforeAll
    static void hold() {
        Predicate<DemoAttempt> chosen = a -> !a.folder().contains("/") || DIVES.contains(a.id());
        List<DemoAttempt> attempts =
                DemoSeason.attempts(DemoSeason.SEED).stream().filter(chosen).toList();
        attempts.forEach(a -> ERRORS.add(truth(a), SampleDebriefs.of(a.folder())));
    }

    private static Truth truth(DemoAttempt a) {
        return TRUTHS.computeIfAbsent(a.id(), id -> Simulation.run(a.scenario()));
    }

    private static void assertMostWithin(String figure, int least) {
        SeasonErrors.Count count = ERRORS.count(figure);
        assertTrue(count.of() >= least, figure + ": only " + count.of());
        assertTrue(count.share() >= MOST, figure + ": " + ERRORS);
    }

    @Test
    void gapsAreWithinTwoSigmaOfTheTruth() {
        assertMostWithin("gaps", 20);
    }

    @Test
    void heldTimesAreWithinWhatTwoSigmaOfTheGapAllow() {
        assertMostWithin("held", 8);
    }

    @Test
    void matchedTimesAreWithinTheirOwnBoundsAndNeverTooLongWhereDataEndThem() {
        assertMostWithin("longest matched", 4);
        assertEquals(
                ERRORS.count("longest matched, cut by a hole").of(),
                ERRORS.count("longest matched, cut by a hole").within(),
                ERRORS::toString);
    }

    @Test
    void verdictsAreTrueWithinTwoSigmaOfTheGap() {
        assertMostWithin("verdict within two sigma", 8);
    }

    @Test
    void divesHeldAreThoseThatWereHeld() {
        assertMostWithin("dive held", 14);
    }

    @Test
    void timesToStabiliseAreThoseThatSpeedsALittleOffGive() {
        assertMostWithin("time to stabilise", 14);
    }

    @Test
    void diveEpisodesAreThoseOfTheTruth() {
        assertMostWithin("episodes", 14);
    }

    /** What stands beside the samples as true is the truth that the figures are held against. */
    @Test
    void truthFilesSayTheSame() throws Exception {
        for (DemoAttempt demo : DemoJoins.of(DemoSeason.SEED)) {
            Truth truth = truth(demo);
            Debrief debrief = SampleDebriefs.of(demo.folder());
            JsonNode file =
                    new JsonMapper()
                            .readTree(
                                    SampleDebriefs.SEASON
                                            .resolve(demo.folder())
                                            .resolve("truth/truth.json")
                                            .toFile());
            assertEquals(truth.episodes().size(), file.path("episodes").size(), demo.id());
            for (JsonNode pair : file.path("pairs")) {
                TrueFlyer flown =
                        new TrueFlyer(truth, debrief.attempt(), pair.path("flyer").asText());
                double file_m = pair.path("leastGap").path("gap_m").asDouble();
                assertEquals(file_m, flown.leastGap_m(), 0.006, demo.id());
            }
        }
    }
}
