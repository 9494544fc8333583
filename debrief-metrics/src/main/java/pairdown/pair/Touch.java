package pairdown.pair;

import java.util.List;
import java.util.Locale;
import pairdown.time.Span;

/**
 * Evidence that flyer and aircraft touched: graded, never proven.
 *
 * @param evidence the separate lines that speak for it, in order of kind
 */
public record Touch(Span span, Grade grade, List<Evidence> evidence) {
    public Touch {
        evidence = List.copyOf(evidence);
    }

    /** How much speaks for a touch. */
    public enum Grade {
        POSSIBLE,
        LIKELY,
        /** A person tied it to video or a witness. */
        MARKED;

        /** The spelling in files. */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** One line of evidence. */
    public enum Evidence {
        POSITION,
        VELOCITY_LOCK,
        JOLT,
        TRIM,
        MARK;

        /** The spelling in files: {@code "velocity-lock"}. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
