package pairdown.pair;

import pairdown.time.Span;

/**
 * A stretch in which a flyer closed faster than the closing limit.
 *
 * @param worst_mps closing speed where it was furthest over
 * @param limit_mps the limit there
 * @param separation_m the separation there
 * @param worstTime_s when that was
 */
public record ClosureExceedance(
        Span span, double worst_mps, double limit_mps, double separation_m, double worstTime_s) {}
