package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.report.ReportModel.Chart;
import pairdown.report.SeasonModel.Tail;
import pairdown.tail.EventAverage;
import pairdown.tail.TailFigures;
import pairdown.tail.TailSeason;
import pairdown.words.Words;

/** The season page's part on power and tail: what followed the moves of power of all attempts. */
final class SeasonTails {
    private final SeasonBuilder page;
    private final Words words;
    private final Facts facts;

    SeasonTails(SeasonBuilder page) {
        this.page = page;
        this.words = page.words();
        this.facts = page.facts();
    }

    /** One for each lead that moved power in its dives. */
    List<Tail> model() {
        List<Tail> all = new ArrayList<>();
        List<TailSeason> tails = page.season().tails();
        for (int i = 0; i < tails.size(); i++) {
            if (tails.get(i).changeTable().isPresent()) {
                all.add(tail(tails.get(i), "/tails/" + i + "/"));
            }
        }
        return all;
    }

    private Tail tail(TailSeason t, String at) {
        PilotCounts counts = new PilotCounts(words, facts, at);
        List<Prose> says = new ArrayList<>();
        says.add(
                facts.prose(
                        "seasonPage.tail.counts",
                        Prose.of(facts.count(t.episodes(), at + "episodes")),
                        Prose.of(facts.count(t.attempts(), at + "attempts"))));
        says.addAll(counts.follows(t));
        return new Tail(
                words.get("seasonPage.tail", t.participant()),
                says,
                t.averages().stream().flatMap(a -> chart(a).stream()).toList(),
                counts.tables(t.changeTable(), t.stretchTable()));
    }

    private Optional<Chart> chart(EventAverage a) {
        boolean effect = a.figure().equals(TailFigures.EFFECTIVENESS);
        String name =
                (effect ? "after" : "forceAfter") + (a.towardReverse() ? "Reverse" : "Forward");
        return ChartBook.alone(
                AverageChart.of(a, words),
                "tail-" + name,
                words.get("report.chart." + name, String.valueOf(a.changes())));
    }
}
