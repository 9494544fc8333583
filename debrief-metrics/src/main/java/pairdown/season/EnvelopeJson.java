package pairdown.season;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import pairdown.debrief.JsonValues;
import pairdown.season.Envelope.Corner;
import pairdown.season.Envelope.Gap;
import pairdown.season.Envelope.Machine;
import pairdown.season.Envelope.Overlap;
import pairdown.season.Envelope.TargetMark;

/** The envelope's part of {@code season.json}. */
final class EnvelopeJson {
    private final JsonValues values;

    EnvelopeJson(JsonValues values) {
        this.values = values;
    }

    void write(ObjectNode o, Envelope e) {
        o.put("airspeed", "calibrated");
        ArrayNode machines = o.putArray("machines");
        e.machines().forEach(m -> machine(machines.addObject(), m));
        values.put(o, "overlapArea", e.overlapArea_m2ps2());
        ArrayNode overlaps = o.putArray("overlaps");
        e.overlaps().forEach(v -> overlap(overlaps.addObject(), v));
        e.gap().ifPresent(g -> gap(o.putObject("gap"), g));
        e.target().ifPresent(t -> target(o.putObject("target"), t));
        e.missingForce()
                .ifPresent(
                        f -> {
                            ObjectNode force = force(o.putObject("missingForce_N"), f);
                            ArrayNode all = force.putArray("byConfiguration");
                            e.missingForces().forEach(each -> force(all.addObject(), each));
                        });
        e.question().ifPresent(q -> o.put("question", q));
        values.words(o, "notes", e.notes());
    }

    private void machine(ObjectNode o, Machine m) {
        o.put("machine", m.machine()).put("role", m.role()).put("configuration", m.configuration());
        o.put("segments", m.segments().size());
        corners(o.putArray("hull"), m.hull());
    }

    private void overlap(ObjectNode o, Overlap v) {
        o.put("configuration", v.configuration()).put("flyer", v.flyer());
        values.put(o, "area", v.area_m2ps2());
        ArrayNode polygons = o.putArray("polygons");
        v.polygons().forEach(p -> corners(polygons.addArray(), p));
        gap(o.putObject("nearest"), v.nearest());
    }

    private void gap(ObjectNode o, Gap g) {
        values.put(o, "distance", g.distance());
        corner(o.putObject("lead"), g.lead());
        corner(o.putObject("flyer").put("flyer", g.flyer()), g.flown());
    }

    private void target(ObjectNode o, TargetMark t) {
        values.put(o, "airspeed_mps", t.set().airspeed_mps());
        o.put("airspeedKind", t.set().kind().key());
        values.put(o, "sink_mps", t.set().sink_mps());
        values.put(o, "calibratedAirspeed_mps", t.calibratedAirspeed_mps());
    }

    private ObjectNode force(ObjectNode o, MissingForce f) {
        values.put(o, "value", f.value_N());
        values.put(o, "low", f.low_N());
        values.put(o, "high", f.high_N());
        o.put("segments", f.segments()).put("configuration", f.configuration());
        values.put(o, "trueAirspeed_mps", f.trueAirspeed_mps());
        values.put(o, "sink_mps", f.sink_mps());
        return o;
    }

    private void corners(ArrayNode array, List<Corner> corners) {
        corners.forEach(c -> corner(array.addObject(), c));
    }

    private void corner(ObjectNode o, Corner c) {
        values.put(o, "calibratedAirspeed_mps", c.calibratedAirspeed_mps());
        values.put(o, "sink_mps", c.sink_mps());
    }
}
