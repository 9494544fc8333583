package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.knowm.xchart.XYChart;
import pairdown.debrief.Debrief;
import pairdown.pair.Approach;
import pairdown.pair.Bearing;
import pairdown.pair.ClosureExceedance;
import pairdown.pair.GateHeld;
import pairdown.pair.MatchedWindow;
import pairdown.pair.OnTarget;
import pairdown.pair.PairDebrief;
import pairdown.pair.Touch;
import pairdown.report.ReportModel.Chart;
import pairdown.report.ReportModel.PairSection;
import pairdown.report.ReportModel.WindowRow;
import pairdown.units.Estimate;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Translation;
import pairdown.words.Words;

/** One pair for the coach: sentences first, then pictures, charts and the windows one by one. */
final class PairPart {
    private final Debrief debrief;
    private final int index;
    private final PairDebrief pair;
    private final String at;
    private final Words words;
    private final Figures figures;
    private final Facts facts;
    private final ChartBook book;
    private final PairPictures pictures;

    PairPart(
            Debrief debrief,
            int index,
            Words words,
            Figures figures,
            Pictures pictures,
            ChartBook book) {
        this.debrief = debrief;
        this.index = index;
        this.pair = debrief.pairs().get(index);
        this.at = "/pairs/" + index;
        this.words = words;
        this.figures = figures;
        this.book = book;
        this.facts = new Facts(debrief.axis(), words, figures);
        this.pictures = PairPictures.order(debrief, pair, words, figures, pictures);
    }

    PairSection section() {
        return new PairSection(
                words.get("report.pair.heading", pair.flyer(), pair.lead()),
                sentences(),
                pictures.fetch(),
                charts(),
                windows(),
                exceedances(),
                touches(),
                refusals());
    }

    private List<Prose> sentences() {
        List<Prose> s = new ArrayList<>();
        s.add(
                facts.prose(
                        "report.pair.axes",
                        Prose.of(facts.word("axes.", pair.axes().key(), at + "/axes"))));
        pair.closest().ifPresent(a -> s.add(closest(a)));
        pair.closest().flatMap(Approach::bearing).ifPresent(b -> s.add(bearing(b)));
        pair.leastGap().filter(a -> a.gap_m().isPresent()).ifPresent(a -> s.add(leastGap(a)));
        pair.anchoredClosest().ifPresent(a -> s.add(anchored(a)));
        s.add(matched());
        pair.gateHeld().ifPresent(g -> s.add(gate(g)));
        pair.onTarget().ifPresent(t -> s.add(onTarget(t)));
        pair.breakOff_s()
                .ifPresent(t -> s.add(facts.prose("report.pair.breakOff", clock(t, "/breakOff"))));
        return s;
    }

    private Prose closest(Approach a) {
        String from = at + "/closest";
        return facts.prose(
                "report.pair.closest",
                estimate(a.separation_m(), "/closest/separation"),
                clock(a.time_s(), "/closest/time"),
                side(a.ahead_m(), from + "/ahead_m", "ahead", "behind"),
                side(a.right_m(), from + "/right_m", "right", "left"),
                side(a.above_m(), from + "/above_m", "above", "below"));
    }

    private Prose bearing(Bearing b) {
        String from = at + "/closest";
        return facts.prose(
                "report.pair.bearing",
                facts.prose(
                        "bearing." + b.level().key(),
                        Prose.of(facts.count(b.hour(), from + "/clockPosition"))),
                facts.prose(
                        b.offLine_m() < 0 ? "report.pair.sucked" : "report.pair.acute",
                        Prose.of(
                                facts.unsigned(
                                        Measure.DISTANCE,
                                        b.offLine_m(),
                                        from + "/offBearingLine_m"))),
                Prose.of(
                        facts.of(
                                Measure.ANGLE,
                                debrief.settings().pairs().bearingLine_deg(),
                                "/settings/pairs/bearingLine_deg")));
    }

    private Prose side(double value_m, String from, String positive, String negative) {
        return facts.prose(
                "report.side." + (value_m < 0 ? negative : positive),
                Prose.of(facts.unsigned(Measure.DISTANCE, value_m, from)));
    }

    private Prose leastGap(Approach a) {
        return facts.prose(
                "report.pair.leastGap",
                estimate(a.gap_m().orElseThrow(), "/leastGap/gap"),
                clock(a.time_s(), "/leastGap/time"));
    }

    private Prose anchored(Approach a) {
        return facts.prose(
                "report.pair.anchored", estimate(a.separation_m(), "/anchoredClosest/separation"));
    }

    /** Value and sigma stand side by side in the file. */
    private Prose estimate(Estimate e, String name) {
        return Prose.of(facts.of(Measure.DISTANCE, e, at + name + "_m", at + name + "Sigma_m"));
    }

    private Prose clock(double t_s, String name) {
        return Prose.of(facts.clock(t_s, at + name));
    }

    private Prose matched() {
        if (!pair.matched().isKnown()) {
            return facts.prose("report.pair.matchUnknown");
        }
        Optional<MatchedWindow> best = pair.matched().longest();
        if (best.isPresent()) {
            return matched(best.get());
        }
        OptionalDouble level = pair.matched().bestLevelDifference_mps();
        OptionalDouble vertical = pair.matched().bestVerticalDifference_mps();
        return level.isPresent() && vertical.isPresent()
                ? facts.prose(
                        "report.pair.neverMatched",
                        Prose.of(
                                facts.of(
                                        Measure.CLOSURE,
                                        level.getAsDouble(),
                                        at + "/matched/bestLevelDifference_mps")),
                        Prose.of(
                                facts.unsigned(
                                        Measure.SINK,
                                        vertical.getAsDouble(),
                                        at + "/matched/bestVerticalDifference_mps")))
                : facts.prose("report.pair.matchUnknown");
    }

    private Prose matched(MatchedWindow w) {
        String window = at + "/matched/windows/" + pair.matched().windows().indexOf(w);
        List<Fact> range = facts.range(w, window);
        return facts.prose(
                "report.pair.matched",
                seconds(pair.matched().total_s(), "/matched/total_s"),
                seconds(w.duration_s(), "/matched/longest_s"),
                Prose.of(range.get(0)),
                Prose.of(range.get(1)),
                Prose.of(facts.of(Measure.DISTANCE, w.separation_m(), window + "/separation_m")),
                Prose.of(facts.word("ended.", w.endedBy().key(), window + "/endedBy")));
    }

    private Prose seconds(double value_s, String name) {
        return Prose.of(facts.of(Measure.DURATION, value_s, at + name));
    }

    private Prose onTarget(OnTarget t) {
        return t.windows().isEmpty()
                ? facts.prose("report.pair.neverOnTarget")
                : facts.prose(
                        "report.pair.onTarget",
                        seconds(t.total_s(), "/onTarget/total_s"),
                        seconds(t.longest_s(), "/onTarget/longest_s"));
    }

    private Prose gate(GateHeld g) {
        Prose planned =
                Prose.of(facts.of(Measure.DISTANCE, g.planned_m(), at + "/gateHeld/planned_m"));
        if (g.verdict() == GateHeld.Verdict.NO_DATA) {
            return facts.prose("report.pair.gateUnknown", planned);
        }
        Prose held = seconds(g.held_s(), "/gateHeld/held_s");
        Prose overshoots = Prose.of(facts.count(g.overshoots(), at + "/gateHeld/overshoots"));
        Prose verdict =
                Prose.of(facts.word("verdict.", g.verdict().key(), at + "/gateHeld/verdict"));
        if (g.median_m().isEmpty()) {
            return facts.prose("report.pair.gateUnmatched", planned, held, overshoots, verdict);
        }
        return facts.prose(
                "report.pair.gate",
                planned,
                Prose.of(facts.medianGap(g, at + "/gateHeld")),
                held,
                overshoots,
                verdict);
    }

    private List<Chart> charts() {
        PairCharts c = new PairCharts(words, figures);
        PairTimeCharts t = new PairTimeCharts(words, figures, debrief, pair);
        List<Chart> charts = new ArrayList<>();
        OptionalDouble gate_m = debrief.attempt().gate_m();
        add(charts, c.closing(pair), "closing", PairCharts.isLimited(pair) ? "" : ".free");
        boolean hasGate = gate_m.isPresent() && pair.slot().isPresent();
        add(charts, t.gap(), "gap", hasGate ? "" : ".free");
        add(charts, t.rates(), "rates", judged());
        ApproachCharts a = new ApproachCharts(words, figures);
        add(charts, a.plan(pair, gate_m), "plan", "");
        add(charts, a.profile(pair, gate_m), "profile", "");
        return charts;
    }

    private String judged() {
        return pair.matched().isKnown() ? "" : ".unjudged";
    }

    /** A caption speaks of what is drawn and no more. */
    private void add(List<Chart> charts, XYChart chart, String key, String what) {
        String caption = words.get("report.chart." + key + what);
        book.draw(chart, key + index, caption).ifPresent(charts::add);
    }

    private List<WindowRow> windows() {
        List<WindowRow> rows = new ArrayList<>();
        for (int i = 0; i < pair.matched().windows().size(); i++) {
            rows.add(window(pair.matched().windows().get(i), at + "/matched/windows/" + i));
        }
        return rows;
    }

    private WindowRow window(MatchedWindow w, String from) {
        return new WindowRow(
                facts.clock(w.span().start_s(), from + "/start"),
                facts.of(Measure.DURATION, w.duration_s(), from + "/duration_s"),
                facts.range(w, from),
                facts.of(Measure.DISTANCE, w.separation_m(), from + "/separation_m"),
                facts.signed(
                        Measure.AIRSPEED,
                        w.airspeedDifference_mps(),
                        from + "/airspeedDifference_mps"),
                facts.signed(Measure.SINK, w.sinkDifference_mps(), from + "/sinkDifference_mps"),
                facts.word("ended.", w.endedBy().key(), from + "/endedBy"));
    }

    private List<Prose> exceedances() {
        List<Prose> said = new ArrayList<>();
        for (int i = 0; i < pair.closureExceedances().size(); i++) {
            ClosureExceedance e = pair.closureExceedances().get(i);
            String from = at + "/closureExceedances/" + i;
            said.add(
                    facts.prose(
                            "report.pair.exceedance",
                            Prose.of(facts.clock(e.span().start_s(), from + "/start")),
                            Prose.of(facts.duration(e.span(), from)),
                            Prose.of(facts.worst(e, from)),
                            Prose.of(facts.of(Measure.CLOSURE, e.limit_mps(), from + "/limit_mps")),
                            Prose.of(
                                    facts.of(
                                            Measure.DISTANCE,
                                            e.separation_m(),
                                            from + "/separation_m"))));
        }
        return said;
    }

    private List<Prose> touches() {
        List<Prose> said = new ArrayList<>();
        for (int i = 0; i < pair.touch().size(); i++) {
            Touch t = pair.touch().get(i);
            String from = at + "/touch/" + i;
            List<String> evidence =
                    t.evidence().stream().map(e -> words.get("evidence." + e.key())).toList();
            said.add(
                    facts.prose(
                            "report.pair.touch",
                            Prose.of(facts.word("touch.", t.grade().key(), from + "/grade")),
                            Prose.of(facts.clock(t.span().start_s(), from + "/start")),
                            Prose.of(facts.duration(t.span(), from)),
                            Prose.words(String.join(", ", evidence))));
        }
        return said;
    }

    private List<String> refusals() {
        List<String> refusals = new ArrayList<>(pair.refusals());
        refusals.addAll(pair.matched().refusals());
        return new Translation(words).of(refusals.stream().distinct().toList());
    }
}
