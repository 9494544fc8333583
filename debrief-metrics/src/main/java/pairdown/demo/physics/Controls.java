package pairdown.demo.physics;

/**
 * What the pilot holds.
 *
 * @param elevator −1 to 1 of its travel, nose up positive
 * @param rudder the same, right positive
 * @param aileron the same, right positive
 * @param lever −1 full reverse to 1 full forward
 * @param flap 0 up to 1 full
 */
record Controls(double elevator, double rudder, double aileron, double lever, double flap) {
    static final Controls NEUTRAL = new Controls(0, 0, 0, 0, 0);
}
