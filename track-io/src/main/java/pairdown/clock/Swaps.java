package pairdown.clock;

import java.util.List;
import pairdown.attempt.Role;

/**
 * Notices loggers that changed hands: an aircraft's log that jumps, a jumper's log that never does
 * while an aircraft's did, and two logs of one participant that part.
 */
final class Swaps {
    /** A jump sinks faster than this for a while first … (m/s) */
    private static final double FLIGHT_SINK_MPS = 10;

    private static final double FLIGHT_S = 10;

    /** … and then hangs under a canopy: this slowly down, this slowly along (m/s), for so long. */
    private static final double CANOPY_LEAST_SINK_MPS = 2;

    private static final double CANOPY_MOST_SINK_MPS = 8;
    private static final double CANOPY_LEVEL_MPS = 18;
    private static final double CANOPY_S = 40;

    /** Logs of one participant that differ by more than this (m/s) for so long have parted. */
    private static final double PARTED_MPS = 5;

    private static final double PARTED_S = 60;

    private Swaps() {}

    /** Whether the log sinks fast and then hangs under a canopy. */
    static boolean jumps(Mover mover) {
        RideMotion m = mover.motion(mover.kernel_s());
        int flight = 0;
        int canopy = 0;
        for (int k = 0; k < m.size(); k++) {
            double sink_mps = -m.velocity[2][k];
            double level_mps = Math.hypot(m.velocity[0][k], m.velocity[1][k]);
            flight += sink_mps > FLIGHT_SINK_MPS ? 1 : 0;
            boolean hangs =
                    sink_mps > CANOPY_LEAST_SINK_MPS
                            && sink_mps < CANOPY_MOST_SINK_MPS
                            && level_mps < CANOPY_LEVEL_MPS;
            canopy += hangs && flight * m.step_s >= FLIGHT_S ? 1 : 0;
        }
        return canopy * m.step_s >= CANOPY_S;
    }

    /** What to say of a mover's role, empty if nothing. */
    static String ofRole(Mover mover, List<Mover> all) {
        boolean jumps = jumps(mover);
        if (mover.role().isAircraft() && jumps) {
            return "it is given as an aircraft's log but jumps and opens a canopy: loggers swapped?";
        }
        boolean flyer = mover.role() == Role.FLYER || mover.role() == Role.CAMERA;
        List<String> jumping =
                all.stream()
                        .filter(o -> o.role().isAircraft() && jumps(o))
                        .map(Mover::name)
                        .toList();
        return flyer && !jumps && !jumping.isEmpty()
                ? "it never opens a canopy, while an aircraft's log does ("
                        + String.join(", ", jumping)
                        + "): loggers swapped?"
                : "";
    }

    /** Whether two logs, at a lag, move apart for long. */
    static boolean part(Mover a, Mover b, double lag_s) {
        double kernel_s = Math.max(a.kernel_s(), b.kernel_s());
        RideMotion ma = a.motion(kernel_s);
        RideMotion mb = b.motion(kernel_s);
        int shift = (int) Math.round((mb.start_s + lag_s - ma.start_s) / mb.step_s);
        int apart = 0;
        int to = Math.min(mb.size(), ma.size() - shift);
        for (int k = Math.max(0, -shift); k < to; k++) {
            double e = mb.velocity[0][k] - ma.velocity[0][k + shift];
            double n = mb.velocity[1][k] - ma.velocity[1][k + shift];
            apart += e * e + n * n > PARTED_MPS * PARTED_MPS ? 1 : 0;
        }
        return apart * mb.step_s > PARTED_S;
    }
}
