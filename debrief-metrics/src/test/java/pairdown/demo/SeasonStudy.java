package pairdown.demo;

import java.util.List;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.demo.physics.Simulation;
import pairdown.demo.receiver.Draws;
import pairdown.demo.receiver.LogPlan;
import pairdown.demo.truth.Truth;
import pairdown.track.UnusableInputException;

/**
 * The demo season's summaries against its truth: {@code SeasonStudy [DRAWS]}, so many draws of
 * receivers and clocks of each attempt (1 unless said, the samples as they ship).
 */
public final class SeasonStudy {
    private SeasonStudy() {}

    public static void main(String[] args) {
        int draws = args.length > 0 ? Integer.parseInt(args[0]) : 1;
        SeasonErrors errors = new SeasonErrors();
        DemoSeason.attempts(DemoSeason.SEED).parallelStream()
                .forEach(
                        demo -> {
                            Truth truth = Simulation.run(demo.scenario());
                            for (int i = 0; i < draws; i++) {
                                errors.add(truth, debrief(demo, truth, DemoSeason.SEED + i));
                            }
                        });
        System.out.print(errors);
    }

    private static Debrief debrief(DemoAttempt demo, Truth truth, long seed) {
        List<LogPlan> plans = demo.logs().apply(truth).stream().map(DemoLog::plan).toList();
        SimulatedAttempt made =
                SimulatedAttempt.of(truth, demo.plan(), Draws.seed(seed, demo.id()), plans);
        try {
            return Debriefer.debrief(made.attempt(), made.logs(), step -> {});
        } catch (UnusableInputException e) {
            throw new IllegalStateException(demo.id(), e);
        }
    }
}
