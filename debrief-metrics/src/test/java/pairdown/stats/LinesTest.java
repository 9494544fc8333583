package pairdown.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Straight lines and robust figures against certified and library values. */
class LinesTest {
    private static final double CERTIFIED = 1e-9;

    private static double[][] norris() throws IOException {
        try (InputStream in = LinesTest.class.getResourceAsStream("numbers-norris.csv")) {
            double[][] rows =
                    new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .skip(1)
                            .map(l -> l.split(","))
                            .map(
                                    c ->
                                            new double[] {
                                                Double.parseDouble(c[0]), Double.parseDouble(c[1])
                                            })
                            .toArray(double[][]::new);
            double[] y = new double[rows.length];
            double[] x = new double[rows.length];
            for (int i = 0; i < rows.length; i++) {
                y[i] = rows[i][0];
                x[i] = rows[i][1];
            }
            return new double[][] {x, y};
        }
    }

    // NIST StRD "Norris", certified values (from memory, recomputed with Hipparchus and NumPy).
    @Test
    void leastSquaresEqualsTheCertifiedLine() throws IOException {
        double[][] xy = norris();
        assertEquals(36, xy[0].length);
        LinearFit fit = LinearFit.of(xy[0], xy[1]);
        close(-0.262323073774029, fit.intercept());
        close(0.232818234301152, fit.interceptSigma());
        close(1.00211681802045, fit.slope());
        close(0.000429796848199937, fit.slopeSigma());
        close(0.884796396144373, fit.residualSigma());
        assertTrue(fit.slopeInterval(0.95).contains(fit.slope()));
    }

    // SciPy 1.17.1 theilslopes(y, x).
    @Test
    void medianOfSlopesEqualsTheLibrary() throws IOException {
        double[][] xy = norris();
        TheilSen line = TheilSen.of(xy[0], xy[1], 0.95);
        close(1.0021968365553604, line.slope());
        assertEquals(-0.0640158172232, line.intercept(), 1e-10);
        assertEquals(1.00111532, line.slopeInterval().low(), 1e-8);
        assertEquals(1.00305344, line.slopeInterval().high(), 1e-8);
    }

    // SciPy, as above, with y[3] += 500, y[7] −= 700, y[21] += 900; least squares gives 1.0611791.
    @Test
    void threeWildPointsHardlyMoveTheMedianOfSlopes() throws IOException {
        double[][] xy = norris();
        xy[1][3] += 500;
        xy[1][7] -= 700;
        xy[1][21] += 900;
        close(1.0022099447513813, TheilSen.of(xy[0], xy[1], 0.95).slope());
        assertEquals(1.0611791, LinearFit.of(xy[0], xy[1]).slope(), 1e-7);
    }

    // SciPy 1.17.1 theilslopes([1,2,3,3,8,6], [1,2,2,3,5,6], 0.95): ties in both.
    @Test
    void tiedPointsNarrowAsInTheLibrary() {
        TheilSen line =
                TheilSen.of(new double[] {1, 2, 2, 3, 5, 6}, new double[] {1, 2, 3, 3, 8, 6}, 0.95);
        assertEquals(1, line.slope());
        assertEquals(0.5, line.intercept());
        assertEquals(new Interval(0, 2, 0.95), line.slopeInterval());
    }

    // R 4.2.2 mad and SciPy median_abs_deviation.
    @Test
    void medianAndSpreadEqualTheLibrary() {
        double[] v = {1, 1, 2, 2, 4, 6, 9};
        assertEquals(2, Robust.median(v).orElseThrow());
        assertEquals(1, Robust.mad(v).orElseThrow());
        assertEquals(1.4826, Robust.sigma(v).orElseThrow(), 1e-4);
        double phi75 =
                new org.hipparchus.distribution.continuous.NormalDistribution()
                        .inverseCumulativeProbability(0.75);
        assertEquals(1 / phi75, Robust.MAD_TO_SIGMA, 1e-12);
    }

    @Test
    void whatIsNotFiniteIsLeftOutOfTheMedian() {
        assertEquals(3, Robust.median(1, Double.NaN, 3, 5).orElseThrow());
        assertTrue(Robust.median(Double.NaN).isEmpty());
        assertTrue(Robust.mad().isEmpty());
    }

    @Test
    void aLineNeedsTwoDifferentX() {
        double[] same = {2, 2, 2};
        assertThrows(IllegalArgumentException.class, () -> TheilSen.of(same, same, 0.95));
        assertThrows(
                IllegalArgumentException.class, () -> LinearFit.of(same, new double[] {1, 2, 4}));
    }

    private static void close(double expected, double found) {
        assertEquals(expected, found, CERTIFIED * Math.abs(expected));
    }
}
