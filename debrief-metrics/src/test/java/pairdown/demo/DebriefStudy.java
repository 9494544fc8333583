package pairdown.demo;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import pairdown.demo.physics.Behaviour;
import pairdown.demo.physics.FlyerPlan;
import pairdown.demo.physics.Scenario;
import pairdown.demo.physics.Side;
import pairdown.demo.physics.Simulation;
import pairdown.demo.receiver.GnssPlan;
import pairdown.demo.receiver.LogPlan;
import pairdown.demo.truth.Truth;
import pairdown.track.UnusableInputException;

/**
 * Whole debriefs of simulated attempts against the truth: {@code DebriefStudy [SEEDS] [RATE_HZ…]}.
 * For each way of flying and each rate of the flyers' logs, errors of every figure and how honest
 * its sigma is.
 */
public final class DebriefStudy {
    private DebriefStudy() {}

    /** How the two flyers fly. */
    enum Flown {
        HOLD_AT_30_M,
        TOUCH_FOR_6_S,
        HOVER_AT_1_5_M
    }

    public static void main(String[] args) throws UnusableInputException {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        double[] rates_Hz =
                args.length > 1
                        ? Arrays.stream(args).skip(1).mapToDouble(Double::parseDouble).toArray()
                        : new double[] {1, 5, 10};
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        for (Flown flown : Flown.values()) {
            DebriefErrors[] errors = new DebriefErrors[rates_Hz.length];
            Arrays.setAll(errors, i -> new DebriefErrors());
            for (int seed = 1; seed <= seeds; seed++) {
                Truth truth = Simulation.run(scenario(flown, seed));
                for (int i = 0; i < errors.length; i++) {
                    errors[i].add(made(truth, rates_Hz[i], seed, LogPlan.standard(truth)));
                }
            }
            for (int i = 0; i < errors.length; i++) {
                out.printf("%s, flyers' logs at %.0f Hz, %d seeds%n", flown, rates_Hz[i], seeds);
                out.println(errors[i]);
            }
        }
    }

    /** Debriefs attempts of these seeds and adds their errors. */
    static void run(DebriefErrors errors, Flown flown, double rate_Hz, int first, int seeds)
            throws UnusableInputException {
        for (int seed = first; seed < first + seeds; seed++) {
            errors.add(made(flown, rate_Hz, seed));
        }
    }

    /** A simulated attempt with the usual logs, the flyers' at this rate. */
    static SimulatedAttempt made(Flown flown, double rate_Hz, long seed) {
        Truth truth = Simulation.run(scenario(flown, seed));
        return made(truth, rate_Hz, seed, LogPlan.standard(truth));
    }

    /** The same of a truth already made, with other logs. */
    static SimulatedAttempt made(Truth truth, double rate_Hz, long seed, List<LogPlan> plans) {
        List<LogPlan> logs = plans.stream().map(p -> atRate(p, truth, rate_Hz)).toList();
        return SimulatedAttempt.of(truth, AttemptPlan.STANDARD, seed, logs);
    }

    private static LogPlan atRate(LogPlan plan, Truth truth, double rate_Hz) {
        return plan instanceof GnssPlan g && truth.body(g.participant()).role().isJumper()
                ? g.rate(rate_Hz)
                : plan;
    }

    static Scenario scenario(Flown flown, long seed) {
        return switch (flown) {
            case HOLD_AT_30_M -> Scenario.standard(seed);
            case TOUCH_FOR_6_S -> both(seed, new Behaviour.Touch(6));
            case HOVER_AT_1_5_M -> both(seed, new Behaviour.Hover(1.5, 12));
        };
    }

    private static Scenario both(long seed, Behaviour behaviour) {
        return Scenario.standard(seed)
                .withFlyers(
                        FlyerPlan.hold("blue", Side.LEFT, 4).withBehaviour(behaviour),
                        FlyerPlan.hold("amber", Side.RIGHT, 4).withBehaviour(behaviour));
    }
}
