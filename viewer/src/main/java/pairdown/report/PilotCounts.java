package pairdown.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pairdown.report.ReportModel.CountTable;
import pairdown.report.ReportModel.EffectMap;
import pairdown.report.ReportModel.EffectRow;
import pairdown.tail.LagEstimate;
import pairdown.tail.PowerTable;
import pairdown.tail.TailControl;
import pairdown.tail.TailReview;
import pairdown.words.Measure;
import pairdown.words.Words;

/** What followed what how often: lags, tables of counts, and the map of effectiveness. */
final class PilotCounts {
    private static final String AT = PilotPart.AT + "review/";

    private final Words words;
    private final Facts facts;

    PilotCounts(Words words, Facts facts) {
        this.words = words;
        this.facts = facts;
    }

    List<Prose> follows(TailControl tail) {
        TailReview r = tail.review();
        List<Prose> says = new ArrayList<>();
        r.precededLag().ifPresent(l -> says.add(lags("preceded", l, AT + "precededLag")));
        r.endedLag().ifPresent(l -> says.add(lags("ended", l, AT + "endedLag")));
        if (r.forwardThenRestored().trials() > 0) {
            says.add(
                    facts.prose(
                            "report.pilot.restored",
                            count(
                                    r.forwardThenRestored().successes(),
                                    AT + "forwardThenRestored/successes"),
                            count(
                                    r.forwardThenRestored().trials(),
                                    AT + "forwardThenRestored/trials")));
        }
        r.lag().ifPresent(l -> says.add(lag(l)));
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
                : facts.prose("report.pilot.lag." + key + ".few", episodes, least, greatest);
    }

    private Prose lag(LagEstimate l) {
        return facts.prose(
                "report.pilot.crossLag",
                seconds(l.lag_s(), AT + "lag/lag_s"),
                ratio(l.correlation(), AT + "lag/correlation"),
                ratio(l.probability(), AT + "lag/probability"),
                count(l.shifts(), AT + "lag/shifts"));
    }

    List<CountTable> tables(TailControl tail) {
        List<CountTable> tables = new ArrayList<>();
        table(tables, tail.review().changeTable(), "changeTable");
        table(tables, tail.review().stretchTable(), "stretchTable");
        return tables;
    }

    private void table(List<CountTable> tables, Optional<PowerTable> table, String name) {
        table.ifPresent(t -> tables.add(table(t, name, AT + name)));
    }

    private CountTable table(PowerTable t, String name, String from) {
        String key = "report.pilot.table." + name;
        return new CountTable(
                words.get(key),
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
        Prose probability = ratio(t.probability(), from + "/probability");
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
                    shown.addAll(cell(c, AT + "map/" + i));
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
