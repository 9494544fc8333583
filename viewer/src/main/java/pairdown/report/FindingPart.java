package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pairdown.debrief.Debrief;
import pairdown.report.ReportModel.FindingRow;
import pairdown.safety.Finding;
import pairdown.words.Figures;
import pairdown.words.Line;
import pairdown.words.Measure;
import pairdown.words.Words;

/** The limits and what they came to, worst first. */
final class FindingPart {
    private final Debrief debrief;
    private final Words words;
    private final Figures figures;

    FindingPart(Debrief debrief, Words words, Figures figures) {
        this.debrief = debrief;
        this.words = words;
        this.figures = figures;
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
                words.get("finding." + f.outcome().key()),
                f.outcome().key(),
                value(f, measure, at + "/value"),
                Fact.of(figures.text(measure, f.limit()), at + "/limit", measure),
                f.time_s().isPresent()
                        ? figures.clock(debrief.axis(), f.time_s().getAsDouble())
                        : "",
                f.reason().orElse(""));
    }

    private Fact value(Finding f, Measure measure, String at) {
        OptionalDouble value = f.value();
        if (value.isEmpty()) {
            return Fact.missing(Figures.MISSING);
        }
        String shown =
                figures.add(new Line(), measure, value.getAsDouble(), f.sigma().orElse(Double.NaN))
                        .toString();
        return Fact.of(shown, at, measure);
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
