package pairdown.demo;

import java.util.ArrayList;
import java.util.List;
import pairdown.attempt.Role;
import pairdown.demo.logfile.LogForm;
import pairdown.demo.receiver.GnssPlan;
import pairdown.demo.receiver.GnssPlan.ClockPlan;
import pairdown.demo.receiver.GnssPlan.HeightPlan;
import pairdown.demo.receiver.GnssPlan.Velocity;
import pairdown.demo.receiver.RecorderPlan;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueMotion;
import pairdown.demo.truth.Truth;
import pairdown.time.Span;

/**
 * The usual logs of one simulated attempt, cut to what matters: the last turns of the climb up to
 * the canopies. Whole climbs would make files large and teach nothing more.
 */
final class DemoCast {
    /** The climb kept before the first exit: turns enough to tell clocks by (s). */
    private static final double RIDE_S = 240;

    private static final double CANOPY_S = 15;

    /** Kept of the lead before a dive without jumpers, and after it (s). */
    private static final double BEFORE_DIVE_S = 100;

    private static final double AFTER_DIVE_S = 20;

    /** The set that the team's loggers are of. */
    private static final String SET = "set";

    private final Truth truth;
    private final Span kept;

    DemoCast(Truth truth) {
        this.truth = truth;
        this.kept = truth.bodies().size() > 1 ? around(truth) : dive(truth);
    }

    private static Span around(Truth truth) {
        double first_s = Double.POSITIVE_INFINITY;
        double last_s = Double.NEGATIVE_INFINITY;
        for (TrueBody b : truth.bodies()) {
            first_s = Math.min(first_s, b.exit_s().orElse(first_s));
            last_s = Math.max(last_s, b.opening_s().orElse(last_s));
        }
        return new Span(first_s - RIDE_S, last_s + CANOPY_S);
    }

    /** From before the dive to behind it. */
    private static Span dive(Truth truth) {
        TrueMotion lead = truth.body("lead").motion();
        boolean[] diving = truth.tail().orElseThrow().diving();
        int first = 0;
        int last = 0;
        for (int i = diving.length - 1; i >= 0; i--) {
            first = diving[i] ? i : first;
            last = diving[i] && last == 0 ? i : last;
        }
        return new Span(lead.time_s(first) - BEFORE_DIVE_S, lead.time_s(last) + AFTER_DIVE_S);
    }

    /** When a jumper left. */
    double exit_s(String id) {
        return truth.body(id).exit_s().orElseThrow();
    }

    /** The lead's satellite log. */
    GnssPlan lead(String ending) {
        return gnss("lead", "lead." + ending, ending).heights(HeightPlan.MSL_AND_SEPARATION);
    }

    /** A jumper's satellite log. */
    GnssPlan jumper(String id, String ending) {
        return gnss(id, id + "." + ending, ending);
    }

    /** The exit aircraft's log: positions once a second. */
    DemoLog ship() {
        GnssPlan plan = gnss("ship", "ship.igc", "igc").rate(1).velocity(Velocity.NONE);
        return DemoLog.of(plan, DemoForms.IGC);
    }

    /** The lead's recorder, six times a second. */
    RecorderPlan recorder() {
        return RecorderPlan.of("lead", "lead-systems.csv")
                .rate(6)
                .keeping(kept.start_s(), kept.end_s());
    }

    private GnssPlan gnss(String id, String file, String format) {
        return GnssPlan.of(id, file, format)
                .model(SET)
                .clock(ClockPlan.USUAL)
                .keeping(kept.start_s(), kept.end_s());
    }

    /** All of the attempt's usual logs in one form: comma-separated, five fixes a second. */
    List<DemoLog> usual(LogForm jumpers) {
        List<DemoLog> logs = new ArrayList<>();
        logs.add(DemoLog.of(lead("csv"), DemoForms.MSL_CSV));
        logs.add(DemoLog.of(recorder(), DemoForms.RECORDER));
        for (TrueBody b : truth.bodies()) {
            if (b.role() == Role.JUMPSHIP) {
                logs.add(ship());
            } else if (b.role().isJumper()) {
                logs.add(DemoLog.of(jumper(b.id(), "csv"), jumpers));
            }
        }
        return logs;
    }
}
