package pairdown.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import pairdown.debrief.Debrief;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries.Figure;
import pairdown.replay.Alignment.On;

class AlignmentTest {
    private static final double LATER_S = 30;

    private final Debrief first = new SyntheticDebrief().build();
    private final Debrief other = new SyntheticDebrief().joiningLater(LATER_S, "other").build();

    @ParameterizedTest
    @CsvSource({"EXIT, 0", "FIRST_MATCH, 30", "CLOSEST, 30"})
    void theMomentSharedIsEachAttemptsOwn(On on, double later_s) {
        Alignment alignment = Alignment.of(first, other, on, 30).orElseThrow();
        assertEquals(later_s, alignment.other_s() - alignment.first_s(), 1);
        double t_s = alignment.first_s() + 7;
        assertEquals(alignment.other_s() + 7, alignment.toOther_s(t_s), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"100", "30", "10"})
    void aGapIsSharedWhereItIsFirstReached(double gap_m) {
        Alignment alignment = Alignment.of(first, other, On.GAP, gap_m).orElseThrow();
        assertEquals(gap_m, gapAt(first, alignment.first_s()), 2);
        assertEquals(gap_m, gapAt(other, alignment.other_s()), 2);
    }

    private static double gapAt(Debrief debrief, double t_s) {
        PairDebrief pair = debrief.pairs().get(0);
        int row = (int) Math.round((t_s - pair.series().time_s(0)) / pair.series().step_s());
        return pair.series().value(Figure.GAP, row);
    }

    @ParameterizedTest
    @EnumSource(On.class)
    void withAnAttemptWithoutPairsNothingButTheExitIsShared(On on) {
        Debrief alone = withoutPairs(first);
        Optional<Alignment> alignment = Alignment.of(first, alone, on, 30);
        assertTrue(on == On.EXIT ? alignment.isPresent() : alignment.isEmpty());
    }

    private static Debrief withoutPairs(Debrief d) {
        return new Debrief(
                d.attempt(),
                d.settings(),
                d.axis(),
                d.frame(),
                d.span(),
                d.clock(),
                d.heights(),
                d.quality(),
                d.wind(),
                d.participants(),
                d.events(),
                List.of(),
                d.tailControl(),
                d.safety(),
                d.notes());
    }
}
