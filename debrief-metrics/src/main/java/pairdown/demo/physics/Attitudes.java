package pairdown.demo.physics;

import org.hipparchus.util.FastMath;
import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/** Rotation from east-north-up to body axes ahead, right, above. */
final class Attitudes {
    private Attitudes() {}

    /**
     * @param heading_rad clockwise from north
     * @param pitch_rad nose up
     * @param roll_rad right wing down
     */
    static Mat3 enuToBody(double heading_rad, double pitch_rad, double roll_rad) {
        Vec3 level = Route.ahead(heading_rad);
        Vec3 side = Route.right(heading_rad);
        double sinP = FastMath.sin(pitch_rad);
        double cosP = FastMath.cos(pitch_rad);
        double sinR = FastMath.sin(roll_rad);
        double cosR = FastMath.cos(roll_rad);
        Vec3 ahead = new Vec3(level.x() * cosP, level.y() * cosP, sinP);
        Vec3 above = new Vec3(-level.x() * sinP, -level.y() * sinP, cosP);
        return Mat3.ofRows(
                ahead,
                side.times(cosR).minus(above.times(sinR)),
                above.times(cosR).plus(side.times(sinR)));
    }
}
