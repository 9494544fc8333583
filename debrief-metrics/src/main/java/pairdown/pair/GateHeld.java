package pairdown.pair;

import java.util.OptionalDouble;

/**
 * How a planned gate was met.
 *
 * @param planned_m the gate
 * @param median_m median gap in the best window; empty if never matched
 * @param medianSigma_m one standard deviation of {@code median_m}: that of a single gap in the
 *     window, for what is off is mostly slow and a median does not shrink it
 * @param held_s time between exit and opening with the gap near or inside the gate
 * @param insideShare share of the best window with gap inside the gate plus two sigma
 * @param overshoots times the gap went well under the gate and out again too fast
 */
public record GateHeld(
        double planned_m,
        OptionalDouble median_m,
        OptionalDouble medianSigma_m,
        double held_s,
        OptionalDouble insideShare,
        int overshoots,
        Verdict verdict) {
    /** What it came to. */
    public enum Verdict {
        NO_DATA("no-data"),
        SHORT("short"),
        THROUGH("through"),
        ON_GATE("on-gate");

        private final String key;

        Verdict(String key) {
            this.key = key;
        }

        /** The spelling in files. */
        public String key() {
            return key;
        }
    }
}
