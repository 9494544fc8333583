package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pairdown.track.Channel;
import pairdown.track.Series;

/** What is still told where channels are missing or slow, and that it is said. */
class DegradedTest {
    private static final long SEED = 203;
    private static final double RATE_HZ = 8;
    private static ModelDive dive = ModelFlights.dive(SEED);
    private static Map<Channel, Series> log = Map.of();

    /** Kinds of recorders. */
    enum Recorder {
        WITHOUT_ELEVATOR,
        WITHOUT_LEVER,
        WITHOUT_RATES,
        WITHOUT_CONTROLS,
        ONCE_A_SECOND
    }

    @BeforeAll
    static void flyOnce() {
        dive = ModelFlights.dive(SEED);
        log = ModelFlights.log(dive, RATE_HZ, SEED);
    }

    private static TailControl analyse(Map<Channel, Series> logged) {
        return TailAnalysis.analyse(ModelFlights.input(dive, logged));
    }

    private static Map<Channel, Series> without(Channel... channels) {
        Map<Channel, Series> left = new EnumMap<>(log);
        for (Channel c : channels) {
            left.remove(c);
        }
        return left;
    }

    private static Map<Channel, Series> by(Recorder recorder) {
        return switch (recorder) {
            case WITHOUT_ELEVATOR -> without(Channel.ELEVATOR);
            case WITHOUT_LEVER -> without(Channel.POWER_LEVER);
            case WITHOUT_RATES -> without(Channel.PITCH_RATE, Channel.YAW_RATE);
            case WITHOUT_CONTROLS -> without(Channel.ELEVATOR, Channel.RUDDER);
            case ONCE_A_SECOND -> ModelFlights.log(dive, 1, SEED);
        };
    }

    private static String notes(TailControl t) {
        return String.join(" | ", t.notes());
    }

    @ParameterizedTest
    @EnumSource(Recorder.class)
    void noEpisodeIsFoundWhereNoneWas(Recorder recorder) {
        for (Episode e : analyse(by(recorder)).episodes()) {
            assertTrue(
                    dive.episodes().stream()
                            .anyMatch(
                                    t ->
                                            e.span().start_s() < t.end_s() + 2
                                                    && e.span().end_s() > t.start_s() - 2),
                    e.why());
        }
    }

    @ParameterizedTest
    @EnumSource(Recorder.class)
    void whatCannotBeSeenIsSaid(Recorder recorder) {
        String said = notes(analyse(by(recorder)));
        String expected =
                switch (recorder) {
                    case WITHOUT_ELEVATOR -> "elevator effectiveness can't be seen";
                    case WITHOUT_LEVER -> "without the power lever no idle descent can be told";
                    case WITHOUT_RATES -> "pitchRate_dps is not logged";
                    case WITHOUT_CONTROLS -> "rudder effectiveness can't be seen";
                    case ONCE_A_SECOND -> "1.0 Hz is too slow";
                };
        assertTrue(said.contains(expected), said);
    }

    @Test
    void withoutControlsNoEpisodesListedDoesNotMeanNone() {
        TailControl t = analyse(by(Recorder.WITHOUT_CONTROLS));
        assertFalse(t.tellsEpisodes());
        assertTrue(notes(t).contains("none listed does not mean none"));
        assertTrue(t.figure(TailFigures.EFFECTIVENESS).isEmpty());
        assertEquals(OptionalDouble.empty(), t.standingEffectiveness());
    }

    /** A pilot who does not work harder against a tail gone soft leaves no sign of it. */
    @ParameterizedTest
    @EnumSource(names = {"WITHOUT_RATES", "ONCE_A_SECOND"})
    void withoutEffectivenessNoEpisodesListedDoesNotMeanNone(Recorder recorder) {
        TailControl t = analyse(by(recorder));
        assertTrue(notes(t).contains("none listed does not mean none"), notes(t));
        assertEquals(!t.episodes().isEmpty(), t.tellsEpisodes());
    }

    /** Moved little, and in slip and rough air most: those are not told from a loss by it. */
    @Test
    void aRudderAloneNamesNoEpisodeAndThatIsSaid() {
        TailControl t = analyse(by(Recorder.WITHOUT_ELEVATOR));
        assertEquals(List.of(), t.episodes());
        assertFalse(t.tellsEpisodes());
        assertTrue(notes(t).contains("no episode is drawn from it"), notes(t));
        assertTrue(t.figure(TailFigures.EFFECTIVENESS).isPresent());
    }

    @Test
    void withoutRatesEffectivenessIsAbsentNotZero() {
        TailControl t = analyse(by(Recorder.WITHOUT_RATES));
        assertTrue(t.figure(TailFigures.EFFECTIVENESS).isEmpty());
        t.episodes().forEach(e -> assertEquals(OptionalDouble.empty(), e.minimumEffectiveness()));
    }

    @Test
    void withoutPowerChannelsNothingIsSaidToHavePreceded() {
        TailControl t = analyse(without(Channel.POWER_LEVER));
        assertTrue(t.powerChanges().isEmpty());
        t.episodes().forEach(e -> assertEquals(Optional.empty(), e.precededBy()));
    }

    @Test
    void nothingLoggedIsNothingSeen() {
        TailControl t = TailAnalysis.analyse(TailInput.of("lead", Map.of(), List.of()));
        assertFalse(t.tellsEpisodes());
        assertEquals(List.of(), t.episodes());
        assertFalse(t.notes().isEmpty());
    }

    @Test
    void noTextClaimsACauseOrThatSomethingIsSafe() {
        for (Recorder recorder : Recorder.values()) {
            TailControl t = analyse(by(recorder));
            String said = notes(t);
            for (Episode e : t.episodes()) {
                said += " " + e.why();
            }
            for (String word : List.of("caused", "safe", "cleared", "ready", "proven")) {
                assertFalse(said.toLowerCase(Locale.ROOT).contains(word), word + " in " + said);
            }
        }
    }
}
