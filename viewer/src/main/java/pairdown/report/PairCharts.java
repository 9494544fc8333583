package pairdown.report;

import java.awt.BasicStroke;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.knowm.xchart.XYChart;
import pairdown.attempt.Attempt;
import pairdown.attempt.MatchedSettings;
import pairdown.pair.MatchedWindow;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;
import pairdown.words.Figures;
import pairdown.words.Measure;

/**
 * Pictures of one pair: closing against the limit, gap and gate, rates, and the approach in plan
 * and profile.
 */
final class PairCharts {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 320;

    /**
     * The approach is worth drawing from here in (m); further out it is a dot in a corner
     * otherwise.
     */
    private static final double NEAR_M = 200;

    private final Figures figures;

    PairCharts(Figures figures) {
        this.figures = figures;
    }

    private String distance() {
        return figures.symbol(Measure.DISTANCE);
    }

    /**
     * Closing speed against distance, with the limit: above the dashed curve is faster than
     * planned.
     */
    XYChart closing(PairDebrief pair) {
        PairSeries s = pair.series();
        Figure range = pair.slot().isPresent() ? Figure.GAP : Figure.SEPARATION;
        XYChart chart =
                ChartStyle.chart(
                        WIDTH,
                        HEIGHT,
                        (range == Figure.GAP ? "gap to the slot (" : "separation (")
                                + distance()
                                + ")",
                        "closing speed (" + figures.symbol(Measure.CLOSURE) + ")");
        Points flown = new Points();
        Points limit = new Points();
        for (int i = 0; i < s.size(); i++) {
            double r_m = s.value(range, i);
            if (r_m < NEAR_M) {
                double r = figures.shown(Measure.DISTANCE, r_m);
                flown.add(r, figures.shown(Measure.CLOSURE, s.value(Figure.CLOSURE_RATE, i)));
            }
        }
        addLimit(s, range, limit);
        ChartStyle.line(
                chart, pair.flyer() + " as flown", flown, ChartStyle.BLACK, ChartStyle.THIN);
        ChartStyle.line(chart, "closing limit", limit, ChartStyle.VERMILION, ChartStyle.DASHED);
        return chart;
    }

    private void addLimit(PairSeries s, Figure range, Points limit) {
        TreeMap<Double, Double> byRange = new TreeMap<>();
        for (int i = 0; i < s.size(); i++) {
            double r_m = s.value(range, i);
            double v_mps = s.value(Figure.CLOSING_LIMIT, i);
            if (r_m < NEAR_M && Double.isFinite(v_mps)) {
                byRange.put(Math.rint(r_m), v_mps);
            }
        }
        byRange.forEach(
                (r, v) ->
                        limit.add(
                                figures.shown(Measure.DISTANCE, r),
                                figures.shown(Measure.CLOSURE, v)));
    }

    /** Gap (or separation) over time, the planned gate and the best matched window. */
    XYChart gap(PairDebrief pair, OptionalDouble gate_m) {
        PairSeries s = pair.series();
        Figure range = pair.slot().isPresent() ? Figure.GAP : Figure.SEPARATION;
        XYChart chart =
                ChartStyle.chart(
                        WIDTH,
                        HEIGHT,
                        "seconds from exit",
                        (range == Figure.GAP ? "gap to the slot (" : "separation (")
                                + distance()
                                + ")");
        ChartStyle.line(
                chart,
                pair.flyer(),
                over(s, range, Measure.DISTANCE),
                ChartStyle.BLACK,
                ChartStyle.SOLID);
        ChartStyle.line(
                chart,
                "with a touch as anchor",
                over(
                        s,
                        range == Figure.GAP ? Figure.ANCHORED_GAP : Figure.ANCHORED_SEPARATION,
                        Measure.DISTANCE),
                ChartStyle.BLUE,
                ChartStyle.DASHED);
        if (s.size() > 0) {
            double end_s = (s.size() - 1) * s.step_s();
            gate_m.ifPresent(
                    g ->
                            ChartStyle.level(
                                    chart,
                                    "planned gate",
                                    0,
                                    end_s,
                                    figures.shown(Measure.DISTANCE, g)));
            pair.matched().longest().ifPresent(w -> window(chart, s, w));
        }
        return chart;
    }

    private void window(XYChart chart, PairSeries s, MatchedWindow w) {
        Points bar = new Points();
        bar.add(w.span().start_s() - s.time_s(0), 0);
        bar.add(w.span().end_s() - s.time_s(0), 0);
        ChartStyle.line(chart, "best matched window", bar, ChartStyle.GREEN, new BasicStroke(7));
    }

    /** Level and vertical rate of the flyer against the lead, with their tolerances. */
    XYChart rates(PairDebrief pair, Attempt attempt) {
        PairSeries s = pair.series();
        MatchedSettings m = attempt.matched();
        XYChart chart =
                ChartStyle.chart(
                        WIDTH,
                        HEIGHT,
                        "seconds from exit",
                        "rate (" + figures.symbol(Measure.CLOSURE) + ")");
        ChartStyle.line(
                chart,
                "level",
                over(s, Figure.LEVEL_MATCH_RATE, Measure.CLOSURE),
                ChartStyle.BLUE,
                ChartStyle.SOLID);
        ChartStyle.line(
                chart,
                "vertical, up positive",
                over(s, Figure.VERTICAL_MATCH_RATE, Measure.CLOSURE),
                ChartStyle.VERMILION,
                ChartStyle.THIN);
        if (s.size() > 0) {
            double end_s = (s.size() - 1) * s.step_s();
            level(chart, "level tolerance", end_s, m.horizontal_mps());
            level(chart, "vertical tolerance", end_s, m.vertical_mps());
            level(chart, "vertical tolerance, down", end_s, -m.vertical_mps());
        }
        chart.getStyler().setYAxisMax(figures.shown(Measure.CLOSURE, 15));
        chart.getStyler().setYAxisMin(figures.shown(Measure.CLOSURE, -15));
        return chart;
    }

    private void level(XYChart chart, String name, double end_s, double v_mps) {
        ChartStyle.level(chart, name, 0, end_s, figures.shown(Measure.CLOSURE, v_mps));
    }

    /** Seen from above, the lead's nose up. */
    XYChart plan(PairDebrief pair) {
        return approach(pair, Figure.RIGHT, Figure.AHEAD, "right of the lead", "ahead of the lead");
    }

    /** Seen from the lead's right side. */
    XYChart profile(PairDebrief pair) {
        return approach(pair, Figure.AHEAD, Figure.ABOVE, "ahead of the lead", "above the lead");
    }

    private XYChart approach(PairDebrief pair, Figure x, Figure y, String xSays, String ySays) {
        PairSeries s = pair.series();
        XYChart chart =
                ChartStyle.chart(
                        420, 420, xSays + " (" + distance() + ")", ySays + " (" + distance() + ")");
        Points path = new Points();
        double reach_m = 10;
        for (int i = 0; i < s.size(); i++) {
            if (s.value(Figure.SEPARATION, i) < NEAR_M) {
                path.add(shown(s, x, i), shown(s, y, i));
                reach_m = Math.max(reach_m, s.value(Figure.SEPARATION, i));
            }
        }
        ChartStyle.line(chart, pair.flyer(), path, ChartStyle.BLACK, ChartStyle.THIN);
        ChartStyle.marks(chart, "lead", at(0, 0), ChartStyle.BLACK);
        pair.slotArm()
                .ifPresent(
                        a ->
                                ChartStyle.marks(
                                        chart,
                                        "slot",
                                        at(
                                                figures.shown(
                                                        Measure.DISTANCE,
                                                        x == Figure.RIGHT
                                                                ? a.right_m()
                                                                : a.ahead_m()),
                                                figures.shown(
                                                        Measure.DISTANCE,
                                                        y == Figure.AHEAD
                                                                ? a.ahead_m()
                                                                : a.above_m())),
                                        ChartStyle.VERMILION));
        double reach = figures.shown(Measure.DISTANCE, reach_m);
        chart.getStyler().setXAxisMin(-reach).setXAxisMax(reach);
        chart.getStyler().setYAxisMin(-reach).setYAxisMax(reach);
        return chart;
    }

    private double shown(PairSeries s, Figure figure, int i) {
        return figures.shown(Measure.DISTANCE, s.value(figure, i));
    }

    private static Points at(double x, double y) {
        Points p = new Points();
        p.add(x, y);
        return p;
    }

    private Points over(PairSeries s, Figure figure, Measure measure) {
        Points points = new Points();
        for (int i = 0; i < s.size(); i++) {
            points.add(i * s.step_s(), figures.shown(measure, s.value(figure, i)));
        }
        return points;
    }
}
