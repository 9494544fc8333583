package pairdown.demo.physics;

import org.hipparchus.util.FastMath;
import pairdown.vector.Vec3;

/**
 * A hand on the wing tip: a spring and damper between the flyer and its slot, slipping above 250 N.
 * Stiffness, damping and slip: common practice, no published source.
 */
final class Grip {
    private static final double STIFFNESS_NPM = 400;
    private static final double DAMPING_NSPM = 150;
    private static final double SLIP_N = 250;

    /** A hand reaches this far from where it belongs (m) … */
    private static final double REACH_M = 0.55;

    /** … at this speed (m/s). */
    private static final double REACH_MPS = 1.0;

    /** Further off than this the hand is torn away. */
    private static final double TORN_M = 1.5;

    private boolean holding;
    private double since_s = Double.NaN;
    private double until_s = Double.NaN;
    private double blow_g;

    boolean isHolding() {
        return holding;
    }

    double since_s() {
        return since_s;
    }

    double until_s() {
        return until_s;
    }

    /**
     * The force on the flyer (N, east, north, up).
     *
     * @param off_m from the slot
     * @param closing_mps the flyer's velocity less the slot's
     */
    Vec3 force_N(Vec3 off_m, Vec3 closing_mps, boolean wanted, double time_s, double dt_s) {
        blow_g *= FastMath.exp(-dt_s / 0.08);
        double away_m = off_m.norm();
        if (!holding && wanted && away_m < REACH_M && closing_mps.norm() < REACH_MPS) {
            holding = true;
            since_s = time_s;
            Vec3 first_N = pull_N(off_m, closing_mps);
            blow_g = 0.35 + 0.25 * first_N.norm() / 100;
        } else if (holding && (!wanted || away_m > TORN_M)) {
            holding = false;
            until_s = time_s;
            blow_g = 0.15;
        }
        return holding ? pull_N(off_m, closing_mps) : Vec3.ZERO;
    }

    private static Vec3 pull_N(Vec3 off_m, Vec3 closing_mps) {
        Vec3 pull_N = off_m.times(-STIFFNESS_NPM).plus(closing_mps.times(-DAMPING_NSPM));
        double size_N = pull_N.norm();
        return size_N > SLIP_N ? pull_N.times(SLIP_N / size_N) : pull_N;
    }

    /**
     * What the blow of hand on metal adds at a logger on the body (g): an arm stops, the body does
     * not. Dies away within a quarter second.
     */
    double blow_g() {
        return blow_g;
    }
}
