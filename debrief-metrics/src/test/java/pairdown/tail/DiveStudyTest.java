package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pairdown.demo.truth.Truth;
import pairdown.track.UnusableInputException;

/**
 * Whole debriefs of a few simulated dives, one of them at idle, against their truth: a guard. What
 * {@link DiveStudy} measures over many stands in DEVELOPERS.md.
 */
class DiveStudyTest {
    private static final long[] SEEDS = {301, 302, 304};
    private static final long[] BUMPY = {7001, 8020, 8087};
    private static final Map<Long, Truth> BUMPS = new TreeMap<>();
    private static TailScore score = new TailScore();

    @BeforeAll
    static void debriefAFewDives() throws UnusableInputException {
        score = new TailScore();
        for (long seed : BUMPY) {
            BUMPS.put(seed, MadeDives.fly(seed));
        }
        for (long seed : SEEDS) {
            Truth truth = MadeDives.fly(seed);
            DiveStudy.add(score, truth, seed, MadeDives.Logged.ALL);
        }
    }

    @Test
    void episodesAreFoundAmongThingsThatOnlyLookLikeThem() {
        assertTrue(score.truths >= 4, score::toString);
        assertTrue(score.hits >= score.truths - 1, score::toString);
        assertTrue(score.found - score.matchedFound <= 1, score::toString);
    }

    /** Hard bumps in smooth air, which busy hands answer: the likeliest to be taken for a loss. */
    @ParameterizedTest
    @EnumSource
    void hardBumpsMakeNoEpisodeWhateverIsNotLogged(MadeDives.Logged logged)
            throws UnusableInputException {
        TailScore bumpy = new TailScore();
        for (long seed : BUMPY) {
            DiveStudy.add(bumpy, Objects.requireNonNull(BUMPS.get(seed)), seed, logged);
        }
        assertEquals(bumpy.matchedFound, bumpy.found, () -> bumpy.misses.toString());
    }

    /** The same bump with all channels logged is still taken for a loss. */
    @ParameterizedTest
    @EnumSource(names = {"NO_LEVER", "NO_POWER", "NO_RATES", "NO_RUDDER"})
    void anElevatorNearItsStopForAMomentMakesNoEpisodeWhereChannelsAreMissing(
            MadeDives.Logged logged) throws UnusableInputException {
        TailScore bumpy = new TailScore();
        DiveStudy.add(bumpy, MadeDives.fly(11031), 11031, logged);
        assertEquals(bumpy.matchedFound, bumpy.found, () -> bumpy.misses.toString());
        assertTrue(bumpy.hits >= 1, bumpy::toString);
    }

    @Test
    void theBrakingLiesWithinItsPlusAndMinus() {
        assertTrue(score.coefficientWithin(2) >= 0.8, score::toString);
    }

    @Test
    void theirStartsAndTheMovesBeforeThemAreKnown() {
        assertTrue(score.onset_s() <= 1, score::toString);
        assertTrue(score.onsetWithinTwoSigma() >= 0.5, score::toString);
        assertTrue(score.rightlyNamed >= score.named - 1, score::toString);
    }
}
