package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pairdown.stats.Proportion;

/** Two model flights of one aircraft, and what they say together. */
class TailSeasonTest {
    private static List<TailControl> flown = List.of();
    private static List<TailSummary> summaries = List.of();
    private static TailSeason season = nothing();

    private static TailSeason nothing() {
        return new TailSeason(
                "",
                0,
                0,
                0,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                new Proportion(0, 0));
    }

    private static TailControl analysed(long seed) {
        ModelDive dive = ModelFlights.dive(seed);
        return TailAnalysis.analyse(ModelFlights.input(dive, ModelFlights.log(dive, 8, seed)));
    }

    @BeforeAll
    static void flyTwice() {
        flown = List.of(analysed(203), analysed(205));
        summaries = flown.stream().map(TailSummary::of).toList();
        season = TailSeason.of(summaries, TailSettings.DEFAULT).get(0);
    }

    @Test
    void countsAreTheSumsOfTheAttempts() {
        int both = 0;
        int total = 0;
        for (TailControl t : flown) {
            both += t.review().changeTable().orElseThrow().counts().both();
            total += t.review().changeTable().orElseThrow().counts().total();
        }
        assertEquals(both, season.changeTable().orElseThrow().counts().both());
        assertEquals(total, season.changeTable().orElseThrow().counts().total());
        assertEquals(2, season.attempts());
        assertEquals(flown.stream().mapToInt(t -> t.episodes().size()).sum(), season.episodes());
        assertTrue(total >= 8, "too few moves to say anything: " + total);
    }

    @Test
    void lagsAreThoseOfAllEpisodes() {
        int linked =
                (int)
                        flown.stream()
                                .flatMap(t -> t.episodes().stream())
                                .filter(e -> e.precededBy().isPresent())
                                .count();
        assertEquals(linked, season.precededLag().orElseThrow().episodes());
    }

    /** The average over both is the attempts' averages weighted by their changes. */
    @Test
    void theAverageIsOverAllChanges() {
        EventAverage all = average(season.averages(), true);
        double sum = 0;
        int n = 0;
        for (TailControl t : flown) {
            EventAverage one = average(t.review().averages(), true);
            sum += one.changes() * one.band().get(40).mean();
            n += one.changes();
        }
        assertEquals(n, all.changes());
        assertEquals(sum / n, all.band().get(40).mean(), 0.02);
        assertTrue(all.band().get(40).low() <= all.band().get(40).mean());
        assertTrue(all.band().get(40).high() >= all.band().get(40).mean());
    }

    private static EventAverage average(List<EventAverage> averages, boolean towardReverse) {
        return averages.stream()
                .filter(a -> a.figure().equals(TailFigures.EFFECTIVENESS))
                .filter(a -> a.towardReverse() == towardReverse)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void idleDragIsFromTheIdleFlightOfAll() {
        double together_s = season.idle_s();
        double apart_s =
                flown.stream()
                        .mapToDouble(t -> t.review().idle().orElseThrow().met().duration_s())
                        .sum();
        assertEquals(apart_s, together_s, 1e-9);
    }

    /** By the log's own drag at idle a curve's Tc′ is the attempt's. */
    @Test
    void aCurvesCoefficientIsTheAttempts() {
        TailControl t = flown.get(0);
        IdleDrag own = t.review().idle().orElseThrow().drag();
        PowerChange change =
                t.powerChanges().stream()
                        .filter(c -> t.review().inDive(c.time_s()))
                        .findFirst()
                        .orElseThrow();
        double[] curve =
                t.review().curves().get(0).coefficient(own, TailSettings.Force.DEFAULT.disc_m2());
        double there =
                t.figure(TailFigures.RETARDING_COEFFICIENT).orElseThrow().at(change.time_s());
        assertEquals(there, curve[40], 0.01);
    }

    @Test
    void aSummaryIsTheSameAfterItWasKeptInAFile() throws IOException {
        JsonMapper mapper = new JsonMapper();
        TailSummary before = summaries.get(0);
        TailSummary after = mapper.readValue(mapper.writeValueAsString(before), TailSummary.class);
        assertEquals(before.idle(), after.idle());
        assertEquals(before.precededLags_s(), after.precededLags_s());
        for (int i = 0; i < before.curves().size(); i++) {
            assertArrayEquals(
                    before.curves().get(i).effectiveness(), after.curves().get(i).effectiveness());
            assertArrayEquals(before.curves().get(i).whole(), after.curves().get(i).whole());
        }
    }

    @Test
    void otherAircraftAreApart() {
        TailSummary s = summaries.get(0);
        TailSummary other =
                new TailSummary(
                        "other", 0, List.of(), List.of(), List.of(), List.of(), 0, 0, List.of(),
                        List.of());
        assertEquals(2, TailSeason.of(List.of(s, other), TailSettings.DEFAULT).size());
    }
}
