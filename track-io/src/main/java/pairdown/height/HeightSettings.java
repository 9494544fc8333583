package pairdown.height;

/**
 * What heights are reconciled with.
 *
 * @param modelBiasSigma_m constant left in a height made with EGM96 instead of the receiver's own
 *     geoid: receivers' geoids differ from it by −3.3 to +4.6 m
 * @param ellipsoidBiasSigma_m constant left in heights that are the receiver's own above the
 *     ellipsoid, beyond its wandering bias
 * @param wander_m the receivers' slow vertical bias, one standard deviation (1.35 m) of two
 * @param wanderTime_s how long that bias remembers
 * @param seatHeight_m unknown height of a seat in the cabin
 * @param datumTolerance_m a constant offset this near to the undulation says which datum it was
 */
public record HeightSettings(
        double modelBiasSigma_m,
        double ellipsoidBiasSigma_m,
        double wander_m,
        double wanderTime_s,
        double seatHeight_m,
        double datumTolerance_m) {
    public static final HeightSettings DEFAULTS = new HeightSettings(3, 0.5, 1.9, 45, 0.3, 8);
}
