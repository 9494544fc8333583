package pairdown.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class LagCorrelationTest {
    /**
     * f(t) = 20 + 8 sin 0.31t + 5 sin(0.83t + 1) + 3 sin 1.7t at 5 Hz over 60 s and the same 2.4 s
     * late: the whole-point peak is at 12 points (SciPy correlate, NumPy corrcoef).
     */
    @Test
    void theHighestPeakIsTheLag() {
        double[][] a = {f(0), new double[300], new double[300]};
        double[][] b = {f(2.4), new double[300], new double[300]};
        var peaks = LagCorrelation.peaks(a, b, 100, 5, 3, 0.3);
        assertEquals(-12, peaks.get(0).shift());
        assertEquals(1, peaks.get(0).correlation(), 1e-9);
    }

    @Test
    void eachLagEqualsPearsonsCoefficientOverTheOverlap() {
        double[][] a = {f(0), new double[300], f(7)};
        double[][] b = {f(2.46), new double[300], f(9.46)};
        for (int k = 100; k < 140; k++) {
            a[0][k] = Double.NaN;
        }
        double[] r = LagCorrelation.correlations(a, b, 50);
        for (int shift : new int[] {-200, -12, 0, 30, 180}) {
            assertEquals(direct(a, b, shift), r[Math.floorMod(shift, r.length)], 1e-9);
        }
    }

    /** 60 points repeated well against 240 points in noise: the long stretch is the answer. */
    @Test
    void aShortOverlapThatFitsBetterIsWorthLessThanALongOne() {
        double[] first = f(0);
        double[] second = f(0);
        Random random = new Random(5);
        for (int k = 0; k < second.length; k++) {
            second[k] += 3 * random.nextGaussian();
        }
        for (int k = 0; k < 60; k++) {
            second[240 + k] = first[k] + random.nextGaussian();
        }
        double[][] a = {first, new double[300], new double[300]};
        double[][] b = {second, new double[300], new double[300]};
        var peaks = LagCorrelation.peaks(a, b, 50, 5, 4, 0.3);
        var rival = peaks.stream().filter(p -> p.shift() == -240).findFirst().orElseThrow();
        assertEquals(0, peaks.get(0).shift(), 1);
        assertEquals(60, rival.overlap());
        assertTrue(rival.correlation() > peaks.get(0).correlation(), () -> "" + peaks);
        assertTrue(rival.evidence() < peaks.get(0).evidence(), () -> "" + peaks);
    }

    @Test
    void standingStillProvesNothing() {
        double[][] a = {f(0), new double[300], new double[300]};
        double[][] still = {new double[300], new double[300], new double[300]};
        assertTrue(LagCorrelation.peaks(a, still, 50, 5, 3, 0.3).isEmpty());
    }

    private static double direct(double[][] a, double[][] b, int shift) {
        double[] ma = new double[3];
        double[] mb = new double[3];
        int n = 0;
        for (int k = 0; k < b[0].length; k++) {
            int i = k + shift;
            if (i < 0 || i >= a[0].length || Double.isNaN(a[0][i] + b[0][k])) {
                continue;
            }
            n++;
            for (int c = 0; c < 3; c++) {
                ma[c] += (a[c][i] - ma[c]) / n;
                mb[c] += (b[c][k] - mb[c]) / n;
            }
        }
        double ab = 0;
        double aa = 0;
        double bb = 0;
        for (int k = 0; k < b[0].length; k++) {
            int i = k + shift;
            if (i < 0 || i >= a[0].length || Double.isNaN(a[0][i] + b[0][k])) {
                continue;
            }
            for (int c = 0; c < 3; c++) {
                ab += (a[c][i] - ma[c]) * (b[c][k] - mb[c]);
                aa += (a[c][i] - ma[c]) * (a[c][i] - ma[c]);
                bb += (b[c][k] - mb[c]) * (b[c][k] - mb[c]);
            }
        }
        return ab / Math.sqrt(aa * bb);
    }

    private static double[] f(double late_s) {
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
}
