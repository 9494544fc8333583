package pairdown.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairdown.season.SeasonSamples.attempt;
import static pairdown.season.SeasonSamples.dive;
import static pairdown.season.SeasonSamples.flyer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.track.UnusableInputException;

class CriteriaTest {
    private static final Pattern NEVER_SAID =
            Pattern.compile("\\b(safe|cleared|ready|proven|caused)\\b", Pattern.CASE_INSENSITIVE);

    @TempDir private Path folder;

    private final List<String> notes = new ArrayList<>();

    private Criteria criteria(String json) throws IOException, UnusableInputException {
        Files.writeString(folder.resolve("season.json"), json);
        SeasonPlan plan = SeasonPlan.read(folder);
        notes.addAll(plan.notes());
        return plan.criteria();
    }

    private static AttemptSummary on(int n) {
        return attempt(n, 30, flyer("blue", 29, 2, "on-gate"), flyer("amber", 30, 2, "on-gate"));
    }

    private static AttemptSummary missed(int n) {
        return attempt(n, 30, flyer("blue", 29, 2, "on-gate"), flyer("amber", 55, 2, "short"));
    }

    @Test
    void onTheGateCountsBackFromTheLatestAndEveryFlyerCounts() throws Exception {
        Criteria c = criteria("{\"criteria\": {\"onGateInARow\": 2}}");
        Criterion met = c.judge(List.of(missed(1), on(2), on(3))).get(0);
        assertTrue(met.met());
        assertTrue(met.evidence().contains("02, 03"), met::evidence);
        Criterion not = c.judge(List.of(on(1), on(2), missed(3))).get(0);
        assertFalse(not.met());
        assertTrue(not.evidence().contains("0"), not::evidence);
    }

    @Test
    void heldDescentsCountBackFromTheLatest() throws Exception {
        Criteria c = criteria("{\"criteria\": {\"descentsHeldInARow\": 2}}");
        AttemptSummary good = dive(1, true, OptionalDouble.of(5), 0);
        AttemptSummary episode = dive(2, true, OptionalDouble.of(5), 1);
        assertTrue(c.judge(List.of(episode, good, good)).get(0).met());
        assertFalse(c.judge(List.of(good, episode, good)).get(0).met());
        assertFalse(c.judge(List.of()).get(0).met());
    }

    @Test
    void episodesAreNotMetWherePowerAndTailWereNotLogged() throws Exception {
        Criteria c = criteria("{\"criteria\": {\"episodes\": 0}}");
        assertFalse(c.judge(List.of(on(1))).get(0).met());
        assertTrue(c.judge(List.of(dive(1, true, OptionalDouble.of(5), 0))).get(0).met());
        assertFalse(c.judge(List.of(dive(1, true, OptionalDouble.of(5), 1))).get(0).met());
    }

    @Test
    void noStretchFoundIsNotNoneWhereTheClosingCouldNotBeJudged() throws Exception {
        Criteria c = criteria("{\"criteria\": {\"closureExceedances\": 0}}");
        assertTrue(c.judge(List.of(on(1))).get(0).met());
        Criterion untold = c.judge(List.of(SeasonSamples.closingUntold(on(1)))).get(0);
        assertFalse(untold.met());
        assertTrue(untold.evidence().contains("can't be told"), untold::evidence);
    }

    @Test
    void aDescentHeldWithoutWordOfItsTailSaysSo() throws Exception {
        Criteria c = criteria("{\"criteria\": {\"descentsHeldInARow\": 1}}");
        AttemptSummary told = dive(1, true, OptionalDouble.of(5), 0);
        assertFalse(c.judge(List.of(told)).get(0).evidence().contains("tail"));
        Criterion untold = c.judge(List.of(SeasonSamples.tailUntold(told))).get(0);
        assertTrue(
                untold.evidence().contains("tail control can't be told in 01"), untold::evidence);
    }

    @Test
    void everyFlyerMustHaveMatchedForLongEnough() throws Exception {
        assertTrue(
                criteria("{\"criteria\": {\"matched\": \"10 s\"}}")
                        .judge(List.of(on(1)))
                        .get(0)
                        .met());
        Criterion not =
                criteria("{\"criteria\": {\"matched\": \"0.5 min\"}}").judge(List.of(on(1))).get(0);
        assertFalse(not.met());
        assertTrue(not.evidence().contains("12.0 s"), not::evidence);
    }

    @Test
    void whatIsNotAskedForIsNotJudged() throws Exception {
        Criteria c = criteria("{\"title\": \"Two wide, then nearer\"}");
        assertEquals(Optional.of("Two wide, then nearer"), c.title());
        assertTrue(c.judge(List.of(on(1))).isEmpty());
        Files.delete(folder.resolve("season.json"));
        assertEquals(Criteria.NONE, SeasonPlan.read(folder).criteria());
    }

    @Test
    void aKeyThatMeansNothingIsSaidAndNonsenseRefused() throws Exception {
        criteria("{\"criteria\": {\"onGateInRow\": 2}}");
        assertTrue(notes.get(0).contains("onGateInRow"), notes::toString);
        assertThrows(
                UnusableInputException.class, () -> criteria("{\"criteria\": {\"episodes\": -1}}"));
        assertThrows(
                UnusableInputException.class,
                () -> criteria("{\"criteria\": {\"onGateInARow\": 1.5}}"));
        assertThrows(
                UnusableInputException.class,
                () -> criteria("{\"criteria\": {\"descentsHeldInARow\": 0}}"));
        assertThrows(UnusableInputException.class, () -> criteria("{\"criteria\": "));
    }

    @Test
    void resultsThatWereWrittenIntoTheFolderAreNoCriteria() throws Exception {
        assertEquals(
                Criteria.NONE, criteria("{\"format\": \"pairdown-season\", \"criteria\": []}"));
    }

    @Test
    void noCriterionSaysMoreThanMetOrNotMet() throws Exception {
        Criteria c =
                criteria(
                        "{\"criteria\": {\"onGateInARow\": 1, \"descentsHeldInARow\": 1,"
                                + " \"closureExceedances\": 0, \"episodes\": 0, \"matched\": \"1 s\"}}");
        List<Criterion> judged = c.judge(List.of(dive(1, true, OptionalDouble.of(3), 0), on(2)));
        assertEquals(5, judged.size());
        judged.forEach(j -> assertFalse(NEVER_SAID.matcher(j.name() + j.evidence()).find()));
    }
}
