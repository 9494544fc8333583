package pairdown.tail;

import java.util.OptionalInt;

/**
 * A step of a power channel.
 *
 * @param time_s when it began
 * @param channel which channel showed it
 * @param from value before, in the channel's unit
 * @param to value after
 * @param towardReverse whether it moved towards reverse
 * @param episode index of the episode it was followed by, if any
 */
public record PowerChange(
        double time_s,
        PowerSource channel,
        double from,
        double to,
        boolean towardReverse,
        OptionalInt episode) {
    PowerChange followedBy(int index) {
        return new PowerChange(time_s, channel, from, to, towardReverse, OptionalInt.of(index));
    }
}
