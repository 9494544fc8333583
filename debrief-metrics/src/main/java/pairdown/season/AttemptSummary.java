package pairdown.season;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.Target;
import pairdown.tail.TailSummary;

/**
 * What a season needs of one attempt: small, and kept in the cache as it stands.
 *
 * @param attempt the attempt's name
 * @param folder relative to the season's folder, with '/' between names
 * @param reason why it can't be used, in words; empty if it can
 * @param start first instant, ISO 8601; empty if it can't be used
 * @param dive the lead's descent against the target; empty without a lead, a target or airspeeds
 * @param episodes tail-control episodes; empty where power and tail were not logged
 * @param closureExceedances stretches of closing faster than the limit, over all flyers
 * @param closureTold whether the closing could be judged for every flyer: else more stretches may
 *     have been over the limit than were found
 * @param exceeded limits exceeded by anyone, by name
 * @param exceededByLead those of them that the lead exceeded
 * @param tail power and tail of the lead; empty where not logged
 * @param segments steady stretches of every machine
 */
public record AttemptSummary(
        String attempt,
        String folder,
        Optional<String> reason,
        String start,
        OptionalDouble gate_m,
        List<FlyerSummary> flyers,
        Optional<Dive> dive,
        Optional<Integer> episodes,
        int closureExceedances,
        boolean closureTold,
        List<String> exceeded,
        List<String> exceededByLead,
        Optional<Target> target,
        Optional<TailSummary> tail,
        List<SteadySegment> segments) {
    public AttemptSummary {
        flyers = List.copyOf(flyers);
        exceeded = List.copyOf(exceeded);
        exceededByLead = List.copyOf(exceededByLead);
        segments = List.copyOf(segments);
    }

    static AttemptSummary unusable(String attempt, String folder, String reason) {
        return new AttemptSummary(
                attempt,
                folder,
                Optional.of(reason),
                "",
                OptionalDouble.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                0,
                false,
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    public boolean usable() {
        return reason.isEmpty();
    }

    /**
     * Whether the descent was held on target without a tail episode and without a limit exceeded by
     * the lead; what a flyer exceeded is no matter of the descent. Empty if unknown.
     */
    public Optional<Boolean> descentHeld() {
        return dive.map(d -> d.held() && episodes.orElse(0) == 0 && exceededByLead.isEmpty());
    }

    /**
     * How one flyer met the gate.
     *
     * @param sigma_m one standard deviation of the gaps
     * @param matchedLongest_s 0 if never matched; empty where these data can't tell
     * @param overshoots empty, like {@code held_s}, where the gate can't be judged
     * @param spread of the flyer about its mean place in the best window; empty if never matched
     */
    public record FlyerSummary(
            String flyer,
            OptionalDouble leastGap_m,
            OptionalDouble medianGap_m,
            OptionalDouble sigma_m,
            OptionalDouble held_s,
            OptionalDouble matchedLongest_s,
            Optional<Integer> overshoots,
            Optional<String> verdict,
            Optional<Spread> spread) {}

    /**
     * Where a flyer was in the lead's axes over its best window: mean place and standard deviation
     * on each axis (m), and the correlation of ahead and right.
     */
    public record Spread(
            double ahead_m,
            double right_m,
            double above_m,
            double aheadSd_m,
            double rightSd_m,
            double aboveSd_m,
            double correlation) {}

    /**
     * The lead's descent.
     *
     * @param configuration in the middle of the longest stretch within tolerance, else of the
     *     descent
     * @param held whether airspeed and sink stayed within tolerance for the target's hold
     * @param longest_s the longest such stretch
     * @param stabilise_s from reverse (else a steep path) to within tolerance for five seconds;
     *     empty if it never came
     * @param watched_s how long the descent was watched for it
     * @param airspeedSd_mps spread of the airspeed over the longest stretch within tolerance; empty
     *     where there is none
     * @param peakElevator_pct the elevator's largest deflection over the descent, either way; empty
     *     where it was not logged
     */
    public record Dive(
            String configuration,
            boolean held,
            double longest_s,
            OptionalDouble stabilise_s,
            double watched_s,
            OptionalDouble airspeedSd_mps,
            OptionalDouble peakElevator_pct) {}
}
