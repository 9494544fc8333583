package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import pairdown.track.Channel;
import pairdown.track.Series;

/** Attitudes logged at 10 Hz. */
class AttitudeRatesTest {
    private static final int ROWS = 100;

    private static Series logged(DoubleUnaryOperator angle_deg, boolean circular) {
        double[] time_s = new double[ROWS];
        float[] value = new float[ROWS];
        for (int i = 0; i < ROWS; i++) {
            time_s[i] = 0.1 * i;
            value[i] = (float) angle_deg.applyAsDouble(time_s[i]);
        }
        return Series.of(time_s, value, circular);
    }

    private static double rate_dps(Channel rate, Map<Channel, Series> attitude) {
        TailInput input = TailInput.of("lead", attitude, List.of());
        return AttitudeRates.of(rate, input).orElseThrow().at(5);
    }

    /**
     * A level turn with bank φ at rate ψ̇ pitches at ψ̇·sin φ and yaws at ψ̇·cos φ: with 30° and
     * 10°/s, 5.000 and 8.660°/s (by hand from the textbook's relations, pitch 0). The heading
     * passes north on the way.
     */
    @Test
    void aLevelTurnIsPitchAndYaw() {
        Map<Channel, Series> turn =
                Map.of(
                        Channel.HEADING, logged(t_s -> (315 + 10 * t_s) % 360, true),
                        Channel.ROLL, logged(t_s -> 30, false),
                        Channel.PITCH, logged(t_s -> 0, false));
        assertEquals(5, rate_dps(Channel.PITCH_RATE, turn), 1e-3);
        assertEquals(8.660, rate_dps(Channel.YAW_RATE, turn), 1e-3);
    }

    @Test
    void wingsLevelThePitchRateIsThePitchsSlope() {
        Map<Channel, Series> push = Map.of(Channel.PITCH, logged(t_s -> 5 - 3 * t_s, false));
        assertEquals(-3, rate_dps(Channel.PITCH_RATE, push), 1e-3);
    }

    @Test
    void withoutTheAngleThereIsNoRate() {
        TailInput input =
                TailInput.of("lead", Map.of(Channel.ROLL, logged(t_s -> 0, false)), List.of());
        assertTrue(AttitudeRates.of(Channel.PITCH_RATE, input).isEmpty());
        assertTrue(AttitudeRates.of(Channel.YAW_RATE, input).isEmpty());
    }
}
