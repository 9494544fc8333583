package pairdown.attempt;

/**
 * The closing limit's parameters.
 *
 * @param braking_mps2 deceleration planned on: under half of what a braked pose gives at the target
 *     path
 * @param reaction_s before braking begins
 * @param contact_mps closing speed always allowed
 * @param margin_m gap at which the limit reaches {@code contact_mps}
 */
public record ClosureSettings(
        double braking_mps2, double reaction_s, double contact_mps, double margin_m) {
    public static final ClosureSettings DEFAULT = new ClosureSettings(0.5, 1, 0.5, 2);
}
