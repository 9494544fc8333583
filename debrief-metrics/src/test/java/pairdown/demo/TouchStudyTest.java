package pairdown.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import pairdown.demo.DebriefStudy.Flown;
import pairdown.demo.TouchStudy.Logged;
import pairdown.demo.TouchStudy.Variant;

/** A few simulated contacts and hovers; {@link TouchStudy} has the many seeds. */
class TouchStudyTest {
    @Test
    void contactsAreLikelyAndNothingElseIs() throws Exception {
        TouchErrors errors =
                TouchStudy.run(Flown.TOUCH_FOR_6_S, new Variant(5, Logged.SYSTEMS), 1, 2);
        assertEquals(4, errors.contacts(), errors::toString);
        assertEquals(4, errors.likely(), errors::toString);
        assertEquals(0, errors.strayLikely(), errors::toString);
        assertTrue(errors.anchored_m().rms() < 1, errors::toString);
        assertTrue(errors.anchoredAfter_m().rms() < 1, errors::toString);
    }

    /** In the first seed rough air rolls the lead towards amber as a touch would. */
    @Test
    void aHoverIsNotLikely() throws Exception {
        TouchErrors errors =
                TouchStudy.run(Flown.HOVER_AT_1_5_M, new Variant(5, Logged.SYSTEMS), 1, 1);
        assertEquals(0, errors.contacts(), errors::toString);
        assertEquals(0, errors.strayLikely(), errors::toString);
    }

    @Test
    void withoutControlsTheBlowOnTheFlyersOwnLoggerTells() throws Exception {
        TouchErrors errors =
                TouchStudy.run(Flown.TOUCH_FOR_6_S, new Variant(5, Logged.FLYER_LOADS), 4, 1);
        assertEquals(2, errors.likely(), errors::toString);
        assertEquals(0, errors.strayLikely(), errors::toString);
    }

    @Test
    void atOneFixASecondNothingCanBeTold() throws Exception {
        TouchErrors errors =
                TouchStudy.run(Flown.TOUCH_FOR_6_S, new Variant(1, Logged.FLYER_LOADS), 1, 1);
        assertEquals(2, errors.contacts());
        assertEquals(0, errors.likely(), errors::toString);
        assertEquals(2, errors.refused(), errors::toString);
    }
}
