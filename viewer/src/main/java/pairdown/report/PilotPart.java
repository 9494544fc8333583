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
import pairdown.words.Translation;
import pairdown.words.Words;

/** The pilot's page: each time control faded, what power had just done, and what followed. */
final class PilotPart {
    private static final double MARGIN_S = 20;
    private static final String AT = "/tailControl/";

    private final Debrief debrief;
    private final Words words;
    private final Translation told;
    private final Facts facts;
    private final ChartBook book;

    PilotPart(Debrief debrief, Words words, Figures figures, ChartBook book) {
        this.debrief = debrief;
        this.words = words;
        this.told = new Translation(words);
        this.facts = new Facts(debrief.axis(), words, figures);
        this.book = book;
    }

    PilotPage page() {
        Optional<TailControl> tail = debrief.tailControl();
        if (tail.isEmpty()) {
            return new PilotPage(
                    List.of(facts.prose("report.pilot.none")), List.of(), List.of(), List.of());
        }
        return new PilotPage(says(tail.get()), episodes(tail.get()), charts(tail.get()), List.of());
    }

    private List<Prose> says(TailControl tail) {
        List<Prose> says = new ArrayList<>();
        tail.standingEffectiveness()
                .ifPresent(
                        e ->
                                says.add(
                                        facts.prose(
                                                "report.pilot.standing",
                                                Prose.of(
                                                        facts.of(
                                                                Measure.RATIO,
                                                                e,
                                                                AT + "standingEffectiveness")))));
        says.add(
                facts.prose(
                        "report.pilot.counts",
                        count(tail.episodes().size()),
                        count(
                                tail.powerChanges().stream()
                                        .filter(PowerChange::towardReverse)
                                        .count()),
                        count(
                                tail.powerChanges().stream()
                                        .filter(c -> c.towardReverse() && c.episode().isPresent())
                                        .count())));
        told.of(tail.notes()).forEach(n -> says.add(Prose.words(n)));
        return says;
    }

    private static Prose count(long n) {
        return Prose.words(String.valueOf(n));
    }

    private List<Prose> episodes(TailControl tail) {
        List<Prose> said = new ArrayList<>();
        for (int i = 0; i < tail.episodes().size(); i++) {
            Episode e = tail.episodes().get(i);
            String from = AT + "episodes/" + i;
            List<Fact> parts = new ArrayList<>(episode(e, from).parts());
            e.precededBy().ifPresent(l -> add(parts, link("preceded", l, from + "/precededBy")));
            e.endedAfter().ifPresent(l -> add(parts, link("ended", l, from + "/endedAfter")));
            said.add(new Prose(parts));
        }
        return said;
    }

    private Prose episode(Episode e, String from) {
        return facts.prose(
                "report.pilot.episode",
                Prose.of(facts.clock(e.span().start_s(), from + "/start")),
                Prose.of(facts.duration(e.span(), from)),
                Prose.of(facts.word("grade.", e.grade().key(), from + "/grade")),
                Prose.words(told.of(e.why())));
    }

    private static void add(List<Fact> parts, Prose more) {
        parts.add(Fact.words(" "));
        parts.addAll(more.parts());
    }

    private Prose link(String key, Episode.Link link, String from) {
        PowerChange change = link.change();
        return facts.prose(
                "report.pilot." + key,
                Prose.of(facts.word("channel.", change.channel().key(), from + "/channel")),
                Prose.of(facts.bare(change.from(), from + "/from")),
                Prose.of(facts.bare(change.to(), from + "/to")),
                Prose.of(facts.of(Measure.DURATION, link.lag_s(), from + "/lag_s")));
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
