package pairdown.debrief;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.BiConsumer;
import pairdown.air.Wind;
import pairdown.attempt.ChosenSettings;
import pairdown.clock.ClockResult;
import pairdown.height.HeightResult;
import pairdown.phase.Event;
import pairdown.phase.PhaseSpan;
import pairdown.safety.Finding;
import pairdown.tail.TailControl;
import pairdown.units.Estimate;

/** A debrief as {@code debrief.json}, version 1: the file other programs read. */
public final class DebriefJson {
    private static final JsonMapper MAPPER = new JsonMapper();

    private final Debrief debrief;
    private final JsonValues values;

    private DebriefJson(Debrief debrief) {
        this.debrief = debrief;
        this.values = new JsonValues(debrief.axis());
    }

    /** The whole file as a tree. */
    public static ObjectNode of(Debrief debrief) {
        return new DebriefJson(debrief).root();
    }

    private ObjectNode root() {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("format", "pairdown-debrief")
                .put("version", 1)
                .put("attempt", debrief.attempt().id());
        debrief.attempt().title().ifPresent(t -> root.put("title", t));
        frame(root.putObject("frame"));
        new ThresholdJson(values).fill(root.putObject("thresholds"), debrief.attempt());
        root.set("settings", ChosenSettings.tree(debrief.settings()));
        ObjectNode clock = root.putObject("clock").put("reference", "UTC");
        each(clock.putArray("logs"), debrief.clock(), this::clock);
        each(root.putObject("heights").putArray("logs"), debrief.heights(), this::height);
        ObjectNode quality = root.putObject("quality");
        each(quality.putArray("logs"), debrief.quality(), this::quality);
        ArrayNode notes = quality.putArray("notes");
        debrief.notes().forEach(notes::add);
        wind(root.putObject("wind"), debrief.wind());
        ArrayNode phases = root.putArray("phases");
        debrief.participants().forEach(p -> each(phases, p.phases(), this::phase));
        each(root.putArray("events"), debrief.events(), this::event);
        PairJson pair = new PairJson(values);
        each(root.putArray("pairs"), debrief.pairs(), pair::fill);
        HeightUse.of(debrief).ifPresent(h -> heightUse(root.putObject("heightUse"), h));
        debrief.tailControl().ifPresent(t -> tail(root.putObject("tailControl"), t));
        each(root.putArray("safety"), debrief.safety(), this::finding);
        return root;
    }

    private static <T> void each(ArrayNode array, List<T> items, BiConsumer<ObjectNode, T> fill) {
        items.forEach(item -> fill.accept(array.addObject(), item));
    }

    private void frame(ObjectNode o) {
        ObjectNode origin = o.putObject("origin");
        values.place(origin, debrief.frame().origin());
        o.put("axes", "east-north-up");
    }

    private void clock(ObjectNode o, ClockResult c) {
        o.put("participant", c.participant()).put("file", c.file());
        if (c.isUsable()) {
            if (c.zero().isPresent()) {
                o.put("zero", values.time(c.zero().get()));
            } else {
                values.put(o, "offset_s", c.map().offset_s());
            }
            values.put(o, "offsetSigma_s", c.offsetSigma_s());
            values.put(o, "rate_ppm", c.map().rate() * 1e6);
        }
        o.put("method", c.method().key());
        c.measured()
                .ifPresent(
                        m -> {
                            ObjectNode measured = o.putObject("measured");
                            values.put(measured, "offset_s", m.value());
                            values.put(measured, "offsetSigma_s", m.sigma());
                        });
        values.put(o, "residual_mps", c.residual_mps());
        c.latency_s()
                .ifPresent(
                        l -> {
                            values.put(o, "latency_s", l.value());
                            values.put(o, "latencySigma_s", l.sigma());
                        });
        values.words(o, "warnings", c.warnings());
    }

    private void height(ObjectNode o, HeightResult h) {
        o.put("participant", h.participant()).put("file", h.file());
        o.put("datumRead", h.datumRead().key());
        values.put(o, "undulation_m", h.undulation_m());
        h.bias_m().map(Estimate::value).ifPresent(b -> values.put(o, "bias_m", b));
        values.put(o, "biasSigma_m", h.biasSigma_m());
        values.words(o, "warnings", h.warnings());
    }

    private void quality(ObjectNode o, LogQuality q) {
        o.put("participant", q.participant()).put("file", q.file());
        q.format().ifPresent(f -> o.put("format", f));
        o.put("fixes", q.fixes());
        values.put(o, "rate_Hz", q.rate_Hz());
        q.span().ifPresent(s -> values.span(o, s));
        each(o.putArray("gaps"), q.gaps(), values::span);
        each(
                o.putArray("skipped"),
                q.skipped(),
                (s, skipped) -> s.put("line", skipped.line()).put("reason", skipped.reason()));
        o.put("skippedCount", q.skippedCount());
        o.put("rejected", q.rejected());
        ArrayNode warnings = o.putArray("warnings");
        q.warnings().forEach(warnings::add);
    }

    private void wind(ObjectNode o, Wind wind) {
        o.put("method", wind.method());
        each(
                o.putArray("layers"),
                wind.layers(),
                (l, layer) -> {
                    values.put(l, "bottom_m", layer.bottom_m());
                    values.put(l, "top_m", layer.top_m());
                    values.put(l, "towardEast_mps", layer.towardEast_mps());
                    values.put(l, "towardNorth_mps", layer.towardNorth_mps());
                    values.put(l, "sigma_mps", layer.sigma_mps());
                });
        values.words(o, "notes", wind.notes());
    }

    private void phase(ObjectNode o, PhaseSpan p) {
        o.put("participant", p.participant()).put("phase", p.phase().key());
        values.span(o, p.span());
    }

    private void event(ObjectNode o, Event e) {
        o.put("time", values.time(e.time_s())).put("kind", e.kind().key());
        ArrayNode who = o.putArray("participants");
        e.participants().forEach(who::add);
        o.put("text", e.text());
        if (e.sigma_s() > 0) {
            values.put(o, "sigma_s", e.sigma_s());
        }
    }

    private void heightUse(ObjectNode o, HeightUse h) {
        values.put(o, "exit_m", h.exit_m());
        values.put(o, "matchStart_m", h.matchStart_m());
        values.put(o, "matchEnd_m", h.matchEnd_m());
        values.put(o, "end_m", h.end_m());
    }

    private void tail(ObjectNode o, TailControl t) {
        new TailJson(values).fill(o, t);
    }

    private void finding(ObjectNode o, Finding f) {
        o.put("rule", f.rule()).put("participant", f.participant());
        f.other().ifPresent(other -> o.put("other", other));
        o.put("finding", f.outcome().key());
        f.time_s().ifPresent(t -> o.put("time", values.time(t)));
        values.put(o, "value", f.value());
        values.put(o, "limit", f.limit());
        values.put(o, "sigma", f.sigma());
        o.put("unit", f.unit());
        f.reason().ifPresent(r -> o.put("reason", r));
    }
}
