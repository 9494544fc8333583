package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pairdown.attempt.Attempt;
import pairdown.attempt.ClosureSettings;
import pairdown.attempt.Target;
import pairdown.report.ReportModel.Threshold;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** The tolerances and limits that every result was judged by. */
final class ThresholdPart {
    private final Attempt attempt;
    private final Words words;
    private final Figures figures;
    private final List<Threshold> rows = new ArrayList<>();

    ThresholdPart(Attempt attempt, Words words, Figures figures) {
        this.attempt = attempt;
        this.words = words;
        this.figures = figures;
    }

    List<Threshold> rows() {
        add("matched.level", figures.text(Measure.CLOSURE, attempt.matched().horizontal_mps()));
        add("matched.vertical", figures.text(Measure.CLOSURE, attempt.matched().vertical_mps()));
        add("matched.dwell", figures.text(Measure.DURATION, attempt.matched().dwell_s()));
        attempt.gate_m().ifPresent(g -> add("gate", figures.text(Measure.DISTANCE, g)));
        attempt.target().ifPresent(this::target);
        closure(attempt.limits().closure());
        attempt.limits()
                .breakOff()
                .ifPresent(
                        b ->
                                add(
                                        "breakOff",
                                        figures.text(Measure.HEIGHT, b.height_m())
                                                + " "
                                                + b.datum().name().toLowerCase(Locale.ROOT)));
        attempt.limits()
                .maximumAirspeed_mps()
                .ifPresent(v -> add("maximumAirspeed", figures.text(Measure.AIRSPEED, v)));
        attempt.limits()
                .minimumSeparation_m()
                .ifPresent(d -> add("minimumSeparation", figures.text(Measure.DISTANCE, d)));
        return rows;
    }

    private void target(Target t) {
        add(
                "target.airspeed",
                figures.text(Measure.AIRSPEED, t.airspeed_mps())
                        + " ± "
                        + figures.text(Measure.AIRSPEED, t.airspeedTolerance_mps())
                        + " "
                        + words.get("airspeed." + t.kind().key()));
        add(
                "target.sink",
                figures.text(Measure.SINK, t.sink_mps())
                        + " ± "
                        + figures.text(Measure.SINK, t.sinkTolerance_mps()));
        add("target.hold", figures.text(Measure.DURATION, t.hold_s()));
    }

    private void closure(ClosureSettings c) {
        add(
                "closure",
                words.get(
                        "report.threshold.closureIs",
                        String.format(words.locale(), "%.1f m/s²", c.braking_mps2()),
                        figures.text(Measure.DURATION, c.reaction_s()),
                        figures.text(Measure.CLOSURE, c.contact_mps()),
                        figures.text(Measure.DISTANCE, c.margin_m())));
    }

    private void add(String key, String value) {
        rows.add(new Threshold(words.get("report.threshold." + key), value));
    }
}
