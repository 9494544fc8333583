package pairdown.pair;

import java.util.ArrayList;
import java.util.List;
import pairdown.time.Span;

/**
 * The stretch a pair is judged over: from the flyer's exit to its opening; where one of them was
 * not found, to the end of what both logs cover, which is said.
 */
record Flight(Span span, List<String> notes) {
    static Flight of(PairInput input) {
        PairMember lead = input.lead();
        PairMember flyer = input.flyer();
        List<String> notes = new ArrayList<>();
        double from_s = Math.max(lead.trajectory().start_s(), flyer.trajectory().start_s());
        double to_s = Math.min(lead.trajectory().end_s(), flyer.trajectory().end_s());
        if (flyer.exit_s().isPresent()) {
            from_s = flyer.exit_s().getAsDouble();
        } else {
            notes.add("no exit of " + flyer.id() + " was found: judged from where both logs begin");
        }
        if (flyer.opening_s().isPresent()) {
            to_s = flyer.opening_s().getAsDouble();
        } else {
            notes.add("no opening of " + flyer.id() + " was found: judged to where a log ends");
        }
        if (!(to_s > from_s)) {
            notes.add("the logs of " + lead.id() + " and " + flyer.id() + " share no time");
            to_s = from_s;
        }
        return new Flight(new Span(from_s, to_s), notes);
    }
}
