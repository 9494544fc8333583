package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import pairdown.debrief.Debrief;
import pairdown.report.ReportModel.FindingRow;
import pairdown.safety.Finding;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Translation;
import pairdown.words.Words;

/** The limits and what they came to, worst first. */
final class FindingPart {
    private final Debrief debrief;
    private final Words words;
    private final Facts facts;

    FindingPart(Debrief debrief, Words words, Figures figures) {
        this.debrief = debrief;
        this.words = words;
        this.facts = new Facts(debrief.axis(), words, figures);
    }

    List<FindingRow> rows() {
        List<FindingRow> rows = new ArrayList<>();
        for (Finding.Outcome outcome : Finding.Outcome.values()) {
            for (int i = 0; i < debrief.safety().size(); i++) {
                if (debrief.safety().get(i).outcome() == outcome) {
                    rows.add(row(debrief.safety().get(i), "/safety/" + i));
                }
            }
        }
        return rows;
    }

    private FindingRow row(Finding f, String at) {
        String ruleKey = "rule." + f.rule();
        Measure measure = measure(f);
        return new FindingRow(
                words.has(ruleKey) ? words.get(ruleKey) : f.rule(),
                f.other().map(o -> f.participant() + " – " + o).orElse(f.participant()),
                facts.word("finding.", f.outcome().key(), at + "/finding"),
                f.outcome().key(),
                value(f, measure, at),
                facts.of(measure, f.limit(), at + "/limit"),
                facts.clock(f.time_s(), at + "/time"),
                f.reason().map(new Translation(words)::of).orElse(""));
    }

    private Fact value(Finding f, Measure measure, String at) {
        return f.value().isPresent()
                ? facts.of(
                        measure, f.value().getAsDouble(), f.sigma(), at + "/value", at + "/sigma")
                : facts.missing();
    }

    static Measure measure(Finding f) {
        return switch (f.rule()) {
            case "breakOffHeight" -> Measure.HEIGHT;
            case "maximumAirspeed" -> Measure.AIRSPEED;
            case "minimumSeparation" -> Measure.DISTANCE;
            default -> f.unit().equals("m/s") ? Measure.CLOSURE : Measure.DISTANCE;
        };
    }
}
