package pairdown.demo.physics;

/**
 * The lead's propeller: thrust by lever, airspeed and density. A made-up single turboprop; the map
 * is common practice, no published source.
 *
 * <p>Lever l from −1 to 1. Forward: the least of 12 kN and ¾·l·P/V with P = 560 kW. Idle: drag area
 * 0.55 m². Reverse: |l|·(4.0 kN·ρ/ρ₀ + 1.2·q·A), A the disc of 2.8 m. Between idle and either the
 * idle drag fades out with the lever, so that the map has no step.
 */
final class Propeller {
    /** Disc area A (m²). */
    static final double DISC_M2 = Math.PI * 2.8 * 2.8 / 4;

    private static final double POWER_W = 560_000;
    private static final double MOST_N = 12_000;
    private static final double IDLE_M2 = 0.55;
    private static final double STATIC_N = 4000;
    private static final double DYNAMIC = 1.2;
    private static final double SEA_LEVEL_KGPM3 = 1.225;
    private static final double BLADE_S = 0.4;
    private static final double TORQUE_S = 1.0;

    private double thrust_N;
    private double blade;
    private double torque_pct = IDLE_PCT;

    private static final double IDLE_PCT = 6;

    /** Thrust with the lever at rest (N), negative when it brakes. */
    static double steady_N(double lever, double true_mps, double density_kgpm3) {
        double q_Pa = 0.5 * density_kgpm3 * true_mps * true_mps;
        double idle_N = (1 - Math.abs(lever)) * IDLE_M2 * q_Pa;
        return lever > 0
                ? Math.min(MOST_N, 0.75 * lever * POWER_W / Math.max(10, true_mps)) - idle_N
                : lever * fullReverse_N(q_Pa, density_kgpm3) - idle_N;
    }

    private static double fullReverse_N(double q_Pa, double density_kgpm3) {
        return STATIC_N * density_kgpm3 / SEA_LEVEL_KGPM3 + DYNAMIC * q_Pa * DISC_M2;
    }

    /** The lever at which {@link #steady_N} is this thrust, from −1 to 1. */
    static double lever(double thrust_N, double true_mps, double density_kgpm3) {
        double low = -1;
        double high = 1;
        for (int i = 0; i < 30; i++) {
            double middle = (low + high) / 2;
            if (steady_N(middle, true_mps, density_kgpm3) < thrust_N) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    void step(double lever, double true_mps, double density_kgpm3, double dt_s) {
        double share = dt_s / BLADE_S;
        thrust_N += (steady_N(lever, true_mps, density_kgpm3) - thrust_N) * share;
        blade += (lever - blade) * share;
        double wanted_pct = lever > 0 ? IDLE_PCT + (100 - IDLE_PCT) * lever : IDLE_PCT - 54 * lever;
        torque_pct += (wanted_pct - torque_pct) * dt_s / TORQUE_S;
    }

    double thrust_N() {
        return thrust_N;
    }

    /** Braking coefficient Tc′ = T_rev/(q·A), positive when it brakes. */
    double coefficient(double dynamicPressure_Pa) {
        return -thrust_N / (Math.max(50, dynamicPressure_Pa) * DISC_M2);
    }

    double bladeAngle_deg() {
        return blade > 0 ? 11 + 17 * blade : 11 + 25 * blade;
    }

    double torque_pct() {
        return torque_pct;
    }

    /** Governed, sagging a little as the torque rises. */
    double speed_rpm() {
        return 2000 - 0.2 * (torque_pct - IDLE_PCT);
    }
}
