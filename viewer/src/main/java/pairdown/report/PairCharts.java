package pairdown.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
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
import pairdown.words.Words;

/** Charts of a pair over time and distance: closing against the limit, gap and gate, rates. */
final class PairCharts {
    static final int WIDTH = 640;
    static final int HEIGHT = 320;

    /** The way in is worth drawing from here (m): further out the limit asks nothing. */
    static final double NEAR_M = 200;

    /** Opening faster than this is leaving, not approaching (m/s). */
    private static final double OPENING_MPS = -5;

    /** Rates beyond this are the exit's and the opening's (m/s). */
    private static final double RATES_SHOWN_MPS = 10;

    /** Of a gap's chart, in gates: what is far outside would press the rest flat. */
    private static final double GATES_SHOWN = 5;

    private static final BasicStroke BAR =
            new BasicStroke(7, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);

    private final Words words;
    private final Figures figures;

    PairCharts(Words words, Figures figures) {
        this.words = words;
        this.figures = figures;
    }

    /** Until when the pair was together or coming together. */
    static double end_s(PairDebrief pair) {
        double last_s =
                pair.series().size() == 0 ? 0 : pair.series().time_s(pair.series().size() - 1);
        return pair.leaving_s().orElse(pair.breakOff_s().orElse(last_s));
    }

    /** Closing speed against distance with the limit, on the way in. */
    XYChart closing(PairDebrief pair) {
        XYChart chart = closingChart(range(pair));
        ChartStyle.line(
                chart,
                words.get("chart.flown", pair.flyer()),
                closingOf(pair),
                ChartStyle.BLACK,
                ChartStyle.SOLID);
        limit(chart, List.of(pair), ChartStyle.VERMILION);
        return chart;
    }

    /** The same of several on one chart, for a printer without colours. */
    XYChart closingOf(List<PairDebrief> pairs) {
        boolean slots = pairs.stream().allMatch(p -> p.slot().isPresent());
        XYChart chart = closingChart(slots ? Figure.GAP : Figure.SEPARATION);
        for (int i = 0; i < pairs.size(); i++) {
            ChartStyle.line(
                    chart,
                    pairs.get(i).flyer(),
                    closingOf(pairs.get(i)),
                    Color.BLACK,
                    ChartStyle.stroke(i));
        }
        limit(chart, pairs, ChartStyle.GREY);
        return chart;
    }

    private XYChart closingChart(Figure range) {
        return chart(
                words.get(
                        range == Figure.GAP ? "chart.axis.gap" : "chart.axis.separation",
                        figures.symbol(Measure.DISTANCE)),
                words.get("chart.axis.closing", figures.symbol(Measure.CLOSURE)));
    }

    private XYChart chart(String x, String y) {
        return ChartStyle.chart(WIDTH, HEIGHT, x, y, words.locale());
    }

    private static Figure range(PairDebrief pair) {
        return pair.slot().isPresent() ? Figure.GAP : Figure.SEPARATION;
    }

    private Points closingOf(PairDebrief pair) {
        PairSeries s = pair.series();
        double end_s = end_s(pair);
        Points flown = new Points();
        for (int i = 0; i < s.size() && s.time_s(i) <= end_s; i++) {
            double r_m = s.value(range(pair), i);
            double v_mps = s.value(Figure.CLOSURE_RATE, i);
            boolean shown = r_m < NEAR_M && v_mps > OPENING_MPS;
            flown.add(
                    figures.shown(Measure.DISTANCE, r_m),
                    shown ? figures.shown(Measure.CLOSURE, v_mps) : Double.NaN);
        }
        return flown;
    }

    private void limit(XYChart chart, List<PairDebrief> pairs, Color colour) {
        TreeMap<Double, Double> byRange = new TreeMap<>();
        for (PairDebrief pair : pairs) {
            PairSeries s = pair.series();
            for (int i = 0; i < s.size(); i++) {
                double r_m = s.value(range(pair), i);
                double v_mps = s.value(Figure.CLOSING_LIMIT, i);
                if (r_m < NEAR_M && Double.isFinite(v_mps)) {
                    byRange.put(Math.rint(r_m), v_mps);
                }
            }
        }
        Points limit = new Points();
        byRange.forEach(
                (r, v) ->
                        limit.add(
                                figures.shown(Measure.DISTANCE, r),
                                figures.shown(Measure.CLOSURE, v)));
        ChartStyle.line(chart, words.get("chart.limit"), limit, colour, ChartStyle.LIMIT);
    }

    /** Gap (or separation) over time, the planned gate and the matched windows. */
    XYChart gap(PairDebrief pair, OptionalDouble gate_m) {
        PairSeries s = pair.series();
        boolean slot = pair.slot().isPresent();
        XYChart chart =
                chart(
                        words.get("chart.axis.fromExit"),
                        words.get(
                                slot ? "chart.axis.gap" : "chart.axis.separation",
                                figures.symbol(Measure.DISTANCE)));
        ChartStyle.line(
                chart,
                pair.flyer(),
                over(pair, range(pair), Measure.DISTANCE),
                ChartStyle.BLACK,
                ChartStyle.SOLID);
        ChartStyle.line(
                chart,
                words.get("chart.anchored"),
                over(
                        pair,
                        slot ? Figure.ANCHORED_GAP : Figure.ANCHORED_SEPARATION,
                        Measure.DISTANCE),
                ChartStyle.BLUE,
                ChartStyle.DASHED);
        if (s.size() > 0) {
            gate_m.ifPresent(g -> gate(chart, pair, g));
            pair.matched().windows().forEach(w -> window(chart, s, w));
        }
        return chart;
    }

    private void gate(XYChart chart, PairDebrief pair, double gate_m) {
        double gate = figures.shown(Measure.DISTANCE, gate_m);
        ChartStyle.level(chart, words.get("chart.gate"), 0, fromExit_s(pair), gate);
        double most = figures.shown(Measure.DISTANCE, GATES_SHOWN * gate_m);
        chart.getStyler().setYAxisMin(0.0).setYAxisMax(most);
    }

    private static double fromExit_s(PairDebrief pair) {
        return end_s(pair) - pair.series().time_s(0);
    }

    private void window(XYChart chart, PairSeries s, MatchedWindow w) {
        Points bar = new Points();
        bar.add(w.span().start_s() - s.time_s(0), 0);
        bar.add(w.span().end_s() - s.time_s(0), 0);
        ChartStyle.again(chart, words.get("chart.matched"), bar, ChartStyle.GREEN, BAR);
    }

    /** Level and vertical rate of the flyer against the lead, with their tolerances. */
    XYChart rates(PairDebrief pair, Attempt attempt) {
        MatchedSettings m = attempt.matched();
        XYChart chart =
                ChartStyle.chart(
                        ChartStyle.BROAD,
                        ChartStyle.LOW,
                        words.get("chart.axis.fromExit"),
                        words.get("chart.axis.rate", figures.symbol(Measure.CLOSURE)),
                        words.locale());
        ChartStyle.line(
                chart,
                words.get("chart.level"),
                over(pair, Figure.LEVEL_MATCH_RATE, Measure.CLOSURE),
                ChartStyle.BLUE,
                ChartStyle.SOLID);
        ChartStyle.line(
                chart,
                words.get("chart.vertical"),
                over(pair, Figure.VERTICAL_MATCH_RATE, Measure.CLOSURE),
                ChartStyle.VERMILION,
                ChartStyle.THIN);
        if (pair.series().size() > 0) {
            String level = words.get("chart.levelTolerance");
            String vertical = words.get("chart.verticalTolerance");
            tolerance(chart, level, pair, m.horizontal_mps(), ChartStyle.BLUE);
            tolerance(chart, vertical, pair, m.vertical_mps(), ChartStyle.VERMILION);
            tolerance(chart, vertical, pair, -m.vertical_mps(), ChartStyle.VERMILION);
        }
        double most = figures.shown(Measure.CLOSURE, RATES_SHOWN_MPS);
        chart.getStyler().setYAxisMax(most).setYAxisMin(-most);
        return chart;
    }

    private void tolerance(
            XYChart chart, String name, PairDebrief pair, double v_mps, Color colour) {
        Points points = new Points();
        points.add(0, figures.shown(Measure.CLOSURE, v_mps));
        points.add(fromExit_s(pair), figures.shown(Measure.CLOSURE, v_mps));
        ChartStyle.again(chart, name, points, colour, ChartStyle.DOTTED);
    }

    private Points over(PairDebrief pair, Figure figure, Measure measure) {
        PairSeries s = pair.series();
        double end_s = end_s(pair);
        Points points = new Points();
        for (int i = 0; i < s.size() && s.time_s(i) <= end_s; i++) {
            points.add(i * s.step_s(), figures.shown(measure, s.value(figure, i)));
        }
        return points;
    }

    /** Whether a closing limit is drawn: without a slot or a velocity there is none. */
    static boolean isLimited(PairDebrief pair) {
        PairSeries s = pair.series();
        for (int i = 0; i < s.size(); i++) {
            if (Double.isFinite(s.value(Figure.CLOSING_LIMIT, i))) {
                return true;
            }
        }
        return false;
    }
}
