package pairdown.pair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pairdown.phase.Event;
import pairdown.phase.EventKind;

/** The instants of a pair worth jumping to. */
public final class PairEvents {
    private final PairDebrief pair;
    private final List<Event> events = new ArrayList<>();

    private PairEvents(PairDebrief pair) {
        this.pair = pair;
    }

    /** All of them, in order of time. */
    public static List<Event> of(PairDebrief pair) {
        PairEvents all = new PairEvents(pair);
        all.addGate();
        all.addMatches();
        all.addClosest();
        all.addTouches();
        all.addClosure();
        all.addBreakOff();
        all.events.sort(Comparator.comparingDouble(Event::time_s));
        return List.copyOf(all.events);
    }

    private void add(double time_s, EventKind kind, String format, Object... args) {
        events.add(
                new Event(
                        time_s,
                        0,
                        kind,
                        List.of(pair.flyer(), pair.lead()),
                        pair.flyer() + String.format(Locale.ROOT, format, args)));
    }

    private void addGate() {
        Optional<GateHeld> gate = pair.gateHeld();
        if (gate.isPresent() && pair.gateIn_s().isPresent()) {
            add(
                    pair.gateIn_s().getAsDouble(),
                    EventKind.GATE_IN,
                    " inside the %.0f m gate",
                    gate.get().planned_m());
        }
    }

    private void addMatches() {
        for (MatchedWindow w : pair.matched().windows()) {
            add(w.span().start_s(), EventKind.MATCH_START, " matched at %.0f m", w.separation_m());
            String by =
                    switch (w.endedBy()) {
                        case HORIZONTAL -> "level speed";
                        case VERTICAL ->
                                w.endedByDifference_mps().orElse(0) < 0
                                        ? "sinking faster"
                                        : "sinking slower";
                        case DATA -> "end of data";
                    };
            add(
                    w.span().end_s(),
                    EventKind.MATCH_END,
                    " no longer matched after %.1f s: %s",
                    w.duration_s(),
                    by);
        }
    }

    private void addClosest() {
        pair.closest()
                .ifPresent(
                        c ->
                                add(
                                        c.time_s(),
                                        EventKind.CLOSEST,
                                        " closest: %.1f ± %.1f m",
                                        c.separation_m().value(),
                                        c.separation_m().sigma()));
    }

    private void addTouches() {
        for (Touch t : pair.touch()) {
            List<String> lines = t.evidence().stream().map(Touch.Evidence::key).toList();
            add(
                    t.span().start_s(),
                    EventKind.TOUCH_START,
                    ": touch %s by %s",
                    t.grade().key(),
                    String.join(", ", lines));
            add(
                    t.span().end_s(),
                    EventKind.TOUCH_END,
                    ": end of touch evidence (%s)",
                    t.grade().key());
        }
    }

    private void addClosure() {
        pair.closureExceedances().stream()
                .max(Comparator.comparingDouble(ClosureExceedance::over_mps))
                .ifPresent(
                        e ->
                                add(
                                        e.worstTime_s(),
                                        EventKind.WORST_CLOSURE,
                                        " closing at %.1f m/s, limit %.1f m/s",
                                        e.worst().value(),
                                        e.limit_mps()));
    }

    private void addBreakOff() {
        if (pair.breakOff_s().isPresent()) {
            add(pair.breakOff_s().getAsDouble(), EventKind.BREAK_OFF, " breaks off");
        }
    }
}
