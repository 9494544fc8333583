package pairdown.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairdown.attempt.LeverArm;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * What logs beside the tracks show of a touch from 60 to 68 s. The sizes of steps are common
 * practice, no published source: 0.1 g and 1.5°/s on the lead, 0.3 g on the flyer.
 */
class ResponseTest {
    private static final Span LOCK = new Span(58, 68);
    private static final LeverArm LEFT = new LeverArm(0, -7, 0);
    private static final LeverArm RIGHT = new LeverArm(0, 7, 0);
    private static final PairSettings.Contact SETTINGS = PairSettings.Contact.DEFAULT;

    private static Series series(double rate_Hz, double noise, DoubleUnaryOperator of) {
        Random random = new Random(7);
        int n = (int) (120 * rate_Hz);
        double[] t_s = new double[n];
        float[] v = new float[n];
        for (int i = 0; i < n; i++) {
            t_s[i] = i / rate_Hz;
            v[i] = (float) (of.applyAsDouble(t_s[i]) + noise * random.nextGaussian());
        }
        return Series.of(t_s, v, false);
    }

    private static double during(double t_s, double from_s, double to_s, double value) {
        return t_s >= from_s && t_s < to_s ? value : 0;
    }

    private static AircraftResponse lead(Channel channel, Series series, LeverArm slot) {
        return new AircraftResponse(Map.of(channel, series), slot, SETTINGS);
    }

    @Test
    void rightAileronHeldAnswersAWeightOnTheLeftTipAndNotOnTheRight() {
        Series aileron = series(8, 0.6, t -> during(t, 60, 68, 6));
        assertTrue(lead(Channel.AILERON, aileron, LEFT).trimShiftIn(LOCK));
        assertFalse(lead(Channel.AILERON, aileron, RIGHT).trimShiftIn(LOCK));
    }

    @Test
    void aSlotUnderTheMiddleHasNoSide() {
        Series aileron = series(8, 0.6, t -> during(t, 60, 68, 6));
        LeverArm middle = new LeverArm(-5, 0, -2);
        assertTrue(lead(Channel.AILERON, aileron, middle).trimShiftIn(LOCK));
    }

    @Test
    void whenTheOtherTipIsLetGoNothingIsHeld() {
        // Held against the right tip until 61 s: back to the usual is no answer to the left.
        Series aileron = series(8, 0.6, t -> during(t, 45, 61, -6));
        assertFalse(lead(Channel.AILERON, aileron, LEFT).trimShiftIn(LOCK));
    }

    @Test
    void anAileronAtWorkInRoughAirIsNoTrim() {
        Series aileron = series(8, 0.6, t -> 6 * Math.sin(1.3 * t));
        assertFalse(lead(Channel.AILERON, aileron, LEFT).trimShiftIn(LOCK));
    }

    @Test
    void theRudderSpeaksOnlyWhereNoAileronIsLogged() {
        Series rudder = series(8, 0.6, t -> during(t, 60, 68, 6));
        Series aileron = series(8, 0.6, t -> 0);
        assertTrue(lead(Channel.RUDDER, rudder, LEFT).trimShiftIn(LOCK));
        assertFalse(
                new AircraftResponse(
                                Map.of(Channel.RUDDER, rudder, Channel.AILERON, aileron),
                                LEFT,
                                SETTINGS)
                        .trimShiftIn(LOCK));
    }

    @ParameterizedTest
    @CsvSource({"-2.5, true", "2.5, false", "-1.2, false"})
    void theLeadRollsTowardsTheTipThatIsTouched(double step_dps, boolean jolt) {
        Series roll = series(8, 0.1, t -> during(t, 60, 61, step_dps));
        assertEquals(jolt, lead(Channel.ROLL_RATE, roll, LEFT).joltIn(LOCK));
    }

    @ParameterizedTest
    @CsvSource({"10, 0.15, true", "10, 0.07, false", "5, 0.15, false"})
    void loadsStepByATenthOfAGInALogFastEnough(double rate_Hz, double step_g, boolean jolt) {
        Series load = series(rate_Hz, 0.01, t -> 1 + during(t, 60, 62, step_g));
        assertEquals(jolt, lead(Channel.NORMAL_LOAD, load, LEFT).joltIn(LOCK));
    }

    @ParameterizedTest
    @CsvSource({"50, 0.5, true", "50, 0.2, false", "10, 0.5, false"})
    void aBlowOnTheFlyerDiesAwayInATenthOfASecond(double rate_Hz, double blow_g, boolean found) {
        Series load =
                series(rate_Hz, 0.02, t -> 1 + (t < 60 ? 0 : blow_g * Math.exp(-(t - 60) / 0.08)));
        assertEquals(
                found, new FlyerResponse(Map.of(Channel.NORMAL_LOAD, load), SETTINGS).blowIn(LOCK));
    }

    @Test
    void aStepOfTheRollRateAloneMustStandOutAndHaveNoControlsToAnswerIt() {
        Series roll = series(8, 0.5, t -> during(t, 60, 61, -2));
        Series clear = series(8, 0.1, t -> during(t, 60, 61, -2.5));
        assertTrue(lead(Channel.ROLL_RATE, roll, LEFT).joltIn(LOCK));
        assertFalse(lead(Channel.ROLL_RATE, roll, LEFT).joltAloneIn(LOCK));
        assertTrue(lead(Channel.ROLL_RATE, clear, LEFT).joltAloneIn(LOCK));
        Map<Channel, Series> withAileron =
                Map.of(Channel.ROLL_RATE, clear, Channel.AILERON, series(8, 0.6, t -> 0));
        assertFalse(new AircraftResponse(withAileron, LEFT, SETTINGS).joltAloneIn(LOCK));
    }
}
