package pairdown.demo.receiver;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import pairdown.time.Span;

/**
 * How well a receiver saw the sky. Times are the truth's.
 *
 * @param exitLossShare chance that a jumper's receiver loses the sky at exit, for 2 to 8 s
 * @param exitLoss_s how long it is lost at exit if it is; else drawn
 * @param reacquired whether positions are 5 to 15 m off after a loss, dying away over 8 s
 * @param inverted stretches with the antenna in shadow: errors 2.5 times as large, a fifth of the
 *     fixes lost
 * @param frozen stretches in which the last fix is repeated
 * @param burstEvery_s mean time between bursts of noise; infinite for none
 */
public record Sight(
        double exitLossShare,
        OptionalDouble exitLoss_s,
        boolean reacquired,
        List<Span> inverted,
        List<Span> frozen,
        double burstEvery_s) {
    /** The usual sight of a receiver on a person or an aircraft (common practice, no source). */
    public static final Sight USUAL =
            new Sight(0.3, OptionalDouble.empty(), true, List.of(), List.of(), 150);

    /** Nothing is ever lost. */
    public static final Sight OPEN =
            new Sight(
                    0,
                    OptionalDouble.empty(),
                    false,
                    List.of(),
                    List.of(),
                    Double.POSITIVE_INFINITY);

    public Sight {
        inverted = List.copyOf(inverted);
        frozen = List.copyOf(frozen);
    }

    /** The same, surely lost at exit, for this long. */
    public Sight lostAtExit(double lost_s) {
        return new Sight(1, OptionalDouble.of(lost_s), reacquired, inverted, frozen, burstEvery_s);
    }

    /** The same without a loss at exit. */
    public Sight keptAtExit() {
        return new Sight(0, OptionalDouble.empty(), reacquired, inverted, frozen, burstEvery_s);
    }

    /** The same with the antenna in shadow once more. */
    public Sight invertedFrom(double start_s, double end_s) {
        return new Sight(
                exitLossShare,
                exitLoss_s,
                reacquired,
                with(inverted, start_s, end_s),
                frozen,
                burstEvery_s);
    }

    /** The same with the fix stuck once more. */
    public Sight frozenFrom(double start_s, double end_s) {
        return new Sight(
                exitLossShare,
                exitLoss_s,
                reacquired,
                inverted,
                with(frozen, start_s, end_s),
                burstEvery_s);
    }

    private static List<Span> with(List<Span> spans, double start_s, double end_s) {
        return Stream.concat(spans.stream(), Stream.of(new Span(start_s, end_s))).toList();
    }
}
