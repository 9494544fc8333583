package pairdown.demo.receiver;

import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import pairdown.attempt.LeverArm;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.Truth;

/** All logs of a simulated attempt, under one sky. */
public final class Logging {
    private Logging() {}

    /**
     * Makes the logs, in the order planned. The same truth, plans and seed give the same logs.
     *
     * @param antennas where receivers sit, by participant; at the reference point where not told
     * @throws NoSuchElementException if a plan names nobody the truth has
     */
    public static List<Recorded> of(
            Truth truth, List<LogPlan> plans, Map<String, LeverArm> antennas, long seed) {
        double start_s =
                truth.bodies().stream().mapToDouble(b -> b.motion().start_s()).min().orElse(0);
        double end_s = truth.bodies().stream().mapToDouble(Logging::end_s).max().orElse(0);
        Sky sky =
                new Sky(
                        start_s,
                        end_s,
                        ReceiverErrors.CONSUMER.common().time_s(),
                        Draws.of(seed, "sky"));
        return plans.stream()
                .map(
                        plan ->
                                plan instanceof GnssPlan gnss
                                        ? Receiver.log(
                                                truth,
                                                gnss,
                                                antennas.getOrDefault(
                                                        gnss.participant(), LeverArm.NONE),
                                                sky,
                                                seed)
                                        : Recorder.log(truth, (RecorderPlan) plan, seed))
                .toList();
    }

    private static double end_s(TrueBody body) {
        return body.motion().end_s();
    }
}
