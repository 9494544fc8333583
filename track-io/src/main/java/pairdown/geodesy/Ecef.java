package pairdown.geodesy;

import pairdown.vector.Vec3;

/**
 * Earth-centred, earth-fixed coordinates: x towards latitude 0 longitude 0, y towards longitude 90°
 * east, z towards the north pole (m).
 */
public record Ecef(double x_m, double y_m, double z_m) {
    public Vec3 vector() {
        return new Vec3(x_m, y_m, z_m);
    }
}
