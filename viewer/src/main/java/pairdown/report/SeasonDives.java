package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.report.ReportModel.Chart;
import pairdown.report.SeasonModel.DiveRow;
import pairdown.season.AttemptSummary;
import pairdown.season.AttemptSummary.Dive;
import pairdown.season.Repeatability;
import pairdown.season.Repeatability.Run;
import pairdown.stats.IndividualsChart;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** The repeatability part of the season page: the lead's descents. */
final class SeasonDives {
    private final SeasonBuilder page;
    private final Words words;
    private final Figures figures;
    private final Facts facts;
    private final Repeatability repeatability;

    SeasonDives(SeasonBuilder page) {
        this.page = page;
        this.words = page.words();
        this.figures = page.figures();
        this.facts = page.facts();
        this.repeatability = page.season().repeatability();
    }

    SeasonModel.Dives model() {
        List<String> says = new ArrayList<>(glance());
        List<Repeatability> all = page.season().repeatabilities();
        all.stream().skip(1).forEach(r -> says.add(held(r)));
        List<String> notJudged = notJudged();
        if (!notJudged.isEmpty()) {
            says.add(words.get("seasonPage.held.notJudged", String.join(", ", notJudged)));
        }
        repeatability.runs().forEach(r -> says.add(steadiness(r)));
        return new SeasonModel.Dives(says, charts(), rows());
    }

    /** Held so many of so many, and how soon steady. */
    List<String> glance() {
        if (repeatability.held().trials() == 0) {
            return List.of(words.get("seasonPage.held.none"));
        }
        String untold = untold().map(u -> " " + u).orElse("");
        return List.of(held(repeatability) + " " + stabilise() + untold);
    }

    /** Where power and tail were not reviewed, "without an episode" is not known. */
    private Optional<String> untold() {
        long n =
                page.season().attempts().stream()
                        .filter(a -> a.dive().isPresent() && a.episodes().isEmpty())
                        .filter(
                                a ->
                                        a.dive()
                                                .map(Dive::configuration)
                                                .equals(repeatability.configuration()))
                        .count();
        return n == 0
                ? Optional.empty()
                : Optional.of(words.get("seasonPage.held.untold", String.valueOf(n)));
    }

    private String held(Repeatability r) {
        return words.get(
                "seasonPage.held",
                String.valueOf(r.held().successes()),
                String.valueOf(r.held().trials()),
                percent(r.interval().low()),
                percent(r.interval().high()),
                r.configuration().map(page::told).orElse(""));
    }

    private List<String> notJudged() {
        return page.season().attempts().stream()
                .filter(a -> a.usable() && a.target().isPresent() && a.dive().isEmpty())
                .map(AttemptSummary::attempt)
                .toList();
    }

    private String percent(double share) {
        return page.number("%.0f %%", 100 * share);
    }

    private String stabilise() {
        OptionalDouble median_s = repeatability.medianStabilise_s();
        String never = String.valueOf(repeatability.neverStabilised());
        return median_s.isPresent()
                ? words.get("seasonPage.stabilise", figures.text(Measure.DURATION, median_s), never)
                : words.get("seasonPage.stabilise.none", never);
    }

    private String steadiness(Run run) {
        String name = words.get("seasonPage.run." + run.quantity().key());
        IndividualsChart chart = run.chart();
        if (chart.limits().isEmpty()) {
            return words.get(
                    "seasonPage.run.few",
                    name,
                    String.valueOf(chart.values().size()),
                    String.valueOf(IndividualsChart.MINIMUM));
        }
        List<String> outside =
                chart.outside().stream().map(i -> run.dives().get(i).attempt()).toList();
        return outside.isEmpty()
                ? words.get("seasonPage.run.inside", name, String.valueOf(chart.values().size()))
                : words.get("seasonPage.run.outside", name, String.join(", ", outside));
    }

    private List<Chart> charts() {
        SeasonDiveCharts charts = new SeasonDiveCharts(page);
        List<Chart> out = new ArrayList<>();
        for (Run run : repeatability.runs()) {
            ChartBook.alone(
                            charts.run(run),
                            "run-" + run.quantity().key(),
                            words.get(
                                    "seasonPage.chart.run",
                                    words.get("seasonPage.run." + run.quantity().key())))
                    .ifPresent(out::add);
        }
        if (repeatability.stabilise().cases() > 0) {
            ChartBook.alone(
                            charts.survival(repeatability.stabilise()),
                            "survival",
                            words.get("seasonPage.chart.survival"))
                    .ifPresent(out::add);
        }
        return out;
    }

    private List<DiveRow> rows() {
        List<DiveRow> rows = new ArrayList<>();
        List<AttemptSummary> attempts = page.season().attempts();
        for (int i = 0; i < attempts.size(); i++) {
            AttemptSummary a = attempts.get(i);
            if (a.dive().isPresent()) {
                rows.add(row(a, a.dive().get(), "/attempts/" + i));
            }
        }
        return rows;
    }

    private DiveRow row(AttemptSummary a, Dive d, String at) {
        String key = a.descentHeld().orElse(false) ? "held" : "not-held";
        return new DiveRow(
                page.number(a.folder()),
                page.link(a),
                page.told(d.configuration()),
                facts.word("seasonPage.dive.", key, at + "/descentHeld"),
                key,
                facts.of(Measure.DURATION, d.longest_s(), at + "/longestOnTarget_s"),
                d.stabilise_s().isPresent()
                        ? facts.of(Measure.DURATION, d.stabilise_s(), at + "/timeToStabilise_s")
                        : Fact.missing(words.get("seasonPage.dive.never")),
                facts.of(Measure.AIRSPEED, d.airspeedSd_mps(), at + "/airspeedSd_mps"),
                facts.of(Measure.SHARE, d.peakElevator_pct(), at + "/peakElevator_pct"),
                a.episodes().map(n -> facts.count(n, at + "/episodes")).orElse(facts.missing()),
                String.join(", ", a.exceededByLead().stream().map(this::rule).toList()));
    }

    private String rule(String key) {
        return words.has("rule." + key) ? words.get("rule." + key) : key;
    }
}
