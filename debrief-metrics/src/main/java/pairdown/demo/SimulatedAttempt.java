package pairdown.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import pairdown.attempt.Attempt;
import pairdown.attempt.LeverArm;
import pairdown.attempt.LogRef;
import pairdown.attempt.Participant;
import pairdown.clock.LoadedLog;
import pairdown.demo.receiver.InjectedFaults;
import pairdown.demo.receiver.LogPlan;
import pairdown.demo.receiver.Logging;
import pairdown.demo.receiver.Recorded;
import pairdown.demo.truth.Truth;

/**
 * A truth, the logs that receivers made of it, and what was done to them, all in memory: what an
 * estimator is measured against.
 *
 * @param logs as if read from files, in the order of {@code faults}
 * @param faults what was done to each log
 */
public record SimulatedAttempt(
        Truth truth, Attempt attempt, List<LoadedLog> logs, List<InjectedFaults> faults) {
    public SimulatedAttempt {
        logs = List.copyOf(logs);
        faults = List.copyOf(faults);
    }

    /** With the usual plan and logs. The same truth and seed give the same logs. */
    public static SimulatedAttempt of(Truth truth, long seed) {
        return of(truth, AttemptPlan.STANDARD, seed, LogPlan.standard(truth));
    }

    /** With the usual plan and these logs. */
    public static SimulatedAttempt of(Truth truth, long seed, LogPlan... logs) {
        return of(truth, AttemptPlan.STANDARD, seed, List.of(logs));
    }

    /**
     * The usual logs with all clocks and heights true; noise, slow biases, losses and instruments'
     * noise stay.
     */
    public static SimulatedAttempt trulyAligned(Truth truth, long seed) {
        List<LogPlan> logs = LogPlan.standard(truth).stream().map(LogPlan::trulyAligned).toList();
        return of(truth, AttemptPlan.STANDARD, seed, logs);
    }

    /**
     * @throws NoSuchElementException if a log's participant is not in the truth
     */
    public static SimulatedAttempt of(
            Truth truth, AttemptPlan plan, long seed, List<LogPlan> logs) {
        Attempt attempt = plan.attempt(truth, logs);
        Map<String, LeverArm> antennas =
                attempt.lead().map(l -> Map.of(l.id(), plan.antenna())).orElse(Map.of());
        List<Recorded> recorded = Logging.of(truth, logs, antennas, seed);
        List<LoadedLog> loaded = new ArrayList<>();
        for (Recorded r : recorded) {
            Participant owner = attempt.participant(r.faults().participant()).orElseThrow();
            LogRef ref =
                    owner.logs().stream()
                            .filter(l -> l.file().equals(r.faults().file()))
                            .findFirst()
                            .orElseThrow();
            loaded.add(new LoadedLog(owner, ref, r.track()));
        }
        return new SimulatedAttempt(
                truth, attempt, loaded, recorded.stream().map(Recorded::faults).toList());
    }

    /**
     * What was done to a log.
     *
     * @throws NoSuchElementException if there is no such log
     */
    public InjectedFaults faults(String file) {
        return faults.stream().filter(f -> f.file().equals(file)).findFirst().orElseThrow();
    }
}
