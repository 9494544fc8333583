package pairdown.panel;

import pairdown.time.Span;
import pairdown.words.Figures;
import pairdown.words.Measure;

/** The upright axis of a strip over a stretch of time. */
final class Axis {
    private static final double[] TIME_STEPS_S = {
        0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 1200, 3600
    };

    /** About as many ticks on a strip; twice as many crowd one of 20 mm, one alone says nothing. */
    private static final int TICKS = 4;

    private static final double MARGIN = 0.06;

    private final double least;
    private final double greatest;
    private final float top;
    private final float height;
    private double shownPerUnit = 1;
    private double shownAtZero;

    private Axis(double least, double greatest, float top, float height) {
        double margin = MARGIN * (greatest - least);
        this.least = least - margin;
        this.greatest = greatest + margin;
        this.top = top;
        this.height = height;
    }

    /** Holding the chosen pair's and the lead's curves, what the strip always shows, no more. */
    static Axis of(StripData strip, int chosen, Span within, float top, float height) {
        double least = strip.least();
        double greatest = strip.greatest();
        for (Curve curve : strip.curves()) {
            if (curve.isStrong(chosen)) {
                float[] range = curve.values().range(within);
                if (!Float.isNaN(range[0])) {
                    least = Math.min(least, range[0]);
                    greatest = Math.max(greatest, range[1]);
                }
            }
        }
        return new Axis(
                Math.max(strip.floor(), least), Math.min(strip.ceiling(), greatest), top, height);
    }

    float top() {
        return top;
    }

    float height() {
        return height;
    }

    float y(double value) {
        return top + height - (float) ((value - least) / (greatest - least) * height);
    }

    /** A round step between ticks, in the unit shown. */
    double step(Figures figures, Measure measure) {
        shownAtZero = figures.shown(measure, 0);
        shownPerUnit = figures.shown(measure, 1) - shownAtZero;
        double rough = (greatest - least) * shownPerUnit / TICKS;
        double power = Math.pow(10, Math.floor(Math.log10(rough)));
        double lead = rough / power;
        double round = lead <= 1.3 ? 1 : lead <= 2.8 ? 2 : lead <= 6.5 ? 5 : 10;
        return round * power;
    }

    double firstTick(double step) {
        return Math.ceil((least * shownPerUnit + shownAtZero) / step) * step;
    }

    double greatestShown() {
        return greatest * shownPerUnit + shownAtZero;
    }

    float yOfShown(double shown) {
        return y((shown - shownAtZero) / shownPerUnit);
    }

    /** The round step of time next above a length. */
    static double niceTime_s(double atLeast_s) {
        for (double step_s : TIME_STEPS_S) {
            if (step_s >= atLeast_s) {
                return step_s;
            }
        }
        return TIME_STEPS_S[TIME_STEPS_S.length - 1];
    }
}
