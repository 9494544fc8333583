package pairdown.demo;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.demo.physics.Simulation;
import pairdown.demo.receiver.Draws;
import pairdown.demo.receiver.GnssPlan;
import pairdown.demo.receiver.LogPlan;
import pairdown.demo.truth.Truth;
import pairdown.pair.PairDebrief;

/**
 * Errors of separation and closure against the truth, over the demo season's attempts with several
 * draws of receivers and clocks each. Run as a program; a few draws run in the build.
 */
public final class DemoErrors {
    private DemoErrors() {}

    /**
     * All pairs of an attempt.
     *
     * @param alike whether all receivers are of one model
     */
    static PairScore of(DemoAttempt demo, Truth truth, long seed, boolean alike) throws Exception {
        List<LogPlan> plans =
                demo.logs().apply(truth).stream().map(l -> model(l.plan(), alike)).toList();
        SimulatedAttempt attempt =
                SimulatedAttempt.of(truth, demo.plan(), Draws.seed(seed, demo.id()), plans);
        Debrief debrief = Debriefer.debrief(attempt.attempt(), attempt.logs(), step -> {});
        PairScore sum = new PairScore();
        for (PairDebrief pair : debrief.pairs()) {
            sum = sum.plus(PairScore.of(attempt, debrief, pair));
        }
        return sum;
    }

    private static LogPlan model(LogPlan plan, boolean alike) {
        return plan instanceof GnssPlan gnss && !alike ? gnss.model(gnss.file()) : plan;
    }

    /** {@code [draws]}: 8 unless said. */
    public static void main(String[] args) throws Exception {
        int draws = args.length > 0 ? Integer.parseInt(args[0]) : 8;
        Map<Boolean, PairScore> all = new TreeMap<>();
        for (DemoAttempt demo : DemoJoins.of(DemoSeason.SEED)) {
            Truth truth = Simulation.run(demo.scenario());
            for (boolean alike : new boolean[] {true, false}) {
                PairScore sum = new PairScore();
                for (int i = 0; i < draws; i++) {
                    sum = sum.plus(of(demo, truth, DemoSeason.SEED + i, alike));
                }
                all.merge(alike, sum, PairScore::plus);
                System.out.printf(Locale.ROOT, "%s %-8s %s%n", demo.id(), words(alike), sum);
            }
        }
        all.forEach((alike, sum) -> System.out.printf("all %-8s %s%n", words(alike), sum));
    }

    /** Whether the receivers are of one model. */
    private static String words(boolean alike) {
        return alike ? "alike" : "unlike";
    }
}
