package pairdown.stats;

import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.StatUtils;
import org.hipparchus.stat.regression.SimpleRegression;

/**
 * A straight line by ordinary least squares.
 *
 * @param slope of the line
 * @param intercept value at x = 0
 * @param slopeSigma standard error of the slope
 * @param interceptSigma standard error of the intercept
 * @param residualSigma residual standard deviation, over n − 2
 * @param points how many
 * @param meanX mean of their x
 */
public record LinearFit(
        double slope,
        double intercept,
        double slopeSigma,
        double interceptSigma,
        double residualSigma,
        int points,
        double meanX) {
    /**
     * The line through at least three points, not all at one x.
     *
     * @throws IllegalArgumentException with fewer, or of differing lengths
     */
    public static LinearFit of(double[] x, double[] y) {
        if (x.length != y.length || x.length < 3) {
            throw new IllegalArgumentException(
                    "a fit needs at least 3 points, as many x as y, not "
                            + x.length
                            + ", "
                            + y.length);
        }
        SimpleRegression regression = new SimpleRegression();
        for (int i = 0; i < x.length; i++) {
            regression.addData(x[i], y[i]);
        }
        if (!Double.isFinite(regression.getSlope())) {
            throw new IllegalArgumentException("a line needs two different x");
        }
        return new LinearFit(
                regression.getSlope(),
                regression.getIntercept(),
                regression.getSlopeStdErr(),
                regression.getInterceptStdErr(),
                Math.sqrt(regression.getMeanSquareError()),
                x.length,
                StatUtils.mean(x));
    }

    public double at(double x) {
        return intercept + slope * x;
    }

    /**
     * The interval of the line's height at {@code x}: of the mean there, not of one more point.
     * Source: N. Draper and H. Smith, Applied Regression Analysis, section on the standard error of
     * the fitted mean: s² (1/n + (x − x̄)² / Sxx).
     */
    public Interval interval(double x, double confidence) {
        double sigma = Math.hypot(residualSigma / Math.sqrt(points), slopeSigma * (x - meanX));
        double half = student(confidence) * sigma;
        return new Interval(at(x) - half, at(x) + half, confidence);
    }

    /** The interval of the slope by Student's distribution with n − 2 degrees of freedom. */
    public Interval slopeInterval(double confidence) {
        double half = student(confidence) * slopeSigma;
        return new Interval(slope - half, slope + half, confidence);
    }

    private double student(double confidence) {
        return -new TDistribution(points - 2.0)
                .inverseCumulativeProbability(Interval.tail(confidence));
    }
}
