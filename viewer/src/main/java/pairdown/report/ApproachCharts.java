package pairdown.report;

import java.awt.BasicStroke;
import java.util.OptionalDouble;
import org.knowm.xchart.XYChart;
import pairdown.attempt.LeverArm;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/**
 * A flyer's way to the lead, seen from the lead: in plan with its nose up, and in profile from its
 * right side. Both axes of a chart have one scale.
 */
final class ApproachCharts {
    private static final int SIDE = 460;

    /** What surrounds the plot: on axes of one scale both sides must leave alike. */
    private static final double MARGIN = 0.08;

    private static final int CIRCLE_POINTS = 72;

    private final Words words;
    private final Figures figures;

    ApproachCharts(Words words, Figures figures) {
        this.words = words;
        this.figures = figures;
    }

    XYChart plan(PairDebrief pair, OptionalDouble gate_m) {
        return approach(pair, gate_m, Figure.RIGHT, Figure.AHEAD);
    }

    XYChart profile(PairDebrief pair, OptionalDouble gate_m) {
        return approach(pair, gate_m, Figure.AHEAD, Figure.ABOVE);
    }

    private XYChart approach(PairDebrief pair, OptionalDouble gate_m, Figure x, Figure y) {
        XYChart chart = ChartStyle.chart(SIDE, SIDE, axis(x), axis(y), words.locale());
        Frame frame = new Frame();
        Points way = new Points();
        PairSeries s = pair.series();
        double end_s = PairCharts.end_s(pair);
        for (int i = 0; i < s.size() && s.time_s(i) <= end_s; i++) {
            boolean near = s.value(Figure.SEPARATION, i) < PairCharts.NEAR_M;
            add(way, frame, near ? s.value(x, i) : Double.NaN, s.value(y, i));
        }
        ChartStyle.line(chart, pair.flyer(), way, ChartStyle.BLACK, ChartStyle.THIN);
        Points lead = new Points();
        add(lead, frame, 0, 0);
        pair.slotArm()
                .ifPresent(
                        arm -> {
                            gate_m.ifPresent(g -> gate(chart, frame, arm, g, x, y));
                            Points slot = new Points();
                            add(slot, frame, of(arm, x), of(arm, y));
                            ChartStyle.marks(
                                    chart, words.get("chart.slot"), slot, ChartStyle.VERMILION);
                        });
        ChartStyle.marks(chart, words.get("chart.lead"), lead, ChartStyle.BLACK);
        frame.applyTo(chart);
        return chart;
    }

    private String axis(Figure figure) {
        String key =
                switch (figure) {
                    case RIGHT -> "chart.axis.right";
                    case AHEAD -> "chart.axis.ahead";
                    default -> "chart.axis.above";
                };
        return words.get(key, figures.symbol(Measure.DISTANCE));
    }

    private static double of(LeverArm arm, Figure figure) {
        return switch (figure) {
            case RIGHT -> arm.right_m();
            case AHEAD -> arm.ahead_m();
            default -> arm.above_m();
        };
    }

    /** The planned gate as a ring round the slot. */
    private void gate(
            XYChart chart, Frame frame, LeverArm slot, double gate_m, Figure x, Figure y) {
        Points ring = new Points();
        for (int i = 0; i <= CIRCLE_POINTS; i++) {
            double angle = 2 * Math.PI * i / CIRCLE_POINTS;
            add(
                    ring,
                    frame,
                    of(slot, x) + gate_m * Math.cos(angle),
                    of(slot, y) + gate_m * Math.sin(angle));
        }
        BasicStroke dashes = ChartStyle.DASHED;
        ChartStyle.line(chart, words.get("chart.gate"), ring, ChartStyle.GREY, dashes);
    }

    private void add(Points points, Frame frame, double x_m, double y_m) {
        double x = figures.shown(Measure.DISTANCE, x_m);
        double y = figures.shown(Measure.DISTANCE, y_m);
        points.add(x, y);
        frame.hold(x, y);
    }

    /** The least square that holds everything drawn. */
    private static final class Frame {
        private double left = Double.POSITIVE_INFINITY;
        private double right = Double.NEGATIVE_INFINITY;
        private double bottom = Double.POSITIVE_INFINITY;
        private double top = Double.NEGATIVE_INFINITY;

        void hold(double x, double y) {
            if (Double.isFinite(x) && Double.isFinite(y)) {
                left = Math.min(left, x);
                right = Math.max(right, x);
                bottom = Math.min(bottom, y);
                top = Math.max(top, y);
            }
        }

        void applyTo(XYChart chart) {
            double half = Math.max(right - left, top - bottom) * (0.5 + MARGIN);
            double x = (left + right) / 2;
            double y = (bottom + top) / 2;
            chart.getStyler().setXAxisMin(x - half).setXAxisMax(x + half);
            chart.getStyler().setYAxisMin(y - half).setYAxisMax(y + half);
        }
    }
}
