package pairdown.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pairdown.track.EvenSeries;

class LagFitTest {
    /**
     * A delay of 2.46 s at 5 Hz: plain products and a parabola give 2.396 s, least squares on a
     * spline 2.460001 s (SciPy correlate, CubicSpline, NumPy). To the millisecond.
     */
    @Test
    void aDelayBetweenSamplesIsFoundToTheMillisecond() {
        EvenSeries f = EvenSeries.of(0, 0.2, samples(0));
        double[] late = samples(2.46);
        LagFit.Fit fit = LagFit.from(new OneTerm(late, f), -2.2, 30e-6, 200e-6).orElseThrow();
        assertEquals(-2.46, fit.delta_s(), 0.001);
    }

    /** A weak signal in gusts: yaw rates of a straight flight against its track's. */
    @Test
    void aSignalThatIsMostlyNoiseTellsItsLagNoBetterThanItCan() {
        for (int seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            double[] yaw = smoothNoise(random, 0.2);
            double[] track = smoothNoise(random, 0.4);
            for (int k = 0; k < track.length; k++) {
                track[k] += yaw[k];
            }
            EvenSeries f = EvenSeries.of(0, 0.2, track);
            Optional<LagFit.Fit> fit = LagFit.from(new OneTerm(yaw, f), -0.5, 30e-6, 200e-6);
            double off = fit.map(t -> Math.abs(t.delta_s()) / t.deltaSigma_s()).orElse(0.0);
            assertTrue(off < 3.5, "seed " + seed + ": " + fit);
        }
    }

    /** Gaussian noise smoothed over some 2 s, of a root mean square. */
    private static double[] smoothNoise(Random random, double rms) {
        double[] white = random.doubles(3100, -1, 1).toArray();
        double[] out = new double[3000];
        double squares = 0;
        for (int k = 0; k < out.length; k++) {
            for (int j = 0; j < 100; j++) {
                double s = (j - 50) / 10.0;
                out[k] += white[k + j] * Math.exp(-0.5 * s * s);
            }
            squares += out[k] * out[k];
        }
        double scale = rms / Math.sqrt(squares / out.length);
        return Arrays.stream(out).map(v -> scale * v).toArray();
    }

    private static double[] samples(double late_s) {
        double[] out = new double[300];
        for (int k = 0; k < out.length; k++) {
            double t = k / 5.0 - late_s;
            out[k] =
                    20
                            + 8 * Math.sin(0.31 * t)
                            + 5 * Math.sin(0.83 * t + 1)
                            + 3 * Math.sin(1.7 * t);
        }
        return out;
    }

    private static final class OneTerm implements LagFit.Problem {
        private final double[] late;
        private final EvenSeries f;

        OneTerm(double[] late, EvenSeries f) {
            this.late = late;
            this.f = f;
        }

        @Override
        public int size() {
            return late.length;
        }

        @Override
        public double time_s(int k) {
            return k / 5.0;
        }

        @Override
        public double middle_s() {
            return late.length / 10.0;
        }

        @Override
        public int terms() {
            return 1;
        }

        @Override
        public double signal(int k, double t_s) {
            return f.at(t_s);
        }

        @Override
        public double slope(int k, double t_s) {
            return f.slopeAt(t_s);
        }

        @Override
        public double term(int k, int j, double t_s) {
            return late[k];
        }
    }
}
