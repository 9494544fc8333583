package pairdown.panel;

import java.util.Arrays;
import pairdown.pair.PairSeries;
import pairdown.time.Span;
import pairdown.track.Series;

/**
 * A curve's least and greatest values over ever coarser steps of time, made once, so that any
 * stretch of it is drawn with as many points as there are pixels and no peak is lost. NaN where
 * there are no data.
 */
final class Pyramid {
    /** No log is read faster; a curve of this step loses nothing (s). */
    private static final double FINEST_STEP_S = 0.02;

    private static final double USUAL_STEP_S = 0.1;

    private final double start_s;
    private final double step_s;
    private final float[][] least;
    private final float[][] greatest;

    private Pyramid(double start_s, double step_s, float[] least, float[] greatest) {
        this.start_s = start_s;
        this.step_s = step_s;
        int levels = 1;
        for (int n = least.length; n > 1; n = (n + 1) / 2) {
            levels++;
        }
        this.least = new float[levels][];
        this.greatest = new float[levels][];
        this.least[0] = least;
        this.greatest[0] = greatest;
        for (int l = 1; l < levels; l++) {
            this.least[l] = halved(this.least[l - 1], true);
            this.greatest[l] = halved(this.greatest[l - 1], false);
        }
    }

    private static float[] halved(float[] fine, boolean wantLeast) {
        float[] coarse = new float[(fine.length + 1) / 2];
        for (int i = 0; i < coarse.length; i++) {
            float a = fine[2 * i];
            float b = 2 * i + 1 < fine.length ? fine[2 * i + 1] : Float.NaN;
            coarse[i] = either(a, b, wantLeast);
        }
        return coarse;
    }

    private static float either(float a, float b, boolean wantLeast) {
        if (Float.isNaN(a)) {
            return b;
        }
        if (Float.isNaN(b)) {
            return a;
        }
        return wantLeast ? Math.min(a, b) : Math.max(a, b);
    }

    /** Of values at a regular step; NaN is a hole. */
    static Pyramid of(double start_s, double step_s, float[] values) {
        return new Pyramid(start_s, step_s, values.clone(), values.clone());
    }

    /** Of one figure of a pair. */
    static Pyramid of(PairSeries series, PairSeries.Figure figure) {
        float[] values = new float[series.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = (float) series.value(figure, i);
        }
        return of(series.time_s(0), series.step_s(), values);
    }

    /** Of a logged or computed channel, whatever its steps; holes stay holes. */
    static Pyramid of(Series series) {
        if (series.size() == 0) {
            return of(0, USUAL_STEP_S, new float[] {Float.NaN});
        }
        double start_s = series.time_s(0);
        double step_s = Math.max(FINEST_STEP_S, medianStep_s(series));
        double length_s = series.time_s(series.size() - 1) - start_s;
        int cells = 1 + (int) Math.round(length_s / step_s);
        float[] low = filled(cells);
        float[] high = filled(cells);
        for (int i = 0; i < series.size(); i++) {
            int cell = (int) Math.round((series.time_s(i) - start_s) / step_s);
            int c = Math.min(cells - 1, cell);
            low[c] = either(low[c], (float) series.value(i), true);
            high[c] = either(high[c], (float) series.value(i), false);
        }
        for (int c = 0; c < cells; c++) {
            if (Float.isNaN(low[c])) {
                low[c] = (float) series.at(start_s + c * step_s);
                high[c] = low[c];
            }
        }
        return new Pyramid(start_s, step_s, low, high);
    }

    private static float[] filled(int cells) {
        float[] values = new float[cells];
        Arrays.fill(values, Float.NaN);
        return values;
    }

    private static double medianStep_s(Series series) {
        if (series.size() < 2) {
            return USUAL_STEP_S;
        }
        double[] steps = new double[series.size() - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = series.time_s(i + 1) - series.time_s(i);
        }
        Arrays.sort(steps);
        return steps[steps.length / 2];
    }

    double start_s() {
        return start_s;
    }

    double step_s() {
        return step_s;
    }

    int size() {
        return least[0].length;
    }

    /** The least value in a stretch of time, NaN where there is none. */
    float least(double from_s, double to_s) {
        return extreme(from_s, to_s, true);
    }

    /** The greatest value in a stretch of time, NaN where there is none. */
    float greatest(double from_s, double to_s) {
        return extreme(from_s, to_s, false);
    }

    private float extreme(double from_s, double to_s, boolean wantLeast) {
        int first = Math.max(0, (int) Math.ceil((from_s - start_s) / step_s));
        int last = Math.min(size() - 1, (int) Math.floor((to_s - start_s) / step_s));
        float found = Float.NaN;
        int level = 0;
        // Cells are taken from both ends upwards, as in a segment tree: two a level at most.
        while (first <= last) {
            float[] cells = wantLeast ? least[level] : greatest[level];
            if ((first & 1) == 1) {
                found = either(found, cells[first++], wantLeast);
            }
            if ((last & 1) == 0 && first <= last) {
                found = either(found, cells[last--], wantLeast);
            }
            first >>= 1;
            last >>= 1;
            level++;
        }
        return found;
    }

    /** The value at an instant, linear between samples; NaN where there is none. */
    double at(double t_s) {
        double place = (t_s - start_s) / step_s;
        if (!(place >= 0 && place <= size() - 1)) {
            return Double.NaN;
        }
        int i = (int) place;
        double share = place - i;
        float a = middle(i);
        return share == 0 ? a : a + share * (middle(i + 1) - a);
    }

    private float middle(int i) {
        return (least[0][i] + greatest[0][i]) / 2;
    }

    /** The least and greatest of all, as a pair; NaN where there is none. */
    float[] range(Span within) {
        return new float[] {
            least(within.start_s(), within.end_s()), greatest(within.start_s(), within.end_s())
        };
    }
}
