package pairdown.demo.physics;

import pairdown.attempt.Role;

/**
 * What one flyer is to do.
 *
 * @param role flyer or camera; a camera flies to a place behind and above its gate
 * @param side whose slot it belongs to
 * @param gate_m planned distance from the slot
 * @param mass_kg all-up
 * @param exitDelay_s later than its place in the exit order
 * @param tumble_s tumbles this long before it opens the suit
 */
public record FlyerPlan(
        String id,
        Role role,
        Side side,
        double gate_m,
        double mass_kg,
        Behaviour behaviour,
        double exitDelay_s,
        double tumble_s) {
    /** How long a gate is held by default (s). */
    public static final double USUAL_HOLD_S = 18;

    public FlyerPlan {
        if (!role.isJumper() || !(gate_m >= 0) || !(mass_kg > 0)) {
            throw new IllegalArgumentException(
                    "a flyer plan needs a jumper, a gate and a mass, not "
                            + role
                            + ", "
                            + gate_m
                            + " m, "
                            + mass_kg
                            + " kg");
        }
    }

    /** A flyer of 95 kg that holds its gate. */
    public static FlyerPlan hold(String id, Side side, double gate_m) {
        return new FlyerPlan(
                id, Role.FLYER, side, gate_m, 95, new Behaviour.Hold(USUAL_HOLD_S), 0, 0);
    }

    /** A camera flyer that holds behind and above. */
    public static FlyerPlan camera(String id, Side side, double gate_m) {
        return new FlyerPlan(
                id, Role.CAMERA, side, gate_m, 88, new Behaviour.Hold(USUAL_HOLD_S), 0, 0);
    }

    public FlyerPlan withBehaviour(Behaviour other) {
        return new FlyerPlan(id, role, side, gate_m, mass_kg, other, exitDelay_s, tumble_s);
    }

    public FlyerPlan withMass(double kg) {
        return new FlyerPlan(id, role, side, gate_m, kg, behaviour, exitDelay_s, tumble_s);
    }

    public FlyerPlan withExit(double delay_s, double tumbling_s) {
        return new FlyerPlan(id, role, side, gate_m, mass_kg, behaviour, delay_s, tumbling_s);
    }
}
