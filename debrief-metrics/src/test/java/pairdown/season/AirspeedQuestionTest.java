package pairdown.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pairdown.attempt.AirspeedKind;
import pairdown.attempt.Target;

class AirspeedQuestionTest {
    private static final Target CALIBRATED = target(AirspeedKind.CALIBRATED, 38);
    private static final Target TRUE = target(AirspeedKind.TRUE, 38);

    private static Target target(AirspeedKind kind, double v_mps) {
        return new Target(v_mps, kind, 17.78, 1.5, 1, 10);
    }

    /** Four segments at the target's sink; at 3,000 m true is 1.16 times calibrated. */
    private static List<SteadySegment> flown(double calibrated_mps, double true_mps) {
        return Collections.nCopies(
                4,
                new SteadySegment(
                        "lead",
                        "lead",
                        "idle",
                        0,
                        5,
                        calibrated_mps,
                        true_mps,
                        17.5,
                        OptionalDouble.empty()));
    }

    private static Optional<String> ask(List<SteadySegment> lead, Target... targets) {
        return AirspeedQuestion.of(lead, List.of(targets));
    }

    @Test
    void aTargetFlownInTheOtherKindIsQuestioned() {
        assertTrue(ask(flown(32.8, 38), CALIBRATED).orElseThrow().contains("as true airspeed"));
        assertTrue(ask(flown(38, 44), TRUE).orElseThrow().contains("as calibrated airspeed"));
    }

    @Test
    void aTargetFlownAsItWasMeantIsNot() {
        assertEquals(Optional.empty(), ask(flown(38, 44), CALIBRATED));
        assertEquals(Optional.empty(), ask(flown(32.8, 38), TRUE));
        assertEquals(Optional.empty(), ask(flown(50, 58), CALIBRATED));
        assertEquals(Optional.empty(), ask(flown(38, 44).subList(0, 2), TRUE));
    }

    @Test
    void oneNumberInBothKindsIsQuestioned() {
        assertTrue(ask(List.of(), TRUE, CALIBRATED).orElseThrow().contains("which is meant"));
        assertEquals(Optional.empty(), ask(List.of(), target(AirspeedKind.TRUE, 44), CALIBRATED));
        assertEquals(Optional.empty(), ask(List.of()));
    }
}
