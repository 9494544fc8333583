package pairdown.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairdown.season.SeasonSamples.attempt;
import static pairdown.season.SeasonSamples.flown;
import static pairdown.season.SeasonSamples.flyer;
import static pairdown.season.SeasonSamples.in;
import static pairdown.season.SeasonSamples.segment;

import java.util.List;
import org.junit.jupiter.api.Test;

class RepeatsTest {
    private static final AttemptSummary ONE = attempt(1, 30, flyer("blue", 29, 2, "on-gate"));
    private static final AttemptSummary TWO = attempt(2, 30, flyer("blue", 29, 2, "on-gate"));

    private static Season season(AttemptSummary... found) {
        return Season.of(List.of(found), SeasonPlan.of(Criteria.NONE));
    }

    @Test
    void aCopyOfAnAttemptIsSetAsideAndSaid() {
        Season season = season(in("day/01 copy", ONE), TWO, ONE);
        assertEquals(2, season.ladder().flyers().get(0).rungs().size());
        AttemptSummary last = season.attempts().get(2);
        assertEquals("day/01 copy", last.folder());
        assertFalse(last.usable());
        assertEquals(
                "day/01 copy: holds the same flights as day/01, which counts; take one of the two"
                        + " away",
                last.reason().orElseThrow());
    }

    @Test
    void equalFiguresAtAnotherTimeAreAnotherFlight() {
        assertTrue(season(ONE, TWO).attempts().stream().allMatch(AttemptSummary::usable));
    }

    @Test
    void theSameStartWithOtherFlightIsNoCopy() {
        AttemptSummary here = flown(1, segment("lead", "lead", "idle", 38, 9));
        AttemptSummary there = in("day/other", flown(1, segment("lead", "lead", "idle", 39, 9)));
        assertTrue(season(here, there).attempts().stream().allMatch(AttemptSummary::usable));
    }
}
