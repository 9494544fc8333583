package pairdown.tail;

import java.util.function.IntToDoubleFunction;

/**
 * Smooths and differentiates an evenly spaced column by a straight line fitted locally with
 * Gaussian weights. Away from gaps its slope is exactly the derivative of its value, so an equation
 * between a rate and what drives it still holds after both sides have been smoothed.
 *
 * <p>NaN is missing: a missing sample stays missing, and its neighbours do without it. Source: W.
 * S. Cleveland, JASA 74 (1979) 829, with Gaussian in place of tricube weights.
 */
final class LocalLine {
    /** The weight beyond is under 1.2 % of the middle's. */
    private static final double REACH_SIGMAS = 3;

    private final double step_s;
    private final double[] weight;
    private final double sumWeight;
    private final double sumSquares;

    /**
     * @param sigma_s of the weights
     * @param step_s between samples
     */
    LocalLine(double sigma_s, double step_s) {
        this.step_s = step_s;
        int reach = (int) Math.max(1, Math.ceil(REACH_SIGMAS * sigma_s / step_s));
        weight = new double[reach + 1];
        double total = 0;
        double squares = 0;
        for (int k = 0; k <= reach; k++) {
            double u = k * step_s / sigma_s;
            weight[k] = Math.exp(-u * u / 2);
            total += (k == 0 ? 1 : 2) * weight[k];
            squares += 2 * weight[k] * k * k;
        }
        sumWeight = total;
        sumSquares = squares;
    }

    double[] value(double[] column) {
        return each(column.length, i -> whole(column, i) ? mean(column, i) : line(column, i, true));
    }

    /** The slope per second. */
    double[] slope(double[] column) {
        return each(
                column.length, i -> whole(column, i) ? tilt(column, i) : line(column, i, false));
    }

    private static double[] each(int n, IntToDoubleFunction at) {
        double[] out = new double[n];
        for (int i = 0; i < n; i++) {
            out[i] = at.applyAsDouble(i);
        }
        return out;
    }

    private boolean whole(double[] column, int i) {
        int reach = weight.length - 1;
        if (i < reach || i + reach >= column.length) {
            return false;
        }
        double sum = 0;
        for (int k = i - reach; k <= i + reach; k++) {
            sum += column[k];
        }
        return Double.isFinite(sum);
    }

    private double mean(double[] column, int i) {
        double sum = weight[0] * column[i];
        for (int k = 1; k < weight.length; k++) {
            sum += weight[k] * (column[i - k] + column[i + k]);
        }
        return sum / sumWeight;
    }

    private double tilt(double[] column, int i) {
        double sum = 0;
        for (int k = 1; k < weight.length; k++) {
            sum += weight[k] * k * (column[i + k] - column[i - k]);
        }
        return sum / (sumSquares * step_s);
    }

    private double line(double[] column, int i, boolean value) {
        if (!Double.isFinite(column[i])) {
            return Double.NaN;
        }
        double w = 0;
        double x = 0;
        double y = 0;
        double xx = 0;
        double xy = 0;
        int reach = weight.length - 1;
        int last = Math.min(column.length - 1, i + reach);
        for (int k = Math.max(0, i - reach); k <= last; k++) {
            if (Double.isFinite(column[k])) {
                double wk = weight[Math.abs(k - i)];
                double xk = (k - i) * step_s;
                w += wk;
                x += wk * xk;
                y += wk * column[k];
                xx += wk * xk * xk;
                xy += wk * xk * column[k];
            }
        }
        double det = w * xx - x * x;
        if (!(det > 1e-9 * w * w * step_s * step_s)) {
            return value ? y / w : Double.NaN;
        }
        return value ? (y * xx - x * xy) / det : (w * xy - x * y) / det;
    }
}
