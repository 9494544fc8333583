package pairdown.tail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;

class PowerStepsTest {
    private static Series logged(DoubleUnaryOperator value, double rate_Hz, double noise) {
        Random random = new Random(9);
        int n = (int) (60 * rate_Hz);
        double[] time = new double[n];
        float[] read = new float[n];
        for (int i = 0; i < n; i++) {
            time[i] = i / rate_Hz;
            read[i] = (float) (value.applyAsDouble(time[i]) + noise * random.nextGaussian());
        }
        return Series.of(time, read, false);
    }

    /** From one value to another at an even rate from an instant on. */
    private static DoubleUnaryOperator move(double at_s, double from, double to, double perS) {
        double length_s = Math.abs(to - from) / perS;
        return t -> from + (to - from) * Math.max(0, Math.min(1, (t - at_s) / length_s));
    }

    private static List<PowerChange> steps(Channel channel, Series series) {
        TailInput input = TailInput.of("lead", Map.of(channel, series), List.of(new Span(0, 60)));
        Signals signals = Signals.of(input).orElseThrow();
        AirData air = AirData.of(input, signals);
        return new PowerSteps(input)
                .find(signals, ForceBalance.of(input, signals, air), new ArrayList<>());
    }

    @Test
    void aStepIsTimedWhereTheLeverLeftItsLevel() {
        for (double rate_Hz : new double[] {5, 8, 16}) {
            List<PowerChange> found =
                    steps(Channel.POWER_LEVER, logged(move(30.03, -50, -70, 65), rate_Hz, 0.2));
            assertEquals(1, found.size(), "at " + rate_Hz);
            assertEquals(30.03, found.get(0).time_s(), 0.06);
            assertEquals(-50, found.get(0).from(), 1);
            assertEquals(-70, found.get(0).to(), 1);
            assertTrue(found.get(0).towardReverse());
        }
    }

    @Test
    void aSlowDriftOfTheLeverIsNoStep() {
        assertTrue(steps(Channel.POWER_LEVER, logged(move(20, -40, -60, 4), 8, 0.2)).isEmpty());
    }

    @Test
    void aStillLeverWithANoisySensorMakesNoStep() {
        assertTrue(steps(Channel.POWER_LEVER, logged(t -> -50, 10, 0.8)).isEmpty());
    }

    /** Samples at the whole seconds leave a move between two of them anywhere there. */
    @Test
    void aMoveBetweenTwoSlowSamplesIsDatedNeitherEarlyNorLate() {
        for (double rate_Hz : new double[] {1, 2}) {
            double step_s = 1 / rate_Hz;
            double sum_s = 0;
            int tries = 40;
            for (int k = 0; k < tries; k++) {
                double at_s = 30 + (k + 0.5) / tries * step_s;
                List<PowerChange> found =
                        steps(Channel.POWER_LEVER, logged(move(at_s, -50, -66, 65), rate_Hz, 0.2));
                assertEquals(1, found.size(), "at " + at_s);
                double error_s = found.get(0).time_s() - at_s;
                assertEquals(0, error_s, step_s / 2, "at " + at_s);
                sum_s += error_s;
            }
            assertEquals(0, sum_s / tries, 0.05, "at " + rate_Hz);
        }
    }

    /** Lever 10 of its 200 per cent, blade 2.2 of its 40 degrees: the same move. */
    @Test
    void aBladeShowsTheSmallestMoveThatTheLeverWould() {
        DoubleUnaryOperator blade = t -> t < 10 ? 26 : move(30, -5, -7.2, 16).applyAsDouble(t);
        DoubleUnaryOperator deep = t -> t > 50 ? -14 : blade.applyAsDouble(t);
        List<PowerChange> found = steps(Channel.BLADE_ANGLE, logged(deep, 8, 0.1));
        assertTrue(found.stream().anyMatch(c -> Math.abs(c.time_s() - 30) < 0.3), found::toString);
    }

    @Test
    void withoutALeverTheBladeAngleTellsIt() {
        DoubleUnaryOperator blade = t -> t < 10 ? 20 : move(30, 0, -8, 20).applyAsDouble(t);
        List<PowerChange> found = steps(Channel.BLADE_ANGLE, logged(blade, 8, 0.1));
        assertTrue(
                found.stream()
                        .anyMatch(
                                c ->
                                        c.channel() == PowerSource.BLADE_ANGLE
                                                && c.towardReverse()
                                                && Math.abs(c.time_s() - 30) < 0.3));
    }
}
