package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.knowm.xchart.XYChart;
import pairdown.debrief.Debrief;
import pairdown.pair.Approach;
import pairdown.pair.ClosureExceedance;
import pairdown.pair.GateHeld;
import pairdown.pair.MatchedWindow;
import pairdown.pair.OnTarget;
import pairdown.pair.PairDebrief;
import pairdown.pair.Touch;
import pairdown.report.ReportModel.Chart;
import pairdown.report.ReportModel.PairSection;
import pairdown.report.ReportModel.WindowRow;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** One pair for the coach: sentences first, then pictures, charts and the windows one by one. */
final class PairPart {
    private final Debrief debrief;
    private final int index;
    private final PairDebrief pair;
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

    private List<String> sentences() {
        List<String> s = new ArrayList<>();
        s.add(words.get("report.pair.axes", words.get("axes." + pair.axes().key())));
        pair.closest().ifPresent(a -> s.add(closest(a)));
        pair.leastGap()
                .filter(a -> a.gap_m().isPresent())
                .ifPresent(
                        a ->
                                s.add(
                                        words.get(
                                                "report.pair.leastGap",
                                                figures.text(
                                                        Measure.DISTANCE, a.gap_m().orElseThrow()),
                                                clock(a.time_s()))));
        pair.anchoredClosest()
                .ifPresent(
                        a ->
                                s.add(
                                        words.get(
                                                "report.pair.anchored",
                                                figures.text(Measure.DISTANCE, a.separation_m()))));
        s.add(matched());
        pair.gateHeld().ifPresent(g -> s.add(gate(g)));
        pair.onTarget().ifPresent(t -> s.add(onTarget(t)));
        pair.breakOff_s().ifPresent(t -> s.add(words.get("report.pair.breakOff", clock(t))));
        return s;
    }

    private String closest(Approach a) {
        return words.get(
                "report.pair.closest",
                figures.text(Measure.DISTANCE, a.separation_m()),
                clock(a.time_s()),
                side(a.ahead_m(), "ahead", "behind"),
                side(a.right_m(), "right", "left"),
                side(a.above_m(), "above", "below"));
    }

    private String side(double value_m, String positive, String negative) {
        return words.get(
                "report.side." + (value_m < 0 ? negative : positive),
                figures.text(Measure.DISTANCE, Math.abs(value_m)));
    }

    private String matched() {
        if (!pair.matched().isKnown()) {
            return words.get("report.pair.matchUnknown");
        }
        Optional<MatchedWindow> best = pair.matched().longest();
        if (best.isPresent()) {
            MatchedWindow w = best.get();
            return words.get(
                    "report.pair.matched",
                    figures.text(Measure.DURATION, pair.matched().total_s()),
                    figures.text(Measure.DURATION, w.duration_s()),
                    range(w),
                    figures.text(Measure.DISTANCE, w.separation_m()),
                    words.get("ended." + w.endedBy().key()));
        }
        OptionalDouble level = pair.matched().bestLevelDifference_mps();
        OptionalDouble vertical = pair.matched().bestVerticalDifference_mps();
        return level.isPresent() && vertical.isPresent()
                ? words.get(
                        "report.pair.neverMatched",
                        figures.text(Measure.CLOSURE, level.getAsDouble()),
                        figures.text(Measure.SINK, Math.abs(vertical.getAsDouble())))
                : words.get("report.pair.matchUnknown");
    }

    private String onTarget(OnTarget t) {
        return t.windows().isEmpty()
                ? words.get("report.pair.neverOnTarget")
                : words.get(
                        "report.pair.onTarget",
                        figures.text(Measure.DURATION, t.total_s()),
                        figures.text(Measure.DURATION, t.longest_s()));
    }

    private String range(MatchedWindow w) {
        return figures.number(Measure.DURATION, Math.max(0, w.duration_s() - w.shorter_s()))
                + "–"
                + figures.text(Measure.DURATION, w.duration_s() + w.longer_s());
    }

    private String gate(GateHeld g) {
        if (g.verdict() == GateHeld.Verdict.NO_DATA) {
            return words.get(
                    "report.pair.gateUnknown", figures.text(Measure.DISTANCE, g.planned_m()));
        }
        return words.get(
                "report.pair.gate",
                figures.text(Measure.DISTANCE, g.planned_m()),
                figures.text(Measure.DISTANCE, g.median_m()),
                figures.text(Measure.DURATION, g.held_s()),
                String.valueOf(g.overshoots()),
                words.get("verdict." + g.verdict().key()));
    }

    private String clock(double t_s) {
        return figures.clock(debrief.axis(), t_s);
    }

    private List<Chart> charts() {
        PairCharts c = new PairCharts(words, figures);
        List<Chart> charts = new ArrayList<>();
        add(charts, c.closing(pair), "closing");
        add(charts, c.gap(pair, debrief.attempt().gate_m()), "gap");
        add(charts, c.rates(pair, debrief.attempt()), "rates");
        ApproachCharts a = new ApproachCharts(words, figures);
        add(charts, a.plan(pair, debrief.attempt().gate_m()), "plan");
        add(charts, a.profile(pair, debrief.attempt().gate_m()), "profile");
        return charts;
    }

    private void add(List<Chart> charts, XYChart chart, String key) {
        book.draw(chart, key + index, words.get("report.chart." + key)).ifPresent(charts::add);
    }

    private List<WindowRow> windows() {
        List<WindowRow> rows = new ArrayList<>();
        for (int i = 0; i < pair.matched().windows().size(); i++) {
            rows.add(
                    window(
                            pair.matched().windows().get(i),
                            "/pairs/" + index + "/matched/windows/" + i));
        }
        return rows;
    }

    private WindowRow window(MatchedWindow w, String at) {
        return new WindowRow(
                facts.clock(w.span().start_s(), at + "/start"),
                facts.of(Measure.DURATION, w.duration_s(), at + "/duration_s"),
                range(w),
                facts.of(Measure.DISTANCE, w.separation_m(), at + "/separation_m"),
                facts.signed(
                        Measure.AIRSPEED,
                        w.airspeedDifference_mps(),
                        at + "/airspeedDifference_mps"),
                facts.signed(Measure.SINK, w.sinkDifference_mps(), at + "/sinkDifference_mps"),
                facts.word("ended.", w.endedBy().key(), at + "/endedBy"));
    }

    private List<String> exceedances() {
        List<String> said = new ArrayList<>();
        for (ClosureExceedance e : pair.closureExceedances()) {
            said.add(
                    words.get(
                            "report.pair.exceedance",
                            clock(e.span().start_s()),
                            figures.text(Measure.DURATION, e.span().duration_s()),
                            figures.text(Measure.CLOSURE, e.worst_mps()),
                            figures.text(Measure.CLOSURE, e.limit_mps()),
                            figures.text(Measure.DISTANCE, e.separation_m())));
        }
        return said;
    }

    private List<String> touches() {
        List<String> said = new ArrayList<>();
        for (Touch t : pair.touch()) {
            List<String> evidence =
                    t.evidence().stream().map(e -> words.get("evidence." + e.key())).toList();
            said.add(
                    words.get(
                            "report.pair.touch",
                            words.get("touch." + t.grade().key()),
                            clock(t.span().start_s()),
                            figures.text(Measure.DURATION, t.span().duration_s()),
                            String.join(", ", evidence)));
        }
        return said;
    }

    private List<String> refusals() {
        List<String> refusals = new ArrayList<>(pair.refusals());
        refusals.addAll(pair.matched().refusals());
        return refusals.stream().distinct().toList();
    }
}
