package pairdown.demo;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import pairdown.attempt.ClosureSettings;
import pairdown.attempt.LeverArm;
import pairdown.attempt.Participant;
import pairdown.demo.receiver.InjectedFaults;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TruePowerChange;
import pairdown.demo.truth.Truth;
import pairdown.geodesy.Geodetic;
import pairdown.time.Span;
import pairdown.time.TimeAxis;
import pairdown.vector.Vec3;

/** Writes what was true of a simulated attempt, for people and tests to hold a debrief against. */
final class TruthJson {
    private static final JsonMapper JSON = new JsonMapper();
    private static final double WIND_STEP_M = 600;
    private static final double WIND_TOP_M = 4200;

    private final SimulatedAttempt attempt;
    private final Truth truth;
    private final TimeAxis axis;

    private TruthJson(SimulatedAttempt attempt) {
        this.attempt = attempt;
        this.truth = attempt.truth();
        this.axis = new TimeAxis(truth.start());
    }

    static String of(SimulatedAttempt attempt, String lesson, List<InjectedFaults> faults) {
        return new TruthJson(attempt).text(lesson, faults);
    }

    private String text(String lesson, List<InjectedFaults> faults) {
        ObjectNode root = JSON.createObjectNode();
        root.put("format", "pairdown-truth").put("version", 1);
        root.put("attempt", attempt.attempt().id()).put("lesson", lesson);
        Geodetic origin = truth.frame().origin();
        root.putObject("origin")
                .put("latitude_deg", origin.latitude_deg())
                .put("longitude_deg", origin.longitude_deg())
                .put("height_m", round(origin.height_m()));
        air(root.putObject("air"));
        ArrayNode bodies = root.putArray("bodies");
        truth.bodies().forEach(b -> body(bodies.addObject(), b));
        pairs(root.putArray("pairs"));
        ArrayNode contacts = root.putArray("contacts");
        truth.contacts()
                .forEach(
                        c ->
                                span(
                                        contacts.addObject()
                                                .put("flyer", c.flyer())
                                                .put("slot", c.slot()),
                                        new Span(c.start_s(), c.end_s())));
        tail(root);
        ArrayNode logs = root.putArray("logs");
        faults.forEach(f -> log(logs.addObject(), f));
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void air(ObjectNode o) {
        o.put("qnh_hPa", truth.air().atmosphere().qnh_hPa());
        o.put("temperatureDeviation_C", truth.air().atmosphere().temperatureDeviation_C());
        o.put("undulation_m", round(truth.air().undulation_m()));
        ArrayNode wind = o.putArray("meanWind");
        for (double h = WIND_STEP_M; h <= WIND_TOP_M; h += WIND_STEP_M) {
            Vec3 w = truth.air().meanWind_mps().apply(h);
            wind.addObject()
                    .put("heightMsl_m", h)
                    .put("towardEast_mps", round(w.x()))
                    .put("towardNorth_mps", round(w.y()));
        }
    }

    private void body(ObjectNode o, TrueBody b) {
        o.put("id", b.id()).put("role", b.role().key()).put("mass_kg", b.mass_kg());
        b.exit_s().ifPresent(t -> o.put("exit", time(t)));
        b.opening_s().ifPresent(t -> o.put("opening", time(t)));
        o.put("motion", "truth/" + b.id() + ".csv");
    }

    private void pairs(ArrayNode pairs) {
        Optional<Participant> lead = attempt.attempt().lead();
        for (Participant flyer : attempt.attempt().flyers()) {
            boolean flew = truth.body(flyer.id()).exit_s().isPresent();
            if (lead.isPresent() && flyer.slot().isPresent() && flew) {
                LeverArm slot = lead.get().slots().getOrDefault(flyer.slot().get(), LeverArm.NONE);
                pair(
                        pairs.addObject().put("lead", lead.get().id()).put("flyer", flyer.id()),
                        new TruePair(truth, lead.get().id(), flyer.id(), slot));
            }
        }
    }

    private void pair(ObjectNode o, TruePair p) {
        approach(o.putObject("closest"), p, p.closest_s());
        approach(o.putObject("leastGap"), p, p.leastGap_s());
        double level = attempt.attempt().matched().horizontal_mps();
        double vertical = attempt.attempt().matched().vertical_mps();
        ArrayNode matched = o.putArray("matched");
        p.matched(level, vertical).forEach(w -> span(matched.addObject(), w));
        double leaving_s = p.leaving_s(level, vertical);
        ClosureSettings limit = attempt.attempt().limits().closure();
        double worst_s = p.worstClosure_s(limit, leaving_s);
        o.putObject("worstClosure")
                .put("time", time(worst_s))
                .put("closureRate_mps", round(p.closure_mps(worst_s)))
                .put("limit_mps", round(p.limit_mps(worst_s, limit)))
                .put("separation_m", round(p.separation_m(worst_s)));
        o.putObject("leaving")
                .put("time", time(leaving_s))
                .put("heightMsl_m", round(p.msl_m(leaving_s)));
    }

    private void approach(ObjectNode o, TruePair p, double time_s) {
        o.put("time", time(time_s));
        o.put("separation_m", round(p.separation_m(time_s)));
        o.put("gap_m", round(p.gap_m(time_s)));
        o.put("closureRate_mps", round(p.closure_mps(time_s)));
    }

    private void tail(ObjectNode root) {
        ArrayNode changes = root.putArray("powerChanges");
        truth.powerChanges().forEach(c -> change(changes.addObject(), c));
        ArrayNode episodes = root.putArray("episodes");
        truth.episodes()
                .forEach(
                        e -> {
                            ObjectNode o = episodes.addObject();
                            span(o, new Span(e.start_s(), e.end_s()));
                            e.precededBy().ifPresent(c -> change(o.putObject("precededBy"), c));
                            e.endedAfter().ifPresent(c -> change(o.putObject("endedAfter"), c));
                        });
    }

    private void change(ObjectNode o, TruePowerChange c) {
        o.put("time", time(c.time_s()));
        o.put("from_pct", round(c.from_pct())).put("to_pct", round(c.to_pct()));
    }

    private void log(ObjectNode o, InjectedFaults f) {
        o.put("participant", f.participant()).put("file", f.file());
        f.offset_s().ifPresent(s -> o.put("offset_s", milli(s)));
        f.zero().ifPresent(z -> o.put("zero", z.truncatedTo(ChronoUnit.MILLIS).toString()));
        o.put("rate_ppm", f.rate_ppm());
        o.put("latency_s", milli(f.latency_s()));
        o.put("velocityLag_s", milli(f.velocityLag_s()));
        o.put("pressureLag_s", f.pressureLag_s());
        o.put("datum", f.datum().key());
        o.put("heightBias_m", round(f.heightBias_m()));
        spans(o.putArray("lost"), f.lost());
        spans(o.putArray("inverted"), f.inverted());
        spans(o.putArray("frozen"), f.frozen());
        ArrayNode damage = o.putArray("damage");
        f.damage().forEach(damage::add);
    }

    private void spans(ArrayNode array, List<Span> spans) {
        spans.forEach(s -> span(array.addObject(), s));
    }

    private void span(ObjectNode o, Span s) {
        o.put("start", time(s.start_s())).put("end", time(s.end_s()));
    }

    private String time(double time_s) {
        return axis.instant(time_s).truncatedTo(ChronoUnit.MILLIS).toString();
    }

    private static double round(double value) {
        return Math.rint(value * 100) / 100;
    }

    private static double milli(double value) {
        return Math.rint(value * 1000) / 1000;
    }
}
