package pairdown.pair;

import java.util.OptionalDouble;
import pairdown.time.Span;

/**
 * A stretch in which a pair's speeds matched.
 *
 * @param shorter_s how much shorter it would be with the differences one sigma larger
 * @param longer_s how much longer with them one sigma smaller
 * @param airspeedDifference_mps mean, flyer minus lead, calibrated; empty where no wind is known
 * @param sinkDifference_mps mean, flyer minus lead, sink positive down
 * @param separation_m median over the window
 * @param minimumSeparation_m least over the window
 * @param endedBy which rate left its tolerance first, or the data's end
 * @param endedByDifference_mps that rate where it left, signed; empty for {@link EndedBy#DATA}
 * @param bridged how many excursions or gaps of up to half a second were bridged
 */
public record MatchedWindow(
        Span span,
        double shorter_s,
        double longer_s,
        OptionalDouble airspeedDifference_mps,
        double sinkDifference_mps,
        double separation_m,
        double minimumSeparation_m,
        EndedBy endedBy,
        OptionalDouble endedByDifference_mps,
        int bridged) {
    /** What ended a window. */
    public enum EndedBy {
        HORIZONTAL("horizontal"),
        VERTICAL("vertical"),
        DATA("data");

        private final String key;

        EndedBy(String key) {
            this.key = key;
        }

        /** The spelling in files. */
        public String key() {
            return key;
        }
    }

    public double duration_s() {
        return span.duration_s();
    }
}
