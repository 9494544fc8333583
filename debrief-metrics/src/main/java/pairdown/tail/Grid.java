package pairdown.tail;

import pairdown.time.Span;
import pairdown.track.Series;

/** The evenly spaced instants that every channel is read at. */
record Grid(double start_s, double step_s, int size) {
    static Grid over(Span span, double step_s) {
        return new Grid(span.start_s(), step_s, (int) Math.floor(span.duration_s() / step_s) + 1);
    }

    double time_s(int i) {
        return start_s + i * step_s;
    }

    /** The nearest instant's place, held inside the grid. */
    int place(double t_s) {
        return (int) Math.max(0, Math.min(size - 1.0, Math.rint((t_s - start_s) / step_s)));
    }

    /** How many steps make up a duration, at least one. */
    int steps(double duration_s) {
        return (int) Math.max(1, Math.rint(duration_s / step_s));
    }

    /** A channel at every instant; NaN where it has no value. */
    double[] read(Series series) {
        double[] column = new double[size];
        for (int i = 0; i < size; i++) {
            column[i] = series.at(time_s(i));
        }
        return column;
    }

    Series series(double[] column) {
        double[] time = new double[size];
        float[] value = new float[size];
        for (int i = 0; i < size; i++) {
            time[i] = time_s(i);
            value[i] = (float) column[i];
        }
        return Series.of(time, value, false);
    }

    Span span(int from, int to) {
        return new Span(time_s(from), time_s(to));
    }
}
