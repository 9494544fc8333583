package pairdown.format.source;

/**
 * The limits that reading keeps to.
 *
 * @param lineBytes a longer line is rubbish, skipped as one: the longest real line seen, a CSV with
 *     every channel, has under a thousand
 * @param unpackedBytes from here on a packed log's growth is watched; a packed file below it can
 *     fill no memory
 * @param unpackedRatio a packed log that grows more than this is refused: logs shrink 5 to 30
 *     times, and a bomb a thousand
 * @param heightLimit_m a height beyond it is absurd for anything these logs ride on
 * @param speedLimit_mps a speed beyond it is absurd: civil receivers stop at 515 m/s (1000 kt)
 * @param strayDays a date further than this from the log's others is a receiver's cold start, or a
 *     week counter that rolled over
 * @param heldStep_m a position repeated to the last digit while the log moved on by more is a held
 *     one: above the step of the coarsest format, 0.001′ or 2.6 m across
 * @param heldSpeed_mps what counts as moving there: well above what a coarse format can show as
 *     standing still
 */
public record ReadSettings(
        int lineBytes,
        long unpackedBytes,
        int unpackedRatio,
        double heightLimit_m,
        double speedLimit_mps,
        int strayDays,
        double heldStep_m,
        double heldSpeed_mps) {
    public static final ReadSettings DEFAULT =
            new ReadSettings(1 << 20, 64L << 20, 250, 60_000, 600, 400, 3, 5);
}
