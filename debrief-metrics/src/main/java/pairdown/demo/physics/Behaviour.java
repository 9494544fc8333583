package pairdown.demo.physics;

/** What a flyer does once stable. */
public sealed interface Behaviour {
    /** Flies to its gate and holds there. */
    record Hold(double hold_s) implements Behaviour {}

    /**
     * Closes on the lead faster than the closing limit allows, goes through the gate and out ahead.
     *
     * @param excess_mps how much over the limit from the gate inward; in smooth air up to 1 m/s
     *     less comes of it, in rough air there may be no excess at all
     */
    record Through(double excess_mps) implements Behaviour {}

    /** Never gets nearer than this to its slot. */
    record StayAway(double gap_m, double hold_s) implements Behaviour {}

    /** Holds this near to its slot, hand off. */
    record Hover(double gap_m, double hold_s) implements Behaviour {}

    /** Takes the wing tip and lets go after a while. */
    record Touch(double grip_s) implements Behaviour {}
}
