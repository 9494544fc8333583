package pairdown.clock;

import java.util.List;
import pairdown.time.TimeAxis;

/**
 * The common clock of an attempt.
 *
 * @param axis seconds from the attempt's first fix
 * @param results one for each log, in the order given
 * @param rides where two logs were in one vehicle
 */
public record ClockSolution(TimeAxis axis, List<ClockResult> results, List<SharedRide> rides) {
    public ClockSolution {
        results = List.copyOf(results);
        rides = List.copyOf(rides);
    }
}
