package pairdown.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairdown.season.SeasonSamples.dive;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pairdown.season.Repeatability.Quantity;
import pairdown.season.Repeatability.Run;

class RepeatabilityTest {
    private static Repeatability of(List<AttemptSummary> attempts) {
        return Repeatability.byConfiguration(attempts, SeasonSettings.DEFAULT).get(0);
    }

    private static List<AttemptSummary> dives(int held, int missed) {
        List<AttemptSummary> dives = new ArrayList<>();
        for (int i = 0; i < held + missed; i++) {
            dives.add(dive(i, i < held, OptionalDouble.of(5 + i), 0));
        }
        return dives;
    }

    // Wilson 95 %: 9 of 10 is 0.596 to 0.982, 10 of 10 is 0.722 to 1, 3 of 3 0.44 to 1. E. B.
    // Wilson
    // (1927); SciPy 1.17.1 binomtest(9, 10).proportion_ci(method='wilson').
    @Test
    void dividesHeldByJudgedWithWilsonsInterval() {
        Repeatability nine = of(dives(9, 1));
        assertEquals(9, nine.held().successes());
        assertEquals(10, nine.held().trials());
        assertEquals(0.5958, nine.interval().low(), 5e-5);
        assertEquals(0.9821, nine.interval().high(), 5e-5);
        assertEquals(0.7225, of(dives(10, 0)).interval().low(), 5e-5);
        assertEquals(1, of(dives(10, 0)).interval().high());
        assertEquals(0.44, of(dives(3, 0)).interval().low(), 0.005);
    }

    @Test
    void anEpisodeMakesAHeldDiveNoSuccess() {
        List<AttemptSummary> dives = new ArrayList<>(dives(4, 0));
        dives.add(dive(9, true, OptionalDouble.of(6), 1));
        assertEquals(4, of(dives).held().successes());
        assertEquals(5, of(dives).held().trials());
    }

    @Test
    void divesOfAnotherConfigurationAreTrialsOfAnotherThing() {
        List<AttemptSummary> dives = new ArrayList<>();
        dives.add(dive(0, "flap 40°, idle", false));
        dives.add(dive(1, "flap 40°, idle", false));
        dives.add(dive(2, "flap 40°, reverse", true));
        dives.add(dive(3, "flap 40°, idle", false));
        dives.add(dive(4, "flap 40°, reverse", true));
        List<Repeatability> all = Repeatability.byConfiguration(dives, SeasonSettings.DEFAULT);
        assertEquals(2, all.size());
        assertEquals("flap 40°, reverse", all.get(0).configuration().orElseThrow());
        assertEquals(2, all.get(0).held().successes());
        assertEquals(2, all.get(0).held().trials());
        assertEquals(3, all.get(1).held().trials());
    }

    @Test
    void whatAFlyerExceededDoesNotSpoilTheDescent() {
        assertTrue(
                SeasonSamples.exceeding(List.of("closure"), List.of()).descentHeld().orElseThrow());
        assertFalse(
                SeasonSamples.exceeding(List.of("maximumAirspeed"), List.of("maximumAirspeed"))
                        .descentHeld()
                        .orElseThrow());
    }

    @Test
    void anAttemptWithoutADescentIsNoTrial() {
        assertEquals(0, of(List.of(SeasonSamples.attempt(1, 30))).held().trials());
        assertEquals(1, of(List.of(SeasonSamples.attempt(1, 30))).interval().high());
    }

    /**
     * Watched 60 s each: three steady at 4, 7 and 7 s, two never. The curve is 0.8, then 0.4: half
     * are steady by 7 s. SciPy 1.17.1 ecdf(CensoredData([4, 7, 7], right=[60, 60])).sf: 0.8, 0.4.
     */
    @Test
    void divesThatWereNeverSteadyCountAsWatchedOnly() {
        List<AttemptSummary> dives =
                List.of(
                        dive(1, true, OptionalDouble.of(7), 0),
                        dive(2, false, OptionalDouble.empty(), 0),
                        dive(3, true, OptionalDouble.of(4), 0),
                        dive(4, true, OptionalDouble.of(7), 0),
                        dive(5, false, OptionalDouble.empty(), 0));
        Repeatability r = of(dives);
        assertEquals(2, r.neverStabilised());
        assertEquals(7, r.medianStabilise_s().orElseThrow());
        assertEquals(0.8, r.stabilise().surviving(5), 1e-12);
        assertEquals(0.4, r.stabilise().surviving(30), 1e-12);
    }

    @Test
    void whereMostWereNeverSteadyThereIsNoMedian() {
        List<AttemptSummary> dives =
                List.of(
                        dive(1, true, OptionalDouble.of(7), 0),
                        dive(2, false, OptionalDouble.empty(), 0),
                        dive(3, false, OptionalDouble.empty(), 0));
        assertTrue(of(dives).medianStabilise_s().isEmpty());
    }

    @Test
    void aRunHasLimitsFromEightDivesOn() {
        Run seven = run(of(dives(7, 0)));
        assertEquals(7, seven.chart().values().size());
        assertTrue(seven.chart().limits().isEmpty());
        // 5, 6 … 12: mean 8.5, mean range 1; 8.5 ± 2.66, the factor of the individuals chart.
        Run eight = run(of(dives(8, 0)));
        assertEquals(8.5 - 2.66, eight.chart().limits().orElseThrow().low(), 0.001);
        assertEquals(8.5 + 2.66, eight.chart().limits().orElseThrow().high(), 0.001);
        assertEquals(
                List.of("00", "01"),
                eight.dives().stream().limit(2).map(AttemptSummary::attempt).toList());
        assertEquals(List.of(0, 7), eight.chart().outside());
    }

    private static Run run(Repeatability r) {
        return r.runs().stream()
                .filter(x -> x.quantity() == Quantity.TIME_TO_STABILISE)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aFigureNoDiveHasMakesNoRun() {
        assertTrue(
                of(dives(9, 0)).runs().stream()
                        .noneMatch(x -> x.quantity() == Quantity.PEAK_ELEVATOR));
    }
}
