package pairdown.phase;

/**
 * A level direction, east and north, of length 1; and the axes it gives: along it, across it
 * (right), up.
 */
record Course(double east, double north) {
    /** A component of two columns: {@code e} of the first and {@code n} of the second. */
    record Axis(double e, double n) {
        double on(double first, double second) {
            return e * first + n * second;
        }
    }

    /** Of the mean velocity over a stretch; north where there is none. */
    static Course of(Motion.Columns level, double from_s, double to_s) {
        double e = 0;
        double n = 0;
        for (int i = level.firstFrom(from_s); i < level.size() && level.time_s(i) < to_s; i++) {
            e += level.first(i);
            n += level.second(i);
        }
        double size = Math.hypot(e, n);
        return size > 0 ? new Course(e / size, n / size) : new Course(0, 1);
    }

    /** Axis 0 along, 1 across, of east and north columns; 2 up, of the first column. */
    Axis of(int axis) {
        return switch (axis) {
            case 0 -> new Axis(east, north);
            case 1 -> new Axis(north, -east);
            default -> new Axis(1, 0);
        };
    }
}
