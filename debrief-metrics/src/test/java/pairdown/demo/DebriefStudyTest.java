package pairdown.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Two simulated attempts through the whole pipeline; {@link DebriefStudy} has the many seeds. */
class DebriefStudyTest {
    private static final DebriefErrors ERRORS = new DebriefErrors();

    @BeforeAll
    static void debrief() throws Exception {
        DebriefStudy.run(ERRORS, DebriefStudy.Flown.HOLD_AT_30_M, 5, 1, 2);
    }

    private static Tally of(String figure) {
        return ERRORS.tally(figure);
    }

    @Test
    void clocksOfTheRideAgreeToHundredthsOfASecond() {
        assertTrue(
                of("satellite log clock as measured on the ride (s)").rms() < 0.06,
                ERRORS::toString);
        assertTrue(
                of("satellite log clock as measured on the ride (s)").shareWithin3Sigma() > 0.97,
                ERRORS::toString);
    }

    @Test
    void aRecorderWithLaggingPressureIsAlignedAtBothEnds() {
        assertTrue(
                of("recorder's clock at both ends, against the lead's (s)").worst() < 0.2,
                ERRORS::toString);
    }

    @Test
    void velocitiesAreKnownToAboutADecimetreASecondAndTheirSigmasAreHonest() {
        Tally velocity = of("flyer velocity, by axis (m/s)");
        assertTrue(velocity.rms() < 0.12, ERRORS::toString);
        assertEquals(1.1, velocity.normalisedSquare(), 0.5, ERRORS::toString);
    }

    @Test
    void positionsLieWithinTheirSigmas() {
        assertEquals(
                1.1, of("flyer position, by axis (m)").normalisedSquare(), 0.8, ERRORS::toString);
        assertTrue(of("flyer position, by axis (m)").shareWithin95() > 0.85, ERRORS::toString);
    }

    @Test
    void windAndAirspeedAreKnownToAMetreASecond() {
        assertTrue(of("wind by layer, vector (m/s)").rms() < 1, ERRORS::toString);
        assertTrue(of("flyer calibrated airspeed (m/s)").rms() < 1.2, ERRORS::toString);
        assertTrue(of("lead calibrated airspeed (m/s)").rms() < 1.2, ERRORS::toString);
    }

    @Test
    void closureIsKnownToAFewDecimetresASecond() {
        assertTrue(of("closure rate in the last 60 s (m/s)").rms() < 0.3, ERRORS::toString);
    }

    @Test
    void separationsLieWithinThreeOfTheirSigmas() {
        assertTrue(
                of("separation until the flyer leaves (m)").shareWithin3Sigma() > 0.9,
                ERRORS::toString);
    }

    @Test
    void nobodyIsSaidToHaveTouchedFromThirtyMetres() {
        assertEquals(0, ERRORS.touches().strayLikely(), ERRORS::toString);
    }
}
