package pairdown.safety;

import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.safety.Finding.Outcome;

/** A limit about to be judged: makes the finding once the value is known, or can't be. */
record Verdict(String rule, String participant, Optional<String> other, double limit, String unit) {
    Verdict(String rule, String participant, double limit, String unit) {
        this(rule, participant, Optional.empty(), limit, unit);
    }

    Verdict with(String otherParticipant) {
        return new Verdict(rule, participant, Optional.of(otherParticipant), limit, unit);
    }

    /**
     * A value judged.
     *
     * @param beyond how far it is on the wrong side of the limit, negative on the right one
     * @param sigmas how many sigmas make a difference certain enough
     */
    Finding judged(double time_s, double value, double sigma, double beyond, double sigmas) {
        return new Finding(
                rule,
                participant,
                other,
                outcome(beyond, sigmas * sigma),
                OptionalDouble.of(time_s),
                OptionalDouble.of(value),
                limit,
                OptionalDouble.of(sigma),
                unit,
                Optional.empty());
    }

    static Outcome outcome(double beyond, double uncertainty) {
        if (beyond > uncertainty) {
            return Outcome.EXCEEDED;
        }
        return beyond >= -uncertainty ? Outcome.WITHIN_UNCERTAINTY : Outcome.CLEAR;
    }

    Finding cannotTell(String why) {
        return new Finding(
                rule,
                participant,
                other,
                Outcome.CANNOT_TELL,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                limit,
                OptionalDouble.empty(),
                unit,
                Optional.of(why));
    }
}
