package pairdown.motion;

/**
 * Factors on the assumed variances of the measurements that make innovations consistent, level and
 * vertical apart.
 */
record NoiseScale(
        double levelPosition,
        double verticalPosition,
        double levelVelocity,
        double verticalVelocity) {
    static final NoiseScale NONE = new NoiseScale(1, 1, 1, 1);

    double position(int axis) {
        return axis == 2 ? verticalPosition : levelPosition;
    }

    double velocity(int axis) {
        return axis == 2 ? verticalVelocity : levelVelocity;
    }
}
