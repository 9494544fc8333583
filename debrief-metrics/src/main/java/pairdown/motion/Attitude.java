package pairdown.motion;

import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * Which way a machine points: heading from true north clockwise, pitch nose up, roll right wing
 * down.
 *
 * @param source logged, or derived from motion
 */
public record Attitude(double heading_deg, double pitch_deg, double roll_deg, Source source) {
    /** Where an attitude comes from. */
    public enum Source {
        LOGGED,
        /**
         * Heading along the motion through the air, bank of a coordinated turn, pitch along the
         * path.
         */
        AIR_MOTION,
        /** Heading along the ground track: no wind is known. */
        GROUND_TRACK
    }

    /**
     * The rotation from east-north-up to body axes ahead, right, above. Order: heading, then pitch,
     * then roll.
     */
    public Mat3 enuToBody() {
        double h_rad = Math.toRadians(heading_deg);
        double p_rad = Math.toRadians(pitch_deg);
        double r_rad = Math.toRadians(roll_deg);
        Vec3 levelAhead = new Vec3(Math.sin(h_rad), Math.cos(h_rad), 0);
        Vec3 levelRight = new Vec3(Math.cos(h_rad), -Math.sin(h_rad), 0);
        Vec3 up = new Vec3(0, 0, 1);
        Vec3 ahead = levelAhead.times(Math.cos(p_rad)).plus(up.times(Math.sin(p_rad)));
        Vec3 above = up.times(Math.cos(p_rad)).minus(levelAhead.times(Math.sin(p_rad)));
        Vec3 right = levelRight.times(Math.cos(r_rad)).minus(above.times(Math.sin(r_rad)));
        Vec3 roof = above.times(Math.cos(r_rad)).plus(levelRight.times(Math.sin(r_rad)));
        return Mat3.ofRows(ahead, right, roof);
    }
}
