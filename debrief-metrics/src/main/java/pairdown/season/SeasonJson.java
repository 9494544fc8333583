package pairdown.season;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import pairdown.debrief.JsonValues;
import pairdown.season.AttemptSummary.FlyerSummary;
import pairdown.season.AttemptSummary.Spread;
import pairdown.season.Envelope.Corner;
import pairdown.season.Envelope.Machine;
import pairdown.season.Ladder.FlyerLadder;
import pairdown.season.Ladder.Rung;
import pairdown.time.TimeAxis;

/** A season as {@code season.json}, version 1: the file other programs read. */
public final class SeasonJson {
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final JsonValues VALUES = new JsonValues(new TimeAxis(Instant.EPOCH));

    private SeasonJson() {}

    /** The whole file as a tree. */
    public static ObjectNode of(Season season) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("format", "pairdown-season").put("version", 1);
        season.title().ifPresent(t -> root.put("title", t));
        ArrayNode attempts = root.putArray("attempts");
        season.attempts().forEach(a -> attempt(attempts.addObject(), a));
        repeatability(root.putObject("repeatability"), season.repeatability());
        ladder(root.putObject("ladder"), season.ladder());
        envelope(root.putObject("envelope"), season.envelope());
        ArrayNode criteria = root.putArray("criteria");
        for (Criterion c : season.criteria()) {
            criteria.addObject()
                    .put("criterion", c.name())
                    .put("met", c.met())
                    .put("evidence", c.evidence());
        }
        VALUES.words(root, "notes", season.notes());
        return root;
    }

    private static void attempt(ObjectNode o, AttemptSummary a) {
        o.put("attempt", a.attempt()).put("folder", a.folder()).put("usable", a.usable());
        a.reason().ifPresent(r -> o.put("reason", r));
        if (!a.usable()) {
            return;
        }
        o.put("start", a.start());
        VALUES.put(o, "gate_m", a.gate_m());
        ArrayNode flyers = o.putArray("flyers");
        a.flyers().forEach(f -> flyer(flyers.addObject(), f));
        a.descentHeld().ifPresent(h -> o.put("descentHeld", h));
        a.dive().ifPresent(d -> VALUES.put(o, "timeToStabilise_s", d.stabilise_s()));
        a.dive().ifPresent(d -> VALUES.put(o, "longestOnTarget_s", d.longest_s()));
        a.episodes().ifPresent(n -> o.put("episodes", n));
        o.put("closureExceedances", a.closureExceedances());
        VALUES.words(o, "exceeded", a.exceeded());
    }

    private static void flyer(ObjectNode o, FlyerSummary f) {
        o.put("flyer", f.flyer());
        VALUES.put(o, "leastGap_m", f.leastGap_m());
        VALUES.put(o, "medianGap_m", f.medianGap_m());
        VALUES.put(o, "sigma_m", f.sigma_m());
        VALUES.put(o, "held_s", f.held_s());
        VALUES.put(o, "matchedLongest_s", f.matchedLongest_s());
        f.overshoots().ifPresent(n -> o.put("overshoots", n));
        f.verdict().ifPresent(v -> o.put("verdict", v));
        f.spread().ifPresent(s -> spread(o.putObject("spread"), s));
    }

    private static void spread(ObjectNode o, Spread s) {
        VALUES.put(o, "ahead_m", s.ahead_m());
        VALUES.put(o, "right_m", s.right_m());
        VALUES.put(o, "above_m", s.above_m());
        VALUES.put(o, "aheadSd_m", s.aheadSd_m());
        VALUES.put(o, "rightSd_m", s.rightSd_m());
        VALUES.put(o, "aboveSd_m", s.aboveSd_m());
        VALUES.put(o, "correlation", s.correlation());
    }

    private static void repeatability(ObjectNode o, Repeatability r) {
        o.put("successes", r.held().successes()).put("trials", r.held().trials());
        VALUES.put(o, "low", r.interval().low());
        VALUES.put(o, "high", r.interval().high());
        VALUES.put(o, "medianTimeToStabilise_s", r.medianStabilise_s());
        o.put("neverStabilised", r.neverStabilised());
    }

    private static void ladder(ObjectNode o, Ladder ladder) {
        ArrayNode flyers = o.putArray("flyers");
        for (FlyerLadder f : ladder.flyers()) {
            ObjectNode flyer = flyers.addObject().put("flyer", f.flyer());
            ArrayNode rungs = flyer.putArray("rungs");
            f.rungs().forEach(r -> rung(rungs.addObject(), r));
            f.factorPerAttempt()
                    .ifPresent(
                            t -> {
                                ObjectNode trend = flyer.putObject("factorPerAttempt");
                                VALUES.put(trend, "factor", t.factor());
                                VALUES.put(trend, "low", t.low());
                                VALUES.put(trend, "high", t.high());
                            });
        }
    }

    private static void rung(ObjectNode o, Rung r) {
        o.put("attempt", r.attempt()).put("folder", r.folder());
        VALUES.put(o, "gate_m", r.planned_m());
        VALUES.put(o, "medianGap_m", r.flown().medianGap_m());
        VALUES.put(o, "sigma_m", r.flown().sigma_m());
        r.against().ifPresent(a -> o.put("againstLast", a));
    }

    private static void envelope(ObjectNode o, Envelope e) {
        o.put("airspeed", "calibrated");
        ArrayNode machines = o.putArray("machines");
        e.machines().forEach(m -> machine(machines.addObject(), m));
        VALUES.put(o, "overlapArea", e.overlapArea_m2ps2());
        e.gap()
                .ifPresent(
                        g -> {
                            ObjectNode gap = o.putObject("gap");
                            VALUES.put(gap, "distance", g.distance());
                            corner(gap.putObject("lead"), g.lead());
                            corner(gap.putObject("flyer"), g.flyer());
                        });
        e.missingForce()
                .ifPresent(
                        f -> {
                            ObjectNode force = o.putObject("missingForce_N");
                            VALUES.put(force, "value", f.value_N());
                            VALUES.put(force, "low", f.low_N());
                            VALUES.put(force, "high", f.high_N());
                            force.put("segments", f.segments());
                        });
        e.question().ifPresent(q -> o.put("question", q));
    }

    private static void machine(ObjectNode o, Machine m) {
        o.put("machine", m.machine()).put("role", m.role()).put("configuration", m.configuration());
        o.put("segments", m.segments().size());
        hull(o.putArray("hull"), m.hull());
    }

    private static void hull(ArrayNode array, List<Corner> corners) {
        corners.forEach(c -> corner(array.addObject(), c));
    }

    private static void corner(ObjectNode o, Corner c) {
        VALUES.put(o, "calibratedAirspeed_mps", c.calibratedAirspeed_mps());
        VALUES.put(o, "sink_mps", c.sink_mps());
    }
}
