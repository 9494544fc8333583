package pairdown.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairdown.season.SeasonSamples.attempt;
import static pairdown.season.SeasonSamples.flyer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pairdown.season.Ladder.FlyerLadder;
import pairdown.season.Ladder.Rung;
import pairdown.season.Ladder.Trend;

class LadderTest {
    private static Ladder of(double sigma_m, double... gaps_m) {
        List<AttemptSummary> attempts = new ArrayList<>();
        for (int i = 0; i < gaps_m.length; i++) {
            attempts.add(attempt(i + 1, 30, flyer("blue", gaps_m[i], sigma_m, "on-gate")));
        }
        return Ladder.of(attempts, SeasonSettings.DEFAULT);
    }

    private static List<Optional<String>> against(Ladder ladder) {
        return ladder.flyers().get(0).rungs().stream().map(Rung::against).toList();
    }

    @Test
    void namesThatDifferInCapitalsAloneAreSaid() {
        Season season =
                Season.of(
                        List.of(
                                attempt(1, 30, flyer("Blue", 29, 2, "on-gate")),
                                attempt(2, 30, flyer("blue", 29, 2, "on-gate")),
                                attempt(3, 30, flyer("amber", 29, 2, "on-gate"))),
                        SeasonPlan.of(Criteria.NONE));
        assertEquals(
                List.of(
                        "flyers told apart by their spelling alone: Blue, blue; give one person one"
                                + " id"),
                season.notes());
    }

    @Test
    void gapsDifferOnlyBeyondTwoSigmaOfTheirDifference() {
        // Two gaps of sigma 2 differ with sigma 2.83: 5.6 m is no change, 5.7 m is one.
        assertEquals(
                List.of(Optional.empty(), Optional.of("no measurable change")),
                against(of(2, 30, 24.4)));
        assertEquals(List.of(Optional.empty(), Optional.of("nearer")), against(of(2, 30, 24.3)));
        assertEquals(List.of(Optional.empty(), Optional.of("further")), against(of(2, 24.3, 30)));
    }

    @Test
    void aGapWithoutSigmaIsComparedWithNothing() {
        AttemptSummary known = attempt(1, 30, flyer("blue", 30, 2, "on-gate"));
        AttemptSummary bare =
                attempt(2, 30, SeasonSamples.withoutSigma(flyer("blue", 9, 0, "on-gate")));
        Ladder ladder = Ladder.of(List.of(known, bare), SeasonSettings.DEFAULT);
        assertEquals(List.of(Optional.empty(), Optional.empty()), against(ladder));
    }

    @Test
    void halvedEachTimeIsAFactorOfAHalf() {
        Trend t = of(1, 64, 32, 16, 8).flyers().get(0).trend().orElseThrow();
        assertEquals(0.5, t.factor(), 1e-12);
        assertEquals(0.5, t.low(), 1e-6);
        assertEquals(0.5, t.high(), 1e-6);
        assertEquals(32, t.gap_m(1), 1e-9);
    }

    // SciPy 1.17.1: linregress(range(6), log([52, 31, 33, 17, 12, 9])), slope
    // ± t.ppf(0.975, 4) · stderr; the mean's band at x = 2 by the textbook's formula in NumPy
    // 2.4.6.
    @Test
    void trendAndBandEqualTheLibrary() {
        Trend t = of(1, 52, 31, 33, 17, 12, 9).flyers().get(0).trend().orElseThrow();
        assertEquals(SCIPY[0], t.factor(), 1e-9);
        assertEquals(SCIPY[1], t.low(), 1e-9);
        assertEquals(SCIPY[2], t.high(), 1e-9);
        assertEquals(SCIPY[3], t.band_m(2, 0.95).low(), 1e-7);
        assertEquals(SCIPY[4], t.band_m(2, 0.95).high(), 1e-7);
    }

    private static final double[] SCIPY = {
        0.7040716248, 0.6350888062, 0.7805472999, 21.2875665519, 30.7261177657
    };

    @Test
    void twoAttemptsHaveNoTrend() {
        assertTrue(of(1, 64, 32).flyers().get(0).trend().isEmpty());
    }

    @Test
    void eachFlyerHasItsOwnLadder() {
        Ladder ladder =
                Ladder.of(
                        List.of(
                                attempt(1, 60, flyer("blue", 50, 1, "on-gate")),
                                attempt(
                                        2,
                                        30,
                                        flyer("amber", 45, 1, "short"),
                                        flyer("blue", 28, 1, "on-gate"))),
                        SeasonSettings.DEFAULT);
        assertEquals(
                List.of("amber", "blue"),
                ladder.flyers().stream().map(FlyerLadder::flyer).toList());
        assertEquals(1, ladder.flyers().get(0).rungs().size());
        assertEquals(30, ladder.flyers().get(1).rungs().get(1).planned_m().orElseThrow());
    }
}
