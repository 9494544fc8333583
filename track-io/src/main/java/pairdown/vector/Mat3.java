package pairdown.vector;

/** A 3 × 3 matrix by rows; immutable. A rotation's name at its holder says from and to. */
public record Mat3(Vec3 row0, Vec3 row1, Vec3 row2) {
    public static final Mat3 IDENTITY =
            new Mat3(new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1));

    public static Mat3 ofRows(Vec3 row0, Vec3 row1, Vec3 row2) {
        return new Mat3(row0, row1, row2);
    }

    public static Mat3 diagonal(Vec3 d) {
        return new Mat3(new Vec3(d.x(), 0, 0), new Vec3(0, d.y(), 0), new Vec3(0, 0, d.z()));
    }

    public Vec3 times(Vec3 v) {
        return new Vec3(row0.dot(v), row1.dot(v), row2.dot(v));
    }

    /** Transpose times vector: for a rotation, the way back. */
    public Vec3 transposeTimes(Vec3 v) {
        return row0.times(v.x()).plus(row1.times(v.y())).plus(row2.times(v.z()));
    }

    public Mat3 transpose() {
        return new Mat3(
                new Vec3(row0.x(), row1.x(), row2.x()),
                new Vec3(row0.y(), row1.y(), row2.y()),
                new Vec3(row0.z(), row1.z(), row2.z()));
    }

    public Mat3 times(Mat3 o) {
        Mat3 t = o.transpose();
        return new Mat3(t.times(row0), t.times(row1), t.times(row2));
    }

    /** The variance along {@code u} if this is a covariance: {@code uᵀ M u}. */
    public double quadraticForm(Vec3 u) {
        return u.dot(times(u));
    }
}
