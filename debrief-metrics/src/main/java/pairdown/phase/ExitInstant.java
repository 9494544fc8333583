package pairdown.phase;

import java.util.Arrays;
import java.util.Optional;
import pairdown.phase.RideThenFall.Step;
import pairdown.units.Estimate;

/**
 * The instant at which a flyer's motion leaves its aircraft's: every instant of a stretch is
 * weighed by how likely the log is with an exit then ({@link RideThenFall}, axes along the
 * aircraft's motion, across it and up); the exit is the mean of those weights and its sigma their
 * spread. With samples all through that is hundredths of a second; in a hole, what place and speed
 * after it leave open.
 */
final class ExitInstant {
    /** The ride is looked at from this long before the first instant on trial (s). */
    private static final double RIDE_S = 16;

    /** An exit lies at most this long before a fall that is well under way (s) … */
    private static final double REACH_S = 14;

    /** … or this long and the longest hole in the log just before it, up to the most. */
    private static final double BESIDE_HOLE_S = 8;

    private static final double MOST_HOLE_S = 60;

    private static final double STEP_S = 0.05;

    /** What no motion tells: a person takes this long to pass a door (s). */
    private static final double DOOR_S = 0.05;

    /** White noise of samples before the ride shows what it is (m, m/s). */
    private static final double LEVEL_M = 0.4;

    private static final double HEIGHT_M = 0.7;
    private static final double LEVEL_MPS = 0.15;
    private static final double VERTICAL_MPS = 0.25;

    /** By no more than this do innovations on the ride change it. */
    private static final double LEAST_SCALE = 0.5;

    private static final double MOST_SCALE = 6;

    /** The ship's smoothed velocity, a sample a second: its receiver, its clock, another seat. */
    private static final double SHIP_STEP_S = 1;

    private static final double SHIP_MPS = 0.5;

    /**
     * A body small in the airstream of a ship at 30 to 55 m/s (drag area about 0.55 m², little
     * lift, some 95 kg: common practice, no published source): 2 to 8 m/s² back along the ship's
     * motion, and nearly 1 g down.
     */
    private static final Step ALONG = new Step(0.7, -4.5, 2.5);

    private static final Step ACROSS = new Step(1.5, 0, 1.5);
    private static final Step UP = new Step(0.5, -8.5, 1.2);

    private final Motion flyer;
    private final Optional<Motion> ship;
    private final double from_s;
    private final double earliest_s;
    private final double falling_s;
    private final Course course;

    private ExitInstant(Motion flyer, Optional<Motion> ship, double falling_s) {
        this.flyer = flyer;
        this.ship = ship;
        this.earliest_s = falling_s - Math.max(REACH_S, longestHole_s(falling_s) + BESIDE_HOLE_S);
        this.from_s = earliest_s - RIDE_S;
        this.falling_s = falling_s;
        this.course = Course.of(flyer.samples().level(), from_s, earliest_s);
    }

    private double longestHole_s(double falling_s) {
        Motion.Columns v = flyer.samples().vertical();
        double longest_s = 0;
        for (int i = v.firstFrom(falling_s - MOST_HOLE_S);
                i + 1 < v.size() && v.time_s(i) < falling_s;
                i++) {
            longest_s = Math.max(longest_s, v.time_s(i + 1) - v.time_s(i));
        }
        return Math.min(MOST_HOLE_S, longest_s);
    }

    /**
     * Looks for the exit before a fall that is well under way.
     *
     * @param falling_s when the flyer surely falls: the samples looked at end there
     * @return empty where the log has nothing of the ride or of the fall
     */
    static Optional<Estimate> before(Motion flyer, Optional<Motion> ship, double falling_s) {
        return new ExitInstant(flyer, ship, falling_s).find();
    }

    private Optional<Estimate> find() {
        double first_s = Math.max(earliest_s, flyer.start_s());
        double[] instants_s = new double[(int) ((falling_s - first_s) / STEP_S)];
        Arrays.setAll(instants_s, i -> first_s + i * STEP_S);
        double[] likelihood = new double[instants_s.length];
        Step[] steps = {ALONG, ACROSS, UP};
        for (int axis = 0; axis < steps.length; axis++) {
            Sights own = scaled(own(axis), steps[axis]);
            if (own.size() == 0 || own.time_s(0) > falling_s - 1) {
                return Optional.empty();
            }
            Sights ships = ship.map(this::withoutHoles).orElse(false) ? ship(axis) : Sights.NONE;
            new RideThenFall(own, ships, steps[axis]).addTo(likelihood, instants_s);
        }
        return Optional.of(Posterior.of(instants_s, likelihood)).map(ExitInstant::atADoor);
    }

    private static Estimate atADoor(Estimate found) {
        return new Estimate(found.value(), Math.hypot(found.sigma(), DOOR_S));
    }

    /** With the noise that the ride shows. */
    private Sights scaled(Sights own, Step step) {
        double[] misfit = new RideThenFall(own, Sights.NONE, step).misfit(earliest_s);
        return own.scaled(bounded(misfit[0]), bounded(misfit[1]));
    }

    private static double bounded(double scale) {
        return Math.max(LEAST_SCALE, Math.min(MOST_SCALE, scale));
    }

    private boolean withoutHoles(Motion of) {
        return !of.isHoled(earliest_s, falling_s);
    }

    /** The flyer's own samples on an axis: 0 along, 1 across, 2 up. */
    private Sights own(int axis) {
        boolean up = axis == 2;
        Sights.Builder all = new Sights.Builder(from_s, falling_s);
        Motion.Samples s = flyer.samples();
        Motion.Columns velocity = up ? s.vertical() : s.level();
        Motion.Columns place = up ? s.height() : s.place();
        all.add(place, course.of(axis), up ? HEIGHT_M : LEVEL_M, false);
        if (velocity.blur_s() == 0 || place.size() == 0) {
            all.add(velocity, course.of(axis), up ? VERTICAL_MPS : LEVEL_MPS, true);
        }
        return all.build();
    }

    private Sights ship(int axis) {
        Motion m = ship.orElseThrow();
        Sights.Builder all = new Sights.Builder(from_s, falling_s);
        for (double t_s = from_s; t_s < falling_s; t_s += SHIP_STEP_S) {
            double value =
                    axis == 2
                            ? m.up().at(t_s)
                            : course.of(axis).on(m.east().at(t_s), m.north().at(t_s));
            all.add(t_s, value, SHIP_MPS, true);
        }
        return all.build();
    }
}
