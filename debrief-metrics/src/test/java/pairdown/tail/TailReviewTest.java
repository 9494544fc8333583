package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pairdown.stats.Bootstrap;
import pairdown.stats.TwoByTwo;
import pairdown.time.Span;
import pairdown.track.Series;

/** The pilot's tables on a model flight, and averages on a made one. */
class TailReviewTest {
    private static final long SEED = 205;
    private static ModelDive dive = ModelFlights.dive(SEED);
    private static TailControl tail = TailAnalysis.analyse(ModelFlights.input(dive, Map.of()));

    @BeforeAll
    static void fly() {
        tail = TailAnalysis.analyse(ModelFlights.input(dive, ModelFlights.log(dive, 10, SEED)));
    }

    @Test
    void theDiveIsFromTheFirstToTheLastReverse() {
        assertEquals(1, tail.review().dives().size());
        Span judged = tail.review().dives().get(0);
        assertTrue(judged.start_s() >= dive.script.descent_s());
        assertEquals(dive.script.recovery_s(), judged.end_s(), 2);
    }

    @Test
    void everyMoveOfPowerInTheDiveIsCountedOnce() {
        long moves =
                tail.powerChanges().stream().filter(c -> tail.review().inDive(c.time_s())).count();
        assertEquals(moves, tail.review().changeTable().orElseThrow().counts().total());
    }

    /** Episodes lie further apart than a stretch is long, so that none holds two starts. */
    @Test
    void asManyStretchesHaveAStartAsThereWereEpisodesInTheDive() {
        TwoByTwo counts = tail.review().stretchTable().orElseThrow().counts();
        long episodes =
                tail.episodes().stream()
                        .filter(e -> tail.review().inDive(e.span().start_s()))
                        .count();
        double length_s = TailSettings.Power.DEFAULT.before_s();
        assertEquals(episodes, counts.both() + counts.secondOnly());
        assertEquals(
                Math.floor(tail.review().dives().get(0).duration_s() / length_s), counts.total());
    }

    @Test
    void theMapHasNoCellWithoutASampleAndNoSampleTwice() {
        List<TailReview.MapCell> cells = tail.review().map();
        assertFalse(cells.isEmpty());
        assertTrue(cells.stream().allMatch(c -> c.samples() >= 1));
        assertTrue(cells.stream().allMatch(c -> c.inEpisode() <= c.samples()));
        double length_s = tail.review().dives().get(0).duration_s();
        int samples = cells.stream().mapToInt(TailReview.MapCell::samples).sum();
        assertTrue(samples <= length_s + 1, samples + " in " + length_s + " s");
    }

    @Test
    void everyDescentHasItsRowWithTheTimeItWentIntoReverse() {
        DescentSequence row = tail.review().sequences().get(0);
        OptionalDouble truly =
                dive.script.lever().stream()
                        .filter(m -> m.to_pct() < 0)
                        .mapToDouble(ModelDive.LeverMove::time_s)
                        .min();
        assertEquals(truly.orElseThrow(), row.reverse_s().orElseThrow(), 0.4);
        assertEquals(tail.episodes().size(), row.episodes().size());
    }

    /** A step of −0.2 half a second after each of six moves, each from a level of its own. */
    @Test
    void theAverageIsTheStepAndItsBandHoldsIt() {
        int n = 2000;
        double[] time = new double[n];
        float[] value = new float[n];
        for (int i = 0; i < n; i++) {
            time[i] = i * 0.1;
            int move = (int) (time[i] / 30);
            value[i] = (float) (0.5 + 0.05 * move - (time[i] % 30 >= 15.45 ? 0.2 : 0));
        }
        List<PowerChange> moves =
                List.of(15.0, 45.0, 75.0, 105.0, 135.0, 165.0).stream().map(t -> move(t)).toList();
        TailControl made =
                new TailControl(
                        "lead",
                        OptionalDouble.empty(),
                        List.of(),
                        moves,
                        Map.of("effectiveness", Series.of(time, value, false)),
                        List.of(),
                        true,
                        TailReview.NONE.over(List.of(new Span(0, 200))));
        EventAverage average =
                EventAverage.over(
                        List.of(made), "effectiveness", true, TailSettings.Review.DEFAULT);
        assertEquals(6, average.changes());
        Bootstrap.BandPoint before = average.band().get(30);
        Bootstrap.BandPoint after = average.band().get(60);
        assertEquals(-1, average.time_s(30), 1e-9);
        assertEquals(-0.2, after.mean() - before.mean(), 1e-6);
        assertTrue(after.low() <= after.mean() && after.mean() <= after.high());
    }

    private static PowerChange move(double time_s) {
        return new PowerChange(
                time_s, PowerSource.POWER_LEVER, -30, -60, true, OptionalInt.empty());
    }
}
