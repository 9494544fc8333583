package pairdown.demo;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.demo.DebriefStudy.Flown;
import pairdown.demo.physics.Simulation;
import pairdown.demo.receiver.LogPlan;
import pairdown.demo.receiver.RecorderPlan;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueContact;
import pairdown.demo.truth.Truth;
import pairdown.pair.PairDebrief;
import pairdown.track.Channel;
import pairdown.track.UnusableInputException;

/**
 * Touch evidence of simulated contacts and hovers, by rate of the flyers' logs and by what is
 * logged beside them: {@code TouchStudy [SEEDS]}.
 */
public final class TouchStudy {
    private static final Set<Channel> CONTROLS =
            EnumSet.of(Channel.AILERON, Channel.RUDDER, Channel.ELEVATOR);

    private static final Set<Channel> LOADS =
            EnumSet.of(Channel.LONGITUDINAL_LOAD, Channel.LATERAL_LOAD, Channel.NORMAL_LOAD);

    private TouchStudy() {}

    /** What else is logged. */
    enum Logged {
        /** All of the lead's systems. */
        SYSTEMS,
        /** The same without the controls. */
        NO_CONTROLS,
        /** No controls either, but loads on each flyer's body at 50 Hz. */
        FLYER_LOADS
    }

    /** How an attempt is logged: the rate of the flyers' logs, and what else. */
    record Variant(double rate_Hz, Logged logged) {}

    private static final List<Variant> VARIANTS =
            List.of(
                    new Variant(5, Logged.SYSTEMS),
                    new Variant(10, Logged.SYSTEMS),
                    new Variant(1, Logged.SYSTEMS),
                    new Variant(5, Logged.NO_CONTROLS),
                    new Variant(5, Logged.FLYER_LOADS));

    public static void main(String[] args) throws UnusableInputException {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        for (Flown flown : List.of(Flown.TOUCH_FOR_6_S, Flown.HOVER_AT_1_5_M)) {
            Map<Variant, TouchErrors> errors = run(flown, VARIANTS, 1, seeds);
            for (Variant v : VARIANTS) {
                out.printf("%s at %.0f Hz, %s: %s%n", flown, v.rate_Hz, v.logged, errors.get(v));
            }
        }
    }

    static TouchErrors run(Flown flown, Variant variant, int first, int seeds)
            throws UnusableInputException {
        return Objects.requireNonNull(run(flown, List.of(variant), first, seeds).get(variant));
    }

    private static Map<Variant, TouchErrors> run(
            Flown flown, List<Variant> variants, int first, int seeds)
            throws UnusableInputException {
        Map<Variant, TouchErrors> errors = new HashMap<>();
        for (int seed = first; seed < first + seeds; seed++) {
            Truth truth = Simulation.run(DebriefStudy.scenario(flown, seed));
            for (Variant v : variants) {
                add(
                        errors.computeIfAbsent(v, k -> new TouchErrors()),
                        DebriefStudy.made(truth, v.rate_Hz, seed, with(v.logged, truth)));
            }
        }
        return errors;
    }

    private static void add(TouchErrors errors, SimulatedAttempt made)
            throws UnusableInputException {
        Debrief debrief = Debriefer.debrief(made.attempt(), made.logs(), step -> {});
        double ahead_s = DebriefErrors.leadAhead_s(made, debrief);
        for (PairDebrief pair : debrief.pairs()) {
            List<TrueContact> contacts =
                    made.truth().contacts().stream()
                            .filter(c -> c.flyer().equals(pair.flyer()))
                            .toList();
            errors.add(pair, PairScore.truth(made, pair.flyer()), contacts, ahead_s);
        }
    }

    private static List<LogPlan> with(Logged logged, Truth truth) {
        List<LogPlan> plans = new ArrayList<>();
        for (LogPlan plan : LogPlan.standard(truth)) {
            plans.add(
                    plan instanceof RecorderPlan r && logged != Logged.SYSTEMS
                            ? withoutControls(r)
                            : plan);
        }
        if (logged == Logged.FLYER_LOADS) {
            for (TrueBody body : truth.bodies()) {
                if (body.role().isJumper()) {
                    plans.add(
                            RecorderPlan.of(body.id(), body.id() + "-loads.csv")
                                    .rate(50)
                                    .clockOff(0)
                                    .channels(LOADS));
                }
            }
        }
        return plans;
    }

    private static RecorderPlan withoutControls(RecorderPlan plan) {
        Set<Channel> left = EnumSet.copyOf(plan.channels());
        left.removeAll(CONTROLS);
        return plan.channels(left);
    }
}
