package pairdown.report;

import java.awt.Color;
import java.util.List;
import java.util.TreeMap;
import org.knowm.xchart.XYChart;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** Charts of a pair over distance: closing against the limit. */
final class PairCharts {
    static final int WIDTH = 640;
    static final int HEIGHT = 320;

    /** The way in is worth drawing from here (m): further out the limit asks nothing. */
    static final double NEAR_M = 200;

    /** Opening faster than this is leaving, not approaching (m/s). */
    private static final double OPENING_MPS = -5;

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

    /** What tells how near a pair is. */
    static Figure range(PairDebrief pair) {
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
