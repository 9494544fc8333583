package pairdown.motion;

import java.util.function.IntToDoubleFunction;

/** Finds the step a log's values were rounded to. A step Δ leaves an error of Δ/√12 (1 sigma). */
final class Quantisation {
    /** Degrees: decimal places, and minutes of arc with two to five decimals. */
    private static final double[] DEGREE_STEPS = {
        1e-3, 1.0 / 6000, 1e-4, 1.0 / 60_000, 1e-5, 1.0 / 600_000, 1e-6
    };

    private static final double[] METRE_STEPS = {1, 0.5, 0.1};
    private static final int SAMPLE = 400;
    private static final double SLACK = 0.02;

    private Quantisation() {}

    /** Largest usual step (°) of which all values are multiples; 0 where none fits. */
    static double degreeStep(int size, IntToDoubleFunction value) {
        return step(size, value, DEGREE_STEPS);
    }

    /** Largest usual step (m) of which all values are multiples; 0 where none fits. */
    static double metreStep(int size, IntToDoubleFunction value) {
        return step(size, value, METRE_STEPS);
    }

    private static double step(int size, IntToDoubleFunction value, double[] candidates) {
        for (double step : candidates) {
            if (fits(size, value, step)) {
                return step;
            }
        }
        return 0;
    }

    private static boolean fits(int size, IntToDoubleFunction value, double step) {
        int stride = Math.max(1, size / SAMPLE);
        int seen = 0;
        for (int i = 0; i < size; i += stride) {
            double v = value.applyAsDouble(i);
            if (!Double.isNaN(v)) {
                double steps = v / step;
                if (Math.abs(steps - Math.rint(steps)) > SLACK) {
                    return false;
                }
                seen++;
            }
        }
        return seen > 2;
    }

    /** One standard deviation of rounding to a step. */
    static double sigma(double step) {
        return step / Math.sqrt(12);
    }
}
