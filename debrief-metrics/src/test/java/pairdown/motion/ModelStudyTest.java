package pairdown.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ModelStudyTest {
    /**
     * Six flights; position errors last 45 s, so their mean square is known to 6 % here and to 3 %
     * over the many seeds of the study.
     */
    @Test
    void onTheModelsOwnMotionTheBoundIsMetAndSigmasAreHonest() {
        ModelStudy study = ModelStudy.of(1, 7);
        assertTrue(study.positionOverBound() < 1.15, study::toString);
        assertTrue(study.velocityOverBound() < 1.1, study::toString);
        assertEquals(1, study.neesPerDimension(), 0.15, study::toString);
    }
}
