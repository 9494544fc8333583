package pairdown.pair;

import java.util.ArrayList;
import java.util.List;
import pairdown.motion.Trajectory;
import pairdown.time.Span;

/**
 * The stretch a pair is judged over: from the flyer's exit to its opening; where one of them was
 * not found, to the end of what both logs cover, which is said.
 */
record Flight(Span span, List<String> notes) {
    /** A canopy flies at some 10 to 14 m/s, nobody in free flight does for long. */
    private static final double SLOW_MPS = 15;

    private static final double SLOW_FOR_S = 5;
    private static final double START_S = 15;

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
            to_s = endOfFlight_s(flyer.trajectory(), from_s, to_s);
            notes.add(
                    "no opening of "
                            + flyer.id()
                            + " was found: judged to where it is slow, or a log ends");
        }
        if (!(to_s > from_s)) {
            notes.add("the logs of " + lead.id() + " and " + flyer.id() + " share no time");
            to_s = from_s;
        }
        return new Flight(new Span(from_s, to_s), notes);
    }

    /**
     * Where somebody has slowed down for good: under canopy or landed. The start is left out: one
     * who leaves a hovering helicopter is slow as well.
     */
    private static double endOfFlight_s(Trajectory trajectory, double from_s, double to_s) {
        double slowSince_s = Double.NaN;
        for (double t_s = from_s + START_S; t_s < to_s; t_s += 1) {
            if (trajectory.at(t_s).velocity_mps().norm() > SLOW_MPS) {
                slowSince_s = Double.NaN;
            } else if (Double.isNaN(slowSince_s)) {
                slowSince_s = t_s;
            } else if (t_s - slowSince_s >= SLOW_FOR_S) {
                return slowSince_s;
            }
        }
        return to_s;
    }
}
