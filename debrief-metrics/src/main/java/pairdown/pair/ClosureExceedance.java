package pairdown.pair;

import pairdown.time.Span;
import pairdown.units.Estimate;

/**
 * A stretch in which a flyer closed faster than the closing limit.
 *
 * @param worst closing speed where it was furthest over (m/s)
 * @param limit_mps the limit there
 * @param separation_m the separation there
 * @param worstTime_s when that was
 */
public record ClosureExceedance(
        Span span, Estimate worst, double limit_mps, double separation_m, double worstTime_s) {

    /** How far over the limit it was at worst. */
    public double over_mps() {
        return worst.value() - limit_mps;
    }
}
