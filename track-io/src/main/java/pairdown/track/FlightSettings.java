package pairdown.track;

/**
 * What parts two flights of one log.
 *
 * @param gap_s a longer hole in the data parts: a logger switched off between loads; receivers lose
 *     the sky for less
 * @param gapSteps in a sparse log, holes up to this many of its usual steps don't part
 * @param stay_s standing on the ground for longer parts: repacking takes longer, taxiing shorter
 *     (common practice, no published source)
 * @param stayRadius_m how far a receiver at rest, or a person on a packing mat, strays level
 * @param stayHeight_m and in height
 * @param flightHeight_m a part that spans less height is no flight: a drive back from the landing
 *     area
 */
public record FlightSettings(
        double gap_s,
        double gapSteps,
        double stay_s,
        double stayRadius_m,
        double stayHeight_m,
        double flightHeight_m) {
    public static final FlightSettings DEFAULT = new FlightSettings(300, 20, 480, 150, 40, 150);
}
