package pairdown.debrief;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalDouble;
import pairdown.tail.DescentSequence;
import pairdown.tail.LagEstimate;
import pairdown.tail.TailReview;
import pairdown.time.Span;

/** The pilot's tables and averages, as an object of {@code debrief.json}. */
final class TailReviewJson {
    private final JsonValues values;
    private final TailJson tail;
    private final TailTablesJson tables;

    TailReviewJson(JsonValues values, TailJson tail) {
        this.values = values;
        this.tail = tail;
        this.tables = new TailTablesJson(values);
    }

    void write(ObjectNode o, TailReview r) {
        ArrayNode dives = o.putArray("dives");
        for (Span dive : r.dives()) {
            values.span(dives.addObject(), dive);
        }
        ArrayNode sequences = o.putArray("sequences");
        r.sequences().forEach(s -> sequence(sequences.addObject(), s));
        r.changeTable().ifPresent(t -> tables.table(o.putObject("changeTable"), t));
        r.stretchTable().ifPresent(t -> tables.table(o.putObject("stretchTable"), t));
        ArrayNode averages = o.putArray("averages");
        r.averages().forEach(a -> tables.average(averages.addObject(), a));
        r.lag().ifPresent(l -> lag(o.putObject("lag"), l));
        tables.lags(o, "precededLag", r.precededLag());
        tables.lags(o, "endedLag", r.endedLag());
        tables.restored(o, r.forwardThenRestored());
        ArrayNode map = o.putArray("map");
        r.map().forEach(c -> cell(map.addObject(), c));
    }

    private void sequence(ObjectNode o, DescentSequence s) {
        values.span(o, s.descent());
        time(o, "pushOver", s.pushOver_s());
        values.put(o, "pushOverAirspeed_mps", s.pushOverAirspeed_mps());
        time(o, "reverse", s.reverse_s());
        values.put(o, "reverseAirspeed_mps", s.reverseAirspeed_mps());
        ArrayNode steps = o.putArray("steps");
        for (DescentSequence.Step step : s.steps()) {
            ObjectNode at = steps.addObject();
            tail.step(at, step.change());
            values.put(at, "airspeed_mps", step.airspeed_mps());
            values.put(at, "sink_mps", step.sink_mps());
            values.put(at, "retardingCoefficient", step.retardingCoefficient());
        }
        values.put(o, "timeToStabilise_s", s.timeToStabilise_s());
        values.put(o, "heldLongest_s", s.heldLongest_s());
        s.held().ifPresent(h -> o.put("held", h));
        ArrayNode episodes = o.putArray("episodes");
        s.episodes().forEach(episodes::add);
    }

    private void time(ObjectNode o, String field, OptionalDouble t_s) {
        t_s.ifPresent(t -> o.put(field, values.time(t)));
    }

    private void lag(ObjectNode o, LagEstimate l) {
        o.put("leader", l.leader()).put("follower", l.follower());
        values.put(o, "lag_s", l.lag_s());
        values.put(o, "correlation", l.correlation());
        values.put(o, "probability", l.probability());
        o.put("shifts", l.shifts());
    }

    private void cell(ObjectNode o, TailReview.MapCell c) {
        values.put(o, "retardingCoefficient", c.retardingCoefficient());
        values.put(o, "retardingCoefficientStep", c.retardingCoefficientStep());
        values.put(o, "airspeed_mps", c.airspeed_mps());
        values.put(o, "airspeedStep_mps", c.airspeedStep_mps());
        values.put(o, "effectiveness", c.effectiveness());
        o.put("samples", c.samples()).put("inEpisode", c.inEpisode());
    }
}
