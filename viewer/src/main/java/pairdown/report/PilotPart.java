package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.knowm.xchart.XYChart;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.report.ReportModel.Chart;
import pairdown.report.ReportModel.PilotPage;
import pairdown.tail.Episode;
import pairdown.tail.PowerChange;
import pairdown.tail.TailControl;
import pairdown.track.Channel;
import pairdown.track.Series;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** The pilot's page: each time control faded, what power had just done, and what followed. */
final class PilotPart {
    private static final double MARGIN_S = 20;

    private final Debrief debrief;
    private final Words words;
    private final Figures figures;
    private final ChartBook book;

    PilotPart(Debrief debrief, Words words, Figures figures, ChartBook book) {
        this.debrief = debrief;
        this.words = words;
        this.figures = figures;
        this.book = book;
    }

    PilotPage page() {
        Optional<TailControl> tail = debrief.tailControl();
        if (tail.isEmpty()) {
            return new PilotPage(
                    List.of(words.get("report.pilot.none")), List.of(), List.of(), List.of());
        }
        return new PilotPage(says(tail.get()), episodes(tail.get()), charts(tail.get()), List.of());
    }

    private List<String> says(TailControl tail) {
        List<String> says = new ArrayList<>();
        tail.standingEffectiveness()
                .ifPresent(
                        e ->
                                says.add(
                                        words.get(
                                                "report.pilot.standing",
                                                figures.text(Measure.RATIO, e))));
        says.add(
                words.get(
                        "report.pilot.counts",
                        String.valueOf(tail.episodes().size()),
                        String.valueOf(
                                tail.powerChanges().stream()
                                        .filter(PowerChange::towardReverse)
                                        .count()),
                        String.valueOf(
                                tail.powerChanges().stream()
                                        .filter(c -> c.towardReverse() && c.episode().isPresent())
                                        .count())));
        says.addAll(tail.notes());
        return says;
    }

    private List<String> episodes(TailControl tail) {
        List<String> said = new ArrayList<>();
        for (Episode e : tail.episodes()) {
            String base =
                    words.get(
                            "report.pilot.episode",
                            figures.clock(debrief.axis(), e.span().start_s()),
                            figures.text(Measure.DURATION, e.span().duration_s()),
                            words.get("grade." + e.grade().key()),
                            e.why());
            String before =
                    e.precededBy().map(l -> " " + link("report.pilot.preceded", l)).orElse("");
            String after = e.endedAfter().map(l -> " " + link("report.pilot.ended", l)).orElse("");
            said.add(base + before + after);
        }
        return said;
    }

    private String link(String key, Episode.Link link) {
        return words.get(
                key,
                words.get("channel." + link.change().channel().key()),
                String.format(words.locale(), "%.0f", link.change().from()),
                String.format(words.locale(), "%.0f", link.change().to()),
                figures.text(Measure.DURATION, link.lag_s()));
    }

    private List<Chart> charts(TailControl tail) {
        List<Chart> charts = new ArrayList<>();
        Optional<ParticipantDebrief> lead = debrief.participant(tail.participant());
        if (lead.isEmpty()) {
            return charts;
        }
        double[] span = around(tail);
        Map<Channel, Series> systems = lead.get().systems();
        XYChart controls =
                ChartStyle.chart(
                        ChartStyle.BROAD,
                        ChartStyle.LOW,
                        words.get("report.axis.seconds"),
                        "%",
                        words.locale());
        int look = 0;
        for (Channel c : List.of(Channel.POWER_LEVER, Channel.ELEVATOR, Channel.RUDDER)) {
            if (systems.containsKey(c)) {
                ChartStyle.line(
                        controls,
                        words.get("channel." + c.key()),
                        over(systems.get(c), span),
                        look++);
            }
        }
        book.draw(controls, "controls", words.get("report.chart.controls")).ifPresent(charts::add);
        XYChart effectiveness =
                ChartStyle.chart(
                        ChartStyle.BROAD,
                        ChartStyle.LOW,
                        words.get("report.axis.seconds"),
                        words.get("report.axis.ratio"),
                        words.locale());
        figure(effectiveness, tail, "effectiveness", span, 0);
        figure(effectiveness, tail, "retardingCoefficient", span, 1);
        book.draw(effectiveness, "effectiveness", words.get("report.chart.effectiveness"))
                .ifPresent(charts::add);
        return charts;
    }

    private void figure(XYChart chart, TailControl tail, String name, double[] span, int look) {
        Series series = tail.figures().get(name);
        if (series != null) {
            ChartStyle.line(chart, words.get("figure." + name), over(series, span), look);
        }
    }

    /** From before the first power change to after the last, or the whole attempt. */
    private double[] around(TailControl tail) {
        double from_s =
                tail.powerChanges().stream()
                        .mapToDouble(PowerChange::time_s)
                        .min()
                        .orElse(debrief.span().start_s());
        double to_s =
                tail.powerChanges().stream()
                        .mapToDouble(PowerChange::time_s)
                        .max()
                        .orElse(debrief.span().end_s());
        return new double[] {from_s - MARGIN_S, to_s + MARGIN_S};
    }

    private static Points over(Series series, double[] span) {
        return Points.of(span[0], span[1], series::at);
    }
}
