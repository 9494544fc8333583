package pairdown.demo;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.demo.DebriefStudy.Flown;
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
        /** All of the lead's systems, and loads on each flyer's body at 50 Hz. */
        FLYER_LOADS
    }

    public static void main(String[] args) throws UnusableInputException {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        for (Flown flown : List.of(Flown.TOUCH_FOR_6_S, Flown.HOVER_AT_1_5_M)) {
            for (double rate_Hz : new double[] {5, 10, 1}) {
                out.printf(
                        "%s at %.0f Hz: %s%n",
                        flown, rate_Hz, run(flown, rate_Hz, Logged.SYSTEMS, 1, seeds));
            }
            for (Logged logged : List.of(Logged.NO_CONTROLS, Logged.FLYER_LOADS)) {
                out.printf("%s at 5 Hz, %s: %s%n", flown, logged, run(flown, 5, logged, 1, seeds));
            }
        }
    }

    static TouchErrors run(Flown flown, double rate_Hz, Logged logged, int first, int seeds)
            throws UnusableInputException {
        TouchErrors errors = new TouchErrors();
        for (int seed = first; seed < first + seeds; seed++) {
            SimulatedAttempt made = DebriefStudy.made(flown, rate_Hz, seed, t -> with(logged, t));
            Debrief debrief = Debriefer.debrief(made.attempt(), made.logs(), step -> {});
            for (PairDebrief pair : debrief.pairs()) {
                List<TrueContact> contacts =
                        made.truth().contacts().stream()
                                .filter(c -> c.flyer().equals(pair.flyer()))
                                .toList();
                errors.add(
                        pair,
                        PairScore.truth(made, pair.flyer()),
                        contacts,
                        DebriefErrors.leadAhead_s(made, debrief));
            }
        }
        return errors;
    }

    private static List<LogPlan> with(Logged logged, Truth truth) {
        List<LogPlan> plans = new ArrayList<>();
        for (LogPlan plan : LogPlan.standard(truth)) {
            plans.add(
                    plan instanceof RecorderPlan r && logged == Logged.NO_CONTROLS
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
