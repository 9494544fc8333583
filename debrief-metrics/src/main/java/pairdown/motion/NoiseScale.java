package pairdown.motion;

/**
 * Factors on what was assumed: variances of positions and velocities, and the jerk density. Level
 * and vertical apart.
 */
record NoiseScale(Group level, Group vertical) {
    static final NoiseScale NONE = new NoiseScale(new Group(1, 1, 1), new Group(1, 1, 1));

    /** What is tuned. */
    enum Part {
        VELOCITY,
        POSITION,
        JERK
    }

    /** The factors of one direction. */
    record Group(double position, double velocity, double jerk) {
        double get(Part part) {
            return switch (part) {
                case POSITION -> position;
                case VELOCITY -> velocity;
                case JERK -> jerk;
            };
        }

        Group with(Part part, double factor) {
            return switch (part) {
                case POSITION -> new Group(factor, velocity, jerk);
                case VELOCITY -> new Group(position, factor, jerk);
                case JERK -> new Group(position, velocity, factor);
            };
        }
    }

    Group of(int axis) {
        return axis == 2 ? vertical : level;
    }
}
