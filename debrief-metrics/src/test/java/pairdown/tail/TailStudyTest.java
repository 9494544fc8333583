package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The analysis on a few model flights, against their truth; a little looser than what {@link
 * TailStudy} measures over many.
 */
class TailStudyTest {
    private static TailScore score = new TailScore();

    @BeforeAll
    static void analyseAFewFlights() {
        score = TailStudy.over(201, 208);
    }

    @Test
    void nearlyEveryLossOfControlIsFound() {
        assertTrue(score.truths >= 15, "only " + score.truths);
        assertTrue(score.recall() >= 0.9, score::toString);
    }

    @Test
    void roughAirSlipAndPowerWithoutEffectMakeNoEpisode() {
        assertTrue(score.precision() >= 0.9, score::toString);
        assertEquals(0, score.namedForNothing, score::toString);
    }

    @Test
    void itsStartIsKnownToHalfASecondAndItsSigmaHolds() {
        assertTrue(score.onset_s() <= 0.5, score::toString);
        assertTrue(score.onsetWithin(2) >= 0.85, score::toString);
        assertTrue(score.onsetWithinTwoSigma() >= 0.8, score::toString);
    }

    @Test
    void theMoveOfPowerBeforeItIsNamed() {
        assertTrue(score.naming() >= 0.85, score::toString);
        assertEquals(0, score.lagError_s(), 0.5, score::toString);
    }

    @Test
    void retardingCoefficientIsWithinATenth() {
        assertTrue(score.coefficientError() <= 0.1, score::toString);
    }
}
