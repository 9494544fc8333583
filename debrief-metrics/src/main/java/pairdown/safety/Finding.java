package pairdown.safety;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One limit held against what was flown.
 *
 * @param rule the limit's name in the attempt's file: {@code breakOffHeight}, {@code
 *     minimumSeparation} …
 * @param participant whom it concerns
 * @param other the second one, for a separation
 * @param time_s when it was judged, where that is an instant
 * @param value what was flown; empty for {@link Outcome#CANNOT_TELL}
 * @param sigma one standard deviation of the value
 * @param unit of value, limit and sigma
 * @param reason why it can't be told, in words
 */
public record Finding(
        String rule,
        String participant,
        Optional<String> other,
        Outcome outcome,
        OptionalDouble time_s,
        OptionalDouble value,
        double limit,
        OptionalDouble sigma,
        String unit,
        Optional<String> reason) {
    /** The rule of the closing limit: held for each pair, whether the attempt names it or not. */
    public static final String CLOSURE = "closure";

    /** What it came to. No outcome says that anything is safe. */
    public enum Outcome {
        EXCEEDED,
        WITHIN_UNCERTAINTY,
        CLEAR,
        CANNOT_TELL;

        /** The spelling in files: {@code "cannot-tell"}. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
