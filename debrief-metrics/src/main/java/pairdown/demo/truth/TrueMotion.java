package pairdown.demo.truth;

import pairdown.vector.Vec3;

/**
 * One body's true motion over the ground at an even step: position and velocity in the attempt's
 * east-north-up frame, between rows by the cubic through both. Times are seconds from the truth's
 * start. Before its first and after its last row a body stays where it was, at rest.
 */
public final class TrueMotion {
    private final double start_s;
    private final double step_s;
    private final Vec3[] position_m;
    private final Vec3[] velocity_mps;

    /**
     * @param position_m east, north, up (m), a row each {@code step_s}
     * @param velocity_mps the same for the velocity (m/s)
     * @throws IllegalArgumentException if the rows differ in number or are fewer than two
     */
    public TrueMotion(double start_s, double step_s, Vec3[] position_m, Vec3[] velocity_mps) {
        if (position_m.length != velocity_mps.length || position_m.length < 2) {
            throw new IllegalArgumentException("two or more rows of position and velocity needed");
        }
        this.start_s = start_s;
        this.step_s = step_s;
        this.position_m = position_m.clone();
        this.velocity_mps = velocity_mps.clone();
    }

    public int size() {
        return position_m.length;
    }

    public double start_s() {
        return start_s;
    }

    public double step_s() {
        return step_s;
    }

    public double end_s() {
        return time_s(size() - 1);
    }

    public double time_s(int row) {
        return start_s + row * step_s;
    }

    public Vec3 position_m(int row) {
        return position_m[row];
    }

    public Vec3 velocity_mps(int row) {
        return velocity_mps[row];
    }

    /** Position at a time (m, east-north-up). */
    public Vec3 positionAt_m(double time_s) {
        if (isOutside(time_s)) {
            return position_m[time_s < start_s ? 0 : size() - 1];
        }
        int i = rowBefore(time_s);
        double u = (time_s - time_s(i)) / step_s;
        double rise = u * u * (3 - 2 * u);
        double first = u * (1 - u) * (1 - u) * step_s;
        double last = -u * u * (1 - u) * step_s;
        return position_m[i]
                .times(1 - rise)
                .plus(position_m[i + 1].times(rise))
                .plus(velocity_mps[i].times(first))
                .plus(velocity_mps[i + 1].times(last));
    }

    /** Velocity at a time (m/s, east-north-up), linear between rows. */
    public Vec3 velocityAt_mps(double time_s) {
        if (isOutside(time_s)) {
            return Vec3.ZERO;
        }
        int i = rowBefore(time_s);
        double u = (time_s - time_s(i)) / step_s;
        return velocity_mps[i].times(1 - u).plus(velocity_mps[i + 1].times(u));
    }

    private boolean isOutside(double time_s) {
        return time_s < start_s || time_s > end_s();
    }

    private int rowBefore(double time_s) {
        return Math.max(0, Math.min(size() - 2, (int) Math.floor((time_s - start_s) / step_s)));
    }
}
