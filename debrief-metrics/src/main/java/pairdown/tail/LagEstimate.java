package pairdown.tail;

/**
 * By how much one figure follows another, by cross-correlation.
 *
 * @param leader name of the figure that goes first where the lag is positive
 * @param follower name of the other
 * @param lag_s at the strongest correlation
 * @param correlation there, signed
 * @param probability share of circular shifts of the follower with a correlation at least as strong
 *     somewhere in the lags searched, the shift seen counted in
 * @param shifts how many shifts were tried
 */
public record LagEstimate(
        String leader,
        String follower,
        double lag_s,
        double correlation,
        double probability,
        int shifts) {}
