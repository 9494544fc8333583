package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import pairdown.debrief.Debrief;
import pairdown.report.ReportModel.DiveRow;
import pairdown.report.ReportModel.EpisodeRow;
import pairdown.report.ReportModel.PilotPage;
import pairdown.report.ReportModel.StepRow;
import pairdown.tail.DescentSequence;
import pairdown.tail.Episode;
import pairdown.tail.PowerChange;
import pairdown.tail.PowerTable;
import pairdown.tail.TailControl;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Translation;
import pairdown.words.Words;

/**
 * The pilot's page: each time control faded, what power had just done, how long before, what it
 * ended after; and the table of dives to practise from.
 */
final class PilotPart {
    static final String AT = "/tailControl/";

    private final Debrief debrief;
    private final Words words;
    private final Facts facts;
    private final Translation told;
    private final PilotCharts charts;
    private final PilotCounts counts;

    PilotPart(Debrief debrief, Words words, Figures figures, ChartBook book) {
        this.debrief = debrief;
        this.words = words;
        this.facts = new Facts(debrief.axis(), words, figures);
        this.told = new Translation(words);
        this.charts = new PilotCharts(debrief, words, figures, book);
        this.counts = new PilotCounts(words, facts, AT + "review/");
    }

    PilotPage page() {
        Optional<TailControl> tail = debrief.tailControl();
        if (tail.isEmpty()) {
            return PilotPage.saying(facts.prose("report.pilot.none"));
        }
        TailControl t = tail.get();
        return new PilotPage(
                says(t),
                episodes(t),
                dives(t),
                steps(t),
                charts.essentials(t),
                charts.details(t),
                counts.follows(t),
                counts.tables(t.review().changeTable(), t.review().stretchTable()),
                counts.map(t),
                told.of(t.notes()));
    }

    private List<Prose> says(TailControl tail) {
        List<Prose> says = new ArrayList<>();
        says.add(
                tail.tellsEpisodes()
                        ? facts.prose(
                                "report.pilot.counts",
                                Prose.of(facts.count(tail.episodes().size(), AT + "episodes")))
                        : facts.prose("report.pilot.cannotTell"));
        tail.review().changeTable().ifPresent(t -> says.add(moves(t)));
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
        return says;
    }

    /** The table's own counts: what an episode is put beside, the list of steps tells. */
    private Prose moves(PowerTable table) {
        String from = AT + "review/changeTable/";
        return facts.prose(
                "report.pilot.moves",
                Prose.of(facts.count(table.counts().both(), from + "reverseFollowed")),
                Prose.of(facts.count(table.counts().firstOnly(), from + "reverseNot")),
                Prose.of(
                        facts.of(
                                Measure.DURATION,
                                debrief.settings().tail().power().before_s(),
                                "/settings/tail/power/before_s")));
    }

    private List<EpisodeRow> episodes(TailControl tail) {
        List<EpisodeRow> rows = new ArrayList<>();
        for (int i = 0; i < tail.episodes().size(); i++) {
            Episode e = tail.episodes().get(i);
            String from = AT + "episodes/" + i;
            rows.add(
                    new EpisodeRow(
                            facts.clock(
                                    e.span().start_s(),
                                    e.startSigma_s(),
                                    from + "/start",
                                    from + "/startSigma_s"),
                            facts.clockSigma(e.startSigma_s(), from + "/startSigma_s"),
                            facts.duration(e.span(), from),
                            facts.word("grade.", e.grade().key(), from + "/grade"),
                            link("preceded", e.precededBy(), from + "/precededBy"),
                            link("ended", e.endedAfter(), from + "/endedAfter"),
                            told.of(e.why())));
        }
        return rows;
    }

    private Prose link(String key, Optional<Episode.Link> link, String from) {
        if (link.isEmpty()) {
            return facts.prose("report.pilot." + key + ".none");
        }
        return facts.prose(
                "report.pilot." + key,
                move(link.get().change(), from),
                Prose.of(facts.of(Measure.DURATION, link.get().lag_s(), from + "/lag_s")),
                Prose.of(
                        facts.of(Measure.DURATION, link.get().lagSigma_s(), from + "/lagSigma_s")));
    }

    private Prose move(PowerChange change, String from) {
        return facts.prose(
                "report.pilot.move",
                Prose.of(facts.word("moved.", change.channel().key(), from + "/channel")),
                Prose.of(facts.bare(change.from(), from + "/from")),
                Prose.of(facts.bare(change.to(), from + "/to")));
    }

    private List<DiveRow> dives(TailControl tail) {
        List<DiveRow> rows = new ArrayList<>();
        List<DescentSequence> sequences = tail.review().sequences();
        for (int i = 0; i < sequences.size(); i++) {
            DescentSequence s = sequences.get(i);
            String from = AT + "review/sequences/" + i;
            rows.add(
                    new DiveRow(
                            facts.clock(s.descent().start_s(), from + "/start"),
                            facts.clock(s.pushOver_s(), from + "/pushOver"),
                            airspeed(s.pushOverAirspeed_mps(), from + "/pushOverAirspeed_mps"),
                            facts.clock(s.reverse_s(), from + "/reverse"),
                            airspeed(s.reverseAirspeed_mps(), from + "/reverseAirspeed_mps"),
                            duration(s.timeToStabilise_s(), from + "/timeToStabilise_s"),
                            duration(s.heldLongest_s(), from + "/heldLongest_s"),
                            s.held()
                                    .map(h -> words.get("report.pilot.held." + h))
                                    .orElse(Figures.MISSING),
                            s.episodes().stream()
                                    .map(e -> String.valueOf(e + 1))
                                    .collect(Collectors.joining(", "))));
        }
        return rows;
    }

    private Fact airspeed(OptionalDouble value, String from) {
        return facts.of(Measure.AIRSPEED, value, from);
    }

    private Fact duration(OptionalDouble value, String from) {
        return facts.of(Measure.DURATION, value, from);
    }

    private List<StepRow> steps(TailControl tail) {
        List<StepRow> rows = new ArrayList<>();
        List<DescentSequence> sequences = tail.review().sequences();
        for (int i = 0; i < sequences.size(); i++) {
            List<DescentSequence.Step> steps = sequences.get(i).steps();
            for (int k = 0; k < steps.size(); k++) {
                DescentSequence.Step s = steps.get(k);
                if (tail.review().inDive(s.change().time_s())) {
                    rows.add(step(s, AT + "review/sequences/" + i + "/steps/" + k));
                }
            }
        }
        return rows;
    }

    private StepRow step(DescentSequence.Step s, String from) {
        return new StepRow(
                facts.clock(s.change().time_s(), from + "/time"),
                move(s.change(), from),
                airspeed(s.airspeed_mps(), from + "/airspeed_mps"),
                facts.of(Measure.SINK, s.sink_mps(), from + "/sink_mps"),
                facts.of(Measure.RATIO, s.retardingCoefficient(), from + "/retardingCoefficient"),
                s.change().episode().isPresent()
                        ? words.get(
                                "report.pilot.followed",
                                String.valueOf(s.change().episode().getAsInt() + 1))
                        : "");
    }
}
