package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import pairdown.time.Span;

/** What preceded an episode, what it ended after: words of time, never of cause. */
class PairingTest {
    private static final Pairing PAIRING = new Pairing(TailSettings.Power.DEFAULT);

    private static Episode episode(double start_s, double end_s, double sigma_s) {
        return new Episode(
                new Span(start_s, end_s),
                sigma_s,
                List.of(Episode.Sign.LOST_EFFECTIVENESS, Episode.Sign.EXCURSION),
                Episode.Grade.MILD,
                OptionalDouble.of(0.2),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    private static PowerChange move(double time_s, double from, double to) {
        return new PowerChange(
                time_s, PowerSource.POWER_LEVER, from, to, to < from, OptionalInt.empty());
    }

    private static Episode paired(Episode e, PowerChange... changes) {
        return PAIRING.pair(List.of(e), List.of(changes)).episodes().get(0);
    }

    @Test
    void theLatestMoveTowardsReverseInTheFourSecondsBeforeIsNamed() {
        Episode e = paired(episode(100, 104, 0.3), move(96.5, 0, -20), move(98.9, -20, -60));
        assertEquals(98.9, e.precededBy().orElseThrow().change().time_s());
        assertEquals(1.1, e.precededBy().orElseThrow().lag_s(), 1e-9);
    }

    @Test
    void aMoveFiveSecondsBeforeIsNotNamed() {
        assertTrue(paired(episode(100, 104, 0.3), move(95, 0, -60)).precededBy().isEmpty());
    }

    @Test
    void aForwardMoveBeforeItIsNotNamed() {
        assertTrue(paired(episode(100, 104, 0.3), move(99, -60, -30)).precededBy().isEmpty());
    }

    @Test
    void aMoveWithinTheStartsOwnUncertaintyIsNamedWithNoLag() {
        Episode e = paired(episode(100, 104, 0.8), move(101, -20, -60));
        assertEquals(0, e.precededBy().orElseThrow().lag_s());
        assertTrue(paired(episode(100, 104, 0.2), move(101, -20, -60)).precededBy().isEmpty());
    }

    @Test
    void itEndedAfterTheFirstForwardMoveSinceItsStart() {
        Episode e =
                paired(
                        episode(100, 104, 0.3),
                        move(99.5, -60, -50),
                        move(102, -50, -20),
                        move(103, -20, 0));
        assertEquals(102, e.endedAfter().orElseThrow().change().time_s());
        assertEquals(2, e.endedAfter().orElseThrow().lag_s(), 1e-9);
    }

    @Test
    void theMoveKnowsTheEpisodeThatFollowedIt() {
        Pairing.Paired paired =
                PAIRING.pair(
                        List.of(episode(100, 104, 0.3)),
                        List.of(move(60, 0, -20), move(99, -20, -60)));
        assertEquals(OptionalInt.empty(), paired.changes().get(0).episode());
        assertEquals(OptionalInt.of(0), paired.changes().get(1).episode());
    }
}
