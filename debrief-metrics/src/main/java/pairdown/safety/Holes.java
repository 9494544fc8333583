package pairdown.safety;

import pairdown.motion.Trajectory;

/** Where a trajectory has no fix for too long, asked at rising instants. */
final class Holes {
    private final Trajectory trajectory;
    private final double longest_s;
    private int next;

    Holes(Trajectory trajectory, double longest_s) {
        this.trajectory = trajectory;
        this.longest_s = longest_s;
    }

    /** Where the hole around an instant ends; the instant itself, if there is none around it. */
    double endOfHole_s(double t_s) {
        while (next < trajectory.fixCount() && trajectory.fixTime_s(next) <= t_s) {
            next++;
        }
        if (next == trajectory.fixCount()) {
            return next > 0 && trajectory.fixTime_s(next - 1) >= t_s
                    ? t_s
                    : Double.POSITIVE_INFINITY;
        }
        boolean tooLong =
                next == 0
                        || trajectory.fixTime_s(next) - trajectory.fixTime_s(next - 1) > longest_s;
        return tooLong && (next == 0 || trajectory.fixTime_s(next - 1) < t_s)
                ? trajectory.fixTime_s(next)
                : t_s;
    }
}
