package pairdown.demo.receiver;

import pairdown.vector.Vec3;

/**
 * One fix as a receiver has it.
 *
 * @param logged_s by the log's own clock, from the truth's start
 * @param position_m with all its errors, in the truth's frame
 * @param velocity_mps the same
 */
record Fix(
        double logged_s,
        Vec3 position_m,
        Vec3 velocity_mps,
        double horizontalAccuracy_m,
        double verticalAccuracy_m,
        double speedAccuracy_mps,
        double satellites) {
    /** The same fix told again at another time. */
    Fix at(double other_s) {
        return new Fix(
                other_s,
                position_m,
                velocity_mps,
                horizontalAccuracy_m,
                verticalAccuracy_m,
                speedAccuracy_mps,
                satellites);
    }
}
