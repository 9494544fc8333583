package pairdown.demo.physics;

import org.hipparchus.util.FastMath;
import pairdown.vector.Vec3;

/**
 * A hand on the wing tip: a spring and damper between the flyer and its slot, and the arm that
 * takes some of the body's weight at once, slipping above 250 N. All figures: common practice, no
 * published source.
 */
final class Grip {
    private static final double STIFFNESS_NPM = 400;
    private static final double DAMPING_NSPM = 150;
    private static final double SLIP_N = 250;

    /** Weight that the arm takes … */
    private static final double HANG_N = 150;

    /** … within this (s). */
    private static final double HANG_S = 0.1;

    private static final Vec3 UP = new Vec3(0, 0, 1);

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
            Vec3 first_N = pull_N(off_m, closing_mps, time_s);
            blow_g = 0.35 + 0.25 * first_N.norm() / 100;
        } else if (holding && (!wanted || away_m > TORN_M)) {
            holding = false;
            until_s = time_s;
            blow_g = 0.15;
        }
        return holding ? pull_N(off_m, closing_mps, time_s) : Vec3.ZERO;
    }

    private Vec3 pull_N(Vec3 off_m, Vec3 closing_mps, double time_s) {
        double hang_N = HANG_N * Math.min(1, (time_s - since_s) / HANG_S);
        Vec3 pull_N =
                off_m.times(-STIFFNESS_NPM)
                        .plus(closing_mps.times(-DAMPING_NSPM))
                        .plus(UP.times(hang_N));
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
