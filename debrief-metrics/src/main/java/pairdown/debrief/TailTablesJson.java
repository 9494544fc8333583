package pairdown.debrief;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import pairdown.stats.Bootstrap;
import pairdown.stats.Interval;
import pairdown.stats.Proportion;
import pairdown.tail.EventAverage;
import pairdown.tail.PowerTable;
import pairdown.tail.TailReview;

/** Counts, averages and lags of power and tail, as an attempt's and a season's file have them. */
public final class TailTablesJson {
    private final JsonValues values;

    public TailTablesJson(JsonValues values) {
        this.values = values;
    }

    public void table(ObjectNode o, PowerTable t) {
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

    public void average(ObjectNode o, EventAverage a) {
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

    public void lags(ObjectNode o, String field, Optional<TailReview.LagSummary> summary) {
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

    public void restored(ObjectNode o, Proportion p) {
        if (p.trials() > 0) {
            o.putObject("forwardThenRestored")
                    .put("successes", p.successes())
                    .put("trials", p.trials());
        }
    }
}
