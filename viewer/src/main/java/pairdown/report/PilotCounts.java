package pairdown.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pairdown.report.ReportModel.CountTable;
import pairdown.report.ReportModel.EffectMap;
import pairdown.report.ReportModel.EffectRow;
import pairdown.stats.Proportion;
import pairdown.tail.LagEstimate;
import pairdown.tail.PowerTable;
import pairdown.tail.TailControl;
import pairdown.tail.TailReview;
import pairdown.tail.TailSeason;
import pairdown.words.Measure;
import pairdown.words.Words;

/** What followed what how often: lags, tables of counts, and the map of effectiveness. */
final class PilotCounts {
    private final Words words;
    private final Facts facts;
    private final String at;

    /**
     * @param at where in the result file the counts stand, '/' at its end
     */
    PilotCounts(Words words, Facts facts, String at) {
        this.words = words;
        this.facts = facts;
        this.at = at;
    }

    List<Prose> follows(TailControl tail) {
        TailReview r = tail.review();
        List<Prose> says =
                new ArrayList<>(follows(r.precededLag(), r.endedLag(), r.forwardThenRestored()));
        r.lag().ifPresent(l -> says.add(lag(l)));
        return says;
    }

    List<Prose> follows(TailSeason t) {
        return follows(t.precededLag(), t.endedLag(), t.forwardThenRestored());
    }

    private List<Prose> follows(
            Optional<TailReview.LagSummary> preceded,
            Optional<TailReview.LagSummary> ended,
            Proportion restored) {
        List<Prose> says = new ArrayList<>();
        preceded.ifPresent(l -> says.add(lags("preceded", l, at + "precededLag")));
        ended.ifPresent(l -> says.add(lags("ended", l, at + "endedLag")));
        if (restored.trials() > 0) {
            says.add(
                    facts.prose(
                            "report.pilot.restored",
                            count(restored.successes(), at + "forwardThenRestored/successes"),
                            count(restored.trials(), at + "forwardThenRestored/trials")));
        }
        return says;
    }

    private Prose count(long n, String from) {
        return Prose.of(facts.count(n, from));
    }

    private Prose ratio(double value, String from) {
        return Prose.of(facts.of(Measure.RATIO, value, from));
    }

    private Prose seconds(double value, String from) {
        return Prose.of(facts.of(Measure.DURATION, value, from));
    }

    private Prose lags(String key, TailReview.LagSummary l, String from) {
        Prose episodes = count(l.episodes(), from + "/episodes");
        Prose least = seconds(l.least_s(), from + "/least_s");
        Prose greatest = seconds(l.greatest_s(), from + "/greatest_s");
        return l.quotable()
                ? facts.prose(
                        "report.pilot.lag." + key,
                        episodes,
                        least,
                        greatest,
                        seconds(l.median_s(), from + "/median_s"))
                : facts.prose(
                        "report.pilot.lag." + key + (l.episodes() == 1 ? ".one" : ".few"),
                        episodes,
                        least,
                        greatest);
    }

    private Prose lag(LagEstimate l) {
        return facts.prose(
                "report.pilot.crossLag",
                seconds(l.lag_s(), at + "lag/lag_s"),
                ratio(l.correlation(), at + "lag/correlation"),
                Prose.of(facts.probability(l.probability(), at + "lag/probability")),
                count(l.shifts(), at + "lag/shifts"));
    }

    List<CountTable> tables(Optional<PowerTable> changes, Optional<PowerTable> stretches) {
        List<CountTable> tables = new ArrayList<>();
        table(tables, changes, "changeTable");
        table(tables, stretches, "stretchTable");
        return tables;
    }

    private void table(List<CountTable> tables, Optional<PowerTable> table, String name) {
        table.ifPresent(t -> tables.add(table(t, name, at + name)));
    }

    private CountTable table(PowerTable t, String name, String from) {
        String key = "report.pilot.table." + name;
        return new CountTable(
                words.get(key),
                words.get(key + ".says"),
                words.get(key + ".first"),
                words.get(key + ".second"),
                List.of(
                        facts.count(t.counts().both(), from + "/reverseFollowed"),
                        facts.count(t.counts().firstOnly(), from + "/reverseNot"),
                        facts.count(t.counts().secondOnly(), from + "/otherFollowed"),
                        facts.count(t.counts().neither(), from + "/otherNot")),
                odds(t, from));
    }

    private Prose odds(PowerTable t, String from) {
        Prose low = ratio(t.interval().low(), from + "/low");
        Prose probability = Prose.of(facts.probability(t.probability(), from + "/probability"));
        return Double.isFinite(t.interval().high())
                ? facts.prose(
                        "report.pilot.odds",
                        low,
                        ratio(t.interval().high(), from + "/high"),
                        probability)
                : facts.prose("report.pilot.oddsOpen", low, probability);
    }

    /** Nothing stands where nothing was flown. */
    EffectMap map(TailControl tail) {
        List<TailReview.MapCell> cells = tail.review().map();
        List<Double> columns =
                cells.stream()
                        .map(TailReview.MapCell::retardingCoefficient)
                        .distinct()
                        .sorted()
                        .toList();
        List<Double> rows =
                cells.stream()
                        .map(TailReview.MapCell::airspeed_mps)
                        .distinct()
                        .sorted(Comparator.reverseOrder())
                        .toList();
        return new EffectMap(
                columns.stream().map(c -> edges(cells, c)).toList(),
                rows.stream().map(r -> row(cells, r, columns)).toList());
    }

    private static String edges(List<TailReview.MapCell> cells, double low) {
        double step = cells.get(0).retardingCoefficientStep();
        return String.format(Locale.ROOT, "%.1f – %.1f", low, low + step);
    }

    private EffectRow row(
            List<TailReview.MapCell> cells, double airspeed_mps, List<Double> columns) {
        List<List<Fact>> out = new ArrayList<>();
        for (double column : columns) {
            List<Fact> shown = new ArrayList<>();
            for (int i = 0; i < cells.size(); i++) {
                TailReview.MapCell c = cells.get(i);
                if (c.airspeed_mps() == airspeed_mps && c.retardingCoefficient() == column) {
                    shown.addAll(cell(c, at + "map/" + i));
                }
            }
            out.add(shown);
        }
        String from = facts.of(Measure.AIRSPEED, airspeed_mps, "").shown();
        String to =
                facts.of(Measure.AIRSPEED, airspeed_mps + cells.get(0).airspeedStep_mps(), "")
                        .shown();
        return new EffectRow(words.get("report.pilot.map.row", from, to), out);
    }

    private List<Fact> cell(TailReview.MapCell c, String from) {
        return List.of(
                facts.of(Measure.RATIO, c.effectiveness(), from + "/effectiveness"),
                facts.count(c.samples(), from + "/samples"),
                facts.count(c.inEpisode(), from + "/inEpisode"));
    }
}
