package pairdown.clock;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.units.Estimate;

/**
 * What was found out about one log's clock.
 *
 * @param participant whose log
 * @param file which log
 * @param map what is applied
 * @param offsetSigma_s one standard deviation of the applied offset against the other logs of the
 *     attempt, an unknown seat along the ship included
 * @param doubt the same in parts, and what no log can tell: how late receivers are
 * @param method what decided
 * @param measured the offset as measured, applied or not
 * @param residual_mps root mean square velocity difference left after alignment
 * @param zero the instant of a relative log's own zero
 * @param latency_s how far position lags velocity within the log, where that could be measured
 * @param curve residual against trial offset
 * @param warnings disagreements, ambiguities and refusals, in words
 */
public record ClockResult(
        String participant,
        String file,
        ClockMap map,
        double offsetSigma_s,
        ClockDoubt doubt,
        ClockMethod method,
        Optional<Estimate> measured,
        OptionalDouble residual_mps,
        Optional<Instant> zero,
        Optional<Estimate> latency_s,
        Optional<OffsetCurve> curve,
        List<String> warnings) {
    public ClockResult {
        warnings = List.copyOf(warnings);
    }

    /** Whether the log's instants can be compared with others'. */
    public boolean isUsable() {
        return method != ClockMethod.NONE;
    }

    /** The same, its clock known less well against other logs, with the reasons. */
    ClockResult doubted(double by_s, List<String> why) {
        List<String> words = new ArrayList<>(warnings);
        words.addAll(why);
        return new ClockResult(
                participant,
                file,
                map,
                Math.hypot(offsetSigma_s, by_s),
                doubt.plusOutside(by_s),
                method,
                measured,
                residual_mps,
                zero,
                latency_s,
                curve,
                words);
    }
}
