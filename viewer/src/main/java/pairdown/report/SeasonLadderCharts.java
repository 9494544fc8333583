package pairdown.report;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.knowm.xchart.XYChart;
import pairdown.season.AttemptSummary.FlyerSummary;
import pairdown.season.AttemptSummary.Spread;
import pairdown.season.Ladder.FlyerLadder;
import pairdown.season.Ladder.Rung;
import pairdown.season.Ladder.Trend;
import pairdown.season.SeasonSettings;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** Pictures of one flyer's step-down: gaps over the attempts, and where the flyer kept. */
final class SeasonLadderCharts {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 360;

    /** Height of a chart whose plot, within axes and legend, is about as high as it is wide. */
    private static final int SQUARE = 630;

    /** Half the width of a planned gate's mark, in attempts. */
    private static final double HALF = 0.35;

    /** Room beside the first and last attempt. */
    private static final double MARGIN = 0.6;

    /** Gaps under this are drawn at it: a logarithmic axis has no zero (m). */
    private static final double LEAST_DRAWN_M = 0.5;

    /** More ellipses than this can't be told apart. */
    private static final int ELLIPSES = 5;

    private final SeasonBuilder page;
    private final Words words;
    private final Figures figures;

    SeasonLadderCharts(SeasonBuilder page) {
        this.page = page;
        this.words = page.words();
        this.figures = page.figures();
    }

    private double shown(double m) {
        return figures.shown(Measure.DISTANCE, m);
    }

    private double drawn(double m) {
        return ChartScale.DOUBLING.drawn(shown(Math.max(LEAST_DRAWN_M, m)));
    }

    private String distance(String key) {
        return words.get(key) + " (" + figures.symbol(Measure.DISTANCE) + ")";
    }

    /** Gaps over the attempts on a logarithmic axis, with gates, uncertainties and the trend. */
    XYChart ladder(FlyerLadder ladder) {
        XYChart chart =
                ChartStyle.chart(
                        WIDTH,
                        HEIGHT,
                        words.get("seasonPage.axis.attempt"),
                        distance("seasonPage.axis.gap"),
                        words.locale());
        ladder.trend().ifPresent(t -> trend(chart, ladder, t));
        Points gates = new Points();
        Points bars = new Points();
        Points medians = new Points();
        Points least = new Points();
        for (Rung r : ladder.rungs()) {
            double n = page.number(r.folder());
            r.planned_m().ifPresent(g -> stroke(gates, n - HALF, drawn(g), n + HALF, drawn(g)));
            median(r.flown(), n, medians, bars);
            r.flown().leastGap_m().ifPresent(g -> least.add(n, drawn(g)));
        }
        ChartStyle.line(
                chart,
                words.get("seasonPage.series.gate"),
                gates,
                ChartStyle.VERMILION,
                ChartStyle.SOLID);
        ChartStyle.line(
                chart,
                words.get("seasonPage.series.twoSigma"),
                bars,
                ChartStyle.BLACK,
                ChartStyle.THIN);
        ChartStyle.marks(chart, words.get("seasonPage.series.median"), medians, ChartStyle.BLACK);
        ChartStyle.marks(chart, words.get("seasonPage.series.least"), least, ChartStyle.SKY);
        ChartAreas.unlisted(chart, words.get("seasonPage.series.twoSigma"));
        ChartAreas.unlisted(chart, words.get("seasonPage.series.band"));
        ChartScale.DOUBLING.label(chart, words.locale());
        wholeNumbers(chart, ladder);
        return chart;
    }

    private void wholeNumbers(XYChart chart, FlyerLadder ladder) {
        List<Rung> rungs = ladder.rungs();
        double first = page.number(rungs.get(0).folder());
        double last = page.number(rungs.get(rungs.size() - 1).folder());
        chart.getStyler().setXAxisMin(first - MARGIN).setXAxisMax(last + MARGIN);
        chart.getStyler().setXAxisDecimalPattern("0");
    }

    private void median(FlyerSummary f, double n, Points medians, Points bars) {
        if (f.medianGap_m().isEmpty()) {
            return;
        }
        double gap_m = f.medianGap_m().getAsDouble();
        medians.add(n, drawn(gap_m));
        f.sigma_m().ifPresent(s -> stroke(bars, n, drawn(gap_m - 2 * s), n, drawn(gap_m + 2 * s)));
    }

    /** One stroke of a line that is broken after it. */
    private static void stroke(Points line, double x1, double y1, double x2, double y2) {
        line.add(x1, y1);
        line.add(x2, y2);
        line.add(x2, Double.NaN);
    }

    private void trend(XYChart chart, FlyerLadder ladder, Trend t) {
        double confidence = SeasonSettings.DEFAULT.confidence();
        Points band = new Points();
        int n = ladder.rungs().size();
        for (int i = 0; i < n; i++) {
            band.add(number(ladder, i), drawn(t.band_m(place(ladder, i), confidence).low()));
        }
        for (int i = n - 1; i >= 0; i--) {
            band.add(number(ladder, i), drawn(t.band_m(place(ladder, i), confidence).high()));
        }
        ChartAreas.area(chart, words.get("seasonPage.series.band"), band, ChartStyle.BAND);
        ChartStyle.line(
                chart,
                words.get("seasonPage.series.trend"),
                along(ladder, i -> drawn(t.gap_m(i))),
                ChartStyle.GREY,
                ChartStyle.DASHED);
    }

    private double number(FlyerLadder ladder, int i) {
        return page.number(ladder.rungs().get(i).folder());
    }

    private static double place(FlyerLadder ladder, int i) {
        return ladder.rungs().get(i).place();
    }

    private Points along(FlyerLadder ladder, DoubleUnaryOperator value) {
        Points points = new Points();
        for (int i = 0; i < ladder.rungs().size(); i++) {
            points.add(number(ladder, i), value.applyAsDouble(place(ladder, i)));
        }
        return points;
    }

    /** Two-sigma ellipses of the flyer's place in the lead's axes, seen from above. */
    XYChart spread(FlyerLadder ladder) {
        XYChart chart =
                ChartStyle.chart(
                        WIDTH,
                        SQUARE,
                        distance("seasonPage.axis.right"),
                        distance("seasonPage.axis.ahead"),
                        words.locale());
        List<Rung> with =
                ladder.rungs().stream().filter(r -> r.flown().spread().isPresent()).toList();
        List<Rung> latest = with.subList(Math.max(0, with.size() - ELLIPSES), with.size());
        if (latest.isEmpty()) {
            return chart;
        }
        Frame frame = new Frame();
        frame.take(0, 0);
        for (int i = 0; i < latest.size(); i++) {
            Points ellipse = ellipse(latest.get(i).flown().spread().orElseThrow());
            frame.take(ellipse);
            String name = String.valueOf(page.number(latest.get(i).folder()));
            ChartStyle.line(chart, name, ellipse, i);
        }
        lead(chart, frame);
        frame.square(chart);
        return chart;
    }

    /** A wedge that points where the lead flies, sized to be seen. */
    private void lead(XYChart chart, Frame frame) {
        double r = frame.reach() / 32;
        Points wedge = new Points();
        wedge.add(0, 1.5 * r);
        wedge.add(r, -r);
        wedge.add(-r, -r);
        wedge.add(0, 1.5 * r);
        ChartAreas.area(chart, words.get("role.lead"), wedge, ChartStyle.BLACK);
        ChartAreas.unlisted(chart, words.get("role.lead"));
    }

    private Points ellipse(Spread s) {
        Points points = new Points();
        double root = Math.sqrt(Math.max(0, 1 - s.correlation() * s.correlation()));
        for (int i = 0; i <= 72; i++) {
            double a = 2 * Math.cos(Math.PI * i / 36);
            double b = 2 * Math.sin(Math.PI * i / 36);
            points.add(
                    shown(s.right_m() + s.rightSd_m() * a),
                    shown(s.ahead_m() + s.aheadSd_m() * (s.correlation() * a + root * b)));
        }
        return points;
    }

    /** The part of the plane that is drawn, as wide as it is high. */
    private static final class Frame {
        private double low = Double.POSITIVE_INFINITY;
        private double high = Double.NEGATIVE_INFINITY;
        private double left = Double.POSITIVE_INFINITY;
        private double right = Double.NEGATIVE_INFINITY;

        void take(double x, double y) {
            left = Math.min(left, x);
            right = Math.max(right, x);
            low = Math.min(low, y);
            high = Math.max(high, y);
        }

        void take(Points points) {
            for (int i = 0; i < points.x().size(); i++) {
                take(points.x().get(i), points.y().get(i));
            }
        }

        double reach() {
            return Math.max(Math.max(right - left, high - low), 1e-3);
        }

        void square(XYChart chart) {
            double half = 0.58 * reach();
            double x = (left + right) / 2;
            double y = (low + high) / 2;
            chart.getStyler().setXAxisMin(x - half).setXAxisMax(x + half);
            chart.getStyler().setYAxisMin(y - half).setYAxisMax(y + half);
        }
    }
}
