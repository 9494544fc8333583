package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;

class EquationTest {
    private static Series held(float value) {
        double[] time = new double[100];
        float[] values = new float[100];
        for (int i = 0; i < time.length; i++) {
            time[i] = i * 0.1;
            values[i] = value;
        }
        return Series.of(time, values, false);
    }

    /**
     * A moment by deflection goes with dynamic pressure, one by a rate with its root: the tail's
     * angle of attack by a rate is the rate × arm over the airspeed (B. Etkin and L. D. Reid,
     * Dynamics of Flight, 3rd ed. (1996), chapter 5, from memory).
     */
    @Test
    void atFourTimesThePressureAControlDoesFourTimesAndDampingTwiceAsMuch() {
        TailInput input =
                TailInput.of(
                        "lead",
                        Map.of(Channel.ELEVATOR, held(20), Channel.PITCH_RATE, held(10)),
                        List.of(new Span(0, 10)));
        Signals signals = Signals.of(input).orElseThrow();
        double[] four = new double[signals.grid().size()];
        Arrays.fill(four, 4);
        Equation equation =
                Equation.of(
                        ControlAxis.PITCH,
                        signals,
                        four,
                        new LocalLine(0.12, signals.grid().step_s()));
        assertEquals(80, equation.drive()[50], 1e-6);
        assertEquals(20, equation.others().get(0)[50], 1e-6);
        assertEquals(0, equation.acceleration_dps2()[50], 1e-6);
    }
}
