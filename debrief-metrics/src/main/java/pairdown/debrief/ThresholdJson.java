package pairdown.debrief;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import pairdown.attempt.Attempt;
import pairdown.attempt.BreakOff;
import pairdown.attempt.ClosureSettings;
import pairdown.attempt.MatchedSettings;
import pairdown.attempt.Target;

/**
 * What an attempt was judged by, as {@code thresholds} of {@code debrief.json}: what its team set,
 * and the usual values where it set none. What has no usual value and was not set is absent.
 */
final class ThresholdJson {
    private final JsonValues values;

    ThresholdJson(JsonValues values) {
        this.values = values;
    }

    void fill(ObjectNode o, Attempt attempt) {
        matched(o.putObject("matched"), attempt.matched());
        values.put(o, "gate_m", attempt.gate_m());
        attempt.target().ifPresent(t -> target(o.putObject("target"), t));
        closure(o.putObject("closure"), attempt.limits().closure());
        attempt.limits().breakOff().ifPresent(b -> breakOff(o, b));
        values.put(o, "maximumAirspeed_mps", attempt.limits().maximumAirspeed_mps());
        values.put(o, "minimumSeparation_m", attempt.limits().minimumSeparation_m());
    }

    private void matched(ObjectNode o, MatchedSettings m) {
        values.put(o, "horizontal_mps", m.horizontal_mps());
        values.put(o, "vertical_mps", m.vertical_mps());
        values.put(o, "dwell_s", m.dwell_s());
    }

    private void target(ObjectNode o, Target t) {
        values.put(o, "airspeed_mps", t.airspeed_mps());
        o.put("airspeedKind", t.kind().key());
        values.put(o, "sink_mps", t.sink_mps());
        values.put(o, "airspeedTolerance_mps", t.airspeedTolerance_mps());
        values.put(o, "sinkTolerance_mps", t.sinkTolerance_mps());
        values.put(o, "hold_s", t.hold_s());
    }

    private void closure(ObjectNode o, ClosureSettings c) {
        values.put(o, "braking_mps2", c.braking_mps2());
        values.put(o, "reaction_s", c.reaction_s());
        values.put(o, "contact_mps", c.contact_mps());
        values.put(o, "margin_m", c.margin_m());
    }

    private void breakOff(ObjectNode o, BreakOff b) {
        values.put(o, "breakOffHeight_m", b.height_m());
        o.put("breakOffDatum", b.datum().name().toLowerCase(Locale.ROOT));
    }
}
