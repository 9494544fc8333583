package pairdown.demo;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.clock.ClockSettings;
import pairdown.clock.ClockSolution;
import pairdown.clock.CommonClock;
import pairdown.demo.physics.Scenario;
import pairdown.demo.physics.Simulation;
import pairdown.demo.receiver.GnssPlan;
import pairdown.demo.receiver.LogPlan;
import pairdown.demo.receiver.Sight;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.Truth;
import pairdown.height.HeightReconciler;
import pairdown.phase.EventKind;
import pairdown.phase.PhaseFinder;
import pairdown.phase.PhaseSettings;
import pairdown.phase.Phases;
import pairdown.units.Estimate;

/**
 * Exits and openings of simulated attempts against the truth, on the common clock as it is found:
 * {@code InstantStudy [SEEDS]}. Without and with a loss of the sky at every exit; by rate of the
 * flyers' logs, with and without velocities of their own.
 */
public final class InstantStudy {
    private final Map<String, Tally> tallies = new LinkedHashMap<>();
    private int missing;

    public static void main(String[] args) {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        List<Truth> truths = new ArrayList<>();
        for (int seed = 1; seed <= seeds; seed++) {
            truths.add(Simulation.run(Scenario.standard(seed)));
        }
        for (double rate_Hz : new double[] {1, 5, 10}) {
            for (GnssPlan.Velocity velocity :
                    new GnssPlan.Velocity[] {
                        GnssPlan.Velocity.COMPONENTS, GnssPlan.Velocity.NONE
                    }) {
                InstantStudy study = new InstantStudy();
                for (int i = 0; i < seeds; i++) {
                    study.add(truths.get(i), rate_Hz, velocity, false, i + 1);
                    study.add(truths.get(i), rate_Hz, velocity, true, i + 1);
                }
                out.println(rate_Hz + " Hz, velocities: " + velocity + ", " + seeds + " seeds");
                out.println(study);
            }
        }
    }

    Tally tally(String what) {
        return tallies.computeIfAbsent(what, w -> new Tally());
    }

    int missing() {
        return missing;
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        tallies.forEach((what, t) -> text.append(String.format("  %-20s %s%n", what, t)));
        return text.append("  not found: ").append(missing).toString();
    }

    void add(Truth truth, double rate_Hz, GnssPlan.Velocity velocity, boolean lost, long seed) {
        List<LogPlan> plans = new ArrayList<>();
        for (LogPlan plan : LogPlan.standard(truth)) {
            if (plan instanceof GnssPlan g) {
                boolean jumper = truth.body(g.participant()).role().isJumper();
                plans.add(
                        jumper
                                ? g.rate(rate_Hz).velocity(velocity).sight(lost ? lossy() : clear())
                                : g);
            }
        }
        SimulatedAttempt made = SimulatedAttempt.of(truth, AttemptPlan.STANDARD, seed, plans);
        ClockSolution clock = CommonClock.align(made.logs(), ClockSettings.DEFAULTS);
        Phases found =
                PhaseFinder.find(
                        HeightReconciler.reconcile(made.logs(), clock), PhaseSettings.DEFAULTS);
        double ahead_s = clock.axis().seconds(truth.start());
        for (TrueBody body : truth.bodies()) {
            String exit = lost ? "exit, sky lost (s)" : "exit (s)";
            tally(exit, found.estimate(body.id(), EventKind.EXIT), body.exit_s(), ahead_s);
            if (!lost) {
                tally(
                        "opening (s)",
                        found.estimate(body.id(), EventKind.OPENING),
                        body.opening_s(),
                        ahead_s);
            }
        }
    }

    private static Sight lossy() {
        return new Sight(
                1, OptionalDouble.empty(), true, List.of(), List.of(), Sight.USUAL.burstEvery_s());
    }

    private static Sight clear() {
        return Sight.USUAL.keptAtExit();
    }

    private void tally(
            String what, Optional<Estimate> found, OptionalDouble true_s, double ahead_s) {
        if (true_s.isPresent() && found.isEmpty()) {
            missing++;
        } else if (true_s.isPresent()) {
            double error_s = found.get().value() - ahead_s - true_s.getAsDouble();
            tally(what).add(error_s, found.get().sigma());
        }
    }
}
