package pairdown.demo.receiver;

import java.util.ArrayList;
import java.util.List;
import pairdown.attempt.Role;
import pairdown.demo.receiver.GnssPlan.HeightPlan;
import pairdown.demo.receiver.GnssPlan.Velocity;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.Truth;

/** How one log of a simulated attempt is made. */
public sealed interface LogPlan permits GnssPlan, RecorderPlan {
    /**
     * The usual logs of an attempt: NMEA at 5 Hz and a systems recorder on the lead, IGC at 1 Hz on
     * the jump ship, CSV at 5 Hz on each jumper; clocks, latencies, losses and noise as they are.
     */
    static List<LogPlan> standard(Truth truth) {
        List<LogPlan> plans = new ArrayList<>();
        for (TrueBody body : truth.bodies()) {
            plans.add(satellite(body));
            if (body.role() == Role.LEAD && !body.systems().isEmpty()) {
                plans.add(RecorderPlan.of(body.id(), body.id() + "-systems.csv"));
            }
        }
        return plans;
    }

    private static GnssPlan satellite(TrueBody body) {
        return switch (body.role()) {
            case LEAD ->
                    GnssPlan.of(body.id(), body.id() + ".nmea", "nmea")
                            .velocity(Velocity.SPEED_AND_TRACK)
                            .heights(HeightPlan.MSL_AND_SEPARATION);
            case JUMPSHIP ->
                    GnssPlan.of(body.id(), body.id() + ".igc", "igc")
                            .rate(1)
                            .velocity(Velocity.NONE);
            case FLYER, CAMERA -> GnssPlan.of(body.id(), body.id() + ".csv", "csv");
        };
    }

    String participant();

    String file();

    /** The same log on a true clock and, for satellites, true heights; its noise stays. */
    LogPlan trulyAligned();
}
