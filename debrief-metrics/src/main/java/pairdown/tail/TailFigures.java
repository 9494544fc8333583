package pairdown.tail;

/** Names of the derived series in {@link TailControl#figures}. */
public final class TailFigures {
    /** Control effectiveness, ratio to forward thrust at the same dynamic pressure. */
    public static final String EFFECTIVENESS = "effectiveness";

    /** One standard deviation of it. */
    public static final String EFFECTIVENESS_SIGMA = "effectivenessSigma";

    /** The rudder's, where the elevator's is the one above. */
    public static final String RUDDER_EFFECTIVENESS = "rudderEffectiveness";

    /** All retarding force along the path as a share of weight: sin γ − V̇/g. */
    public static final String RETARDING_SHARE = "retardingShare";

    /** Retarding force beyond idle (N). */
    public static final String RETARDING_FORCE = "retardingForce_N";

    /** Tc′, that force over dynamic pressure and the propeller's disc. */
    public static final String RETARDING_COEFFICIENT = "retardingCoefficient";

    /** One standard deviation of Tc′. */
    public static final String RETARDING_COEFFICIENT_SIGMA = "retardingCoefficientSigma";

    private TailFigures() {}
}
