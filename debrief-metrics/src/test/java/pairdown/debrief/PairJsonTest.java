package pairdown.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import pairdown.attempt.MatchedSettings;
import pairdown.pair.KnownMotion;
import pairdown.pair.PairAnalysis;
import pairdown.pair.PairInput;
import pairdown.pair.Scene;
import pairdown.time.TimeAxis;
import pairdown.vector.Vec3;

/** A pair in debrief.json, field by field as teams' scripts read it. */
class PairJsonTest {
    private static final double END_S = 40;
    private static final TimeAxis AXIS = new TimeAxis(Instant.parse("2031-05-14T15:00:00Z"));

    private static JsonNode json(PairInput input) {
        ObjectNode o = JsonNodeFactory.instance.objectNode();
        new PairJson(new JsonValues(AXIS)).fill(o, PairAnalysis.analyse(input));
        return o;
    }

    /** Goes by at 4 m/s, rising 0.6 m/s against the lead. */
    private static PairInput goingBy() {
        KnownMotion flyer =
                KnownMotion.straight(
                        END_S,
                        Scene.TOP_M.plus(new Vec3(-20, -80, -10)),
                        Scene.DIVE_MPS.plus(new Vec3(0, 4, 0.6)));
        return Scene.withGate(Scene.input(Scene.diving(END_S), flyer), 30);
    }

    @Test
    void aPairThatNeverMatchedHasNoSecondsAndHowFarOffItWas() {
        JsonNode matched = json(goingBy()).path("matched");
        assertEquals(0, matched.path("total_s").asDouble(-1));
        assertEquals(0, matched.path("longest_s").asDouble(-1));
        assertTrue(matched.path("windows").isEmpty());
        assertEquals(4, matched.path("bestLevelDifference_mps").asDouble(), 0.01);
        assertEquals(0.6, matched.path("bestVerticalDifference_mps").asDouble(), 0.01);
    }

    @Test
    void aGateOfAPairThatNeverMatchedIsShortWithoutAMedian() {
        JsonNode gate = json(goingBy()).path("gateHeld");
        assertEquals("short", gate.path("verdict").asText());
        assertFalse(gate.has("median_m"));
    }

    @Test
    void whereMatchingCannotBeToldThereIsNoZero() {
        PairInput in = goingBy();
        PairInput fine = Scene.with(in, in.wind(), in.slotArm(), new MatchedSettings(0.1, 0.1, 3));
        JsonNode matched = json(fine).path("matched");
        assertFalse(matched.has("total_s"));
        assertFalse(matched.path("refusals").isEmpty());
    }

    @Test
    void aMatchTellsItsTotalAndByHowMuchItMayBeOff() {
        KnownMotion flyer =
                KnownMotion.of(
                        END_S,
                        10,
                        t_s ->
                                Scene.TOP_M
                                        .plus(Scene.DIVE_MPS.times(t_s))
                                        .plus(
                                                new Vec3(
                                                        0,
                                                        -50 - Math.pow(Math.max(0, t_s - 20), 2),
                                                        0)));
        JsonNode matched = json(Scene.input(Scene.diving(END_S), flyer)).path("matched");
        // Leaves at 2.25 m/s, 1.1 s after 20 s; one sigma of 0.07 m/s is some hundredths of that.
        assertEquals(21.1, matched.path("total_s").asDouble(), 0.1);
        assertEquals(0.05, matched.path("totalShorter_s").asDouble(), 0.04);
        assertEquals(0.05, matched.path("totalLonger_s").asDouble(), 0.04);
        assertEquals("horizontal", matched.path("windows").get(0).path("endedBy").asText());
    }
}
