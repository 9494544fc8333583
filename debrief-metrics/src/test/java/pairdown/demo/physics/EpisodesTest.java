package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import pairdown.demo.truth.TrueEpisode;
import pairdown.demo.truth.TruePowerChange;
import pairdown.demo.truth.TrueTail;

/** Tail episodes by hand: a second a row, the dive from row 10 to row 89 at a level of 0.4. */
class EpisodesTest {
    private static final int ROWS = 100;

    private static TrueTail tail(double level, int from, int to, double lost) {
        double[] elevator = new double[ROWS];
        Arrays.fill(elevator, 1);
        boolean[] diving = new boolean[ROWS];
        for (int i = 10; i < 90; i++) {
            diving[i] = true;
            elevator[i] = i >= from && i < to ? lost : level;
        }
        return new TrueTail(new double[ROWS], elevator, elevator.clone(), diving);
    }

    @Test
    void belowSixTenthsOfTheDivesOwnLevelIsAnEpisode() {
        List<TrueEpisode> found = Episodes.of(tail(0.4, 40, 44, 0.2), List.of(), 1);
        assertEquals(1, found.size());
        assertEquals(40, found.get(0).start_s());
        assertEquals(44, found.get(0).end_s());
        assertTrue(found.get(0).precededBy().isEmpty());
        assertEquals(List.of(), Episodes.of(tail(0.4, 40, 44, 0.25), List.of(), 1));
    }

    @Test
    void aStandingLowLevelIsNone() {
        assertEquals(List.of(), Episodes.of(tail(0.16, 40, 44, 0.12), List.of(), 1));
    }

    @Test
    void betweenSixAndSevenAndAHalfTenthsAnEpisodeGoesOn() {
        double[] elevator = tail(0.4, 40, 42, 0.2).elevator();
        elevator[42] = 0.28;
        elevator[43] = 0.28;
        TrueTail tail =
                new TrueTail(
                        new double[ROWS], elevator, elevator.clone(), tail(0.4, 0, 0, 0).diving());
        assertEquals(44, Episodes.of(tail, List.of(), 1).get(0).end_s());
    }

    @Test
    void theLatestMoveTowardReverseInFourSecondsPrecedesAndTheFirstForwardOneEnds() {
        List<TruePowerChange> changes =
                List.of(
                        new TruePowerChange(30, 0, -40),
                        new TruePowerChange(37, -40, -44),
                        new TruePowerChange(38.5, -44, -70),
                        new TruePowerChange(39, -70, -69),
                        new TruePowerChange(42, -69, -50),
                        new TruePowerChange(43, -50, -30));
        TrueEpisode found = Episodes.of(tail(0.4, 40, 44, 0.1), changes, 1).get(0);
        assertEquals(38.5, found.precededBy().orElseThrow().time_s());
        assertEquals(42, found.endedAfter().orElseThrow().time_s());
    }
}
