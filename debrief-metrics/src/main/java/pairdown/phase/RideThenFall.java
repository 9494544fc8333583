package pairdown.phase;

import pairdown.motion.AxisFilter;

/**
 * How likely one axis of a log is for an exit at each of some instants. Until the exit the motion
 * is the exit aircraft's: white jerk of a small density, seen by the flyer's own log and, where it
 * was logged, by the ship's, which goes on through a hole of the flyer's. At the exit the
 * acceleration steps by that of a fall; from there it fades as drag takes over, with a larger
 * density. All three stretches are one filter's, so a hole costs what it must: after it the place
 * and the speed reached say how long ago the fall began.
 */
final class RideThenFall {
    /** White jerk of an aircraft on its run-in and of a body that leaves it (m²/s⁵). */
    private static final double RIDE_JERK_M2PS5 = 1;

    private static final double FALL_JERK_M2PS5 = 2;

    /** Drag and lift take the acceleration of a fall in about this time (s): guard, own runs. */
    private static final double FADE_S = 8;

    private static final double MOST_STEP_S = 0.2;

    /** Slow error of a receiver (m) and how long it lasts (s). */
    private static final double BIAS_M = 1;

    private static final double BIAS_TIME_S = 15;

    /** A receiver that lost the sky this long comes back shifted by so much (m). */
    private static final double LOST_S = 1.5;

    private static final double SHIFTED_M = 8;

    private static final double START_PLACE_M = 10;
    private static final double START_SPEED_MPS = 100;
    private static final double START_ACCELERATION_MPS2 = 3;

    /**
     * What the exit does to an axis.
     *
     * @param push_mps one standard deviation of the push at the door
     * @param pull_mps2 the fall's first acceleration
     * @param spread_mps2 how well that is known
     */
    record Step(double push_mps, double pull_mps2, double spread_mps2) {}

    private final Sights own;
    private final Sights ship;
    private final Sights aboard;
    private final Step step;

    RideThenFall(Sights own, Sights ship, Step step) {
        this.own = own;
        this.ship = ship;
        this.aboard = own.with(ship);
        this.step = step;
    }

    /** Adds the log likelihood of an exit at each of the instants, which rise. */
    void addTo(double[] likelihood, double[] instants_s) {
        Walk joint = new Walk(aboard);
        Walk alone = new Walk(ship);
        for (int i = 0; i < instants_s.length; i++) {
            joint.to(instants_s[i]);
            alone.to(instants_s[i]);
            // What the ship's log alone says is no evidence for any exit: only flyers exit.
            likelihood[i] += joint.likelihood - alone.likelihood + fall(joint, instants_s[i]);
        }
    }

    /** Root mean square innovation in sigmas until an instant: places first, then velocities. */
    double[] misfit(double until_s) {
        Walk walk = new Walk(own);
        walk.to(until_s);
        return new double[] {walk.rms(false), walk.rms(true)};
    }

    /** A filter aboard that goes through samples in order. */
    private static final class Walk {
        private final Sights sights;
        private final AxisFilter filter = new AxisFilter(BIAS_M, BIAS_TIME_S, 0);
        private final double[] squares = new double[2];
        private final int[] counts = new int[2];
        private int next;
        private double at_s;
        private double seen_s;
        private double likelihood;

        Walk(Sights sights) {
            this.sights = sights;
            if (!sights.isEmpty()) {
                at_s = sights.time_s(0);
                seen_s = at_s;
                filter.start(
                        sights.first(false),
                        START_PLACE_M,
                        sights.first(true),
                        START_SPEED_MPS,
                        START_ACCELERATION_MPS2);
            }
        }

        void to(double t_s) {
            for (; next < sights.size() && sights.time_s(next) <= t_s; next++) {
                filter.predict(sights.time_s(next) - at_s, RIDE_JERK_M2PS5);
                at_s = sights.time_s(next);
                if (!sights.isVelocity(next)) {
                    regain(filter, at_s - seen_s);
                    seen_s = at_s;
                }
                int kind = sights.isVelocity(next) ? 1 : 0;
                squares[kind] += sights.square(next, filter);
                counts[kind]++;
                likelihood += sights.absorb(next, filter);
            }
        }

        double rms(boolean velocities) {
            int kind = velocities ? 1 : 0;
            return counts[kind] == 0 ? 1 : Math.sqrt(squares[kind] / counts[kind]);
        }
    }

    private static void regain(AxisFilter filter, double hole_s) {
        if (hole_s > LOST_S) {
            filter.loosenBias(SHIFTED_M * SHIFTED_M);
        }
    }

    private double fall(Walk ride, double exit_s) {
        AxisFilter filter = ride.filter.copy();
        filter.predict(Math.max(0, exit_s - ride.at_s), RIDE_JERK_M2PS5);
        filter.step(
                step.push_mps * step.push_mps, step.pull_mps2, step.spread_mps2 * step.spread_mps2);
        double at_s = exit_s;
        double seen_s = ride.seen_s;
        double likelihood = 0;
        for (int i = own.firstAfter(exit_s); i < own.size(); i++) {
            carry(filter, own.time_s(i) - at_s);
            at_s = own.time_s(i);
            if (!own.isVelocity(i)) {
                regain(filter, at_s - seen_s);
                seen_s = at_s;
            }
            likelihood += own.absorb(i, filter);
        }
        return likelihood;
    }

    private static void carry(AxisFilter filter, double dt_s) {
        int steps = (int) Math.ceil(dt_s / MOST_STEP_S);
        for (int i = 0; i < steps; i++) {
            filter.predict(dt_s / steps, FALL_JERK_M2PS5);
            filter.fade(Math.exp(-dt_s / steps / FADE_S));
        }
    }
}
