package pairdown.tail;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.time.Span;

/**
 * A stretch of lost tail-control effectiveness.
 *
 * @param startSigma_s one standard deviation of its start
 * @param signs what showed it, in order of appearance
 * @param minimumEffectiveness least ratio to the forward-thrust baseline, where it could be
 *     measured
 * @param elevatorMargin_pct least travel left before a stop, where the elevator was logged
 * @param precededBy the latest move towards reverse before it
 * @param endedAfter the first forward move since its start
 * @param why the grade in words: which signs, how long, how far, margin left
 */
public record Episode(
        Span span,
        double startSigma_s,
        List<Sign> signs,
        Grade grade,
        OptionalDouble minimumEffectiveness,
        OptionalDouble elevatorMargin_pct,
        Optional<Link> precededBy,
        Optional<Link> endedAfter,
        String why) {
    public Episode {
        signs = List.copyOf(signs);
    }

    /**
     * A power change an episode is paired with.
     *
     * @param lag_s from the change to the episode's start, or from the change to its end
     * @param lagSigma_s one standard deviation of that; a single case says no more than this
     */
    public record Link(PowerChange change, double lag_s, double lagSigma_s) {}

    /** How far control faded. */
    public enum Grade {
        MILD,
        STRONG;

        /** The spelling in files. */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** One sign of a blanked tail. */
    public enum Sign {
        LOST_EFFECTIVENESS,
        RAISED_ACTIVITY,
        RUDDER_REVERSALS,
        ELEVATOR_NEAR_STOP,
        EXCURSION;

        /** The spelling in files: {@code "elevator-near-stop"}. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
