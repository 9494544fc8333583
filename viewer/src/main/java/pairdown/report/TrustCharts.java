package pairdown.report;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.knowm.xchart.XYChart;
import pairdown.air.Wind;
import pairdown.clock.ClockResult;
import pairdown.clock.OffsetCurve;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.motion.Trajectory;
import pairdown.phase.Event;
import pairdown.phase.EventKind;
import pairdown.time.Span;
import pairdown.time.TimeAxis;
import pairdown.units.Estimate;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** Pictures that let a reader judge clock, heights and wind. */
final class TrustCharts {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 300;

    private final Words words;
    private final Figures figures;

    TrustCharts(Words words, Figures figures) {
        this.words = words;
        this.figures = figures;
    }

    private XYChart chart(String x, String y) {
        return ChartStyle.chart(WIDTH, HEIGHT, x, y, words.locale());
    }

    /**
     * How well a log agrees with its ride at each trial offset: a sharp dip is a sure clock. For a
     * recorder without absolute time the offset is where its own zero lies on the attempt's axis.
     */
    XYChart offsets(ClockResult clock, OffsetCurve curve, TimeAxis axis) {
        XYChart chart =
                chart(
                        words.get(
                                clock.zero().isPresent() ? "chart.axis.zero" : "chart.axis.offset"),
                        words.get("chart.axis.residual", figures.symbol(Measure.CLOSURE)));
        Points points = new Points();
        double most = 0;
        for (OffsetCurve.Point p : curve.points()) {
            double residual = figures.shown(Measure.CLOSURE, p.residual_mps());
            points.add(p.offset_s(), residual);
            most = Math.max(most, residual);
        }
        ChartStyle.line(chart, words.get("chart.residual"), points, 0);
        Optional<Double> found_s =
                clock.zero().map(axis::seconds).or(() -> clock.measured().map(Estimate::value));
        if (found_s.isPresent()) {
            Points at = new Points();
            at.add(found_s.get(), 0);
            at.add(found_s.get(), most);
            ChartStyle.line(
                    chart, words.get("chart.found"), at, ChartStyle.VERMILION, ChartStyle.DASHED);
        }
        return chart;
    }

    /** Heights of all participants on the common clock, every measured bias taken off. */
    XYChart heights(Debrief debrief) {
        XYChart chart = chart(words.get("report.axis.clock"), height());
        ClockScale clock = scale(debrief);
        clock.label(chart);
        int n = 0;
        for (ParticipantDebrief p : debrief.participants()) {
            if (p.trajectory().isPresent()) {
                Trajectory t = p.trajectory().get();
                Points points =
                        clock.points(
                                t.start_s(),
                                t.end_s(),
                                t_s -> figures.shown(Measure.HEIGHT, height_m(debrief, t, t_s)));
                ChartStyle.line(
                        chart,
                        p.id(),
                        points,
                        ChartStyle.of(debrief, p.id()),
                        ChartStyle.stroke(n++));
            }
        }
        return chart;
    }

    private ClockScale scale(Debrief debrief) {
        return new ClockScale(debrief.axis(), figures, debrief.span(), WIDTH);
    }

    private static double height_m(Debrief debrief, Trajectory motion, double t_s) {
        return Double.isNaN(up_m(motion, t_s))
                ? Double.NaN
                : debrief.frame().toGeodetic(motion.at(t_s).position_m()).height_m();
    }

    private String height() {
        return words.get("chart.axis.height", figures.symbol(Measure.HEIGHT));
    }

    /**
     * What the biases did: how far each log's height lay from the first rider's while they rode
     * together, as logged and with the biases taken off. On a profile of the whole attempt a few
     * metres would not be seen.
     */
    XYChart biases(Debrief debrief) {
        XYChart chart =
                chart(
                        words.get("report.axis.clock"),
                        words.get("chart.axis.apart", figures.symbol(Measure.DISTANCE)));
        scale(debrief).label(chart);
        List<ParticipantDebrief> riders =
                debrief.participants().stream().filter(p -> isMeasured(debrief, p)).toList();
        for (int i = 1; i < riders.size(); i++) {
            ride(debrief, riders.get(0), riders.get(i))
                    .ifPresent(addTo(chart, debrief, riders.get(0), riders.get(i)));
        }
        return chart;
    }

    private Consumer<Span> addTo(
            XYChart chart,
            Debrief debrief,
            ParticipantDebrief reference,
            ParticipantDebrief rider) {
        Trajectory a = reference.trajectory().orElseThrow();
        Trajectory b = rider.trajectory().orElseThrow();
        double biases_m = bias_m(debrief, rider) - bias_m(debrief, reference);
        String names = words.get("chart.against", rider.id(), reference.id());
        ClockScale clock = scale(debrief);
        return ride -> {
            ChartStyle.line(
                    chart,
                    names,
                    clock.points(
                            ride.start_s(),
                            ride.end_s(),
                            t -> figures.shown(Measure.DISTANCE, up_m(b, t) - up_m(a, t))),
                    ChartStyle.of(debrief, rider.id()),
                    ChartStyle.SOLID);
            ChartStyle.unnamed(
                    chart,
                    clock.points(
                            ride.start_s(),
                            ride.end_s(),
                            t ->
                                    figures.shown(
                                            Measure.DISTANCE, up_m(b, t) - up_m(a, t) + biases_m)),
                    ChartStyle.of(debrief, rider.id()),
                    ChartStyle.DOTTED);
        };
    }

    private static boolean isMeasured(Debrief debrief, ParticipantDebrief p) {
        return p.trajectory().isPresent() && bias(debrief, p).isPresent();
    }

    /** From when both log until the first of the two leaves the ship. */
    private static Optional<Span> ride(
            Debrief debrief, ParticipantDebrief a, ParticipantDebrief b) {
        double from_s =
                Math.max(
                        a.trajectory().orElseThrow().start_s(),
                        b.trajectory().orElseThrow().start_s());
        double to_s =
                debrief.events().stream()
                        .filter(e -> e.kind() == EventKind.EXIT)
                        .mapToDouble(Event::time_s)
                        .min()
                        .orElse(from_s);
        return to_s > from_s ? Optional.of(new Span(from_s, to_s)) : Optional.empty();
    }

    private static double up_m(Trajectory motion, double t_s) {
        if (t_s > motion.end_s() || motion.inGap(t_s)) {
            return Double.NaN;
        }
        double[] values = new double[Trajectory.VALUES];
        motion.read(t_s, values);
        return values[2];
    }

    private static Optional<Estimate> bias(Debrief debrief, ParticipantDebrief p) {
        return debrief.heights().stream()
                .filter(h -> h.participant().equals(p.id()))
                .flatMap(h -> h.bias_m().stream())
                .findFirst();
    }

    private static double bias_m(Debrief debrief, ParticipantDebrief p) {
        return bias(debrief, p).map(Estimate::value).orElse(0.0);
    }

    /** Wind by layer towards east and north with its one-sigma band. */
    XYChart wind(Wind wind) {
        XYChart chart =
                chart(words.get("chart.axis.wind", figures.symbol(Measure.AIRSPEED)), height());
        component(chart, wind, words.get("chart.east"), true, 0);
        component(chart, wind, words.get("chart.north"), false, 1);
        return chart;
    }

    /** The band is a filled outline: up along one side, down along the other. */
    private void component(XYChart chart, Wind wind, String name, boolean east, int look) {
        Points middle = new Points();
        Points band = new Points();
        for (Wind.Layer layer : wind.layers()) {
            double v_mps = east ? layer.towardEast_mps() : layer.towardNorth_mps();
            middle.add(speed(v_mps), middle(layer));
            band.add(speed(v_mps - layer.sigma_mps()), middle(layer));
        }
        for (int i = wind.layers().size() - 1; i >= 0; i--) {
            Wind.Layer layer = wind.layers().get(i);
            double v_mps = east ? layer.towardEast_mps() : layer.towardNorth_mps();
            band.add(speed(v_mps + layer.sigma_mps()), middle(layer));
        }
        ChartStyle.band(chart, words.get("chart.band", name), band, look);
        ChartStyle.line(chart, name, middle, look);
    }

    private double speed(double v_mps) {
        return figures.shown(Measure.AIRSPEED, v_mps);
    }

    private double middle(Wind.Layer layer) {
        return figures.shown(Measure.HEIGHT, (layer.bottom_m() + layer.top_m()) / 2);
    }
}
