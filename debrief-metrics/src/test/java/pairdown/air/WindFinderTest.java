package pairdown.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pairdown.attempt.AirSettings;
import pairdown.motion.LogFixture;
import pairdown.vector.Vec3;

class WindFinderTest {
    @Test
    void fullCirclesGiveTheWindToAMetreASecondAndTheAirspeedWithIt() throws Exception {
        WindStudy study = new WindStudy(6);
        for (int seed = 1; seed <= 3; seed++) {
            study.add(seed);
        }
        assertTrue(study.windRms() < 1, study::toString);
        assertTrue(study.casRms() < 1.2, study::toString);
        assertTrue(study.nees() < 1.6, study::toString);
    }

    @Test
    void whereNoTurnWasFlownTheWindGoesOnChangingAsInTheMean() throws Exception {
        double squares = 0;
        for (int seed = 1; seed <= 5; seed++) {
            Wind.Layer lowest = new WindStudy(6, 45).add(seed).layers().get(0);
            Vec3 truth = WindStudy.wind(lowest.middle_m());
            double off_mps =
                    Math.hypot(
                            lowest.towardEast_mps() - truth.x(),
                            lowest.towardNorth_mps() - truth.y());
            squares += off_mps * off_mps / 5;
        }
        assertTrue(Math.sqrt(squares) < 1, "root mean square " + Math.sqrt(squares));
    }

    @Test
    void aStraightClimbIsRefusedInWords() throws Exception {
        Wind wind = new WindStudy(0.1).add(1);
        assertFalse(wind.isKnown());
        assertEquals("none", wind.method());
        assertTrue(
                wind.notes().stream().anyMatch(n -> n.contains("too little for a wind")),
                wind.notes()::toString);
    }

    @Test
    void standingAndTakingOffAreNoTurnAtASteadyAirspeed() throws Exception {
        WindStudy study = new WindStudy(3, 0).fromTheGround(90);
        for (int seed = 1; seed <= 3; seed++) {
            study.add(seed);
        }
        assertTrue(study.windRms() < 1.2, study::toString);
        assertTrue(study.nees() < 1.6, study::toString);
    }

    @Test
    void halfACircleIsUsedAndSaidToBeRough() throws Exception {
        Wind wind = new WindStudy(3).add(1);
        assertEquals("climb-headings", wind.method());
        assertTrue(
                wind.notes().stream().anyMatch(n -> n.contains("its wind is rough")),
                wind.notes()::toString);
    }

    @Test
    void aTypedWindAloneIsTakenWithItsDoubt() {
        AirSettings typed =
                new AirSettings(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        List.of(new AirSettings.WindAloft(1000, 270, 6)));
        Wind wind = WindFinder.find(List.of(), typed, WindStudy.AIR, LogFixture.FRAME);
        Vec3 w = wind.at(1030).orElseThrow();
        assertEquals(6, w.x(), 0.2);
        assertEquals(0, w.y(), 0.2);
        assertEquals(2.5, wind.sigma_mps(1030), 0.3);
        assertEquals("winds-aloft", wind.method());
    }
}
