package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** The points of a chart's line, gathered and thinned. A point without a value breaks the line. */
final class Points {
    /** More than half a chart's width in pixels shows nothing more. */
    private static final int MOST = 300;

    private final List<Double> x = new ArrayList<>();
    private final List<Double> y = new ArrayList<>();
    private boolean any;

    void add(double xAt, double yAt) {
        boolean known = Double.isFinite(xAt) && Double.isFinite(yAt);
        if (known) {
            any = true;
            x.add(xAt);
            y.add(yAt);
        } else if (any && !Double.isNaN(y.get(y.size() - 1))) {
            x.add(x.get(x.size() - 1));
            y.add(Double.NaN);
        }
    }

    /** A function sampled evenly. */
    static Points of(double from, double to, DoubleUnaryOperator value) {
        return of(from, to, value, DoubleUnaryOperator.identity());
    }

    /** The same, each drawn where {@code place} puts it along the chart. */
    static Points of(double from, double to, DoubleUnaryOperator value, DoubleUnaryOperator place) {
        Points points = new Points();
        for (int i = 0; i <= MOST; i++) {
            double at = from + (to - from) * i / MOST;
            points.add(place.applyAsDouble(at), value.applyAsDouble(at));
        }
        return points;
    }

    boolean isEmpty() {
        return !any;
    }

    List<Double> x() {
        return thinned(x);
    }

    List<Double> y() {
        return thinned(y);
    }

    /** For a line, see {@link #unevenly}. */
    List<Double> lineX() {
        return unevenly(x());
    }

    List<Double> lineY() {
        return unevenly(y());
    }

    /**
     * With one more point halfway between the first two, which a line does not show. Where points
     * are evenly spaced the chart library labels its axes at the points, however odd their numbers;
     * else at round ones.
     */
    private static List<Double> unevenly(List<Double> values) {
        List<Double> out = new ArrayList<>(values);
        if (values.size() > 1) {
            out.add(1, (values.get(0) + values.get(1)) / 2);
        }
        return out;
    }

    /** Every n-th point, breaks kept. */
    private List<Double> thinned(List<Double> values) {
        int step = 1 + x.size() / MOST;
        if (step == 1) {
            return values;
        }
        List<Double> out = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            if (i % step == 0 || Double.isNaN(y.get(i)) || i == values.size() - 1) {
                out.add(values.get(i));
            }
        }
        return out;
    }
}
