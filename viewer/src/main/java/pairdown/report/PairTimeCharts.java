package pairdown.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.OptionalDouble;
import org.knowm.xchart.XYChart;
import pairdown.attempt.MatchedSettings;
import pairdown.debrief.Debrief;
import pairdown.pair.MatchedWindow;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;
import pairdown.time.Span;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** Charts of a pair over the time of day, from exit until it was apart again. */
final class PairTimeCharts {
    /** Rates beyond this are the exit's and the opening's (m/s). */
    private static final double RATES_SHOWN_MPS = 10;

    /** Of a gap's chart, in gates: what is far outside would press the rest flat. */
    private static final double GATES_SHOWN = 5;

    private static final BasicStroke BAR =
            new BasicStroke(7, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);

    private final Words words;
    private final Figures figures;
    private final Debrief debrief;
    private final PairDebrief pair;
    private final Span shown;

    PairTimeCharts(Words words, Figures figures, Debrief debrief, PairDebrief pair) {
        this.words = words;
        this.figures = figures;
        this.debrief = debrief;
        this.pair = pair;
        double exit_s = pair.series().size() == 0 ? 0 : pair.series().time_s(0);
        this.shown = new Span(exit_s, Math.max(exit_s, PairCharts.end_s(pair)));
    }

    /** Gap (or separation), the planned gate and the matched windows. */
    XYChart gap() {
        boolean slot = pair.slot().isPresent();
        String axis = slot ? "chart.axis.gap" : "chart.axis.separation";
        String y = words.get(axis, figures.symbol(Measure.DISTANCE));
        XYChart chart = chart(PairCharts.WIDTH, PairCharts.HEIGHT, y);
        ClockScale clock = clock(chart);
        ChartStyle.line(
                chart,
                pair.flyer(),
                over(clock, PairCharts.range(pair), Measure.DISTANCE),
                ChartStyle.BLACK,
                ChartStyle.SOLID);
        ChartStyle.line(
                chart,
                words.get("chart.anchored"),
                over(
                        clock,
                        slot ? Figure.ANCHORED_GAP : Figure.ANCHORED_SEPARATION,
                        Measure.DISTANCE),
                ChartStyle.BLUE,
                ChartStyle.DASHED);
        if (pair.series().size() > 0) {
            gate_m().ifPresent(g -> gate(chart, clock, g));
            pair.matched().windows().forEach(w -> window(chart, clock, w));
        }
        return chart;
    }

    private OptionalDouble gate_m() {
        return debrief.attempt().gate_m();
    }

    private void gate(XYChart chart, ClockScale clock, double gate_m) {
        ChartStyle.level(
                chart,
                words.get("chart.gate"),
                clock.drawn(shown.start_s()),
                clock.drawn(shown.end_s()),
                figures.shown(Measure.DISTANCE, gate_m));
        double most = figures.shown(Measure.DISTANCE, GATES_SHOWN * gate_m);
        chart.getStyler().setYAxisMin(0.0).setYAxisMax(most);
    }

    private void window(XYChart chart, ClockScale clock, MatchedWindow w) {
        ChartStyle.again(
                chart,
                words.get("chart.matched"),
                level(clock, w.span(), 0),
                ChartStyle.GREEN,
                BAR);
    }

    /** Level and vertical rate of the flyer against the lead, with their tolerances. */
    XYChart rates() {
        String y = words.get("chart.axis.rate", figures.symbol(Measure.CLOSURE));
        XYChart chart = chart(ChartStyle.BROAD, ChartStyle.LOW, y);
        ClockScale clock = clock(chart);
        ChartStyle.line(
                chart,
                words.get("chart.level"),
                over(clock, Figure.LEVEL_MATCH_RATE, Measure.CLOSURE),
                ChartStyle.BLUE,
                ChartStyle.SOLID);
        ChartStyle.line(
                chart,
                words.get("chart.vertical"),
                over(clock, Figure.VERTICAL_MATCH_RATE, Measure.CLOSURE),
                ChartStyle.VERMILION,
                ChartStyle.THIN);
        if (pair.series().size() > 0) {
            tolerances(chart, clock);
        }
        double most = figures.shown(Measure.CLOSURE, RATES_SHOWN_MPS);
        chart.getStyler().setYAxisMax(most).setYAxisMin(-most);
        return chart;
    }

    private void tolerances(XYChart chart, ClockScale clock) {
        MatchedSettings m = debrief.attempt().matched();
        String level = words.get("chart.levelTolerance");
        String vertical = words.get("chart.verticalTolerance");
        tolerance(chart, level, clock, m.horizontal_mps(), ChartStyle.BLUE);
        tolerance(chart, vertical, clock, m.vertical_mps(), ChartStyle.VERMILION);
        tolerance(chart, vertical, clock, -m.vertical_mps(), ChartStyle.VERMILION);
    }

    private void tolerance(
            XYChart chart, String name, ClockScale clock, double v_mps, Color colour) {
        Points points = level(clock, shown, figures.shown(Measure.CLOSURE, v_mps));
        ChartStyle.again(chart, name, points, colour, ChartStyle.DOTTED);
    }

    private static Points level(ClockScale clock, Span span, double y) {
        Points points = new Points();
        points.add(clock.drawn(span.start_s()), y);
        points.add(clock.drawn(span.end_s()), y);
        return points;
    }

    private XYChart chart(int width, int height, String y) {
        return ChartStyle.chart(width, height, words.get("report.axis.clock"), y, words.locale());
    }

    private ClockScale clock(XYChart chart) {
        ClockScale clock = new ClockScale(debrief.axis(), figures, shown, chart.getWidth());
        clock.label(chart);
        return clock;
    }

    private Points over(ClockScale clock, Figure figure, Measure measure) {
        PairSeries s = pair.series();
        Points points = new Points();
        for (int i = 0; i < s.size() && s.time_s(i) <= shown.end_s(); i++) {
            points.add(clock.drawn(s.time_s(i)), figures.shown(measure, s.value(figure, i)));
        }
        return points;
    }
}
