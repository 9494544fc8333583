package pairdown.debrief;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.stats.Bootstrap;
import pairdown.stats.Interval;
import pairdown.tail.DescentSequence;
import pairdown.tail.EventAverage;
import pairdown.tail.LagEstimate;
import pairdown.tail.PowerTable;
import pairdown.tail.TailReview;
import pairdown.time.Span;

/** The pilot's tables and averages, as an object of {@code debrief.json}. */
final class TailReviewJson {
    private final JsonValues values;
    private final TailJson tail;

    TailReviewJson(JsonValues values, TailJson tail) {
        this.values = values;
        this.tail = tail;
    }

    void write(ObjectNode o, TailReview r) {
        ArrayNode dives = o.putArray("dives");
        for (Span dive : r.dives()) {
            values.span(dives.addObject(), dive);
        }
        ArrayNode sequences = o.putArray("sequences");
        r.sequences().forEach(s -> sequence(sequences.addObject(), s));
        r.changeTable().ifPresent(t -> table(o.putObject("changeTable"), t));
        r.stretchTable().ifPresent(t -> table(o.putObject("stretchTable"), t));
        ArrayNode averages = o.putArray("averages");
        r.averages().forEach(a -> average(averages.addObject(), a));
        r.lag().ifPresent(l -> lag(o.putObject("lag"), l));
        lags(o, "precededLag", r.precededLag());
        lags(o, "endedLag", r.endedLag());
        if (r.forwardThenRestored().trials() > 0) {
            o.putObject("forwardThenRestored")
                    .put("successes", r.forwardThenRestored().successes())
                    .put("trials", r.forwardThenRestored().trials());
        }
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

    private void table(ObjectNode o, PowerTable t) {
        o.put("counted", t.unit());
        o.put("reverseFollowed", t.counts().both()).put("reverseNot", t.counts().firstOnly());
        o.put("otherFollowed", t.counts().secondOnly()).put("otherNot", t.counts().neither());
        values.put(o, "oddsRatio", t.oddsRatio());
        interval(o, t.interval());
        values.put(o, "probability", t.probability());
    }

    private void interval(ObjectNode o, Interval i) {
        values.put(o, "low", i.low());
        values.put(o, "high", i.high());
        values.put(o, "confidence", i.confidence());
    }

    private void average(ObjectNode o, EventAverage a) {
        o.put("figure", a.figure()).put("towardReverse", a.towardReverse());
        o.put("changes", a.changes());
        values.put(o, "start_s", a.start_s());
        values.put(o, "step_s", a.step_s());
        ArrayNode band = o.putArray("band");
        for (Bootstrap.BandPoint p : a.band()) {
            ObjectNode at = band.addObject();
            values.put(at, "mean", p.mean());
            values.put(at, "low", p.low());
            values.put(at, "high", p.high());
            at.put("count", p.count());
        }
    }

    private void lag(ObjectNode o, LagEstimate l) {
        o.put("leader", l.leader()).put("follower", l.follower());
        values.put(o, "lag_s", l.lag_s());
        values.put(o, "correlation", l.correlation());
        values.put(o, "probability", l.probability());
        o.put("shifts", l.shifts());
    }

    private void lags(ObjectNode o, String field, Optional<TailReview.LagSummary> summary) {
        if (summary.isEmpty()) {
            return;
        }
        TailReview.LagSummary s = summary.get();
        ObjectNode at = o.putObject(field);
        at.put("episodes", s.episodes());
        if (s.quotable()) {
            values.put(at, "median_s", s.median_s());
        }
        values.put(at, "least_s", s.least_s());
        values.put(at, "greatest_s", s.greatest_s());
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
