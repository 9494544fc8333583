package pairdown.vector;

/**
 * Three components in a frame its holder names; immutable.
 *
 * @param x first component (east, forward or earth-centred x)
 * @param y second component (north, right or earth-centred y)
 * @param z third component (up, or earth-centred z)
 */
public record Vec3(double x, double y, double z) {
    public static final Vec3 ZERO = new Vec3(0, 0, 0);

    public Vec3 plus(Vec3 o) {
        return new Vec3(x + o.x, y + o.y, z + o.z);
    }

    public Vec3 minus(Vec3 o) {
        return new Vec3(x - o.x, y - o.y, z - o.z);
    }

    public Vec3 times(double s) {
        return new Vec3(x * s, y * s, z * s);
    }

    /** Component-wise product, for scaling by per-axis figures. */
    public Vec3 scaledBy(Vec3 o) {
        return new Vec3(x * o.x, y * o.y, z * o.z);
    }

    public double dot(Vec3 o) {
        return x * o.x + y * o.y + z * o.z;
    }

    public Vec3 cross(Vec3 o) {
        return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    public double normSquared() {
        return dot(this);
    }

    public double norm() {
        return Math.sqrt(normSquared());
    }

    /** Length of the first two components. */
    public double levelNorm() {
        return Math.hypot(x, y);
    }

    /**
     * The vector of length one along this.
     *
     * @throws ArithmeticException if this has no length
     */
    public Vec3 unit() {
        double n = norm();
        if (!(n > 0)) {
            throw new ArithmeticException("a vector without length has no direction");
        }
        return times(1 / n);
    }

    public boolean isFinite() {
        return Double.isFinite(x) && Double.isFinite(y) && Double.isFinite(z);
    }
}
