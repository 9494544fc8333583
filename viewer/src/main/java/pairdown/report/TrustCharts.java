package pairdown.report;

import org.knowm.xchart.XYChart;
import pairdown.air.Wind;
import pairdown.clock.ClockResult;
import pairdown.clock.OffsetCurve;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.height.HeightResult;
import pairdown.motion.Trajectory;
import pairdown.units.Estimate;
import pairdown.words.Figures;
import pairdown.words.Measure;

/** Pictures that let a reader judge clock, heights and wind. */
final class TrustCharts {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 300;

    private final Figures figures;

    TrustCharts(Figures figures) {
        this.figures = figures;
    }

    /** How well a log agrees with its ride at each trial offset: a sharp dip is a sure clock. */
    XYChart offsets(ClockResult clock, OffsetCurve curve) {
        XYChart chart =
                ChartStyle.chart(
                        WIDTH, HEIGHT, "trial clock offset (s)", "velocity difference (m/s)");
        Points points = new Points();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (OffsetCurve.Point p : curve.points()) {
            points.add(p.offset_s(), p.residual_mps());
            least = Math.min(least, p.residual_mps());
            most = Math.max(most, p.residual_mps());
        }
        ChartStyle.line(chart, "difference to the logs it rode with", points, 0);
        Points applied = new Points();
        double at_s = clock.measured().map(Estimate::value).orElse(clock.map().offset_s());
        applied.add(at_s, Math.min(0, least));
        applied.add(at_s, most);
        ChartStyle.line(chart, "measured", applied, ChartStyle.VERMILION, ChartStyle.DASHED);
        return chart;
    }

    /**
     * Heights of all participants over time, as logged and after the measured bias is taken off.
     */
    XYChart heights(Debrief debrief) {
        XYChart chart =
                ChartStyle.chart(
                        WIDTH,
                        HEIGHT,
                        "seconds from first fix",
                        "height above ellipsoid (" + figures.symbol(Measure.HEIGHT) + ")");
        int n = 0;
        for (ParticipantDebrief p : debrief.participants()) {
            if (p.trajectory().isPresent()) {
                Trajectory motion = p.trajectory().get();
                ChartStyle.line(chart, p.id(), height(motion, 0), n);
                double bias_m = bias_m(debrief, p.id());
                if (bias_m != 0) {
                    ChartStyle.line(
                            chart,
                            p.id() + " as logged",
                            height(motion, bias_m),
                            ChartStyle.GREY,
                            ChartStyle.DOTTED);
                }
                n++;
            }
        }
        return chart;
    }

    private Points height(Trajectory motion, double bias_m) {
        double[] values = new double[Trajectory.VALUES];
        return Points.of(
                motion.start_s(),
                motion.end_s(),
                t_s -> {
                    if (motion.inGap(t_s)) {
                        return Double.NaN;
                    }
                    motion.read(Math.min(t_s, motion.end_s()), values);
                    return figures.shown(Measure.HEIGHT, values[2] + bias_m);
                });
    }

    private static double bias_m(Debrief debrief, String participant) {
        return debrief.heights().stream()
                .filter(h -> h.participant().equals(participant))
                .map(HeightResult::bias_m)
                .flatMap(b -> b.stream())
                .mapToDouble(Estimate::value)
                .findFirst()
                .orElse(0);
    }

    /** Wind by layer towards east and north with its one-sigma band. */
    XYChart wind(Wind wind) {
        XYChart chart =
                ChartStyle.chart(
                        WIDTH,
                        HEIGHT,
                        "wind component ("
                                + figures.symbol(Measure.AIRSPEED)
                                + ", the way the air moves)",
                        "height above ellipsoid (" + figures.symbol(Measure.HEIGHT) + ")");
        component(chart, wind, "towards east", true, 0);
        component(chart, wind, "towards north", false, 1);
        return chart;
    }

    private void component(XYChart chart, Wind wind, String name, boolean east, int look) {
        Points middle = new Points();
        Points low = new Points();
        Points high = new Points();
        for (Wind.Layer layer : wind.layers()) {
            double h = figures.shown(Measure.HEIGHT, (layer.bottom_m() + layer.top_m()) / 2);
            double v = east ? layer.towardEast_mps() : layer.towardNorth_mps();
            middle.add(figures.shown(Measure.AIRSPEED, v), h);
            low.add(figures.shown(Measure.AIRSPEED, v - layer.sigma_mps()), h);
            high.add(figures.shown(Measure.AIRSPEED, v + layer.sigma_mps()), h);
        }
        ChartStyle.line(chart, name, middle, look);
        ChartStyle.line(chart, name + ", −1 sigma", low, ChartStyle.GREY, ChartStyle.THIN);
        ChartStyle.line(chart, name + ", +1 sigma", high, ChartStyle.GREY, ChartStyle.THIN);
    }
}
