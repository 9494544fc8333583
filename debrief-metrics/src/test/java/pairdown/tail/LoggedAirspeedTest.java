package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import pairdown.track.Channel;
import pairdown.track.Series;

class LoggedAirspeedTest {
    private static final double REVERSE_FROM_S = 60;

    private static Series series(DoubleUnaryOperator at) {
        double[] time_s = new double[1200];
        float[] value = new float[time_s.length];
        for (int i = 0; i < time_s.length; i++) {
            time_s[i] = i * 0.1;
            value[i] = (float) at.applyAsDouble(time_s[i]);
        }
        return Series.of(time_s, value, false);
    }

    private final List<String> notes = new ArrayList<>();

    private static double gusty(double t_s) {
        return 38 + 2 * Math.sin(t_s);
    }

    /** Airspeed by both: of motion and wind without the gusts, logged with them. */
    private double[] joined(double reverseFactor, boolean lever) {
        Map<Channel, Series> systems = new EnumMap<>(Channel.class);
        systems.put(
                Channel.INDICATED_AIRSPEED,
                series(t -> gusty(t) * (t > REVERSE_FROM_S ? reverseFactor : 1)));
        if (lever) {
            systems.put(Channel.POWER_LEVER, series(t -> t > REVERSE_FROM_S ? -50 : 30));
        }
        TailInput input =
                TailInput.of("lead", systems, List.of())
                        .with(
                                new TailInput.Motion(
                                        Optional.empty(),
                                        Optional.of(series(t -> 38)),
                                        Optional.of(series(t -> 38)),
                                        Optional.empty()));
        Signals signals = Signals.of(input).orElseThrow();
        double[] mean = signals.grid().read(series(t -> 38));
        return LoggedAirspeed.correction(input, signals, mean, notes)
                .map(
                        f -> {
                            for (int i = 0; i < f.length; i++) {
                                f[i] *= mean[i];
                            }
                            return f;
                        })
                .orElse(mean);
    }

    private static double at(double[] column, double t_s) {
        return column[(int) Math.rint(t_s / 0.1)];
    }

    @Test
    void gustsAreThoseOfTheLog() {
        double[] speed = joined(1, true);
        assertEquals(gusty(20.4), at(speed, 20.4), 0.1);
        assertEquals(gusty(80.4), at(speed, 80.4), 0.2);
    }

    @Test
    void whatReversePutsItOffByIsTakenOffInPart() {
        double[] speed = joined(0.9, true);
        assertEquals(gusty(20.4), at(speed, 20.4), 0.1);
        double left = at(speed, 90.3) / gusty(90.3);
        // A logged airspeed off by 3 %, one of motion off by 1.2 m/s: variances 9 to 12.
        assertTrue(left > 0.93 && left < 0.96, "left at " + left);
        assertTrue(notes.get(0).contains("not calibrated"), notes::toString);
    }

    @Test
    void withoutTheLeverNothingTellsReverseAndTheLogIsNotUsed() {
        assertEquals(38, at(joined(0.9, false), 20.4), 1e-6);
        assertTrue(notes.isEmpty(), notes::toString);
    }
}
