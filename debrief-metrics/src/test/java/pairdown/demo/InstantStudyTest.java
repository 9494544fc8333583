package pairdown.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pairdown.demo.physics.Scenario;
import pairdown.demo.physics.Simulation;
import pairdown.demo.receiver.GnssPlan.Velocity;
import pairdown.demo.truth.Truth;

/** Exits and openings of two simulated attempts; {@link InstantStudy} has the many seeds. */
class InstantStudyTest {
    private static final InstantStudy STUDY = new InstantStudy();

    @BeforeAll
    static void find() {
        for (long seed = 1; seed <= 2; seed++) {
            Truth truth = Simulation.run(Scenario.standard(seed));
            for (double rate_Hz : new double[] {1, 5}) {
                STUDY.add(truth, rate_Hz, Velocity.COMPONENTS, false, seed);
                STUDY.add(truth, rate_Hz, Velocity.COMPONENTS, true, seed);
            }
        }
    }

    @Test
    void allAreFound() {
        assertEquals(0, STUDY.missing());
    }

    @Test
    void exitsAreKnownToThreeTenthsOfASecond() {
        assertTrue(STUDY.tally("exit (s)").rms() < 0.3, STUDY::toString);
        assertTrue(STUDY.tally("exit (s)").shareWithin3Sigma() == 1, STUDY::toString);
    }

    @Test
    void exitsWhereTheSkyWasLostAreNoLater() {
        assertTrue(STUDY.tally("exit, sky lost (s)").rms() < 0.3, STUDY::toString);
        assertTrue(STUDY.tally("exit, sky lost (s)").shareWithin3Sigma() == 1, STUDY::toString);
    }

    @Test
    void openingsAreKnownToASecond() {
        assertTrue(STUDY.tally("opening (s)").worst() < 1, STUDY::toString);
        assertTrue(STUDY.tally("opening (s)").shareWithin3Sigma() == 1, STUDY::toString);
    }
}
