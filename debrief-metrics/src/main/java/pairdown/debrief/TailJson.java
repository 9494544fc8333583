package pairdown.debrief;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import pairdown.tail.Episode;
import pairdown.tail.PowerChange;
import pairdown.tail.TailControl;

/** The lead's power and tail in {@code debrief.json}. */
final class TailJson {
    private final JsonValues values;

    TailJson(JsonValues values) {
        this.values = values;
    }

    void fill(ObjectNode o, TailControl t) {
        o.put("participant", t.participant());
        values.put(o, "standingEffectiveness", t.standingEffectiveness());
        if (t.tellsEpisodes()) {
            ArrayNode episodes = o.putArray("episodes");
            t.episodes().forEach(e -> episode(episodes.addObject(), e));
        }
        ArrayNode changes = o.putArray("powerChanges");
        t.powerChanges().forEach(c -> change(changes.addObject(), c));
        new TailReviewJson(values, this).write(o.putObject("review"), t.review());
        values.words(o, "notes", t.notes());
    }

    private void episode(ObjectNode o, Episode e) {
        values.span(o, e.span());
        values.put(o, "startSigma_s", e.startSigma_s());
        ArrayNode signs = o.putArray("signs");
        e.signs().forEach(s -> signs.add(s.key()));
        o.put("grade", e.grade().key());
        values.put(o, "minimumEffectiveness", e.minimumEffectiveness());
        values.put(o, "elevatorMargin_pct", e.elevatorMargin_pct());
        e.precededBy().ifPresent(l -> link(o.putObject("precededBy"), l));
        e.endedAfter().ifPresent(l -> link(o.putObject("endedAfter"), l));
        o.put("why", e.why());
    }

    private void link(ObjectNode o, Episode.Link link) {
        step(o, link.change());
        values.put(o, "lag_s", link.lag_s());
        values.put(o, "lagSigma_s", link.lagSigma_s());
    }

    private void change(ObjectNode o, PowerChange c) {
        step(o, c);
        o.put("towardReverse", c.towardReverse());
        c.episode().ifPresent(e -> o.put("episode", e));
    }

    void step(ObjectNode o, PowerChange c) {
        o.put("time", values.time(c.time_s())).put("channel", c.channel().key());
        values.put(o, "from", c.from());
        values.put(o, "to", c.to());
    }
}
