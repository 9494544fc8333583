package pairdown.pair;

import pairdown.motion.Trajectory;

/**
 * What a participant's position log may be asked.
 *
 * @param rate_Hz fixes a second, median
 * @param levelVelocity whether the receiver's own level velocity is in it
 * @param verticalVelocity whether the receiver's own vertical velocity is in it
 */
public record DataGrade(double rate_Hz, boolean levelVelocity, boolean verticalVelocity) {
    /** A grade with the rate taken from the fixes that shaped a trajectory. */
    public static DataGrade of(
            Trajectory trajectory, boolean levelVelocity, boolean verticalVelocity) {
        double step_s = Holes.medianStep_s(trajectory);
        return new DataGrade(step_s > 0 ? 1 / step_s : 0, levelVelocity, verticalVelocity);
    }
}
