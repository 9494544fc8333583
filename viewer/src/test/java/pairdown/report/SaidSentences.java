package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import pairdown.debrief.Debrief;
import pairdown.phase.Event;
import pairdown.tail.Episode;

/** All that a debrief says in words of its own, as a report shows it. */
final class SaidSentences {
    private SaidSentences() {}

    static List<String> of(Debrief debrief) {
        List<String> said = new ArrayList<>(debrief.attempt().notes());
        said.addAll(debrief.notes());
        said.addAll(debrief.wind().notes());
        debrief.quality().forEach(q -> said.addAll(q.warnings()));
        debrief.clock().forEach(c -> said.addAll(c.warnings()));
        debrief.heights().forEach(h -> said.addAll(h.warnings()));
        debrief.pairs()
                .forEach(
                        p -> {
                            said.addAll(p.refusals());
                            said.addAll(p.matched().refusals());
                        });
        debrief.safety().forEach(f -> f.reason().ifPresent(said::add));
        debrief.tailControl()
                .ifPresent(
                        t -> {
                            said.addAll(t.notes());
                            t.episodes().stream().map(Episode::why).forEach(said::add);
                        });
        debrief.events().stream().map(Event::text).filter(t -> !t.isBlank()).forEach(said::add);
        return said;
    }
}
