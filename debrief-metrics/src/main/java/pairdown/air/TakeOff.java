package pairdown.air;

import pairdown.geodesy.LocalFrame;
import pairdown.motion.Trajectory;
import pairdown.time.Span;

/**
 * Cuts off what an aircraft did on the ground. Standing, taxiing and the run along the runway are
 * no flight at a steady airspeed, yet a log carried aboard begins with them, and a fit that takes
 * them for one finds a wind that is not there.
 */
final class TakeOff {
    private static final double STEP_S = 1;

    /** Slower over the ground than this, low down, an aircraft stands or taxies. */
    private static final double TAXI_MPS = 5;

    /** Heights within this of the lowest are the ground's: airfields slope, heights wander. */
    private static final double FIELD_M = 50;

    /** Screen height at which a take-off ends (50 ft: CS-23, from memory). */
    private static final double SCREEN_M = 15.24;

    private TakeOff() {}

    /** The part of a climb that begins with the take-off, or all where it begins in the air. */
    static Span after(Trajectory trajectory, Span climb, LocalFrame frame) {
        double from_s = Math.max(climb.start_s(), trajectory.start_s());
        double to_s = Math.min(climb.end_s(), trajectory.end_s());
        double[] values = new double[Trajectory.VALUES];
        double lowest_m = Double.POSITIVE_INFINITY;
        double ground_m = Double.NaN;
        double airborne_s = climb.start_s();
        for (double t_s = from_s; t_s <= to_s; t_s += STEP_S) {
            trajectory.read(t_s, values);
            double height_m = Heights.ellipsoid_m(frame, values);
            lowest_m = Math.min(lowest_m, height_m);
            boolean slow = Math.hypot(values[3], values[4]) < TAXI_MPS;
            if (slow && height_m < lowest_m + FIELD_M) {
                ground_m = height_m;
                airborne_s = climb.end_s();
            } else if (height_m > ground_m + SCREEN_M) {
                ground_m = Double.NaN;
                airborne_s = t_s;
            }
        }
        return new Span(airborne_s, climb.end_s());
    }
}
