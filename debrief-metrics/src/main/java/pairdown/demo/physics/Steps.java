package pairdown.demo.physics;

import java.util.List;
import pairdown.attempt.Role;

/** A flyer's way in: places on the bearing line, each held for a while before the next. */
final class Steps {
    /**
     * One of them.
     *
     * @param gap_m from the slot; 0 is the slot itself
     * @param hold_s from the moment it is reached
     * @param grips whether the flyer takes the tip there
     */
    record Step(double gap_m, double hold_s, boolean grips) {}

    private static final double NEAR_M = 14;

    private Steps() {}

    static List<Step> of(FlyerPlan plan) {
        Behaviour b = plan.behaviour();
        if (b instanceof Behaviour.Hold h) {
            return plan.gate_m() < NEAR_M && plan.role() == Role.FLYER
                    ? List.of(at(20, 2), at(plan.gate_m(), h.hold_s()))
                    : List.of(at(plan.gate_m(), h.hold_s()));
        }
        if (b instanceof Behaviour.StayAway s) {
            return List.of(at(s.gap_m(), s.hold_s()));
        }
        if (b instanceof Behaviour.Hover h) {
            return List.of(at(20, 2), at(h.gap_m() + 3, 2), at(h.gap_m(), h.hold_s()));
        }
        if (b instanceof Behaviour.Touch t) {
            return List.of(at(20, 2), at(3, 3), new Step(0, t.grip_s(), true));
        }
        return List.of();
    }

    private static Step at(double gap_m, double hold_s) {
        return new Step(gap_m, hold_s, false);
    }
}
