package pairdown.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Four jumps; over the 20 of {@link FlightStudy#main} the same figures are tighter. */
class FlightStudyTest {
    @Test
    void onAJumpThatIsNotTheModelItIsNearTheBestTuningAndHonest() throws Exception {
        FlightStudy study = FlightStudy.of(1, 5, 5, true);
        FlightStudy.Score ours = study.ours;
        assertTrue(ours.positionRms() < 1.5 * study.bestPositionRms(), study::toString);
        assertTrue(ours.velocityRms() < 1.5 * study.bestVelocityRms(), study::toString);
        assertEquals(1.1, ours.positionNees / ours.count, 0.5, study::toString);
        assertEquals(1.1, ours.velocityNees / ours.count, 0.5, study::toString);
        assertEquals(0.68, ours.velocityIn68 / ours.count, 0.07, study::toString);
        assertEquals(0.95, ours.velocityIn95 / ours.count, 0.07, study::toString);
    }

    @Test
    void outliersAndHolesCostLittleOutsideTheHoles() throws Exception {
        FlightStudy study = FlightStudy.of(1, 5, 5, true);
        assertTrue(study.dirty.positionRms() < 1.5 * study.clean.positionRms(), study::toString);
        assertTrue(study.dirty.velocityRms() < 1.5 * study.clean.velocityRms(), study::toString);
        assertTrue(study.dirty.rejected > 300, study::toString);
    }
}
