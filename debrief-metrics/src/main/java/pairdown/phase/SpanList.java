package pairdown.phase;

import java.util.ArrayList;
import java.util.List;
import pairdown.time.Span;

/** The phases of one participant as they are found; those that last no time are none. */
final class SpanList {
    private final String id;
    private final List<PhaseSpan> spans = new ArrayList<>();

    SpanList(String id) {
        this.id = id;
    }

    void add(Phase phase, double start_s, double end_s) {
        if (end_s > start_s) {
            spans.add(new PhaseSpan(id, phase, new Span(start_s, end_s)));
        }
    }

    List<PhaseSpan> all() {
        return List.copyOf(spans);
    }
}
