package pairdown.demo.physics;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import pairdown.demo.truth.TrueMotion;
import pairdown.demo.truth.Truth;

/** Simulated flights that several tests look at, each flown once. */
final class Flights {
    private static final Map<Scenario, Truth> FLOWN = new ConcurrentHashMap<>();

    /** Two flyers to a gate of 30 m, from a helicopter at 60 kt, smooth air. */
    static final Scenario STANDARD = Scenario.standard(2);

    /** Eight flyers. */
    static final Scenario CROWD = Scenario.crowd(4, 8);

    /** Blue holds the left tip for six seconds, amber stays at 30 m. */
    static final Scenario TOUCH =
            Scenario.standard(3)
                    .withFlyers(
                            FlyerPlan.hold("blue", Side.LEFT, 2)
                                    .withBehaviour(new Behaviour.Touch(6)),
                            FlyerPlan.hold("amber", Side.RIGHT, 30));

    /** Blue hovers 4 m off. */
    static final Scenario HOVER =
            Scenario.standard(5)
                    .withFlyers(
                            FlyerPlan.hold("blue", Side.LEFT, 4)
                                    .withBehaviour(new Behaviour.Hover(4, 12)));

    /** Blue goes through a gate of 30 m at 2.5 m/s over the limit. */
    static final Scenario THROUGH =
            Scenario.standard(6)
                    .withFlyers(
                            FlyerPlan.hold("blue", Side.LEFT, 30)
                                    .withBehaviour(new Behaviour.Through(2.5)));

    private static final AirPlan NO_GUSTS = AirPlan.USUAL.withGusts(GustLevel.STILL);

    /** The lead alone at the target, wind without gusts. */
    static final Scenario PRACTICE = Scenario.practice(1).withAir(NO_GUSTS);

    /** The lead alone at idle, wind without gusts. */
    static final Scenario IDLE = Scenario.idleDive(1).withAir(NO_GUSTS);

    /** Too much reverse, 25 s into the dive. */
    static final Scenario TOO_MUCH =
            Scenario.practice(8)
                    .withLead(LeadPlan.USUAL.withEvents(new DiveEvent.OverReverse(25, 1.35, 2.5)));

    /** Forward and back again by half the lever's range. */
    static final Scenario HARMLESS =
            Scenario.practice(9)
                    .withLead(LeadPlan.USUAL.withEvents(new DiveEvent.HarmlessPower(25, 48, 12)));

    private Flights() {}

    static Truth of(Scenario scenario) {
        return FLOWN.computeIfAbsent(scenario, Simulation::run);
    }

    /** First and last row of the lead's dive once it is steady: from 25 s in, to its end. */
    static int[] steadyDive(Truth truth) {
        boolean[] diving = truth.tail().orElseThrow().diving();
        int first = 0;
        while (!diving[first]) {
            first++;
        }
        int last = first;
        while (last + 1 < diving.length && diving[last + 1]) {
            last++;
        }
        TrueMotion motion = truth.body("lead").motion();
        return new int[] {first + (int) (25 / motion.step_s()), last};
    }
}
