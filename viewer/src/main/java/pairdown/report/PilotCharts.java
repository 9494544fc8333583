package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.knowm.xchart.XYChart;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.report.ReportModel.Chart;
import pairdown.tail.Episode;
import pairdown.tail.EventAverage;
import pairdown.tail.TailControl;
import pairdown.tail.TailFigures;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;
import pairdown.words.Figures;
import pairdown.words.Words;

/** The pilot's charts: what hands, aircraft and tail did, and what usually followed power. */
final class PilotCharts {
    private static final double MARGIN_S = 15;

    /** Room over and under the lines of a chart whose episodes are shaded to its full height. */
    private static final double ROOM = 0.05;

    private final Debrief debrief;
    private final Words words;
    private final ChartBook book;
    private final Figures clocks;

    PilotCharts(Debrief debrief, Words words, Figures figures, ChartBook book) {
        this.debrief = debrief;
        this.words = words;
        this.clocks = figures;
        this.book = book;
    }

    /** Power and controls beside effectiveness and Tc′: small, for the one page. */
    List<Chart> essentials(TailControl tail) {
        List<Chart> charts = new ArrayList<>();
        Optional<ParticipantDebrief> lead = debrief.participant(tail.participant());
        if (lead.isPresent()) {
            Span span = around(tail);
            add(charts, controls(lead.get(), span, ChartStyle.BROAD / 2), tail, "controls", "-one");
            add(charts, figures(tail, span, ChartStyle.BROAD / 2), tail, "effectiveness", "-one");
        }
        return charts;
    }

    /** The same large, with rates of turn and averages about the moves of power. */
    List<Chart> details(TailControl tail) {
        List<Chart> charts = new ArrayList<>();
        Optional<ParticipantDebrief> lead = debrief.participant(tail.participant());
        if (lead.isEmpty()) {
            return charts;
        }
        Span span = around(tail);
        List<Channel> rates = List.of(Channel.PITCH_RATE, Channel.YAW_RATE);
        add(charts, controls(lead.get(), span, ChartStyle.BROAD), tail, "controls", "");
        add(
                charts,
                channels(lead.get().systems(), span, rates, "°/s", ChartStyle.BROAD),
                tail,
                "turns",
                "");
        add(charts, figures(tail, span, ChartStyle.BROAD), tail, "effectiveness", "");
        average(charts, tail, true);
        average(charts, tail, false);
        return charts;
    }

    private XYChart controls(ParticipantDebrief lead, Span span, int width) {
        List<Channel> hands = List.of(Channel.POWER_LEVER, Channel.ELEVATOR, Channel.RUDDER);
        return channels(lead.systems(), span, hands, "%", width);
    }

    /** All that was judged, with a little before and after. */
    private Span around(TailControl tail) {
        List<Span> dives = tail.review().dives();
        if (dives.isEmpty()) {
            return debrief.span();
        }
        return new Span(
                dives.get(0).start_s() - MARGIN_S, dives.get(dives.size() - 1).end_s() + MARGIN_S);
    }

    private XYChart low(String y, int width, Span span) {
        String x = words.get("report.axis.clock");
        XYChart chart = ChartStyle.chart(width, ChartStyle.LOW, x, y, words.locale());
        scale(span, width).label(chart);
        return chart;
    }

    private ClockScale scale(Span span, int width) {
        return new ClockScale(debrief.axis(), clocks, span, width);
    }

    private XYChart channels(
            Map<Channel, Series> systems, Span span, List<Channel> shown, String unit, int width) {
        XYChart chart = low(unit, width, span);
        int look = 0;
        for (Channel c : shown) {
            if (systems.containsKey(c)) {
                ChartStyle.line(
                        chart,
                        words.get("channel." + c.key()),
                        over(systems.get(c), span, width),
                        look++);
            }
        }
        return chart;
    }

    private XYChart figures(TailControl tail, Span span, int width) {
        XYChart chart = low(words.get("report.axis.ratio"), width, span);
        int look = 0;
        for (String name : List.of(TailFigures.EFFECTIVENESS, TailFigures.RETARDING_COEFFICIENT)) {
            Optional<Series> series = tail.figure(name);
            if (series.isPresent()) {
                ChartStyle.line(
                        chart, words.get("figure." + name), over(series.get(), span, width), look);
            }
            look++;
        }
        sigma(chart, tail, span, width);
        return chart;
    }

    /** Effectiveness give or take one sigma. */
    private void sigma(XYChart chart, TailControl tail, Span span, int width) {
        Optional<Series> value = tail.figure(TailFigures.EFFECTIVENESS);
        Optional<Series> sigma = tail.figure(TailFigures.EFFECTIVENESS_SIGMA);
        if (value.isEmpty() || sigma.isEmpty()) {
            return;
        }
        for (double side : new double[] {-1, 1}) {
            ChartStyle.unnamed(
                    chart,
                    scale(span, width)
                            .points(
                                    span.start_s(),
                                    span.end_s(),
                                    t -> value.get().at(t) + side * sigma.get().at(t)),
                    ChartStyle.colour(0),
                    ChartStyle.THIN);
        }
    }

    private Points over(Series series, Span span, int width) {
        return scale(span, width).points(span.start_s(), span.end_s(), series::at);
    }

    private void add(
            List<Chart> charts, XYChart chart, TailControl tail, String name, String suffix) {
        if (!chart.getSeriesMap().isEmpty()) {
            shade(chart, tail);
        }
        book.draw(chart, "pilot-" + name + suffix, words.get("report.chart." + name))
                .ifPresent(charts::add);
    }

    /** Every episode as a shade over the whole height of the lines. */
    private void shade(XYChart chart, TailControl tail) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (var series : chart.getSeriesMap().values()) {
            for (double y : series.getYData()) {
                low = Double.isFinite(y) ? Math.min(low, y) : low;
                high = Double.isFinite(y) ? Math.max(high, y) : high;
            }
        }
        double room = ROOM * (high - low);
        int n = 1;
        ClockScale clock = scale(around(tail), chart.getWidth());
        for (Episode e : tail.episodes()) {
            Points outline = new Points();
            double from = clock.drawn(e.span().start_s());
            double to = clock.drawn(e.span().end_s());
            outline.add(from, low - room);
            outline.add(from, high + room);
            outline.add(to, high + room);
            outline.add(to, low - room);
            ChartStyle.band(
                    chart,
                    words.get("report.pilot.episodeNumber", String.valueOf(n++)),
                    outline,
                    3);
        }
    }

    private void average(List<Chart> charts, TailControl tail, boolean towardReverse) {
        for (EventAverage a : tail.review().averages()) {
            boolean shown =
                    a.figure().equals(TailFigures.EFFECTIVENESS)
                            && a.towardReverse() == towardReverse;
            if (shown) {
                String name = towardReverse ? "afterReverse" : "afterForward";
                book.draw(
                                AverageChart.of(a, words),
                                "pilot-" + name,
                                words.get("report.chart." + name, String.valueOf(a.changes())))
                        .ifPresent(charts::add);
            }
        }
    }
}
