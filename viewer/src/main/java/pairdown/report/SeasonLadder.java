package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.report.ReportModel.Chart;
import pairdown.report.SeasonModel.RungRow;
import pairdown.season.AttemptSummary;
import pairdown.season.AttemptSummary.FlyerSummary;
import pairdown.season.AttemptSummary.Spread;
import pairdown.season.Ladder.FlyerLadder;
import pairdown.season.Ladder.Rung;
import pairdown.season.Ladder.Trend;
import pairdown.units.Estimate;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** The step-down's part of the season page. */
final class SeasonLadder {
    private final SeasonBuilder page;
    private final Words words;
    private final Figures figures;
    private final Facts facts;

    SeasonLadder(SeasonBuilder page) {
        this.page = page;
        this.words = page.words();
        this.figures = page.figures();
        this.facts = page.facts();
    }

    SeasonModel.Ladder model() {
        return new SeasonModel.Ladder(says(), charts(), rows());
    }

    /** One or two sentences a flyer: where the last rung stands, and the trend. */
    List<String> says() {
        List<String> says = new ArrayList<>();
        for (FlyerLadder f : page.season().ladder().flyers()) {
            Rung last = f.rungs().get(f.rungs().size() - 1);
            says.add(latest(f, last) + " " + trend(f.trend()));
        }
        if (says.isEmpty()) {
            says.add(words.get("seasonPage.ladder.none"));
        }
        return says;
    }

    private String latest(FlyerLadder f, Rung last) {
        String gate =
                last.planned_m().isPresent()
                        ? figures.text(Measure.DISTANCE, last.planned_m())
                        : words.get("seasonPage.ladder.noGate");
        return words.get(
                "seasonPage.ladder.latest",
                f.flyer(),
                String.valueOf(page.number(last.folder())),
                gate,
                gap(last.flown()),
                words.get("verdict." + last.flown().verdict().orElse("none")));
    }

    private String gap(FlyerSummary f) {
        return f.medianGap_m().isPresent()
                ? figures.text(Measure.DISTANCE, estimate(f.medianGap_m(), f.sigma_m()))
                : Figures.MISSING;
    }

    private static Estimate estimate(OptionalDouble value, OptionalDouble sigma) {
        return new Estimate(value.getAsDouble(), sigma.orElse(Double.NaN));
    }

    private String trend(Optional<Trend> trend) {
        if (trend.isEmpty()) {
            return words.get("seasonPage.trend.none");
        }
        Trend t = trend.get();
        String key = t.high() < 1 ? "nearer" : t.low() > 1 ? "further" : "open";
        return words.get(
                "seasonPage.trend." + key, factor(t.factor()), factor(t.low()), factor(t.high()));
    }

    private String factor(double v) {
        return page.number("%.2f", v);
    }

    private List<Chart> charts() {
        SeasonLadderCharts charts = new SeasonLadderCharts(page);
        List<Chart> out = new ArrayList<>();
        List<FlyerLadder> flyers = page.season().ladder().flyers();
        for (int i = 0; i < flyers.size(); i++) {
            ChartBook.alone(
                            charts.ladder(flyers.get(i)),
                            "ladder" + i,
                            words.get("seasonPage.chart.ladder", flyers.get(i).flyer()))
                    .ifPresent(out::add);
        }
        for (int i = 0; i < flyers.size(); i++) {
            ChartBook.alone(
                            charts.spread(flyers.get(i)),
                            "spread" + i,
                            words.get("seasonPage.chart.spread", flyers.get(i).flyer()))
                    .ifPresent(out::add);
        }
        return out;
    }

    private List<RungRow> rows() {
        List<RungRow> rows = new ArrayList<>();
        List<AttemptSummary> attempts = page.season().attempts();
        for (int i = 0; i < attempts.size(); i++) {
            for (int k = 0; k < attempts.get(i).flyers().size(); k++) {
                rows.add(row(attempts.get(i), i, k));
            }
        }
        return rows;
    }

    private RungRow row(AttemptSummary a, int i, int k) {
        FlyerSummary f = a.flyers().get(k);
        String at = "/attempts/" + i + "/flyers/" + k;
        String verdict = f.verdict().orElse("none");
        return new RungRow(
                page.number(a.folder()),
                page.link(a),
                f.flyer(),
                facts.of(Measure.DISTANCE, a.gate_m(), "/attempts/" + i + "/gate_m"),
                median(f, at),
                against(a, f),
                facts.of(Measure.DISTANCE, f.leastGap_m(), at + "/leastGap_m"),
                facts.of(Measure.DURATION, f.held_s(), at + "/held_s"),
                facts.of(Measure.DURATION, f.matchedLongest_s(), at + "/matchedLongest_s"),
                f.overshoots().map(n -> facts.count(n, at + "/overshoots")).orElse(facts.missing()),
                f.verdict()
                        .map(v -> facts.word("verdict.", v, at + "/verdict"))
                        .orElse(Fact.missing(words.get("verdict.none"))),
                verdict,
                f.spread().map(this::spread).orElse(Figures.MISSING));
    }

    private Fact median(FlyerSummary f, String at) {
        return f.medianGap_m().isPresent()
                ? facts.of(
                        Measure.DISTANCE,
                        f.medianGap_m().getAsDouble(),
                        f.sigma_m(),
                        at + "/medianGap_m",
                        at + "/sigma_m")
                : facts.missing();
    }

    private String against(AttemptSummary a, FlyerSummary f) {
        return page.season().ladder().flyers().stream()
                .filter(l -> l.flyer().equals(f.flyer()))
                .flatMap(l -> l.rungs().stream())
                .filter(r -> r.folder().equals(a.folder()))
                .findFirst()
                .flatMap(Rung::against)
                .map(says -> words.get("seasonPage.against." + says.replace(' ', '-')))
                .orElse("");
    }

    private String spread(Spread s) {
        return words.get(
                "seasonPage.spread",
                figures.number(Measure.DISTANCE, s.aheadSd_m()),
                figures.number(Measure.DISTANCE, s.rightSd_m()),
                figures.text(Measure.DISTANCE, s.aboveSd_m()));
    }
}
