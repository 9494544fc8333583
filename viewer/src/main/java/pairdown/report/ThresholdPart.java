package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pairdown.attempt.Attempt;
import pairdown.attempt.BreakOff;
import pairdown.attempt.ClosureSettings;
import pairdown.attempt.Target;
import pairdown.debrief.Debrief;
import pairdown.report.ReportModel.Threshold;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** The tolerances and limits that every result was judged by. */
final class ThresholdPart {
    private static final String AT = "/thresholds/";

    private final Attempt attempt;
    private final Words words;
    private final Facts facts;
    private final List<Threshold> rows = new ArrayList<>();

    ThresholdPart(Debrief debrief, Words words, Figures figures) {
        this.attempt = debrief.attempt();
        this.words = words;
        this.facts = new Facts(debrief.axis(), words, figures);
    }

    List<Threshold> rows() {
        double level_mps = attempt.matched().horizontal_mps();
        add("matched.level", fact(Measure.CLOSURE, level_mps, "matched/horizontal_mps"));
        double vertical_mps = attempt.matched().vertical_mps();
        add("matched.vertical", fact(Measure.CLOSURE, vertical_mps, "matched/vertical_mps"));
        double dwell_s = attempt.matched().dwell_s();
        add("matched.dwell", fact(Measure.DURATION, dwell_s, "matched/dwell_s"));
        attempt.gate_m().ifPresent(g -> add("gate", fact(Measure.DISTANCE, g, "gate_m")));
        attempt.target().ifPresent(this::target);
        closure(attempt.limits().closure());
        attempt.limits().breakOff().ifPresent(this::breakOff);
        attempt.limits()
                .maximumAirspeed_mps()
                .ifPresent(
                        v ->
                                add(
                                        "maximumAirspeed",
                                        fact(Measure.AIRSPEED, v, "maximumAirspeed_mps")));
        attempt.limits()
                .minimumSeparation_m()
                .ifPresent(
                        d ->
                                add(
                                        "minimumSeparation",
                                        fact(Measure.DISTANCE, d, "minimumSeparation_m")));
        return rows;
    }

    private Fact fact(Measure measure, double value, String name) {
        return facts.of(measure, value, AT + name);
    }

    private void target(Target t) {
        add(
                "target.airspeed",
                fact(Measure.AIRSPEED, t.airspeed_mps(), "target/airspeed_mps"),
                Fact.words(" ± "),
                fact(Measure.AIRSPEED, t.airspeedTolerance_mps(), "target/airspeedTolerance_mps"),
                Fact.words(" " + words.get("airspeed." + t.kind().key())));
        add(
                "target.sink",
                fact(Measure.SINK, t.sink_mps(), "target/sink_mps"),
                Fact.words(" ± "),
                fact(Measure.SINK, t.sinkTolerance_mps(), "target/sinkTolerance_mps"));
        add("target.hold", fact(Measure.DURATION, t.hold_s(), "target/hold_s"));
    }

    private void breakOff(BreakOff b) {
        add(
                "breakOff",
                fact(Measure.HEIGHT, b.height_m(), "breakOffHeight_m"),
                Fact.words(" " + b.datum().name().toLowerCase(Locale.ROOT)));
    }

    private void closure(ClosureSettings c) {
        Fact braking = facts.tenths(c.braking_mps2(), AT + "closure/braking_mps2");
        Prose said =
                facts.prose(
                        "report.threshold.closureIs",
                        new Prose(List.of(braking, Fact.words(" m/s²"))),
                        Prose.of(fact(Measure.DURATION, c.reaction_s(), "closure/reaction_s")),
                        Prose.of(fact(Measure.CLOSURE, c.contact_mps(), "closure/contact_mps")),
                        Prose.of(fact(Measure.DISTANCE, c.margin_m(), "closure/margin_m")));
        rows.add(new Threshold(words.get("report.threshold.closure"), said));
    }

    private void add(String key, Fact... parts) {
        rows.add(new Threshold(words.get("report.threshold." + key), new Prose(List.of(parts))));
    }
}
